package kitleaf.command;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import kitleaf.basket.LogEdit;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.PieceFile;
import kitleaf.sizing.StitchTally;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a sitting into a piece's log. */
@Command(name = "log", customSynopsis = "kitleaf log [BASKET] PIECE --stitches N --hours H [--on DATE]")
final class LogCommand implements Callable<Integer> {

    @Parameters(arity = "1..2", paramLabel = "[BASKET] PIECE", descriptionKey = "which-piece", hideParamSyntax = true)
    private List<String> piece;

    @Option(names = "--stitches", paramLabel = "N", required = true, converter = ValueOption.Stitches.class)
    private int stitches;

    @Option(names = "--hours", paramLabel = "H", required = true, converter = ValueOption.Hours.class)
    private double hours;

    @Option(names = "--on", paramLabel = "DATE", converter = ValueOption.Day.class)
    private LocalDate on;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        LocalDate today = LocalDate.now();
        if (on != null && on.isAfter(today)) {
            throw Failure.of(Exit.WRONG_USAGE, "log.future", on.toString(), today.toString());
        }
        PieceFile file = PieceArgument.find(piece);
        LogEntry entry = new LogEntry(on == null ? today : on, hours, stitches);
        LogEdit edit = LogEdit.of(file, entry);
        if (edit instanceof LogEdit.Broken broken) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(broken.problems(), voice));
        }
        if (edit instanceof LogEdit.Refused refused) {
            throw Failure.of(Exit.WRONG_USAGE, "log.before-start", entry.on().toString(), refused.started().toString());
        }
        if (edit instanceof LogEdit.ByHand byHand) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "log.by-hand", file.file().toString(), byHand.entry());
        }
        LogEdit.Ready ready = (LogEdit.Ready) edit;
        try {
            FileText.replace(file.file(), ready.before(), ready.after());
        } catch (IOException e) {
            throw OutFolder.couldNotWriteThere(file.file(), e);
        }
        tell(ready.piece(), entry);
        return Exit.DONE;
    }

    private void tell(Piece logged, LogEntry entry) {
        Voice voice = Voice.of(spec);
        StitchTally tally = StitchTally.of(logged);
        String time = BigDecimal.valueOf(entry.hours()).stripTrailingZeros().toPlainString();
        spec.commandLine().getOut().println(voice.say("log.done", logged.title(), entry.on().toString(), entry.stitches(), time,
                tally.left(), tally.total()));
        if (logged.progress().done().isPresent()) {
            spec.commandLine().getOut().println(voice.say("log.done-figure"));
        }
    }
}
