package kitleaf.basket.cloth;

import java.util.Objects;
import java.util.Optional;

/**
 * The cloth one piece is stitched on.
 *
 * @param name what the stitcher calls it, if she named it
 * @param kind how it is woven
 * @param count threads (blocks on block cloth) to the inch, in the state {@code counted} tells
 * @param over threads a stitch spans, 1 to {@value #MOST_OVER}; always 1 on block cloth
 * @param shrink what the cloth loses after cutting: before stitching, or in the bath where it is dyed when it is stitched
 * @param counted whether the count was taken before or after that shrinking
 * @param warp which way the warp runs under the design
 * @param dyeing when it is dyed in the piece, so that sheets warn of dye baths
 * @param cut whether it is cut from its cloth already
 */
public record Cloth(Optional<String> name, Kind kind, Count count, int over, Shrink shrink,
                    Counted counted, WarpRun warp, Dyeing dyeing, boolean cut) {

    /** The widest stitch taken, in threads. */
    public static final int MOST_OVER = 4;

    /** How a cloth is woven. */
    public enum Kind {
        /** Plain-weave linen, rarely quite even. */
        LINEN,
        /** Plain weave made to have one count both ways. */
        EVENWEAVE,
        /** Woven in blocks with holes between; counted in blocks. */
        BLOCK
    }

    /** The state in which a cloth was counted. */
    public enum Counted {
        /** Before it was washed or dyed. */
        BEFORE,
        /** As it will be stitched. */
        AFTER
    }

    /** Which way the warp, and so the selvedge, runs under the upright design. */
    public enum WarpRun {
        /** Along the height of the design: the usual way. */
        DOWN,
        /** Along the width of the design: the cloth is turned. */
        ACROSS
    }

    /** When a cloth is dyed in the piece. */
    public enum Dyeing {
        /** Never. */
        NONE,
        /** Cut, and not stitched yet. */
        BEFORE,
        /** When all is stitched. */
        AFTER
    }

    /** Refuses a missing part and an {@code over} that cannot be stitched. */
    public Cloth {
        Objects.requireNonNull(name);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(count);
        Objects.requireNonNull(shrink);
        Objects.requireNonNull(counted);
        Objects.requireNonNull(warp);
        Objects.requireNonNull(dyeing);
        if (over < 1 || over > MOST_OVER || (kind == Kind.BLOCK && over != 1)) {
            throw new IllegalArgumentException(kind + " cannot be worked over " + over);
        }
    }

    /** What it loses between being cut and being stitched: nothing where it shrinks with its stitches on. */
    public Shrink shrinkBeforeStitching() {
        return dyeing == Dyeing.AFTER ? Shrink.NONE : shrink;
    }

    /** The same cloth with its warp the other way, or the same way, under the design. */
    public Cloth with(WarpRun otherWarp) {
        return new Cloth(name, kind, count, over, shrink, counted, otherWarp, dyeing, cut);
    }

    /** Whether two names are one but for case and the spaces around them. */
    public static boolean sameName(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }
}
