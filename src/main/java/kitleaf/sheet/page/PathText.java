package kitleaf.sheet.page;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes path data for templates: letters and numbers with a few decimals, millimetres. A format string takes ten times as long. */
public final class PathText {

    private final StringBuilder path = new StringBuilder();
    private final int decimals;

    /** Path data whose numbers have so many decimals. */
    public PathText(int decimals) {
        this.decimals = decimals;
    }

    /** Adds a straight stroke from one place to another. */
    public void stroke(double x1Mm, double y1Mm, double x2Mm, double y2Mm) {
        point('M', x1Mm, y1Mm);
        point('L', x2Mm, y2Mm);
    }

    private void point(char letter, double xMm, double yMm) {
        path.append(letter).append(number(xMm)).append(' ').append(number(yMm));
    }

    private String number(double mm) {
        return BigDecimal.valueOf(mm).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    @Override
    public String toString() {
        return path.toString();
    }
}
