package kitleaf.sizing.cutting;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every set of pieces that cuts from edge to edge at whole millimetres can make of a small stock: from the top down, each rectangle
 * left alone, or cut into two at each place, both ways. No bounds and no order of merit: what is possible is written down, and the
 * dearest looked for at the end.
 */
final class EveryCut {

    private final List<CutType> types;
    /** A set is a number: how many of each type, in a mixed base. */
    private final int[] base;
    private final int sets;
    private final Map<Integer, BitSet> known = new HashMap<>();

    private EveryCut(List<CutType> types) {
        this.types = types;
        base = new int[types.size()];
        int product = 1;
        for (int i = 0; i < base.length; i++) {
            base[i] = product;
            product *= types.get(i).most() + 1;
        }
        sets = product;
    }

    static double best(int width, int height, List<CutType> types) {
        EveryCut every = new EveryCut(types);
        return every.possible(width, height).stream().mapToDouble(every::value).max().orElseThrow();
    }

    private int count(int set, int type) {
        return set / base[type] % (types.get(type).most() + 1);
    }

    private double value(int set) {
        double sum = 0;
        for (int type = 0; type < base.length; type++) {
            sum += count(set, type) * types.get(type).value();
        }
        return sum;
    }

    private BitSet possible(int width, int height) {
        BitSet before = known.get(1000 * width + height);
        if (before != null) {
            return before;
        }
        BitSet possible = new BitSet(sets);
        possible.set(0);
        for (int type = 0; type < base.length; type++) {
            for (Shape shape : types.get(type).shapes()) {
                if (shape.widthMm() <= width && shape.heightMm() <= height) {
                    possible.set(base[type]);
                }
            }
        }
        for (int x = 1; 2 * x <= width; x++) {
            both(possible(x, height), possible(width - x, height), possible);
        }
        for (int y = 1; 2 * y <= height; y++) {
            both(possible(width, y), possible(width, height - y), possible);
        }
        known.put(1000 * width + height, possible);
        return possible;
    }

    private void both(BitSet one, BitSet other, BitSet possible) {
        one.stream().forEach(a -> other.stream().filter(b -> together(a, b)).forEach(b -> possible.set(a + b)));
    }

    private boolean together(int one, int other) {
        for (int type = 0; type < base.length; type++) {
            if (count(one, type) + count(other, type) > types.get(type).most()) {
                return false;
            }
        }
        return true;
    }
}
