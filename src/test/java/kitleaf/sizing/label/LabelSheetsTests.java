package kitleaf.sizing.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Set;
import kitleaf.basket.LabelStock;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LabelSheetsTests {

    /** 2 columns x 3 rows of 60 mm x 40 mm, every 70 mm and 50 mm, from 5 mm and 8 mm. */
    private static final LabelStock SIX = Stocks.stock(2, 3, 60, 40, 5, 8, 70, 50, false);

    @Provide
    Arbitrary<LabelStock> stocks() {
        return Stocks.all();
    }

    /** By hand: places 4 and 5 are the last row of the first sheet, 5 + 70 = 75 and 8 + 2 x 50 = 108; then a new sheet begins. */
    @Test
    void rows_are_filled_from_the_left_and_sheets_from_the_top_past_what_is_used() {
        LabelSheets sheets = LabelSheets.places(SIX, 4, 4);
        assertEquals(new LabelPlace(0, 0, 0, 2, 5, 108, 60, 40), sheets.place(0));
        assertEquals(new LabelPlace(1, 0, 1, 2, 75, 108, 60, 40), sheets.place(1));
        assertEquals(new LabelPlace(2, 1, 0, 0, 5, 8, 60, 40), sheets.place(2));
        assertEquals(new LabelPlace(3, 1, 1, 0, 75, 8, 60, 40), sheets.place(3));
        assertEquals(2, sheets.pages());
    }

    @Test
    void pages_are_as_many_as_it_takes() {
        assertEquals(0, LabelSheets.places(SIX, 5, 0).pages());
        assertEquals(1, LabelSheets.places(SIX, 5, 1).pages());
        assertEquals(2, LabelSheets.places(SIX, 5, 2).pages());
        assertEquals(1, LabelSheets.places(SIX, 0, 6).pages());
        assertEquals(2, LabelSheets.places(SIX, 0, 7).pages());
    }

    /** 2147483647 + 5 = 2147483652 places = 357913942 sheets of 6, in numbers past those an int holds. */
    @Test
    void no_number_of_labels_is_too_many() {
        LabelSheets sheets = LabelSheets.places(SIX, 5, Integer.MAX_VALUE);
        assertEquals(357_913_942, sheets.pages());
        assertEquals(new LabelPlace(Integer.MAX_VALUE - 1, 357_913_941, 1, 2, 75, 108, 60, 40), sheets.place(Integer.MAX_VALUE - 1));
        assertEquals(new LabelPlace(0, 0, 1, 2, 75, 108, 60, 40), sheets.iterator().next());
    }

    @Test
    void what_is_on_no_sheet_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> LabelSheets.places(SIX, 6, 1));
        assertThrows(IllegalArgumentException.class, () -> LabelSheets.places(SIX, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> LabelSheets.places(SIX, 0, -1));
        assertThrows(IndexOutOfBoundsException.class, () -> LabelSheets.places(SIX, 0, 3).place(3));
        assertThrows(IndexOutOfBoundsException.class, () -> LabelSheets.places(SIX, 0, 3).place(-1));
        assertThrows(IllegalArgumentException.class, () -> new LabelPlace(0, 0, 0, 0, -1, 0, 1, 1));
    }

    @Test
    void going_through_them_ends_after_the_last() {
        Iterator<LabelPlace> places = LabelSheets.places(SIX, 0, 1).iterator();
        places.next();
        assertFalse(places.hasNext());
        assertThrows(NoSuchElementException.class, places::next);
    }

    @Property
    void no_place_is_used_twice_none_before_the_last_is_left_out_and_all_lie_on_the_paper(@ForAll("stocks") LabelStock stock,
            @ForAll @IntRange(min = 0, max = 143) int used, @ForAll @IntRange(min = 0, max = 500) int number) {
        int skip = used % stock.perSheet();
        LabelSheets sheets = LabelSheets.places(stock, skip, number);
        Set<Long> positions = new HashSet<>();
        int label = 0;
        for (LabelPlace place : sheets) {
            assertEquals(sheets.place(label), place);
            assertEquals(label++, place.label());
            assertTrue(place.column() < stock.columns() && place.row() < stock.rows() && place.page() < sheets.pages());
            assertTrue(place.xMm() + place.widthMm() <= stock.paper().widthMm() + 1e-6);
            assertTrue(place.yMm() + place.heightMm() <= stock.paper().heightMm() + 1e-6);
            positions.add(((long) place.page() * stock.rows() + place.row()) * stock.columns() + place.column());
        }
        assertEquals(number, label);
        // As many positions as labels, all of them from skip on: each is taken just once.
        assertEquals(number, positions.size());
        assertTrue(positions.stream().allMatch(position -> position >= skip && position < skip + number));
    }

    @Property
    void labels_of_one_sheet_do_not_overlap(@ForAll("stocks") LabelStock stock) {
        LabelSheets sheet = LabelSheets.places(stock, 0, stock.perSheet());
        assertEquals(1, sheet.pages());
        for (LabelPlace a : sheet) {
            for (LabelPlace b : sheet) {
                assertTrue(a.label() == b.label() || a.xMm() + a.widthMm() <= b.xMm() + 1e-6 || b.xMm() + b.widthMm() <= a.xMm() + 1e-6
                        || a.yMm() + a.heightMm() <= b.yMm() + 1e-6 || b.yMm() + b.heightMm() <= a.yMm() + 1e-6);
            }
        }
    }
}
