package kitleaf.sheet.cut;

import java.util.List;
import kitleaf.sheet.page.PathText;

/**
 * A few crosses at true size: a small wave, so that the eye can judge the stitches before the needle does.
 *
 * @param path the crosses as path data, from the wave's top left corner
 * @param widthMm how wide they are
 * @param heightMm how high they are
 */
public record StitchSample(String path, double widthMm, double heightMm) {

    private static final List<String> PATTERN = List.of(
            "..x.....x.....x.",
            ".xxx...xxx...xxx",
            "xx.xx.xx.xx.xx.x",
            "x...xxx...xxx...",
            "....xx....xx....");

    static final int COLUMNS = PATTERN.get(0).length();
    static final int ROWS = PATTERN.size();

    /** The wave in cells so wide and high. */
    static StitchSample of(double cellWidthMm, double cellHeightMm) {
        PathText path = new PathText(4);
        for (int row = 0; row < ROWS; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                if (PATTERN.get(row).charAt(column) == 'x') {
                    double left = column * cellWidthMm;
                    double right = (column + 1) * cellWidthMm;
                    double top = row * cellHeightMm;
                    double bottom = (row + 1) * cellHeightMm;
                    path.stroke(left, bottom, right, top);
                    path.stroke(right, bottom, left, top);
                }
            }
        }
        return new StitchSample(path.toString(), COLUMNS * cellWidthMm, ROWS * cellHeightMm);
    }
}
