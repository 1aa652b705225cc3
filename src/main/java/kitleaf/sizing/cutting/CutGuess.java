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

    /**
     * The last guess as a tree in rows, each a corner (a lay, or below {@link #NOTHING} a block) with which cut comes first around it,
     * and two places for the rows that fill the rests near it and far from it. The rows a row holds come after it.
     */
    private int rows;
    private int[] corners = new int[64];
    private boolean[] downFirst = new boolean[64];
    private int[] rests = new int[128];
    private double value;

    /** Rectangles to be filled, and the places of their rows; a guess is too deep for calls within calls. */
    private int opened;
    private int[] openAt = new int[64];
    private long[] openWide = new long[64];
    private long[] openHigh = new long[64];

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

    /** How many pieces or blocks it is made of. */
    int corners() {
        return rows;
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
        open(NOTHING, job.width, job.height);
        fill();
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
        surround(row(-2 - block), store.width[block], store.height[block], job.width, job.height, 0);
        fill();
    }

    private void start() {
        System.arraycopy(job.most, 0, left, 0, left.length);
        rows = 0;
        opened = 0;
        value = 0;
        looks = 0;
    }

    /** Fills the rectangles that are open, the one opened last first. */
    private void fill() {
        while (opened > 0) {
            opened--;
            int corner = openAt[opened];
            long width = openWide[opened];
            long height = openHigh[opened];
            int lay = best(width, height);
            if (lay != NOTHING) {
                left[job.kind[lay]]--;
                value += job.value[job.kind[lay]];
                int row = row(lay);
                if (corner >= 0) {
                    rests[corner] = row;
                }
                surround(row, job.wide[lay], job.high[lay], width, height, cut[lay]);
            }
        }
    }

    /** The lay that scores best of those that fit. */
    private int best(long width, long height) {
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
        return best;
    }

    /** Opens what a corner leaves of its rectangle: what lies within its first cut, near it, and what lies beyond, far from it. */
    private void surround(int row, long wide, long high, long width, long height, int way) {
        boolean down = way == 1 || way == 0 && (double) (width - wide) * height > (double) width * (height - high);
        downFirst[row] = down;
        if (smallFirst) {
            openFar(row, wide, high, width, height, down);
            openNear(row, wide, high, width, height, down);
        } else {
            openNear(row, wide, high, width, height, down);
            openFar(row, wide, high, width, height, down);
        }
    }

    private void openNear(int row, long wide, long high, long width, long height, boolean down) {
        open(2 * row, down ? wide : width - wide, down ? height - high : high);
    }

    private void openFar(int row, long wide, long high, long width, long height, boolean down) {
        open(2 * row + 1, down ? width - wide : width, down ? height : height - high);
    }

    /** Opens a rectangle, and says where what is cut from it is to be written. */
    private void open(int at, long width, long height) {
        if (opened == openAt.length) {
            openAt = Arrays.copyOf(openAt, 2 * opened);
            openWide = Arrays.copyOf(openWide, 2 * opened);
            openHigh = Arrays.copyOf(openHigh, 2 * opened);
        }
        openAt[opened] = at;
        openWide[opened] = width;
        openHigh[opened] = height;
        opened++;
    }

    private int row(int corner) {
        if (rows == corners.length) {
            corners = Arrays.copyOf(corners, 2 * rows);
            downFirst = Arrays.copyOf(downFirst, 2 * rows);
            rests = Arrays.copyOf(rests, 4 * rows);
        }
        corners[rows] = corner;
        rests[2 * rows] = NOTHING;
        rests[2 * rows + 1] = NOTHING;
        return rows++;
    }

    /** The last guess as the caller knows it, put together from its end; there must be a piece in it. */
    Block block(BlockStore store) {
        Block[] blocks = new Block[rows];
        for (int row = rows - 1; row >= 0; row--) {
            Block corner = corners[row] >= 0 ? job.single(corners[row]) : store.block(-2 - corners[row]);
            Block near = rests[2 * row] == NOTHING ? corner : joined(!downFirst[row], corner, blocks[rests[2 * row]]);
            blocks[row] = rests[2 * row + 1] == NOTHING ? near : joined(downFirst[row], near, blocks[rests[2 * row + 1]]);
        }
        return blocks[0];
    }

    private static Block joined(boolean beside, Block one, Block other) {
        return beside ? new Block.Beside(one, other) : new Block.Below(one, other);
    }
}
