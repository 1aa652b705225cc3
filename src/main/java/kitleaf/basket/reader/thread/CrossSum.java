package kitleaf.basket.reader.thread;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.ChartSize;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;

/** Judges whether the crosses of a piece have room in its chart. */
public final class CrossSum {

    /** Keys are counted by people, and a tenth more than there are squares may be a miscount; common practice, no source. */
    private static final double MISCOUNT = 1.1;

    private CrossSum() {
    }

    /**
     * What is wrong, if there are more crosses than squares. Two threads of fewer strands than others may share a needle, a
     * blend that stands with its stitches under both; so each counts half. Crosses finer than the piece are no matter of
     * squares.
     *
     * @param threads the piece's own, not those of its parts
     */
    public static Optional<Fault> wrong(ChartSize chart, Cloth cloth, List<CalledThread> threads) {
        List<CalledThread> whole = threads.stream().filter(thread -> thread.over().orElse(cloth.over()) >= cloth.over()).toList();
        int most = whole.stream().filter(thread -> crosses(thread) > 0).mapToInt(CrossSum::strands).max().orElse(0);
        double taken = whole.stream().mapToDouble(thread -> strands(thread) < most ? crosses(thread) / 2.0 : crosses(thread)).sum();
        if (taken <= MISCOUNT * chart.cells()) {
            return Optional.empty();
        }
        CalledThread largest = whole.stream().max(Comparator.comparingLong(CrossSum::crosses)).orElseThrow();
        return Optional.of(Fault.of("chart.crosses", chart.cells(), whole.stream().mapToLong(CrossSum::crosses).sum(),
                Quote.bare(largest.code()), crosses(largest)));
    }

    private static int strands(CalledThread thread) {
        return thread.strands().in(StitchKind.CROSS);
    }

    /** The crosses of a thread. */
    public static long crosses(CalledThread thread) {
        return thread.stitches().stream().filter(stitches -> stitches.kind() == StitchKind.CROSS).mapToLong(StitchCount::count).sum();
    }
}
