package kitleaf.sizing.cutting;

import java.util.Arrays;

/** Blocks, the one of the highest rank first; of equal rank the more valuable one, then the older one. */
final class BlockQueue {

    private int size;
    private int[] blocks = new int[64];
    private double[] ranks = new double[64];
    private double[] values = new double[64];

    boolean isEmpty() {
        return size == 0;
    }

    /** The first block. */
    int peek() {
        return blocks[0];
    }

    void add(int block, double rank, double value) {
        if (size == blocks.length) {
            blocks = Arrays.copyOf(blocks, 2 * size);
            ranks = Arrays.copyOf(ranks, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        int at = size++;
        while (at > 0 && before(block, rank, value, (at - 1) / 2)) {
            move((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        put(block, rank, value, at);
    }

    /** Takes the first block out. */
    void remove() {
        size--;
        int block = blocks[size];
        double rank = ranks[size];
        double value = values[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            if (child + 1 < size && before(blocks[child + 1], ranks[child + 1], values[child + 1], child)) {
                child++;
            }
            if (!before(blocks[child], ranks[child], values[child], block, rank, value)) {
                break;
            }
            move(child, at);
            at = child;
        }
        put(block, rank, value, at);
    }

    private boolean before(int block, double rank, double value, int at) {
        return before(block, rank, value, blocks[at], ranks[at], values[at]);
    }

    private static boolean before(int block, double rank, double value, int other, double otherRank, double otherValue) {
        if (rank != otherRank) {
            return rank > otherRank;
        }
        return value != otherValue ? value > otherValue : block < other;
    }

    private void move(int from, int to) {
        put(blocks[from], ranks[from], values[from], to);
    }

    private void put(int block, double rank, double value, int at) {
        blocks[at] = block;
        ranks[at] = rank;
        values[at] = value;
    }
}
