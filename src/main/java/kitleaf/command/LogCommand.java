package kitleaf.command;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.edit.LogEdit;
import kitleaf.basket.form.ValueForm;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.files.InTheWay;
import kitleaf.command.files.OutFolder;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sizing.StitchTally;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Writes a sitting into a piece's log. */
final class LogCommand extends Task {

    /** A file that is saved this often while one entry finds its place is somebody else's to write. */
    private static final int MOST_TRIES = 20;

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
        LogEdit.Ready ready;
        try {
            ready = write(file, entry);
        } catch (IOException e) {
            throw OutFolder.couldNotWriteThere(file.file(), e);
        }
        tell(ready.piece(), entry);
        return Exit.DONE;
    }

    /** Puts the entry into the file; into what is in it by then, if something else saves it meanwhile. */
    private LogEdit.Ready write(PieceFile file, LogEntry entry) throws IOException {
        LogEdit.Ready ready = edit(file, entry);
        Path folder = ready.file().getParent();
        try (OutFolder out = OutFolder.open(folder, this::complain)) {
            for (int tries = 0; tries < MOST_TRIES && folder.equals(ready.file().getParent()); tries++) {
                if (out.replace(ready.file().getFileName().toString(), ready.before(), ready.after())) {
                    return ready;
                }
                ready = edit(file, entry);
            }
        }
        throw new InTheWay(file.file(), "write.saved-meanwhile");
    }

    private static LogEdit.Ready edit(PieceFile file, LogEntry entry) {
        LogEdit edit = LogEdit.of(file, entry);
        if (edit instanceof LogEdit.Broken broken) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(broken.problems(), voice));
        }
        if (edit instanceof LogEdit.Refused refused) {
            throw Failure.of(Exit.WRONG_USAGE, phrase(refused.slip()), entry.on().toString(), entry.stitches().orElse(0),
                    written(entry.hours().orElse(0)), refused.bound());
        }
        if (edit instanceof LogEdit.ByHand byHand) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "log.by-hand", file.file().toString(), byHand.entry());
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

    private static String written(double hours) {
        return BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString();
    }

    private void tell(Piece logged, LogEntry entry) {
        StitchTally tally = StitchTally.of(logged);
        line().getOut().println(voice().say("log.done", logged.title(), entry.on().toString(), entry.stitches().orElse(0),
                written(entry.hours().orElse(0)), tally.left(), tally.total()));
        if (logged.progress().done().isPresent()) {
            line().getOut().println(voice().say("log.done-figure"));
        }
    }
}
