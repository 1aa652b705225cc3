package kitleaf.sheet.goal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import kitleaf.sheet.page.Box;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ProgressBandTests {

    private static final Box BAND = new Box(10, 20, 80, 5);

    private static List<double[]> points(ProgressBand band) {
        return Arrays.stream(band.hatch().split("[ML]")).filter(it -> !it.isEmpty())
                .map(it -> Arrays.stream(it.split(" ")).mapToDouble(Double::parseDouble).toArray()).toList();
    }

    @Test
    void a_band_has_twenty_cells_from_edge_to_edge() {
        List<Box> cells = ProgressBand.of(BAND, 0).cells();
        assertEquals(20, cells.size());
        assertEquals(10, cells.get(0).xMm(), 1e-9);
        assertEquals(90, cells.get(19).rightMm(), 1e-9);
        assertEquals("", ProgressBand.of(BAND, 0).hatch());
    }

    /** By hand: 32 % fills six cells of 5 % and two fifths of the seventh. */
    @Test
    void cells_are_hatched_as_far_as_the_piece_has_come() {
        ProgressBand band = ProgressBand.of(BAND, 0.32);
        double right = points(band).stream().mapToDouble(point -> point[0]).max().orElseThrow();
        Box seventh = band.cells().get(6);
        assertEquals(seventh.xMm() + 0.4 * seventh.widthMm(), right, 0.01);
    }

    @Property
    void no_stroke_leaves_its_cell(@ForAll @DoubleRange(min = 0, max = 1) double done) {
        ProgressBand band = ProgressBand.of(BAND, done);
        for (double[] point : points(band)) {
            assertTrue(band.cells().stream().anyMatch(cell -> point[0] >= cell.xMm() - 0.001 && point[0] <= cell.rightMm() + 0.001
                    && point[1] >= cell.yMm() - 0.001 && point[1] <= cell.bottomMm() + 0.001), Arrays.toString(point));
        }
    }
}
