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
@Command(name = "log", header = "Write down what you stitched on a day.",
        customSynopsis = "kitleaf log [BASKET] PIECE --stitches N --hours H [--on DATE]",
        description = "%nAdds one entry to the log in the piece's file and leaves everything else in it as it is, remarks included.%n",
        footerHeading = "%nExamples:%n", footer = {
            "  kitleaf log my-basket fog-bell --stitches 260 --hours 2.5",
            "  kitleaf log my-basket fog-bell --stitches 90 --hours 1 --on 2026-11-22",
            "  kitleaf log fog-bell --stitches 260 --hours 2.5     (in the basket folder)"})
final class LogCommand implements Callable<Integer> {

    @Parameters(arity = "1..2", paramLabel = "[BASKET] PIECE", hideParamSyntax = true,
            description = "The piece, by its file name without .yaml, after its basket folder if you do not stand in that; or its file.")
    private List<String> piece;

    @Option(names = "--stitches", paramLabel = "N", required = true, converter = ValueOption.Stitches.class,
            description = "How many stitches you put in.")
    private int stitches;

    @Option(names = "--hours", paramLabel = "H", required = true, converter = ValueOption.Hours.class,
            description = "How long you sat, in hours, such as 2.5.")
    private double hours;

    @Option(names = "--on", paramLabel = "DATE", converter = ValueOption.Day.class,
            description = "The day, such as 2026-11-22. Default: today.")
    private LocalDate on;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        LocalDate today = LocalDate.now();
        if (on != null && on.isAfter(today)) {
            throw new Failure(Exit.WRONG_USAGE, on + " has not come yet; write a day up to today, " + today);
        }
        PieceFile file = PieceArgument.find(piece);
        LogEntry entry = new LogEntry(on == null ? today : on, hours, stitches);
        LogEdit edit = LogEdit.of(file, entry);
        if (edit instanceof LogEdit.Broken broken) {
            throw new Failure(Exit.BASKET_HAS_PROBLEMS, BasketSource.text(broken.problems()));
        }
        if (edit instanceof LogEdit.Refused refused) {
            throw new Failure(Exit.WRONG_USAGE, refused.why());
        }
        if (edit instanceof LogEdit.ByHand byHand) {
            throw new Failure(Exit.COULD_NOT_WRITE, "Kitleaf sees no place in " + file.file()
                    + " for this without touching what stands there; write by hand, under progress and log: - " + byHand.entry());
        }
        LogEdit.Ready ready = (LogEdit.Ready) edit;
        try {
            FileText.replace(file.file(), ready.before(), ready.after());
        } catch (IOException e) {
            throw OutFolder.couldNotWrite(file.file(), e, "");
        }
        tell(ready.piece(), entry);
        return Exit.DONE;
    }

    private void tell(Piece logged, LogEntry entry) {
        StitchTally tally = StitchTally.of(logged);
        String time = BigDecimal.valueOf(entry.hours()).stripTrailingZeros().toPlainString();
        spec.commandLine().getOut().println(logged.title() + ", " + entry.on() + ": " + entry.stitches() + " stitches in "
                + time + " hours; " + tally.left() + " of " + tally.total() + " left");
        if (logged.progress().done().isPresent()) {
            spec.commandLine().getOut().println("What is left follows the piece's own done figure, not its log; change that as you go on, "
                    + "or take it out once the log holds everything.");
        }
    }
}
