package kitleaf.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitleaf.basket.Basket;
import kitleaf.basket.BasketReader;
import kitleaf.basket.Paper;
import kitleaf.basket.Piece;
import kitleaf.basket.Problem;
import kitleaf.basket.Reading;
import kitleaf.basket.Units;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The options every command that reads a basket has. */
final class BasketSource {

    /** More than this nobody reads in one go; the rest is counted. */
    private static final int PROBLEMS_SHOWN = 100;

    @Parameters(index = "0", paramLabel = "BASKET")
    private Path basket;

    @Option(names = "--piece", paramLabel = "ID")
    private List<String> pieces = new ArrayList<>();

    @Option(names = "--units", paramLabel = "UNITS", converter = UnitsOption.class, completionCandidates = UnitsOption.Words.class)
    private Units units;

    @Option(names = "--language", paramLabel = "LANGUAGE", converter = LanguageOption.class)
    private Locale language;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

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
        Reading reading = BasketReader.read(basket, Optional.ofNullable(language));
        reading.language().ifPresent(Voice.of(command)::turnTo);
        if (reading.basket().isEmpty()) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> text(reading.problems(), voice));
        }
        Basket whole = reading.basket().get();
        return pick(whole.on(paper == null ? whole.paper() : paper, units == null ? whole.units() : units));
    }

    private Basket pick(Basket whole) throws Failure {
        for (String id : pieces) {
            if (whole.pieces().stream().noneMatch(piece -> piece.id().equals(id))) {
                throw Failure.of(Exit.WRONG_USAGE, "basket.piece", id, basket.toString(),
                        whole.pieces().stream().map(Piece::id).collect(Collectors.joining(", ")));
            }
        }
        return pieces.isEmpty() ? whole : whole.only(pieces);
    }

    static String text(List<Problem> problems, Voice voice) {
        String shown = problems.stream().limit(PROBLEMS_SHOWN).map(voice::say)
                .collect(Collectors.joining(System.lineSeparator() + System.lineSeparator()));
        int more = problems.size() - PROBLEMS_SHOWN;
        String count = more > 0 ? voice.say("basket.problems.more", more, problems.size())
                : problems.size() == 1 ? voice.say("basket.problems.one") : voice.say("basket.problems.many", problems.size());
        return shown + System.lineSeparator() + System.lineSeparator() + count;
    }
}
