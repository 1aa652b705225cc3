package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.PathText;

/**
 * The progress band of a goal card: twenty cells of 5 % each, to be coloured in by hand, hatched as far as the piece has
 * come. The hatching is light, so that a pencil covers it.
 *
 * @param cells from left to right
 * @param hatch slanting strokes over what is done, as path data; empty when nothing is
 */
public record ProgressBand(List<Box> cells, String hatch) {

    private static final int CELLS = 20;
    private static final double GAP = 0.13;
    private static final double STROKE_STEP_MM = 1.5;

    /** Copies the list. */
    public ProgressBand {
        cells = List.copyOf(cells);
    }

    /** A band in a box, filled to a fraction of its cells. */
    static ProgressBand of(Box box, double done) {
        double pitchMm = box.widthMm() / (CELLS - GAP);
        List<Box> cells = new ArrayList<>();
        PathText hatch = new PathText(3);
        for (int i = 0; i < CELLS; i++) {
            Box cell = new Box(box.xMm() + i * pitchMm, box.yMm(), pitchMm * (1 - GAP), box.heightMm());
            cells.add(cell);
            double filled = Math.max(0, Math.min(1, done * CELLS - i));
            // Less than a tenth of a cell would be a smudge.
            if (filled >= 0.1) {
                hatch(hatch, new Box(cell.xMm(), cell.yMm(), cell.widthMm() * filled, cell.heightMm()));
            }
        }
        return new ProgressBand(cells, hatch.toString());
    }

    /** Strokes that rise to the right at half a right angle: along each, x + y is the same. */
    private static void hatch(PathText path, Box box) {
        double first = Math.ceil((box.xMm() + box.yMm()) / STROKE_STEP_MM) * STROKE_STEP_MM;
        for (double sum = first; sum < box.rightMm() + box.bottomMm(); sum += STROKE_STEP_MM) {
            double x1 = Math.max(box.xMm(), sum - box.bottomMm());
            double x2 = Math.min(box.rightMm(), sum - box.yMm());
            if (x2 - x1 > 0.05) {
                path.stroke(x1, sum - x1, x2, sum - x2);
            }
        }
    }
}
