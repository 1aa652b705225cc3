package kitleaf.command;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Paper;
import kitleaf.basket.Piece;
import kitleaf.basket.Units;
import kitleaf.basket.place.Problem;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.Misfits;
import kitleaf.basket.reader.Reading;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.Voice;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The options every command that reads a basket has. */
final class BasketSource {

    /** More than this nobody reads in one go; the rest is counted. */
    private static final int PROBLEMS_SHOWN = 100;

    private final Task task;
    private final PositionalParamSpec basket;
    private final OptionSpec piece;
    private PositionalParamSpec onePiece;
    private final OptionSpec units;
    private final OptionSpec language;

    private Paper paper;
    private Reading reading;
    private Paper ownPaper;

    /** The options a command takes that reads a basket. */
    BasketSource(Task task) {
        this.task = task;
        basket = task.add(PositionalParamSpec.builder().index("0").required(true).paramLabel("BASKET").type(Path.class));
        piece = task.add(OptionSpec.builder("--piece").paramLabel("ID").type(List.class).auxiliaryTypes(String.class));
        units = task.add(Options.units());
        language = task.add(Options.language());
    }

    /** The same source, printed on this paper instead of the basket's; null leaves the basket's. */
    BasketSource onPaper(Paper other) {
        paper = other;
        return this;
    }

    /** The same source, with a piece that may be named after the basket, too. */
    BasketSource takingOnePiece() {
        onePiece = task.add(PositionalParamSpec.builder().index("1").arity("0..1").paramLabel("PIECE").type(String.class)
                .descriptionKey("one-piece"));
        return this;
    }

    /** The IDs of the pieces she named; none where she means all. */
    private List<String> pieces() {
        return Stream.concat(Options.<List<String>>value(piece).orElse(List.of()).stream(),
                Stream.ofNullable(onePiece).flatMap(one -> Options.<String>value(one).stream())).toList();
    }

    /** Whether she named pieces. */
    boolean named() {
        return !pieces().isEmpty();
    }

    /** Where the basket lies. */
    Path basket() {
        return basket.getValue();
    }

    /** The paper the basket read last names, whatever was asked for. */
    Paper ownPaper() {
        return ownPaper;
    }

    /** Makes problems of what sheets have no room for, in the basket read last. */
    Misfits misfits() {
        return reading.misfits();
    }

    /** Reads the basket and picks the pieces asked for. */
    Basket read() {
        reading = BasketReader.read(basket(), Options.value(language));
        reading.language().ifPresent(task.voice()::turnTo);
        if (reading.basket().isEmpty()) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> text(reading.problems(), voice));
        }
        reading.remarks().forEach(remark -> task.line().getErr().println(task.voice().say(remark)));
        Basket whole = reading.basket().get();
        ownPaper = whole.paper();
        return pick(whole.on(paper == null ? whole.paper() : paper, Options.<Units>value(units).orElse(whole.units())));
    }

    private Basket pick(Basket whole) {
        List<String> pieces = pieces();
        for (String id : pieces) {
            if (whole.pieces().stream().noneMatch(one -> one.id().equals(id))) {
                throw Failure.of(Exit.WRONG_USAGE, "basket.piece", id, basket().toString(),
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
