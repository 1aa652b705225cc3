package kitleaf.sizing.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By hand, threads a millimetre apart, cuts of whole millimetres: the lip is 8 mm, the clearance 8, and 15 mm of the design are shown. */
class CornerGuideTests {

    /** So many stitches of a millimetre, with so much cloth before and 20 mm after them. */
    private static Extent extent(double edgeMm, int stitches) {
        return new Extent(stitches, 1, 1, 0, edgeMm, 20, 1);
    }

    /** What the windows show along the width, on a piece one window high. */
    private static List<List<Double>> spans(Extent across, double roomMm) {
        return CornerGuide.of(new PieceSize(across, extent(5, 5)), roomMm, 100, 45).windows().stream()
                .map(window -> List.of(window.xMm(), window.widthMm())).toList();
    }

    @Test
    void one_page_shows_what_it_has_room_for_and_no_more_than_there_is() {
        assertEquals(List.of(List.of(0.0, 100.0)), spans(extent(85, 300), 100));
        assertEquals(List.of(List.of(0.0, 55.0)), spans(extent(30, 5), 100));
    }

    /**
     * A page of 100 mm shows 92 before its lip. The first stitch at 100 is 8 mm past the join, just clear; at 140 far from it; at 176 just
     * clear of the next join, at 184, which is not needed, since 15 mm of the design end at 191 and the page at 192.
     */
    @ParameterizedTest
    @CsvSource({"100", "140", "176"})
    void the_next_page_begins_where_the_lip_of_the_first_does(double edgeMm) {
        assertEquals(List.of(List.of(0.0, 92.0), List.of(92.0, 100.0)), spans(extent(edgeMm, 300), 100));
    }

    /** The first stitch at 92 would lie on the join, at 99 within 7 mm of it: the join moves to 8 mm before the stitch. */
    @ParameterizedTest
    @CsvSource({"92, 84", "99, 91"})
    void a_join_moves_out_of_the_way_of_the_first_stitch(double edgeMm, double joinMm) {
        assertEquals(List.of(List.of(0.0, joinMm), List.of(joinMm, 100.0)), spans(extent(edgeMm, 300), 100));
    }

    /**
     * Pages of 23 mm show 15 before their lips, and the first stitch at 30 would lie on the second join: two joins to 8 mm before it are 11
     * mm apart. The third page, from 22 on, reaches just to 45, 15 mm into the design, so there is no fourth.
     */
    @Test
    void the_last_page_ends_where_enough_of_the_design_is_seen() {
        assertEquals(List.of(List.of(0.0, 11.0), List.of(11.0, 11.0), List.of(22.0, 23.0)), spans(extent(30, 300), 23));
    }

    /** 110 mm of edge and a design of 2 mm with 20 after it are 132 mm: the second page, from 92 on, shows the last 40. */
    @Test
    void the_last_page_shows_no_more_than_there_is() {
        assertEquals(List.of(List.of(0.0, 92.0), List.of(92.0, 40.0)), spans(extent(110, 2), 100));
    }

    @Test
    void a_page_needs_room_for_more_than_lip_and_clearance() {
        assertThrows(IllegalArgumentException.class, () -> spans(extent(30, 300), 16));
    }

    /**
     * Pages of 100 mm, the first stitch at 250 and 150: three windows along the top, of which two end at joins after 92 and 184, one more
     * below the corner. The strips are 45 mm deep, the patch begins 12 mm before the first stitch: five pages, where there would be six.
     */
    @Test
    void a_guide_larger_than_a_page_both_ways_is_an_L_and_a_patch() {
        CornerGuide guide = CornerGuide.of(new PieceSize(extent(250, 300), extent(150, 300)), 100, 100, 45);
        assertEquals(List.of(new CornerGuide.Window(0, 0, 0, 0, 92, 92), new CornerGuide.Window(1, 0, 92, 0, 92, 45),
                new CornerGuide.Window(2, 0, 184, 0, 100, 45), new CornerGuide.Window(0, 1, 0, 92, 45, 100),
                new CornerGuide.Window(2, 1, 238, 138, 100, 100)), guide.windows());
        assertEquals(45, guide.stripMm());
    }

    /** Nine columns and eight rows were 72 pages: an L of them has 8 + 7 beside the corner's, and the patch. */
    @Test
    void no_page_of_a_large_guide_is_blank() {
        assertEquals(17, CornerGuide.of(new PieceSize(extent(800, 10), extent(700, 10)), 100, 100, 45).windows().size());
    }

    /** The first stitch is 88 mm from either edge and a page 100 mm: strips reach to 8 mm before it, however deep they should be. */
    @Test
    void strips_do_not_reach_the_first_stitch() {
        assertEquals(80, CornerGuide.of(new PieceSize(extent(88, 300), extent(88, 300)), 100, 100, 95).stripMm());
    }
}
