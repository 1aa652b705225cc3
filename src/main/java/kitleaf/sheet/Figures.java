package kitleaf.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import kitleaf.basket.Units;

/**
 * Lengths and numbers as they stand on a sheet: inches as whole numbers and true fractions, centimetres to
 * the millimetre. Parts of one figure are held together by no-break spaces.
 */
final class Figures {

    static final char NO_BREAK = '\u00a0';
    private static final char FRACTION_SLASH = '\u2044';
    private static final double INCH_MM = 25.4;

    private final Units first;

    Figures(Units first) {
        this.first = first;
    }

    /** The same with the other units first. */
    Figures swapped() {
        return new Figures(first == Units.IN ? Units.CM : Units.IN);
    }

    /** Width by height to cut, in the stitcher's units; inches to a sixteenth, so that no step of rounding is lost. */
    String cut(double widthMm, double heightMm) {
        return first == Units.IN
                ? inches(widthMm, 16) + " × " + inches(heightMm, 16) + NO_BREAK + "in"
                : sizeCentimetres(widthMm, heightMm);
    }

    /** A length in inches to the nearest fraction, without the unit: {@code 14 1⁄4}. */
    static String inches(double mm, int denominator) {
        long parts = Math.round(mm / INCH_MM * denominator);
        long whole = parts / denominator;
        long rest = parts % denominator;
        if (rest == 0) {
            return Long.toString(whole);
        }
        int below = denominator;
        while (rest % 2 == 0) {
            rest /= 2;
            below /= 2;
        }
        String fraction = rest + String.valueOf(FRACTION_SLASH) + below;
        return whole == 0 ? fraction : whole + String.valueOf(NO_BREAK) + fraction;
    }

    /** A length in centimetres to the nearest millimetre, without the unit: {@code 36.2}. */
    static String centimetres(double mm) {
        return decimal(mm / 10, 1);
    }

    /** A number to so many places, without trailing noughts. */
    static String decimal(double value, int places) {
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    /** One length in the stitcher's units, with the unit; inches to a sixteenth. */
    String length(double mm) {
        return first == Units.IN ? inches(mm, 16) + NO_BREAK + "in" : centimetres(mm) + NO_BREAK + "cm";
    }

    /** One length in the other units, with the unit. */
    String other(double mm) {
        return first == Units.IN ? centimetres(mm) + NO_BREAK + "cm" : inches(mm, 16) + NO_BREAK + "in";
    }

    /** Width by height in the stitcher's units; inches to an eighth. */
    String size(double widthMm, double heightMm) {
        return first == Units.IN ? sizeInches(widthMm, heightMm) : sizeCentimetres(widthMm, heightMm);
    }

    /** Width by height in the other units. */
    String otherSize(double widthMm, double heightMm) {
        return first == Units.IN ? sizeCentimetres(widthMm, heightMm) : sizeInches(widthMm, heightMm);
    }

    /** Width by height in inches to an eighth, with the unit. */
    static String sizeInches(double widthMm, double heightMm) {
        return inches(widthMm, 8) + " × " + inches(heightMm, 8) + NO_BREAK + "in";
    }

    /** Width by height in centimetres, with the unit. */
    static String sizeCentimetres(double widthMm, double heightMm) {
        return centimetres(widthMm) + " × " + centimetres(heightMm) + NO_BREAK + "cm";
    }
}
