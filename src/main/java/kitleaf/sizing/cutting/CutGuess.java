package kitleaf.sizing.cutting;

import java.util.Arrays;
import java.util.Random;

/**
 * A good way to cut a rectangle, found by guessing: the rectangle is filled from its corner, always with the piece
 * that scores best of those that still fit, and each piece parts what is left of its rectangle in two by an edge-to-edge cut.
 *
 * <p>What a piece scores is its worth by area, how large it is, and how nearly it fills the rectangle's side, weighed by a
 * recipe. Recipes are changed a little at a time, and a change is kept when it does no worse: a random-key local search (Bean, ORSA
 * Journal on Computing 6(2), 1994, 154-160, for the keys; from memory). The random numbers have a fixed seed, so the
 * same job always has the same guesses.
 */
final class CutGuess {

    /** After so many guesses without a better one, the recipe starts anew. */
    private static final int TIRED = 400;

    private static final int NOTHING = -1;

    private final CutJob job;
    private final Random random = new Random(20270101);

    /** For each lay: what it scores, and which cut comes first around it (0 what leaves the larger rest, 1 down, 2 across). */
    private double[] score;
    private int[] cut;
    private double snug;
    private boolean smallFirst;
    private double recipeValue = -1;
    private int tired;

    private int[] left;
    private int looks;

    /** The cuts of the last guess as a tree in rows. */
    private int rows;
    private int[] made = new int[64];
    private int[] first = new int[64];
    private int[] second = new int[64];
    private int top;
    private double value;

    CutGuess(CutJob job) {
        this.job = job;
        score = new double[job.lays()];
        cut = new int[job.lays()];
        left = job.most.clone();
        freshRecipe();
    }

    /** The worth of the last guess. */
    double value() {
        return value;
    }

    /** How many lays the last guess looked at. */
    int looks() {
        return looks;
    }

    private void freshRecipe() {
        double dense = random.nextDouble() * 3;
        double large = random.nextDouble() * 1.5;
        double chance = random.nextDouble() * 0.5;
        for (int lay = 0; lay < score.length; lay++) {
            double area = (double) job.wide[lay] * job.high[lay] / ((double) job.width * job.height);
            double worth = job.value[job.kind[lay]] / area;
            score[lay] = Math.exp(dense * Math.log(worth) + large * Math.log(area) + chance * random.nextGaussian());
            cut[lay] = 0;
        }
        snug = random.nextDouble() * 4;
        smallFirst = random.nextBoolean();
        recipeValue = -1;
        tired = 0;
    }

    /** Guesses once more, by a changed recipe. */
    void again() {
        if (tired > TIRED) {
            freshRecipe();
        }
        double[] oldScore = score.clone();
        int[] oldCut = cut.clone();
        double oldSnug = snug;
        boolean oldSmallFirst = smallFirst;
        if (recipeValue >= 0) {
            change();
        }
        start();
        top = fill(job.width, job.height);
        if (value > recipeValue) {
            tired = 0;
        }
        if (value >= recipeValue) {
            recipeValue = value;
        } else {
            score = oldScore;
            cut = oldCut;
            snug = oldSnug;
            smallFirst = oldSmallFirst;
        }
        tired++;
    }

    private void change() {
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int lay = random.nextInt(score.length);
            switch (random.nextInt(8)) {
                case 0 -> snug = Math.max(0, snug + random.nextGaussian());
                case 1 -> smallFirst = !smallFirst;
                case 2, 3, 4 -> cut[lay] = random.nextInt(3);
                default -> score[lay] *= Math.exp(random.nextGaussian());
            }
        }
    }

    /** Guesses what may be cut around a block that lies in the corner, by the recipe as it is. */
    void around(int block, BlockStore store, CutCounts counts) {
        start();
        for (int kind = 0; kind < left.length; kind++) {
            left[kind] -= counts.of(kind, store.counts, block * counts.words);
        }
        value = store.value[block];
        top = surround(row(BlockStore.SINGLE, -2 - block, NOTHING), store.width[block], store.height[block], job.width, job.height, 0);
    }

    private void start() {
        System.arraycopy(job.most, 0, left, 0, left.length);
        rows = 0;
        value = 0;
        looks = 0;
    }

    private int fill(long width, long height) {
        int best = NOTHING;
        double bestScore = 0;
        looks += job.lays();
        for (int lay = 0; lay < score.length; lay++) {
            if (job.wide[lay] <= width && job.high[lay] <= height && left[job.kind[lay]] > 0) {
                double filled = Math.max((double) job.wide[lay] / width, (double) job.high[lay] / height);
                double it = score[lay] * (1 + snug * filled * filled * filled * filled);
                if (it > bestScore) {
                    best = lay;
                    bestScore = it;
                }
            }
        }
        if (best == NOTHING) {
            return NOTHING;
        }
        left[job.kind[best]]--;
        value += job.value[job.kind[best]];
        return surround(row(BlockStore.SINGLE, best, NOTHING), job.wide[best], job.high[best], width, height, cut[best]);
    }

    /** Fills what a corner leaves of its rectangle. */
    private int surround(int corner, long wide, long high, long width, long height, int way) {
        boolean downFirst = way == 1 || way == 0 && (double) (width - wide) * height > (double) width * (height - high);
        long restWide = downFirst ? wide : width - wide;
        long restHigh = downFirst ? height - high : high;
        long farWide = downFirst ? width - wide : width;
        long farHigh = downFirst ? height : height - high;
        int near;
        int far;
        if (smallFirst) {
            near = fill(restWide, restHigh);
            far = fill(farWide, farHigh);
        } else {
            far = fill(farWide, farHigh);
            near = fill(restWide, restHigh);
        }
        byte nearMade = downFirst ? BlockStore.BELOW : BlockStore.BESIDE;
        byte farMade = downFirst ? BlockStore.BESIDE : BlockStore.BELOW;
        return joined(farMade, joined(nearMade, corner, near), far);
    }

    private int joined(byte how, int one, int other) {
        return other == NOTHING ? one : row(how, one, other);
    }

    private int row(byte how, int one, int other) {
        if (rows == made.length) {
            made = Arrays.copyOf(made, 2 * rows);
            first = Arrays.copyOf(first, 2 * rows);
            second = Arrays.copyOf(second, 2 * rows);
        }
        made[rows] = how;
        first[rows] = one;
        second[rows] = other;
        return rows++;
    }

    /** The last guess as the caller knows it; there must be a piece in it. */
    Block block(BlockStore store) {
        return block(top, store);
    }

    private Block block(int row, BlockStore store) {
        if (made[row] == BlockStore.SINGLE) {
            return first[row] >= 0 ? job.single(first[row]) : store.block(-2 - first[row]);
        }
        Block one = block(first[row], store);
        Block other = block(second[row], store);
        return made[row] == BlockStore.BESIDE ? new Block.Beside(one, other) : new Block.Below(one, other);
    }
}
