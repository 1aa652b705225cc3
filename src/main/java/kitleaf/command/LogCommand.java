package kitleaf.command;

import java.time.LocalDate;
import java.util.List;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.edit.LogEdit;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.ValueForm;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.files.EditedFile;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sizing.StitchTally;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Writes a sitting into a piece's log. */
final class LogCommand extends Task {

    private final PositionalParamSpec piece = add(PositionalParamSpec.builder().arity("1..2").required(true).paramLabel("[BASKET] PIECE")
            .descriptionKey("which-piece")
            .hideParamSyntax(true).type(List.class).auxiliaryTypes(String.class));
    private final OptionSpec stitches = add(Options.of("--stitches", "N", Integer.class, ValueForm.STITCHES).required(true));
    private final OptionSpec hours = add(Options.of("--hours", "H", Double.class, ValueForm.HOURS).required(true));
    private final OptionSpec day = add(Options.of("--on", "DATE", LocalDate.class, ValueForm.DAY));

    LogCommand(Kitleaf kitleaf) {
        super(kitleaf, "log");
        spec().usageMessage().customSynopsis("kitleaf log [BASKET] PIECE --stitches N --hours H [--on DATE]");
    }

    @Override
    public Integer call() {
        LocalDate today = LocalDate.now();
        LocalDate on = Options.<LocalDate>value(day).orElse(today);
        if (on.isAfter(today)) {
            throw Failure.of(Exit.WRONG_USAGE, "log.future", on.toString(), today.toString());
        }
        PieceFile file = PieceArgument.find(piece.getValue());
        LogEntry entry = new LogEntry(on, hours.<Double>getValue(), stitches.<Integer>getValue());
        LogEdit.Ready ready = EditedFile.write(file.file(), this::complain, () -> edit(file, entry));
        tell(ready.piece(), entry);
        return Exit.DONE;
    }

    private static LogEdit.Ready edit(PieceFile file, LogEntry entry) {
        LogEdit edit = LogEdit.of(file, entry);
        if (edit instanceof LogEdit.Broken broken) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(broken.problems(), voice));
        }
        if (edit instanceof LogEdit.Refused refused) {
            throw Failure.of(Exit.WRONG_USAGE, phrase(refused.slip()), entry.on().toString(), entry.stitches().orElse(0),
                    NumberText.written(entry.hours().orElse(0)), refused.bound());
        }
        if (edit instanceof LogEdit.NoPlace none) {
            throw Failure.byHand(file.file(), none.how());
        }
        return (LogEdit.Ready) edit;
    }

    private static String phrase(LogEdit.Slip slip) {
        return switch (slip) {
            case BEFORE_START -> "log.before-start";
            case AFTER_FINISH -> "log.after-finish";
            case TOO_FAST -> "log.too-fast";
            case TOO_MANY -> "log.too-many";
        };
    }

    private void tell(Piece logged, LogEntry entry) {
        StitchTally tally = StitchTally.of(logged);
        line().getOut().println(voice().say("log.done", logged.title(), entry.on().toString(), entry.stitches().orElse(0),
                NumberText.written(entry.hours().orElse(0)), tally.left(), tally.total()));
        if (logged.progress().done().isPresent()) {
            line().getOut().println(voice().say("log.done-figure"));
        }
    }
}
