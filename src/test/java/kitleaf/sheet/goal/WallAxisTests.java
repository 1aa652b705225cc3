package kitleaf.sheet.goal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WallAxisTests {

    private static final double LEAST_MM = 30;

    private static WallAxis.Joins fewest(WallAxis axis, WallAxis.Room room) {
        return axis.choices(room).get(0);
    }

    /** Three cards of 100 mm, 10 apart; tiles of 120 with a lip of 8 before a join. */
    private static final WallAxis CARDS = new WallAxis(340, 10, 330, List.of(new WallAxis.Part(9, 111, 2), new WallAxis.Part(119, 221, 2), new WallAxis.Part(229, 331, 2)));

    @Test
    void joins_stand_in_the_middle_of_gaps_where_tiles_reach_there() {
        assertEquals(List.of(115.0, 225.0), fewest(CARDS, new WallAxis.Room(112, 112, 120, 120)).atMm());
    }

    /** By hand: the first tile reaches from 4 to 113, past the first card but not to the gap's middle at 115; the second from there to 222, and its card ends at 221. */
    @Test
    void joins_leave_the_middle_of_a_gap_before_they_cut_a_card() {
        List<Double> joins = fewest(new WallAxis(340, 4, 336, CARDS.parts()), new WallAxis.Room(109, 109, 120, 120)).atMm();
        assertEquals(113, joins.get(0), 0.5);
        assertTrue(joins.get(1) >= 221 && joins.get(1) <= 222, joins.toString());
    }

    @Test
    void there_are_choices_of_the_fewest_tiles_and_one_more() {
        List<WallAxis.Joins> choices = CARDS.choices(new WallAxis.Room(160, 160, 168, 170));
        assertEquals(List.of(2, 3), choices.stream().map(WallAxis.Joins::tiles).toList());
        // The middle card is cut in two tiles, none in three.
        assertTrue(choices.get(0).harm() > 2 && choices.get(1).harm() < 0.5, choices.toString());
    }

    @Test
    void what_fits_one_tile_has_no_join() {
        assertEquals(List.of(), fewest(CARDS, new WallAxis.Room(300, 300, 310, 320)).atMm());
        assertEquals(2, fewest(CARDS, new WallAxis.Room(300, 300, 310, 319)).tiles());
    }

    @Test
    void what_is_drawn_lies_on_the_wall() {
        assertThrows(IllegalArgumentException.class, () -> new WallAxis(340, 10, 341, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new WallAxis(340, -1, 330, List.of()));
    }

    /** 35 mm of two tiles of 31 are two of 17.5, narrower than any other wall's. */
    @Test
    void tiles_may_be_narrow_where_sheets_are() {
        assertEquals(2, fewest(new WallAxis(40, 2, 37, List.of()), new WallAxis.Room(31, 31, 31, 31)).tiles());
        assertThrows(IllegalArgumentException.class, () -> new WallAxis.Room(31, 0, 31, 31));
        assertThrows(IllegalArgumentException.class, () -> new WallAxis.Room(31, -5, 31, 31));
    }

    private static double harm(WallAxis axis, double atMm) {
        return axis.parts().stream().filter(part -> part.fromMm() < atMm && atMm < part.toMm()).mapToDouble(WallAxis.Part::harm).max().orElse(0);
    }

    /** Joins drawn at random, of as many tiles, never do less harm; what is said of middles and evenness is less than a tenth for each join. */
    @Test
    void no_other_joins_within_reach_do_less_harm() {
        for (long seed : new long[] {1, 2, 3, 4, 5, System.nanoTime()}) {
            Random random = new Random(seed);
            int compared = 0;
            for (int wall = 0; wall < 40; wall++) {
                double lengthMm = 300 + random.nextInt(500);
                List<WallAxis.Part> parts = new ArrayList<>();
                for (int i = 0; i < 6; i++) {
                    double fromMm = random.nextInt((int) lengthMm);
                    parts.add(new WallAxis.Part(fromMm, fromMm + 5 + random.nextInt(120), 1 + random.nextInt(3)));
                }
                WallAxis axis = new WallAxis(lengthMm, 10, lengthMm - 10, parts);
                double middleMm = 100 + random.nextInt(100);
                WallAxis.Room room = new WallAxis.Room(middleMm, middleMm, middleMm + 8, middleMm + 8);
                for (WallAxis.Joins joins : axis.choices(room)) {
                    within(axis, room, joins.atMm(), "seed " + seed);
                    double least = joins.atMm().stream().mapToDouble(at -> harm(axis, at)).sum();
                    for (int other = 0; other < 300; other++) {
                        List<Double> drawn = drawn(axis, room, joins.tiles(), random);
                        if (!drawn.isEmpty()) {
                            compared++;
                            assertTrue(least <= drawn.stream().mapToDouble(at -> harm(axis, at)).sum() + 0.1 * drawn.size(), "seed " + seed + ": " + drawn + " beats " + joins + " on " + axis);
                        }
                    }
                }
            }
            assertTrue(compared > 100, "only " + compared + " compared, seed " + seed);
        }
    }

    private static void within(WallAxis axis, WallAxis.Room room, List<Double> joins, String seed) {
        double fromMm = axis.fromMm();
        for (int i = 0; i < joins.size(); i++) {
            double tileMm = joins.get(i) - fromMm;
            assertTrue(tileMm >= LEAST_MM && tileMm <= (i == 0 ? room.firstMm() : room.middleMm()), seed + ": " + joins);
            fromMm = joins.get(i);
        }
        assertTrue(joins.isEmpty() || axis.toMm() - fromMm >= LEAST_MM && axis.toMm() - fromMm <= room.lastMm(), seed + ": " + joins);
    }

    /** Joins on whole half millimetres, or none where the draw runs out of reach. */
    private static List<Double> drawn(WallAxis axis, WallAxis.Room room, int tiles, Random random) {
        List<Double> joins = new ArrayList<>();
        double fromMm = axis.fromMm();
        for (int i = 1; i < tiles; i++) {
            double mostMm = i == 1 ? room.firstMm() : room.middleMm();
            // Long tiles mostly, or the last would be out of reach.
            fromMm += mostMm - random.nextInt((int) (2 * (mostMm - LEAST_MM) * random.nextDouble()) + 1) / 2.0;
            joins.add(fromMm);
        }
        double lastMm = axis.toMm() - fromMm;
        return lastMm >= LEAST_MM && lastMm <= room.lastMm() ? joins : List.of();
    }
}
