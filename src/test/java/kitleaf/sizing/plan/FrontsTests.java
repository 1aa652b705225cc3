package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Patience;
import org.junit.jupiter.api.Test;

/** Boxes of pieces of 10 x 20, by hand. */
class FrontsTests {

    private static final List<Shape> LIES = List.of(new Shape(10, 20));

    private static Optional<Fronts> fronts(int kins, double mostWidth, double mostHeight, long steps) {
        return Fronts.of(Counts.of(Collections.nCopies(kins, 1)), Collections.nCopies(kins, LIES), mostWidth, mostHeight,
                new Patience(steps));
    }

    @Test
    void a_piece_has_a_box_from_the_cloth_on_that_is_as_large() {
        assertEquals(1, fronts(1, 10, 20, 1).orElseThrow().of(1).size());
        assertEquals(0, fronts(1, 9.9, 20, 1).orElseThrow().of(1).size());
        assertEquals(0, fronts(1, 10, 19.9, 1).orElseThrow().of(1).size());
    }

    @Test
    void a_piece_fits_into_what_is_as_large() {
        Fronts fronts = fronts(1, 10, 20, 1).orElseThrow();
        assertTrue(fronts.fits(1, 10, 20));
        assertFalse(fronts.fits(1, 9.9, 20));
        assertFalse(fronts.fits(1, 10, 19.9));
    }

    /** Two pieces are one pair of parts, looked at once: where no step is left before it the boxes are not all there. */
    @Test
    void boxes_are_found_with_patience_for_every_pair_of_parts_or_not_at_all() {
        assertTrue(fronts(2, 40, 40, 1).isPresent());
        assertFalse(fronts(2, 40, 40, 0).isPresent());
        assertFalse(fronts(2, 5, 5, 0).isPresent());
    }

    /** One type of n pieces has (n + 1)(n + 2) / 2 pairs: none of none, none and one of one, for 1 piece. For 2 they are 6. */
    @Test
    void pairs_of_a_selection_and_a_part_of_it_are_counted_type_by_type() {
        assertEquals(3, Counts.pairs(List.of(1)));
        assertEquals(3 * 6, Counts.pairs(List.of(1, 2)));
    }
}
