package kitleaf.basket.reader;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.Finish;
import kitleaf.basket.Margins;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;

/** Reads the cloth left around a design. */
public final class MarginReader {

    /** What is left when neither margin nor finish is told: 3 in all round (common practice, no source). */
    public static final Margins USUAL = Margins.all(3 * 25.4);

    private static final List<String> SIDES = List.of("top", "right", "bottom", "left");
    private static final Form<Double> MARGIN = new LengthText(0, Margins.MOST_MM,
            "margin.wide", "3 in");

    private final Problems problems;

    MarginReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * What was read.
     *
     * @param given whether she gave every side
     */
    record Around(Margins margins, boolean given) {
    }

    Around read(Fields piece, Optional<Finish> finish) {
        Margins usual = finish.map(Finish::usualMargins).orElse(USUAL);
        Optional<Node> node = piece.node("margin", MARGIN.example());
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            return Fields.of(node.get(), Fields.key("margin"), "{top: 3 in, bottom: 4 in}", SIDES, problems)
                    .map(sides -> sides(sides, usual)).orElse(new Around(usual, false));
        }
        return node.flatMap(n -> piece.scalar(n, Fields.key("margin"), MARGIN))
                .map(mm -> new Around(Margins.all(mm), true)).orElse(new Around(usual, false));
    }

    private static Around sides(Fields sides, Margins usual) {
        Margins margins = new Margins(
                sides.value("top", MARGIN).orElse(usual.topMm()),
                sides.value("right", MARGIN).orElse(usual.rightMm()),
                sides.value("bottom", MARGIN).orElse(usual.bottomMm()),
                sides.value("left", MARGIN).orElse(usual.leftMm()));
        return new Around(margins, SIDES.stream().allMatch(sides::has));
    }
}
