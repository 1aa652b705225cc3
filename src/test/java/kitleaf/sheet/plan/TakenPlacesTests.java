package kitleaf.sheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitleaf.sheet.page.Box;
import org.junit.jupiter.api.Test;

class TakenPlacesTests {

    private static final double CLEAR_MM = 0.3;

    private static Box box(Random random, double spreadMm) {
        return new Box(random.nextDouble() * spreadMm - 20, random.nextDouble() * spreadMm - 20,
                random.nextDouble() * 9, random.nextDouble() * 4);
    }

    /** Two rectangles keep clear of each other when they do on one axis at least; asked of all of them, one after the other. */
    private static boolean clear(Box one, Box other) {
        double across = Math.max(one.xMm(), other.xMm()) - Math.min(one.rightMm(), other.rightMm());
        double down = Math.max(one.yMm(), other.yMm()) - Math.min(one.bottomMm(), other.bottomMm());
        return Math.max(across, down) >= CLEAR_MM;
    }

    @Test
    void a_place_is_free_when_it_keeps_clear_of_all_others() {
        Random random = new Random(20270121);
        List<Box> others = new ArrayList<>();
        TakenPlaces taken = new TakenPlaces(CLEAR_MM);
        int free = 0;
        for (int i = 0; i < 4000; i++) {
            Box box = box(random, 220);
            boolean expected = others.stream().allMatch(other -> clear(box, other));
            assertEquals(expected, taken.free(box), () -> box + " among " + others.size());
            free += expected ? 1 : 0;
            if (random.nextInt(8) == 0) {
                others.add(box);
                taken.add(box);
            }
        }
        assertTrue(free > 100 && free < 3900, "both were seen: " + free);
    }

    /** Ten thousand places, of which some six stand near any other: all of them would be fifty million looks. */
    @Test
    void only_what_stands_near_is_looked_at() {
        Random random = new Random(20270122);
        TakenPlaces taken = new TakenPlaces(CLEAR_MM);
        for (int i = 0; i < 10_000; i++) {
            Box box = box(random, 1000);
            taken.free(box);
            taken.add(box);
        }
        assertTrue(taken.looks() < 500_000, "looks: " + taken.looks());
    }
}
