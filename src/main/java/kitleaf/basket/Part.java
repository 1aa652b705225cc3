package kitleaf.basket;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.CalledThreads;

/**
 * A part of a piece worked over another number of threads, such as an over-one verse.
 *
 * @param title what the stitcher calls it
 * @param over threads its stitches span, 1 to {@link Cloth#MOST_OVER}
 * @param stitches its own size in its own stitches, if known
 * @param threads the threads it is worked in; may be empty
 */
public record Part(String title, int over, Optional<ChartSize> stitches, List<CalledThread> threads) {

    /** Copies the list; refuses an {@code over} that cannot be stitched. */
    public Part {
        Objects.requireNonNull(title);
        Objects.requireNonNull(stitches);
        threads = CalledThreads.copyOf(threads);
        if (over < 1 || over > Cloth.MOST_OVER) {
            throw new IllegalArgumentException("over must be 1 to " + Cloth.MOST_OVER + ": " + over);
        }
    }
}
