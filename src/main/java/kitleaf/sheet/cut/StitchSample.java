package kitleaf.sheet.cut;

import java.util.List;
import kitleaf.sheet.page.PathText;

/** A few crosses at true size: a small wave, so that the eye can judge the stitches before the needle does. */
final class StitchSample {

    private static final List<String> PATTERN = List.of(
            "..x.....x.....x.",
            ".xxx...xxx...xxx",
            "xx.xx.xx.xx.xx.x",
            "x...xxx...xxx...",
            "....xx....xx....");

    static final int COLUMNS = PATTERN.get(0).length();
    static final int ROWS = PATTERN.size();

    private StitchSample() { }

    /** The crosses as path data, the pattern's top left corner at x, y; each cell is so wide and high. */
    static String path(double xMm, double yMm, double cellWidthMm, double cellHeightMm) {
        PathText path = new PathText(4);
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                if (PATTERN.get(row).charAt(column) == 'x') {
                    double left = xMm + column * cellWidthMm;
                    double right = xMm + (column + 1) * cellWidthMm;
                    double top = yMm + row * cellHeightMm;
                    double bottom = yMm + (row + 1) * cellHeightMm;
                    path.stroke(left, bottom, right, top);
                    path.stroke(right, bottom, left, top);
                }
            }
        }
        return path.toString();
    }
}
