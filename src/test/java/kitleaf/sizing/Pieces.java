package kitleaf.sizing;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.Margins;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;

/** Pieces for tests. */
public final class Pieces {

    private Pieces() { }

    /** Linen of one count, counted as it is stitched, warp down. */
    public static Cloth linen(double count, int over) {
        return linen(count, over, Shrink.NONE);
    }

    /** Linen of one count that shrinks, counted as it is stitched, warp down. */
    public static Cloth linen(double count, int over, Shrink shrink) {
        return cloth(new Count(count, count), over, shrink, Cloth.Counted.AFTER, Cloth.WarpRun.DOWN);
    }

    /** Any linen. */
    public static Cloth cloth(Count count, int over, Shrink shrink, Cloth.Counted counted, Cloth.WarpRun warp) {
        return new Cloth(Optional.empty(), Cloth.Kind.LINEN, count, over, shrink, counted, warp, Cloth.Dyeing.NONE, false);
    }

    /** A piece with nothing but its cloth. */
    public static Piece piece(ChartSize chart, Cloth cloth, Margins margins, Part... parts) {
        return new Piece("p", "Piece", Optional.empty(), chart, cloth, Optional.empty(), margins, true, List.of(),
                List.of(parts), Optional.empty(), Progress.NONE, Goal.NONE);
    }
}
