package kitleaf.basket;

import java.util.Objects;

/**
 * A sheet of paper as it lies in front of the reader.
 *
 * @param name what to call it, such as {@code A4}
 * @param widthMm from {@value #LEAST_SHORT_MM} mm
 * @param heightMm from {@value #LEAST_SHORT_MM} mm
 */
public record Paper(String name, double widthMm, double heightMm) {

    /** The shortest side a sheet may have; A5 is 148 mm wide. */
    public static final double LEAST_SHORT_MM = 140;

    /** The longest side a sheet may have; A0 is 1189 mm long. */
    public static final double MOST_MM = 1200;

    /** Refuses sides outside {@value #LEAST_SHORT_MM} to {@value #MOST_MM} mm. */
    public Paper {
        Objects.requireNonNull(name);
        if (!(Math.min(widthMm, heightMm) >= LEAST_SHORT_MM && Math.max(widthMm, heightMm) <= MOST_MM)) {
            throw new IllegalArgumentException("paper sides must be " + LEAST_SHORT_MM + " to " + MOST_MM + " mm: "
                    + widthMm + " x " + heightMm);
        }
    }
}
