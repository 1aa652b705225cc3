package kitleaf.sizing.cutting;

/**
 * How many of each kind a block holds, packed into a few longs, so that two blocks are added and checked against
 * what is wanted at most in an addition and a mask.
 *
 * <p>A kind has as many bits as its most needs, and one above them. A bias is added that lifts most + 1 just
 * into that upper bit, so that it is set when there are too many; a field never runs over into the next, since
 * two counts that are each within their most stay below twice the upper bit.
 */
final class CutCounts {

    /** Longs a block. */
    final int words;

    private final int[] word;
    private final int[] shift;
    private final long[] mask;
    private final long[] bias;
    private final long[] over;

    CutCounts(int[] most) {
        word = new int[most.length];
        shift = new int[most.length];
        mask = new long[most.length];
        int current = 0;
        int used = 0;
        for (int kind = 0; kind < most.length; kind++) {
            int bits = Integer.SIZE - Integer.numberOfLeadingZeros(most[kind]) + 1;
            if (used + bits > Long.SIZE) {
                current++;
                used = 0;
            }
            word[kind] = current;
            shift[kind] = used;
            mask[kind] = (1L << bits) - 1;
            used += bits;
        }
        words = current + 1;
        bias = new long[words];
        over = new long[words];
        for (int kind = 0; kind < most.length; kind++) {
            long upper = mask[kind] / 2 + 1;
            bias[word[kind]] |= upper - 1 - most[kind] << shift[kind];
            over[word[kind]] |= upper << shift[kind];
        }
    }

    /** Writes one of a kind at a place. */
    void one(int kind, long[] counts, int at) {
        counts[at + word[kind]] = 1L << shift[kind];
    }

    /** How many of a kind stand at a place. */
    int of(int kind, long[] counts, int at) {
        return (int) (counts[at + word[kind]] >>> shift[kind] & mask[kind]);
    }

    /** Whether two together hold no more of any kind than is wanted. */
    boolean within(long[] counts, int one, int other) {
        for (int i = 0; i < words; i++) {
            if ((counts[one + i] + counts[other + i] + bias[i] & over[i]) != 0) {
                return false;
            }
        }
        return true;
    }
}
