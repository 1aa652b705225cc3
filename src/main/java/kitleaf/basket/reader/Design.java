package kitleaf.basket.reader;

import java.util.Optional;
import kitleaf.basket.ChartSize;
import kitleaf.basket.place.Fault;

/**
 * What a piece's parts lie in.
 *
 * @param chart its size in stitches
 * @param over threads a stitch spans
 */
record Design(ChartSize chart, int over) {

    /** What is wrong, if a part of this size over so many threads is wider or higher on the cloth than the whole design. */
    Optional<Fault> tooLarge(ChartSize part, int partOver) {
        int mostWide = most(chart.wide(), partOver);
        int mostHigh = most(chart.high(), partOver);
        if (!longer(part.wide(), partOver, chart.wide()) && !longer(part.high(), partOver, chart.high())) {
            return Optional.empty();
        }
        return Optional.of(Fault.of("part.large", part.wide() + " x " + part.high(), partOver, chart.wide() + " x " + chart.high(), over,
                mostWide + " x " + mostHigh));
    }

    /** A part may lie between the threads of the piece's stitches and reach over its edge by less than one. */
    private boolean longer(int partStitches, int partOver, int stitches) {
        return (long) partStitches * partOver >= (long) (stitches + 1) * over;
    }

    private int most(int stitches, int partOver) {
        return Math.max(1, stitches * over / partOver);
    }
}
