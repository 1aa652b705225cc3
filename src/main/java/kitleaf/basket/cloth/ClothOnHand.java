package kitleaf.basket.cloth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A cloth she has already.
 *
 * @param name what she calls it, as pieces write it; several cloths may share one
 * @param kind how it is woven
 * @param count threads (blocks on block cloth) to the inch, as pieces on it count them
 * @param widthMm {@value #LEAST_MM} to {@value #MOST_MM}
 * @param heightMm {@value #LEAST_MM} to {@value #MOST_MM}
 * @param warp which way the warp runs: {@code DOWN} is along its height
 * @param selvedge the side that has one, if any; it runs along the warp
 * @param turning whether pieces may be cut from it turned by a quarter, so that warp and weft change places under them
 * @param flaws strips no piece may lie on, each inside the cloth
 */
public record ClothOnHand(String name, Cloth.Kind kind, Count count, double widthMm, double heightMm, Cloth.WarpRun warp,
                          Optional<ClothSide> selvedge, boolean turning, List<Flaw> flaws) {

    /** The shortest side of a cloth. */
    public static final double LEAST_MM = 10;

    /** The longest side of a cloth: a whole bolt. */
    public static final double MOST_MM = 20_000;

    /** Copies the flaws; refuses other sizes, a selvedge across the warp and flaws beside the cloth. */
    public ClothOnHand {
        Objects.requireNonNull(name);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(count);
        Objects.requireNonNull(warp);
        flaws = List.copyOf(flaws);
        if (!sized(widthMm, heightMm)) {
            throw new IllegalArgumentException("no cloth is " + widthMm + " x " + heightMm);
        }
        if (selvedge.isPresent() && selvedge.get().warp() != warp) {
            throw new IllegalArgumentException("a selvedge " + selvedge.get() + " runs along the warp, not " + warp);
        }
        for (Flaw flaw : flaws) {
            if (!flaw.within(flaw.run() == Flaw.Run.DOWN ? widthMm : heightMm)) {
                throw new IllegalArgumentException("beside the cloth: " + flaw);
            }
        }
    }

    /** Whether a cloth may have such sides. */
    static boolean sized(double widthMm, double heightMm) {
        return Math.min(widthMm, heightMm) >= LEAST_MM && Math.max(widthMm, heightMm) <= MOST_MM;
    }

    /** Whether a name is that of this cloth, but for case and the spaces around it. */
    public boolean isCalled(String other) {
        return Cloth.sameName(name, other);
    }
}
