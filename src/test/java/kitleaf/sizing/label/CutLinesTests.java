package kitleaf.sizing.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kitleaf.basket.LabelStock;
import kitleaf.basket.LabelStocks;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class CutLinesTests {

    @Provide
    Arbitrary<LabelStock> stocks() {
        return Stocks.all();
    }

    /** By hand: 15, 15 + 60, 15 + 2 x 60 and 15 + 3 x 60 across; 16, 16 + 24 and 16 + 2 x 24 down. */
    @Test
    void labels_that_touch_share_a_line() {
        assertEquals(new CutLines(List.of(15.0, 75.0, 135.0, 195.0), List.of(16.0, 40.0, 64.0)),
                CutLines.of(Stocks.stock(3, 2, 60, 24, 15, 16, 60, 24, true)));
    }

    /** By hand: from 5 and from 5 + 70, each 60 wide; down they touch. */
    @Test
    void labels_apart_have_a_line_on_each_side() {
        assertEquals(new CutLines(List.of(5.0, 65.0, 75.0, 135.0), List.of(8.0, 48.0)),
                CutLines.of(Stocks.stock(2, 1, 60, 40, 5, 8, 70, 40, true)));
    }

    @Test
    void printed_stock_is_cut_already() {
        assertEquals(new CutLines(List.of(), List.of()), CutLines.of(Stocks.stock(3, 2, 60, 24, 15, 16, 60, 24, false)));
    }

    /** 3 columns and 10 rows edge to edge need 4 and 11 lines. */
    @Test
    void the_usual_stock_is_cut_in_single_lines() {
        CutLines lines = CutLines.of(LabelStocks.usual(Stocks.A4));
        assertEquals(4, lines.xMm().size());
        assertEquals(11, lines.yMm().size());
    }

    /** A pitch of no round number: adding it up twelve times would not give first + n x pitch to the last bit. */
    @Test
    void lines_are_reckoned_from_the_first_label() {
        double pitchMm = 0.1 + 17.0 / 3;
        double addedUpMm = 0.1;
        for (int n = 1; n < 12; n++) {
            addedUpMm += pitchMm;
        }
        assertNotEquals(0.1 + 11 * pitchMm, addedUpMm);
        CutLines lines = CutLines.of(Stocks.stock(12, 1, pitchMm, 24, 0.1, 16, pitchMm, 24, true));
        for (int n = 0; n < 12; n++) {
            assertEquals(0.1 + n * pitchMm, lines.xMm().get(n));
        }
    }

    @Property
    void every_side_of_every_label_has_one_line(@ForAll("stocks") LabelStock stock) {
        CutLines lines = CutLines.of(stock);
        if (!stock.plain()) {
            assertTrue(lines.xMm().isEmpty() && lines.yMm().isEmpty());
            return;
        }
        for (LabelPlace place : LabelSheets.places(stock, 0, stock.perSheet())) {
            assertEquals(1, near(lines.xMm(), place.xMm()));
            assertEquals(1, near(lines.xMm(), place.xMm() + place.widthMm()));
            assertEquals(1, near(lines.yMm(), place.yMm()));
            assertEquals(1, near(lines.yMm(), place.yMm() + place.heightMm()));
        }
        assertTrue(lines.xMm().size() <= 2 * stock.columns() && lines.yMm().size() <= 2 * stock.rows());
    }

    private static long near(List<Double> lines, double atMm) {
        return lines.stream().filter(line -> Math.abs(line - atMm) < 1e-7).count();
    }
}
