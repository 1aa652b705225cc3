package kitleaf.basket.reader;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Amount;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;

/**
 * Gives the most stitches a piece can hold: a cross in every square of its chart, in the finest {@code over} that is used
 * anywhere in it, and in every square of its parts, and beside them what is counted in other stitches; or what she says it
 * holds, where that is more. Which threads are counted already does not matter, so a list of threads that is still being
 * written is no contradiction.
 */
public final class MostStitches {

    private MostStitches() {
    }

    public static long of(Piece piece) {
        return of(piece.stitches(), piece.cloth(), piece.threads(), piece.parts(), piece.coverage());
    }

    public static long of(ChartSize chart, Cloth cloth, List<CalledThread> threads, List<Part> parts, Optional<Amount> coverage) {
        List<CalledThread> all = Stream.concat(threads.stream(), parts.stream().flatMap(part -> part.threads().stream())).toList();
        // A part of a known size adds its squares; one without may be as large as the whole.
        int finest = Stream.concat(all.stream().flatMap(thread -> thread.over().stream().boxed()),
                parts.stream().filter(part -> part.stitches().isEmpty()).map(Part::over))
                .mapToInt(Integer::intValue).min().orElse(cloth.over());
        double finer = Math.max(1, (double) cloth.over() / finest);
        long squares = (long) Math.ceil(chart.cells() * finer * finer)
                + parts.stream().flatMap(part -> part.stitches().stream()).mapToLong(ChartSize::cells).sum();
        long crosses = count(all, true);
        long said = coverage.filter(Amount.Stitches.class::isInstance).map(amount -> ((Amount.Stitches) amount).number()).orElse(0L);
        return Math.max(said, Math.max(squares, crosses) + count(all, false));
    }

    private static long count(List<CalledThread> threads, boolean crosses) {
        return threads.stream().flatMap(thread -> thread.stitches().stream())
                .filter(stitches -> (stitches.kind() == StitchKind.CROSS) == crosses).mapToLong(StitchCount::count).sum();
    }
}
