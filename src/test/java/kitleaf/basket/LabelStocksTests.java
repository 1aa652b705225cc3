package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LabelStocksTests {

    /** 190 mm x 277 mm inside the margins of A4: 3 x 63 = 189 and 11 x 25 = 275; half of what is left goes to each side. */
    @Test
    void a4GivesThirtyThreeUsualLabels() {
        assertEquals(new LabelStock(new Paper("A4", 210, 297), 3, 11, 63, 25, 10.5, 11, 63, 25, LabelStock.Shape.RECTANGLE, true,
                LabelStock.Style.WRAP), LabelStocks.usual(Papers.named("A4").orElseThrow()));
    }

    /** 195.9 mm x 259.4 mm inside the margins of letter: 3 x 63 = 189 and 10 x 25 = 250. */
    @Test
    void letterGivesThirtyUsualLabels() {
        LabelStock stock = LabelStocks.usual(Papers.named("letter").orElseThrow());
        assertEquals(3, stock.columns());
        assertEquals(10, stock.rows());
    }

    @Property
    void everyPaperHoldsUsualLabelsInsideItsMargins(@ForAll @DoubleRange(min = 148, max = 1200) double shortMm,
            @ForAll @DoubleRange(min = 210, max = 1200) double longMm, @ForAll boolean upright) {
        LabelStock stock = LabelStocks.usual(upright ? new Paper("own", shortMm, longMm) : new Paper("own", longMm, shortMm));
        assertTrue(stock.columns() >= 2 && stock.rows() >= 5);
        double rightMm = stock.firstXMm() + stock.columns() * stock.widthMm();
        double bottomMm = stock.firstYMm() + stock.rows() * stock.heightMm();
        assertTrue(stock.firstXMm() >= 10 - 1e-6 && stock.firstYMm() >= 10 - 1e-6);
        // As many as fit: there is room for none more.
        assertEquals(stock.paper().widthMm() - stock.firstXMm(), rightMm, 1e-9);
        assertEquals(stock.paper().heightMm() - stock.firstYMm(), bottomMm, 1e-9);
        assertTrue(stock.paper().widthMm() - 20 - stock.columns() * stock.widthMm() < stock.widthMm());
        assertTrue(stock.paper().heightMm() - 20 - stock.rows() * stock.heightMm() < stock.heightMm());
    }
}
