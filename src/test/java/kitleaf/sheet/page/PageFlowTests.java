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

class PageFlowTests {

    private static PageFlow.Row<String> row(String name, double heightMm, boolean heading) {
        return new PageFlow.Row<>(name, heightMm, heading);
    }

    @Test
    void rows_go_over_to_the_next_page_when_they_do_not_fit() {
        List<List<PageFlow.Placed<String>>> pages = PageFlow.pages(List.of(row("a", 40, false), row("b", 40, false), row("c", 40, false)), 10, 20, 100);
        assertEquals(List.of(List.of(new PageFlow.Placed<>("a", 10), new PageFlow.Placed<>("b", 50)), List.of(new PageFlow.Placed<>("c", 20))), pages);
    }

    @Test
    void a_heading_never_stands_alone_at_the_foot() {
        List<List<PageFlow.Placed<String>>> pages = PageFlow.pages(List.of(row("a", 60, false), row("heading", 20, true), row("b", 20, false)), 10, 20, 100);
        assertEquals(List.of(new PageFlow.Placed<>("heading", 20), new PageFlow.Placed<>("b", 40)), pages.get(1));
    }

    @Property
    void every_row_stands_once_in_order_and_inside_its_page(@ForAll @Size(max = 60) List<@IntRange(min = 1, max = 30) Integer> heights) {
        List<PageFlow.Row<Integer>> rows = new ArrayList<>();
        for (int i = 0; i < heights.size(); i++) {
            rows.add(new PageFlow.Row<>(i, heights.get(i), false));
        }
        int expected = 0;
        for (List<PageFlow.Placed<Integer>> page : PageFlow.pages(rows, 10, 20, 100)) {
            double freeMm = 0;
            for (PageFlow.Placed<Integer> placed : page) {
                assertEquals(expected++, placed.content());
                assertTrue(placed.yMm() >= freeMm - 1e-9 && placed.yMm() + heights.get(placed.content()) <= 100 + 1e-6);
                freeMm = placed.yMm() + heights.get(placed.content());
            }
        }
        assertEquals(heights.size(), expected);
    }
}
