package kitleaf.sheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** By hand: a line of 18 pt is 18 x 1.2 points, 7.62 mm; three are 22.86 and six 45.72 mm. Below each passage 3 mm are blank. */
class LargeFlowTests {

    private static final double LINE_MM = 7.62;
    private static final double BLANK_MM = 3;

    private static Passage lines(String name, int lines) {
        PlacedText text = new PlacedText(name, 0, TypeScale.mm(18) * 0.78, 100, lines, 18, 1.2, 400, "text", "ink", "start");
        return Passage.of(lines * LINE_MM + BLANK_MM, List.of(text));
    }

    private static List<List<String>> names(List<List<Passage>> pages) {
        return pages.stream().map(page -> page.stream().map(it -> it.texts().get(0).text()).toList()).toList();
    }

    private static double top(List<Passage> page, String name) {
        return page.stream().filter(it -> it.texts().get(0).text().equals(name)).findFirst().orElseThrow().yMm();
    }

    /** Four passages of two lines are 4 x 18.24 = 72.96 mm; of the last, half its blank may hang over, so 71.46 mm are needed. */
    @Test
    void what_fits_is_set_as_wide_as_it_is() {
        List<List<Passage>> pages = LargeFlow.pages(List.of(lines("a", 2), lines("b", 2), lines("c", 2), lines("d", 2)), 10, 20, 81.5);
        assertEquals(List.of(List.of("a", "b", "c", "d")), names(pages));
        assertEquals(10 + 18.24, top(pages.get(0), "b"), 1e-9);
    }

    /** A millimetre less: a tenth of the blank is 0.3 mm above b, c and d each and half of that below d, 1.05 mm. */
    @Test
    void a_line_or_two_are_taken_by_the_page_before_set_closer() {
        List<List<Passage>> pages = LargeFlow.pages(List.of(lines("a", 2), lines("b", 2), lines("c", 2), lines("d", 2)), 10, 20, 80.5);
        assertEquals(List.of(List.of("a", "b", "c", "d")), names(pages));
        assertEquals(10 + 18.24 - 0.3, top(pages.get(0), "b"), 1e-9);
    }

    /** Two fifths of the blank are 3.6 mm and half of 1.2 mm, and the end is 5 mm too near: c goes over with d, since d alone is two lines. */
    @Test
    void or_they_get_company() {
        List<List<Passage>> pages = LargeFlow.pages(List.of(lines("a", 2), lines("b", 2), lines("c", 2), lines("d", 2)), 10, 20, 76.5);
        assertEquals(List.of(List.of("a", "b"), List.of("c", "d")), names(pages));
        assertEquals(20, top(pages.get(1), "c"), 1e-9);
        assertEquals(20 + 18.24, top(pages.get(1), "d"), 1e-9);
    }

    @Test
    void a_heading_goes_with_them() {
        List<List<Passage>> pages = LargeFlow.pages(List.of(lines("a", 2), lines("heading", 1).kept(), lines("c", 2), lines("d", 2)), 10, 20, 68);
        assertEquals(List.of(List.of("a"), List.of("heading", "c", "d")), names(pages));
    }

    @Test
    void three_lines_may_stand_alone() {
        assertEquals(List.of(List.of("a", "b"), List.of("c")), names(LargeFlow.pages(List.of(lines("a", 2), lines("b", 2), lines("c", 3)), 10, 20, 50)));
    }

    /** Every passage once, in order, none on another, none past the end but with half its blank. */
    @Property
    void nothing_is_lost_or_pushed_over_the_end(@ForAll @Size(min = 1, max = 40) List<@IntRange(min = 1, max = 8) Integer> counts, @ForAll @IntRange(min = 100, max = 250) int bottom) {
        List<Passage> passages = new ArrayList<>();
        for (int i = 0; i < counts.size(); i++) {
            passages.add(i % 5 == 0 && i < counts.size() - 1 ? lines(i + "", 1).kept() : lines(i + "", counts.get(i)));
        }
        List<List<Passage>> pages = LargeFlow.pages(passages, 20, 10, bottom);
        assertEquals(passages.stream().flatMap(it -> it.texts().stream()).toList(), pages.stream().flatMap(List::stream).flatMap(it -> it.texts().stream()).toList());
        for (List<Passage> page : pages) {
            double freeMm = page == pages.get(0) ? 20 : 10;
            for (Passage passage : page) {
                assertTrue(passage.yMm() >= freeMm - 1e-6, names(pages) + " at " + passage.yMm());
                freeMm = passage.yMm() + passage.heightMm() - BLANK_MM + 0.6 * BLANK_MM;
            }
            Passage end = page.get(page.size() - 1);
            assertTrue(end.yMm() + end.heightMm() - BLANK_MM / 2 <= bottom + 1e-6, names(pages).toString());
            assertTrue(!end.keepWithNext(), names(pages).toString());
        }
    }
}
