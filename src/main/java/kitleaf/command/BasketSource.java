package kitleaf.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kitleaf.basket.Basket;
import kitleaf.basket.BasketReader;
import kitleaf.basket.Paper;
import kitleaf.basket.Piece;
import kitleaf.basket.Problem;
import kitleaf.basket.ProblemText;
import kitleaf.basket.Reading;
import kitleaf.basket.Units;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The options every command that reads a basket has. */
final class BasketSource {

    /** More than this nobody reads in one go; the rest is counted. */
    private static final int PROBLEMS_SHOWN = 100;

    @Parameters(index = "0", paramLabel = "BASKET", description = "A basket folder, or a single piece file.")
    private Path basket;

    @Option(names = "--piece", paramLabel = "ID",
            description = "Only this piece, by its file name without .yaml. May be given more than once.")
    private List<String> pieces = new ArrayList<>();

    @Option(names = "--units", paramLabel = "UNITS", converter = UnitsOption.class, completionCandidates = UnitsOption.Words.class,
            description = "in or cm: which comes first. Default: the basket's units, else in.")
    private Units units;

    private Paper paper;

    /** The same source, printed on this paper instead of the basket's; null leaves the basket's. */
    BasketSource onPaper(Paper other) {
        paper = other;
        return this;
    }

    /** Where the basket lies. */
    Path basket() {
        return basket;
    }

    /** Reads the basket and picks the pieces asked for. */
    Basket read() throws Failure {
        Reading reading = BasketReader.read(basket);
        if (reading.basket().isEmpty()) {
            throw new Failure(Exit.BASKET_HAS_PROBLEMS, text(reading.problems()));
        }
        Basket whole = reading.basket().get();
        return pick(whole.on(paper == null ? whole.paper() : paper, units == null ? whole.units() : units));
    }

    private Basket pick(Basket whole) throws Failure {
        for (String id : pieces) {
            if (whole.pieces().stream().noneMatch(piece -> piece.id().equals(id))) {
                throw new Failure(Exit.WRONG_USAGE, "there is no piece \"" + id + "\" in " + basket + "; its pieces are: "
                        + whole.pieces().stream().map(Piece::id).collect(Collectors.joining(", ")));
            }
        }
        return pieces.isEmpty() ? whole : whole.only(pieces);
    }

    static String text(List<Problem> problems) {
        String shown = problems.stream().limit(PROBLEMS_SHOWN).map(ProblemText::render)
                .collect(Collectors.joining(System.lineSeparator() + System.lineSeparator()));
        int more = problems.size() - PROBLEMS_SHOWN;
        String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
        return shown + System.lineSeparator() + System.lineSeparator()
                + (more > 0 ? "and " + more + " more; " : "") + count + "; nothing was written";
    }
}
