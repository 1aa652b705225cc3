package kitleaf.sizing.label;

import kitleaf.basket.LabelStock;
import kitleaf.basket.Paper;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Label stock for tests. */
final class Stocks {

    static final Paper A4 = new Paper("A4", 210, 297);

    private Stocks() {
    }

    static LabelStock stock(int columns, int rows, double widthMm, double heightMm, double firstXMm, double firstYMm, double pitchXMm,
                            double pitchYMm, boolean plain) {
        return new LabelStock(A4, columns, rows, widthMm, heightMm, firstXMm, firstYMm, pitchXMm, pitchYMm, LabelStock.Shape.RECTANGLE,
                plain, LabelStock.Style.WRAP);
    }

    private record Line(int number, double labelMm, double firstMm, double pitchMm) {
    }

    /** Labels that fit a side, with gaps or touching: the room is shared out, so that none is refused. */
    private static Arbitrary<Line> lines(double sheetMm) {
        return Combinators.combine(Arbitraries.integers().between(1, 12), Arbitraries.doubles().between(0, 20),
                Arbitraries.doubles().between(0.5, 1), Arbitraries.of(true, false)).as((number, firstMm, share, touching) -> {
                    double pitchMm = (sheetMm - firstMm) / number;
                    return new Line(number, touching ? pitchMm : pitchMm * share, firstMm, pitchMm);
                });
    }

    static Arbitrary<LabelStock> all() {
        return Combinators.combine(lines(A4.widthMm()), lines(A4.heightMm()), Arbitraries.of(true, false)).as((across, down, plain) ->
                stock(across.number(), down.number(), across.labelMm(), down.labelMm(), across.firstMm(), down.firstMm(),
                        across.pitchMm(), down.pitchMm(), plain));
    }
}
