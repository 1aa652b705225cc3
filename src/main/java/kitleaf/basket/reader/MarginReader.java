package kitleaf.basket.reader;

import java.util.Optional;
import kitleaf.basket.Finish;
import kitleaf.basket.Margins;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;

/** Reads the cloth left around a design. */
public final class MarginReader {

    /** What is left when neither margin nor finish is told: 3 in all round (common practice, no source). */
    public static final Margins USUAL = Margins.all(3 * 25.4);

    static final Form<Double> MARGIN = new LengthText(0, Margins.MOST_MM, "margin.wide", "3 in");
    public static final Keys SIDES = Keys.under("margin", "{top: 3 in, bottom: 4 in}");
    private static final Key<Double> TOP = SIDES.may("top", MARGIN, "2 1/2 in");
    private static final Key<Double> RIGHT = SIDES.may("right", MARGIN, "2 in");
    private static final Key<Double> BOTTOM = SIDES.may("bottom", MARGIN, "7.5 cm");
    private static final Key<Double> LEFT = SIDES.may("left", MARGIN, "2 in");

    private final Problems problems;

    MarginReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * What was read.
     *
     * @param given whether she gave any side
     */
    record Around(Margins margins, boolean given) {
    }

    Around read(Fields piece, Optional<Finish> finish) {
        Margins usual = finish.map(Finish::usualMargins).orElse(USUAL);
        Optional<Node> node = piece.node(PieceReader.MARGIN);
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            return Fields.of(node.get(), SIDES, problems)
                    .map(sides -> sides(sides, usual)).orElse(new Around(usual, false));
        }
        return node.flatMap(n -> piece.scalar(n, Fields.key("margin"), MARGIN))
                .map(mm -> new Around(Margins.all(mm), true)).orElse(new Around(usual, false));
    }

    private static Around sides(Fields sides, Margins usual) {
        Margins margins = new Margins(
                sides.value(TOP).orElse(usual.topMm()),
                sides.value(RIGHT).orElse(usual.rightMm()),
                sides.value(BOTTOM).orElse(usual.bottomMm()),
                sides.value(LEFT).orElse(usual.leftMm()));
        return new Around(margins, SIDES.names().stream().anyMatch(sides::has));
    }
}
