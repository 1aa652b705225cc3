package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kitleaf.basket.LabelStock;
import kitleaf.basket.LabelStocks;
import kitleaf.basket.Paper;
import kitleaf.basket.form.Papers;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LabelStocksTests {

    /** A4 has room for 190 mm x 263 mm between 10 mm at the top and both sides and 24 mm at the foot: 3 x 63 = 189, half a millimetre more at each
     * side, and 10 x 25 = 250 from the top down. */
    @Test
    void a4GivesThirtyUsualLabels() {
        assertEquals(new LabelStock(new Paper("A4", 210, 297), 3, 10, 63, 25, 10.5, 10, 63, 25, LabelStock.Shape.RECTANGLE, true,
                LabelStock.Style.WRAP), LabelStocks.usual(Papers.named("A4").orElseThrow()));
    }

    /** Letter has room for 195.9 mm x 245.4 mm: 3 x 63 = 189 and 9 x 25 = 225. */
    @Test
    void letterGivesTwentySevenUsualLabels() {
        LabelStock stock = LabelStocks.usual(Papers.named("letter").orElseThrow());
        assertEquals(3, stock.columns());
        assertEquals(9, stock.rows());
    }

    @Property
    void everyPaperHoldsUsualLabelsInsideItsMargins(@ForAll @DoubleRange(min = 148, max = 1200) double shortMm,
            @ForAll @DoubleRange(min = 210, max = 1200) double longMm, @ForAll boolean upright) {
        LabelStock stock = LabelStocks.usual(upright ? new Paper("own", shortMm, longMm) : new Paper("own", longMm, shortMm));
        assertTrue(stock.columns() >= 2 && stock.rows() >= 4);
        double rightMm = stock.firstXMm() + stock.columns() * stock.widthMm();
        double bottomMm = stock.firstYMm() + stock.rows() * stock.heightMm();
        assertTrue(stock.firstXMm() >= 10 - 1e-6 && stock.firstYMm() >= 10 - 1e-6);
        // As many as fit: there is room for none more.
        assertEquals(stock.paper().widthMm() - stock.firstXMm(), rightMm, 1e-9);
        assertEquals(10, stock.firstYMm(), 1e-9);
        assertTrue(bottomMm <= stock.paper().heightMm() - 24 + 1e-6);
        assertTrue(stock.paper().widthMm() - 20 - stock.columns() * stock.widthMm() < stock.widthMm());
        assertTrue(stock.paper().heightMm() - 34 - stock.rows() * stock.heightMm() < stock.heightMm());
    }
}
