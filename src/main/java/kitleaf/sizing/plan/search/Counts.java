package kitleaf.sizing.plan.search;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * All selections of pieces of several types, as numbers: a selection says how many of each type it holds, and two that
 * share no piece add up. A part of a selection has a smaller number than the whole.
 */
public final class Counts {

    private final int[] most;
    private final int[] stride;
    private final int states;

    private Counts(int[] most, int[] stride, int states) {
        this.most = most;
        this.stride = stride;
        this.states = states;
    }

    /**
     * The selections from so many of each type.
     *
     * @param most how many there are of each type, 1 or more each, small enough that {@link #pairs} is an int
     */
    public static Counts of(List<Integer> most) {
        int[] stride = new int[most.size()];
        int states = 1;
        for (int type = 0; type < stride.length; type++) {
            stride[type] = states;
            states = Math.multiplyExact(states, most.get(type) + 1);
        }
        return new Counts(most.stream().mapToInt(Integer::intValue).toArray(), stride, states);
    }

    /** How many ways there are to choose a selection and a part of it: what going through all of them costs. */
    public static double pairs(List<Integer> most) {
        double pairs = 1;
        for (int number : most) {
            pairs *= (number + 1.0) * (number + 2.0) / 2;
        }
        return pairs;
    }

    /** How many selections there are, the empty one with them. */
    public int states() {
        return states;
    }

    /** The number of the selection of everything. */
    public int all() {
        return states - 1;
    }

    /** How many types there are. */
    public int types() {
        return most.length;
    }

    /** The number of the selection of one piece of a type. */
    public int one(int type) {
        return stride[type];
    }

    /** How many of a type a selection holds. */
    public int of(int state, int type) {
        return state / stride[type] % (most[type] + 1);
    }

    /** How many of each type a selection holds. */
    public List<Integer> numbers(int state) {
        return IntStream.range(0, most.length).mapToObj(type -> of(state, type)).toList();
    }

    /** The first type a selection holds; it must not be empty. */
    public int first(int state) {
        int type = 0;
        while (of(state, type) == 0) {
            type++;
        }
        return type;
    }

    /**
     * Goes through the parts of a selection in the order of their numbers, from the empty one to the whole.
     *
     * @param visit is given each part; says whether to go on
     * @return false if it was told to stop
     */
    public boolean parts(int state, IntPredicate visit) {
        int[] top = new int[most.length];
        for (int type = 0; type < top.length; type++) {
            top[type] = of(state, type);
        }
        int[] digit = new int[most.length];
        int part = 0;
        while (true) {
            if (!visit.test(part)) {
                return false;
            }
            int type = 0;
            while (type < most.length && digit[type] == top[type]) {
                part -= digit[type] * stride[type];
                digit[type] = 0;
                type++;
            }
            if (type == most.length) {
                return true;
            }
            digit[type]++;
            part += stride[type];
        }
    }
}
