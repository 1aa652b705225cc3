package kitleaf.sizing;

import kitleaf.basket.thread.Colour;

/**
 * How well one colour reads on another, by the contrast ratio of the Web Content Accessibility Guidelines 2.2
 * (definitions "relative luminance" and "contrast ratio").
 */
public final class Contrast {

    /** What each 8-bit value of a channel adds to the luminance, before it is weighed. */
    private static final double[] LINEAR = new double[256];

    static {
        for (int value = 0; value < LINEAR.length; value++) {
            double c = value / 255.0;
            // The guidelines say 0.03928 where sRGB says 0.04045; no 8-bit value lies between them.
            LINEAR[value] = c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
    }

    private Contrast() { }

    /** The contrast ratio of two colours, 1 for the same to 21 for black on white. */
    public static double ratio(Colour a, Colour b) {
        double first = luminance(a);
        double second = luminance(b);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    /** Whichever of two inks reads better on a ground; the first where they read alike. */
    public static Colour better(Colour ground, Colour first, Colour second) {
        return ratio(ground, second) > ratio(ground, first) ? second : first;
    }

    private static double luminance(Colour colour) {
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    private static double channel(Colour colour, int at) {
        return LINEAR[Integer.parseInt(colour.hex(), at, at + 2, 16)];
    }
}
