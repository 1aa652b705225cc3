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
        return CornerGuide.of(new PieceSize(across, extent(5, 5)), roomMm, 100).windows().stream()
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
}
