package kitleaf.sizing.cutting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * The blocks a search has built, as numbers in rows, so that hundreds of thousands of them take tens of megabytes.
 *
 * <p>Of blocks that hold the same pieces only the smallest are alive: one that is as wide and as high as another, or
 * more, can be replaced by it wherever it lies.
 */
final class BlockStore {

    /** How a block is made: of one piece. */
    static final byte SINGLE = 0;
    /** Of two side by side. */
    static final byte BESIDE = 1;
    /** Of two one below the other. */
    static final byte BELOW = 2;

    private static final byte OPEN = 0;
    private static final byte CLOSED = 1;
    private static final byte DEAD = 2;
    private static final int NONE = -1;

    private final CutJob job;
    private final int words;
    private int size;
    private byte[] state = new byte[64];
    private int[] sameBucket = new int[64];
    private int[] buckets = new int[64];

    /** How each is made, and of which two; of a single one the first is its lay. */
    byte[] made = new byte[64];
    int[] first = new int[64];
    int[] second = new int[64];
    long[] width = new long[64];
    long[] height = new long[64];
    double[] value = new double[64];
    /** The most that a whole rectangle with this block in it can be worth. */
    double[] bound = new double[64];
    /** As many longs each as the counts have words. */
    long[] counts;

    BlockStore(CutJob job, int words) {
        this.job = job;
        this.words = words;
        counts = new long[64 * words];
        Arrays.fill(buckets, NONE);
    }

    int size() {
        return size;
    }

    boolean open(int block) {
        return state[block] == OPEN;
    }

    boolean alive(int block) {
        return state[block] != DEAD;
    }

    void close(int block) {
        state[block] = CLOSED;
    }

    /** The row to write the next block's numbers into; it is no block until {@link #keep} is called. */
    int next() {
        if (size == state.length) {
            int more = 2 * size;
            state = Arrays.copyOf(state, more);
            sameBucket = Arrays.copyOf(sameBucket, more);
            made = Arrays.copyOf(made, more);
            first = Arrays.copyOf(first, more);
            second = Arrays.copyOf(second, more);
            width = Arrays.copyOf(width, more);
            height = Arrays.copyOf(height, more);
            value = Arrays.copyOf(value, more);
            bound = Arrays.copyOf(bound, more);
            counts = Arrays.copyOf(counts, more * words);
            rehash(2 * more);
        }
        return size;
    }

    private void rehash(int length) {
        buckets = new int[length];
        Arrays.fill(buckets, NONE);
        for (int block = 0; block < size; block++) {
            if (alive(block)) {
                int bucket = bucket(block);
                sameBucket[block] = buckets[bucket];
                buckets[bucket] = block;
            }
        }
    }

    private int bucket(int block) {
        long hash = 0;
        for (int i = 0; i < words; i++) {
            hash = (hash ^ counts[block * words + i]) * 0x9E3779B97F4A7C15L;
            hash ^= hash >>> 32;
        }
        return (int) hash & buckets.length - 1;
    }

    /** Whether the block in the next row need not be kept, since one with the same pieces is as small. */
    boolean dominated() {
        int row = size;
        for (int block = buckets[bucket(row)]; block != NONE; block = sameBucket[block]) {
            if (width[block] <= width[row] && height[block] <= height[row] && samePieces(block, row)) {
                return true;
            }
        }
        return false;
    }

    /** Keeps the block in the next row, and buries those it is smaller than. */
    int keep() {
        int row = size;
        int bucket = bucket(row);
        int before = NONE;
        for (int block = buckets[bucket]; block != NONE; block = sameBucket[block]) {
            if (width[row] <= width[block] && height[row] <= height[block] && samePieces(block, row)) {
                state[block] = DEAD;
                if (before == NONE) {
                    buckets[bucket] = sameBucket[block];
                } else {
                    sameBucket[before] = sameBucket[block];
                }
            } else {
                before = block;
            }
        }
        state[row] = OPEN;
        sameBucket[row] = buckets[bucket];
        buckets[bucket] = row;
        size++;
        return row;
    }

    private boolean samePieces(int one, int other) {
        for (int i = 0; i < words; i++) {
            if (counts[one * words + i] != counts[other * words + i]) {
                return false;
            }
        }
        return true;
    }

    /** The block as the caller knows it, put together from the smallest up: what one is made of stands in rows before it. */
    Block block(int block) {
        NavigableSet<Integer> rows = new TreeSet<>(Set.of(block));
        for (Integer row = block; row != null; row = rows.lower(row)) {
            if (made[row] != SINGLE) {
                rows.add(first[row]);
                rows.add(second[row]);
            }
        }
        Map<Integer, Block> blocks = new HashMap<>();
        for (int row : rows) {
            blocks.put(row, switch (made[row]) {
                case SINGLE -> job.single(first[row]);
                case BESIDE -> new Block.Beside(blocks.get(first[row]), blocks.get(second[row]));
                default -> new Block.Below(blocks.get(first[row]), blocks.get(second[row]));
            });
        }
        return blocks.get(block);
    }
}
