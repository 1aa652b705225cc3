package kitleaf.sizing.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The most valuable set of pieces that can be cut from one rectangle by cuts from edge to edge, exactly: the constrained
 * two-dimensional guillotine cutting problem, cuts in any number of stages.
 *
 * <p>Every way to cut is a block, put together from smaller ones side by side or one below the other (Wang, Two algorithms
 * for constrained two-dimensional cutting stock problems, Operations Research 31(3), 1983, 573-586). The search takes up
 * the block whose bound is highest, its worth and the most that could lie around it ({@link CutBound}), and puts it
 * together with each taken up before, both ways (best-first search: Viswanathan and Bagchi, Operations Research 41(4),
 * 1993, 768-776; Hifi, Computers and Operations Research 24(8), 1997, 727-736; Cung, Hifi and Le Cun, International
 * Transactions in Operational Research 7(3), 2000, 185-210; all from memory). A block no other can better goes; so does one
 * with the same pieces as another and no smaller ({@link BlockStore}), and one whose bound is no higher than the best
 * found. Three in a row are put together from the left only: of two blocks that are put side by side one at least is no row itself. When no block is
 * left that could be part of something better, the best is proven.
 *
 * <p>So that patience that ends early has something to show, every other block taken up is not the one of the highest
 * bound but the most promising, what can lie around it taken with a discount; what may lie around it is guessed at
 * once, and guesses go on beside the search ({@link CutGuess}). Any order proves the same: what was not taken up yet,
 * or was dropped for want of room, keeps the bound up.
 */
public final class BestCut {

    /** Blocks kept at most: some 60 MB of them. */
    private static final int ROOM = 400_000;

    /** Guesses before all else. */
    private static final int FIRST_GUESSES = 40;

    /** Pairs of blocks, or lays, looked at for one step of patience: about a microsecond's work. */
    private static final int LOOKS_A_STEP = 64;

    /** Lays made ready, or pieces put together, for one step of patience. */
    private static final int LAYS_A_STEP = 8;

    /** Which share of what could lie around a block is thought likely to come about. */
    private static final double LIKELY = 0.9;

    private final CutJob job;
    private final Patience patience;
    private final int room;
    private final CutCounts counts;
    private final CutBound bounds;
    private final BlockStore blocks;
    private final CutGuess guess;
    private final BlockQueue byBound = new BlockQueue();
    private final BlockQueue byPromise = new BlockQueue();

    /** The blocks taken up, and how many. */
    private int[] taken = new int[64];
    private int takenUp;

    private Optional<Block> best = Optional.empty();
    private double value;
    /** The highest bound of a block that was dropped or whose turn was cut short. */
    private double lost;
    /** Steps spent on the search beyond those spent on guessing beside it. */
    private long searchAhead;

    /**
     * What the search came to.
     *
     * @param block what to cut; empty when nothing is to be had
     * @param value what it is worth
     * @param bound what nothing can be worth more than; the value itself when that is proven
     * @param proven whether nothing is worth more
     */
    public record Found(Optional<Block> block, double value, double bound, boolean proven) {
    }

    private BestCut(CutJob job, Patience patience, int room) {
        this.job = job;
        this.patience = patience;
        this.room = room;
        counts = new CutCounts(job.most);
        bounds = new CutBound(job);
        blocks = new BlockStore(job, counts.words);
        guess = new CutGuess(job);
    }

    /**
     * The best that can be cut from a rectangle. Lengths that differ by a millionth of a millimetre are equal, and so are
     * values that differ by a billionth of all there is to win; whole values, up to a billion together, are exact.
     *
     * @param widthMm above 0, a kilometre at most
     * @param heightMm above 0, a kilometre at most
     * @param types what may be cut, the kerf in their shapes and in the rectangle already
     * @param patience a step is about a microsecond's work; when it ends the best so far is given, and its bound
     */
    public static Found of(double widthMm, double heightMm, List<CutType> types, Patience patience) {
        return of(widthMm, heightMm, types, patience, ROOM);
    }

    /** As the other, keeping so many blocks at most. */
    static Found of(double widthMm, double heightMm, List<CutType> types, Patience patience, int room) {
        CutJob job = new CutJob(widthMm, heightMm, types);
        return job.lays() == 0 ? new Found(Optional.empty(), 0, 0, true) : new BestCut(job, patience, room).find();
    }

    private Found find() {
        int guesses = 0;
        // To set the tables up takes a look at every lay, too.
        boolean patient = patience.steps(1 + job.lays() / LAYS_A_STEP);
        // One guess there always is, so that even the most impatient has something to cut.
        do {
            patient = guessed() && patient;
            guesses++;
        } while (patient && guesses < FIRST_GUESSES && bounds.whole() >= atLeast());
        if (patient && bounds.whole() >= atLeast() && bounds.reckon(steps -> spend(steps) && guessBeside())) {
            search();
        } else {
            lost = bounds.whole();
        }
        double exact = best.map(job::valueOf).orElse(0.0);
        double bound = job.within(Math.min(lost, bounds.whole()));
        boolean proven = bound < atLeast();
        return new Found(best, exact, proven ? exact : Math.max(exact, bound), proven);
    }

    /** What something better is worth at least, less what sums of doubles may lose. */
    private double atLeast() {
        return value + job.valueStep * (1 - CutJob.LOST_IN_SUMS);
    }

    private void search() {
        for (int lay = 0; lay < job.lays(); lay++) {
            int row = blocks.next();
            blocks.made[row] = BlockStore.SINGLE;
            blocks.first[row] = lay;
            blocks.width[row] = job.wide[lay];
            blocks.height[row] = job.high[lay];
            blocks.value[row] = job.value[job.kind[lay]];
            blocks.bound[row] = bounds.whole();
            Arrays.fill(blocks.counts, row * counts.words, (row + 1) * counts.words, 0);
            counts.one(job.kind[lay], blocks.counts, row * counts.words);
            consider(row);
        }
        boolean promising = false;
        while (true) {
            int top = first(byBound);
            if (top < 0) {
                return;
            }
            int block = promising ? first(byPromise) : top;
            if (!takeUp(block, promising) || !guessBeside()) {
                lost = Math.max(lost, Math.max(blocks.bound[top], blocks.bound[block]));
                return;
            }
            promising = !promising;
        }
    }

    /** The first block of a queue that has not been taken up and can still be part of something better; below 0 when there is none. */
    private int first(BlockQueue queue) {
        while (!queue.isEmpty() && !(blocks.open(queue.peek()) && blocks.bound[queue.peek()] >= atLeast())) {
            queue.remove();
        }
        return queue.isEmpty() ? -1 : queue.peek();
    }

    private boolean takeUp(int block, boolean promising) {
        blocks.close(block);
        if (takenUp == taken.length) {
            taken = Arrays.copyOf(taken, 2 * takenUp);
        }
        taken[takenUp++] = block;
        if (!spend(1 + takenUp / LOOKS_A_STEP)) {
            return false;
        }
        if (promising) {
            guess.around(block, blocks, counts);
            note();
            if (!spend(1 + guess.looks() / LOOKS_A_STEP)) {
                return false;
            }
        }
        int kept = 0;
        for (int i = 0; i < takenUp; i++) {
            int other = taken[i];
            if (!blocks.alive(other) || blocks.bound[other] < atLeast()) {
                continue;
            }
            taken[kept++] = other;
            if (counts.within(blocks.counts, block * counts.words, other * counts.words)) {
                join(BlockStore.BESIDE, block, other);
                join(BlockStore.BELOW, block, other);
            }
        }
        takenUp = kept;
        return true;
    }

    private boolean spend(long steps) {
        searchAhead += steps;
        return patience.steps(steps);
    }

    private void join(byte how, int one, int other) {
        boolean beside = how == BlockStore.BESIDE;
        long width = beside ? blocks.width[one] + blocks.width[other] : Math.max(blocks.width[one], blocks.width[other]);
        long height = beside ? Math.max(blocks.height[one], blocks.height[other]) : blocks.height[one] + blocks.height[other];
        if (width > job.width || height > job.height || blocks.made[one] == how && blocks.made[other] == how) {
            return;
        }
        double sum = blocks.value[one] + blocks.value[other];
        double bound = Math.min(Math.min(blocks.bound[one], blocks.bound[other]), sum + bounds.around(width, height));
        if (bound < atLeast()) {
            return;
        }
        int row = blocks.next();
        blocks.made[row] = how;
        blocks.first[row] = one;
        blocks.second[row] = other;
        blocks.width[row] = width;
        blocks.height[row] = height;
        blocks.value[row] = sum;
        blocks.bound[row] = bound;
        for (int i = 0; i < counts.words; i++) {
            blocks.counts[row * counts.words + i] = blocks.counts[one * counts.words + i] + blocks.counts[other * counts.words + i];
        }
        consider(row);
    }

    /** Keeps the block in this row, the next, if it may be part of something better. */
    private void consider(int row) {
        if (blocks.dominated()) {
            return;
        }
        spend(1);
        double left = bounds.left(blocks.width[row], blocks.height[row], kind -> job.most[kind] - counts.of(kind, blocks.counts, row * counts.words));
        double worth = blocks.value[row];
        blocks.bound[row] = Math.min(blocks.bound[row], worth + left);
        if (worth >= atLeast()) {
            value = worth;
            best = Optional.of(blocks.block(row));
        }
        if (blocks.bound[row] < atLeast()) {
            return;
        }
        if (row >= room) {
            lost = Math.max(lost, blocks.bound[row]);
            return;
        }
        int block = blocks.keep();
        byBound.add(block, blocks.bound[block], worth);
        byPromise.add(block, worth + LIKELY * (blocks.bound[block] - worth), worth);
    }

    /** Guesses for as long as the search went on; false when patience ended. */
    private boolean guessBeside() {
        while (searchAhead > 0) {
            if (!guessed()) {
                return false;
            }
            searchAhead -= 1 + guess.looks() / LOOKS_A_STEP;
        }
        return true;
    }

    private boolean guessed() {
        guess.again();
        note();
        return patience.steps(1 + guess.looks() / LOOKS_A_STEP);
    }

    private void note() {
        if (guess.value() >= atLeast()) {
            value = guess.value();
            best = Optional.of(guess.block(blocks));
            patience.steps(guess.corners() / LAYS_A_STEP);
        }
    }
}
