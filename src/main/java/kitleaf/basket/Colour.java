package kitleaf.basket;

import java.util.Objects;

/**
 * An sRGB colour as the stitcher wrote it.
 *
 * @param hex {@code #rrggbb} in lower case
 */
public record Colour(String hex) {

    /** Refuses anything but {@code #} and six hexadecimal digits in lower case. */
    public Colour {
        Objects.requireNonNull(hex);
        if (!hex.matches("#[0-9a-f]{6}")) {
            throw new IllegalArgumentException("colour must be #rrggbb: " + hex);
        }
    }
}
