package kitleaf.basket;

import java.util.Objects;

/**
 * A sheet of paper as it lies in front of the reader.
 *
 * @param name what to call it, such as {@code A4}
 * @param widthMm from {@value #LEAST_SHORT_MM} mm, the longer side from {@value #LEAST_LONG_MM} mm
 * @param heightMm likewise
 */
public record Paper(String name, double widthMm, double heightMm) {

    /** The least the shorter side may be: A5 is the smallest sheet that holds what every page has. */
    public static final double LEAST_SHORT_MM = 148;

    /** The least the longer side may be, that of A5. */
    public static final double LEAST_LONG_MM = 210;

    /** The longest side a sheet may have; A0 is 1189 mm long. */
    public static final double MOST_MM = 1200;

    /** Refuses sheets smaller than A5 or longer than {@value #MOST_MM} mm. */
    public Paper {
        Objects.requireNonNull(name);
        if (!fits(widthMm, heightMm)) {
            throw new IllegalArgumentException("paper must be from " + LEAST_SHORT_MM + " x " + LEAST_LONG_MM + " mm to "
                    + MOST_MM + " mm: " + widthMm + " x " + heightMm);
        }
    }

    /** Whether a sheet of these sides, either way up, is one Kitleaf prints on. */
    public static boolean fits(double widthMm, double heightMm) {
        return Math.min(widthMm, heightMm) >= LEAST_SHORT_MM && Math.max(widthMm, heightMm) >= LEAST_LONG_MM
                && Math.max(widthMm, heightMm) <= MOST_MM;
    }
}
