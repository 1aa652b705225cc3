package kitleaf.sizing.year;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The best set of things within a capacity, exactly.
 *
 * <p>Things are taken up one after another, and of all sets of those taken up so far only the undominated are kept
 * (Nemhauser and Ullmann, Discrete dynamic programming and capital allocation, Management Science 15(9), 1969, 494-505;
 * from memory): a set is dropped when another of as many things weighs as much and takes no longer. Where the number of things has no
 * limit, all sets stand in one list and more things make up for equal weight. A set is also dropped when not even the
 * most that could still be added to it reaches a weight already found: that bound is the lesser of the heaviest things
 * left and of the fractional filling of the capacity left (Dantzig, Operations Research 5(2), 1957; from memory), eased by a billionth for
 * rounding. Nothing is discretised: sizes and weights are whole numbers, and their sums are exact.
 */
final class BestSet {

    private static final double EASE = 1 + 1e-9;

    private record Subset(long size, long weight, int count, long[] members) {

        boolean worthMore(Subset other) {
            return weight != other.weight ? weight > other.weight : count > other.count;
        }

        /** Whether its members come first: of the first thing that only one has, it is this one's. */
        boolean before(Subset other) {
            for (int i = 0; i < members.length; i++) {
                long differing = members[i] ^ other.members[i];
                if (differing != 0) {
                    return (members[i] & Long.lowestOneBit(differing)) != 0;
                }
            }
            return false;
        }
    }

    /** Rising sizes; equal ones the best first. */
    private static final Comparator<Subset> ORDER = (one, other) -> {
        if (one.size() != other.size()) {
            return Long.compare(one.size(), other.size());
        }
        if (one.worthMore(other) || other.worthMore(one)) {
            return one.worthMore(other) ? -1 : 1;
        }
        return one.before(other) ? -1 : other.before(one) ? 1 : 0;
    };

    private final long[] sizes;
    private final long[] weights;
    private final long capacity;
    private final boolean number;
    /** The things that fit alone, the heaviest for their size first: what the fractional bound needs. */
    private final int[] order;
    private final int limit;
    private final boolean counted;
    private final long[][] heaviest;
    private final long[][] smallest;
    private final double[] sizeBefore;
    private final double[] weightBefore;
    private long found;

    private BestSet(long[] sizes, long[] weights, long capacity, int most, boolean number) {
        this.sizes = sizes;
        this.weights = weights;
        this.capacity = capacity;
        this.number = number;
        order = IntStream.range(0, sizes.length).filter(i -> sizes[i] <= capacity).boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -(double) weights[i] / sizes[i]).thenComparing(i -> i))
                .mapToInt(Integer::intValue).toArray();
        int fitting = fitting();
        limit = Math.min(most, fitting);
        counted = number || limit < fitting;
        heaviest = new long[order.length + 1][];
        smallest = new long[order.length + 1][];
        sizeBefore = new double[order.length + 1];
        weightBefore = new double[order.length + 1];
        for (int i = 0; i < order.length; i++) {
            sizeBefore[i + 1] = sizeBefore[i] + sizes[order[i]];
            weightBefore[i + 1] = weightBefore[i] + weights[order[i]];
        }
        for (int from = 0; from <= order.length; from++) {
            heaviest[from] = sums(weights, from, true);
            smallest[from] = sums(sizes, from, false);
        }
    }

    /**
     * The indices of the best set, rising. Among equally good sets it is the one with the lowest first index that they differ in.
     *
     * @param sizes 0 or more each
     * @param weights 1 or more each
     * @param capacity 0 or more
     * @param most things at most, 0 or more
     * @param number whether the number of things counts first and their weight second, rather than the other way round; the
     *        least size comes third
     */
    static List<Integer> of(long[] sizes, long[] weights, long capacity, int most, boolean number) {
        return new BestSet(sizes, weights, capacity, most, number).search();
    }

    /** How many fit at most: the smallest first. */
    private int fitting() {
        long left = capacity;
        int fitting = 0;
        for (long size : Arrays.stream(order).mapToLong(i -> sizes[i]).sorted().toArray()) {
            if (size > left) {
                break;
            }
            left -= size;
            fitting++;
        }
        return fitting;
    }

    /** Sums of the 0, 1, 2... largest or smallest values from a place in the order on, as many as the limit allows. */
    private long[] sums(long[] values, int from, boolean largest) {
        long[] sorted = IntStream.range(from, order.length).mapToLong(i -> values[order[i]]).sorted().toArray();
        long[] sums = new long[Math.min(limit, sorted.length) + 1];
        for (int i = 1; i < sums.length; i++) {
            sums[i] = sums[i - 1] + sorted[largest ? sorted.length - i : i - 1];
        }
        return sums;
    }

    private List<Integer> search() {
        int words = (sizes.length + Long.SIZE - 1) / Long.SIZE;
        List<List<Subset>> kept = new ArrayList<>();
        for (int count = 0; count <= (counted ? limit : 0); count++) {
            kept.add(List.of());
        }
        kept.set(0, List.of(new Subset(0, 0, 0, new long[words])));
        for (int place = 0; place < order.length; place++) {
            for (int count = kept.size() - 1; count >= (counted ? 1 : 0); count--) {
                kept.set(count, merged(kept.get(count), grown(kept.get(counted ? count - 1 : 0), order[place]), place + 1));
            }
        }
        Subset best = kept.stream().skip(number ? limit : 0).flatMap(List::stream).reduce((one, other) ->
                one.worthMore(other) ? one : other.worthMore(one) ? other : ORDER.compare(one, other) <= 0 ? one : other).orElseThrow();
        return IntStream.range(0, sizes.length).filter(i -> (best.members()[i / Long.SIZE] >>> i & 1) == 1).boxed().toList();
    }

    private List<Subset> grown(List<Subset> subsets, int thing) {
        List<Subset> grown = new ArrayList<>(subsets.size());
        for (Subset subset : subsets) {
            if (subset.size() > capacity - sizes[thing]) {
                break;
            }
            long[] members = subset.members().clone();
            members[thing / Long.SIZE] |= 1L << thing;
            Subset next = new Subset(subset.size() + sizes[thing], subset.weight() + weights[thing], subset.count() + 1, members);
            if (!number || next.count() == limit) {
                found = Math.max(found, next.weight());
            }
            grown.add(next);
        }
        return grown;
    }

    /** Both lists in order, without what is dominated and what can no longer win. */
    private List<Subset> merged(List<Subset> old, List<Subset> grown, int next) {
        List<Subset> merged = new ArrayList<>(old.size() + grown.size());
        Subset last = null;
        int i = 0;
        int j = 0;
        while (i < old.size() || j < grown.size()) {
            boolean fromOld = j == grown.size() || (i < old.size() && ORDER.compare(old.get(i), grown.get(j)) <= 0);
            Subset subset = fromOld ? old.get(i++) : grown.get(j++);
            if ((last == null || subset.worthMore(last)) && canWin(subset, next)) {
                merged.add(subset);
                last = subset;
            }
        }
        return merged;
    }

    private boolean canWin(Subset subset, int next) {
        int more = limit - subset.count();
        long room = capacity - subset.size();
        if (number && (more >= smallest[next].length || smallest[next][more] > room)) {
            return false;
        }
        long heavy = heaviest[next][Math.min(more, heaviest[next].length - 1)];
        return subset.weight() + heavy >= found && (subset.weight() + fractional(next, room)) * EASE >= found;
    }

    /** The most weight that things cut to measure could fill the room with. */
    private double fractional(int next, long room) {
        double until = (sizeBefore[next] + room) * EASE;
        int whole = Arrays.binarySearch(sizeBefore, next, sizeBefore.length, until);
        // Things of no size make equal entries; the one after the last that fits is wanted.
        int end = whole >= 0 ? whole : -whole - 2;
        while (end < order.length && sizeBefore[end + 1] <= until) {
            end++;
        }
        double sum = weightBefore[end] - weightBefore[next];
        return end == order.length ? sum : sum + weights[order[end]] * ((until - sizeBefore[end]) / sizes[order[end]]);
    }
}
