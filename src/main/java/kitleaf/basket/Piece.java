package kitleaf.basket;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.CalledThreads;

/**
 * One piece as its stitcher described it.
 *
 * @param id its file name without {@code .yaml}, with {@code -2}, {@code -3}... for further documents in a file
 * @param title what the chart is called
 * @param designer who drew it
 * @param stitches the chart's size
 * @param cloth what it is stitched on
 * @param finish what it becomes
 * @param margins cloth left around the design
 * @param marginsGiven whether she gave any side herself; the usual ones were taken for what is missing
 * @param threads the threads the chart calls for
 * @param parts parts worked over another number of threads
 * @param coverage how many stitches, or what share of the chart's cells, are stitched
 * @param progress how far it has come
 * @param goal what she wants of it
 * @param keeping where it and its chart are kept
 */
public record Piece(String id, String title, Optional<String> designer, ChartSize stitches, Cloth cloth,
                    Optional<Finish> finish, Margins margins, boolean marginsGiven, List<CalledThread> threads,
                    List<Part> parts, Optional<Amount> coverage, Progress progress, Goal goal, Keeping keeping) {

    /** Copies the lists. */
    public Piece {
        Objects.requireNonNull(id);
        Objects.requireNonNull(title);
        Objects.requireNonNull(designer);
        Objects.requireNonNull(stitches);
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(finish);
        Objects.requireNonNull(margins);
        Objects.requireNonNull(coverage);
        Objects.requireNonNull(progress);
        Objects.requireNonNull(goal);
        Objects.requireNonNull(keeping);
        threads = CalledThreads.copyOf(threads);
        parts = List.copyOf(parts);
    }

    /** A piece of which nothing is said where it is kept. */
    public Piece(String id, String title, Optional<String> designer, ChartSize stitches, Cloth cloth, Optional<Finish> finish,
                 Margins margins, boolean marginsGiven, List<CalledThread> threads, List<Part> parts, Optional<Amount> coverage,
                 Progress progress, Goal goal) {
        this(id, title, designer, stitches, cloth, finish, margins, marginsGiven, threads, parts, coverage, progress, goal,
                Keeping.UNSAID);
    }

    /** Whether its cloth follows the hoop it stays in, as she gave no margin. */
    public boolean followsHoop() {
        return !marginsGiven && hooped();
    }

    /** Whether it stays in a hoop. */
    public boolean hooped() {
        return finish.filter(Finish.HOOPED::equals).isPresent();
    }

    /** The same piece with another record of how far it has come. */
    public Piece with(Progress other) {
        return new Piece(id, title, designer, stitches, cloth, finish, margins, marginsGiven, threads, parts, coverage, other,
                goal, keeping);
    }
}
