package kitleaf.sizing.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitleaf.sizing.cutting.CutVerifier.Placed;

/** A stock and the types to be cut from it, and the checks that every answer must pass. */
record CutCase(double widthMm, double heightMm, List<CutType> types) {

    /** Enough for every case that is to be proven. */
    static final long LONG = 20_000_000;

    BestCut.Found cut() {
        return cut(LONG);
    }

    /** The answer within so many steps, itself sound, but not yet known to be best. */
    BestCut.Found cut(long steps) {
        return sound(BestCut.of(widthMm, heightMm, types, new Patience(steps)));
    }

    BestCut.Found sound(BestCut.Found found) {
        List<Placed> placed = new ArrayList<>();
        int[] counts = new int[types.size()];
        found.block().ifPresent(block -> place(block, 0, 0, placed, counts));
        assertEquals(Optional.empty(), CutVerifier.fault(widthMm, heightMm, placed));
        double value = 0;
        for (int i = 0; i < counts.length; i++) {
            assertTrue(counts[i] <= types.get(i).most(), "too many of type " + i + ": " + counts[i]);
            value += counts[i] * types.get(i).value();
        }
        assertEquals(value, found.value(), 1e-9 * Math.max(1, value));
        assertTrue(found.value() <= found.bound(), found.value() + " above its bound " + found.bound());
        if (found.proven()) {
            assertEquals(found.value(), found.bound());
        }
        return found;
    }

    private void place(Block block, double x, double y, List<Placed> placed, int[] counts) {
        if (block instanceof Block.Single single) {
            Shape shape = types.get(single.index()).shapes().get(single.shape());
            placed.add(new Placed(x, y, shape.widthMm(), shape.heightMm()));
            counts[single.index()]++;
        } else if (block instanceof Block.Beside beside) {
            place(beside.left(), x, y, placed, counts);
            place(beside.right(), x + beside.left().widthMm(), y, placed, counts);
        } else if (block instanceof Block.Below below) {
            place(below.top(), x, y, placed, counts);
            place(below.bottom(), x, y + below.top().heightMm(), placed, counts);
        }
    }

    /** One way to lie, or both. */
    static List<Shape> shapes(double width, double height, boolean turns) {
        return turns ? List.of(new Shape(width, height), new Shape(height, width)) : List.of(new Shape(width, height));
    }

    /** Whole sizes on a stock of whole size, such that not all fit; values that are areas, or none in particular. */
    static CutCase whole(long seed, int side, int types, int most, boolean turns) {
        Random random = new Random(seed);
        int width = side / 2 + random.nextInt(side - side / 2 + 1);
        int height = side / 2 + random.nextInt(side - side / 2 + 1);
        boolean areas = random.nextInt(3) == 0;
        CutType[] all = new CutType[1 + random.nextInt(types)];
        for (int i = 0; i < all.length; i++) {
            int w = 1 + random.nextInt(Math.max(1, width * 2 / 3));
            int h = 1 + random.nextInt(Math.max(1, height * 2 / 3));
            all[i] = new CutType(shapes(w, h, turns && random.nextBoolean()), 1 + random.nextInt(most), areas ? w * h : 1 + random.nextInt(2 * w * h));
        }
        return new CutCase(width, height, Arrays.asList(all));
    }

    /** Types of one piece each, of household sizes in millimetres, about half of which fit by area. */
    static CutCase household(long seed, int types, boolean turns) {
        Random random = new Random(seed);
        List<CutType> all = new ArrayList<>();
        double area = 0;
        for (int i = 0; i < types; i++) {
            double w = 6.35 * (16 + random.nextInt(56)) + 3;
            double h = 6.35 * (16 + random.nextInt(56)) + 3;
            area += w * h;
            all.add(new CutType(shapes(w, h, turns), 1, 1 + random.nextInt(9) + w * h / 20_000));
        }
        double height = Math.sqrt(area / 2 / 1.4);
        return new CutCase(1.4 * height, height, all);
    }
}
