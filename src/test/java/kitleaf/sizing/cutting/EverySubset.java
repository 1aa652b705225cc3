package kitleaf.sizing.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * The dearest set of single pieces that can be cut from a stock of whole size: for every set of them, the least height it
 * needs at each width, from the same of every way to part it in two. Sets of a dozen pieces are about as many as it
 * can do.
 */
final class EverySubset {

    private EverySubset() {
    }

    static double best(int width, int height, List<CutType> types) {
        int[][] least = new int[1 << types.size()][];
        double best = 0;
        for (int set = 1; set < least.length; set++) {
            int[] heights = new int[width + 1];
            Arrays.fill(heights, height + 1);
            int lowest = Integer.lowestOneBit(set);
            if (set == lowest) {
                for (Shape shape : types.get(Integer.numberOfTrailingZeros(set)).shapes()) {
                    for (int x = (int) shape.widthMm(); x <= width; x++) {
                        heights[x] = Math.min(heights[x], (int) shape.heightMm());
                    }
                }
            }
            for (int part = set - 1 & set; part > 0; part = part - 1 & set) {
                if ((part & lowest) != 0) {
                    join(least[part], least[set ^ part], heights);
                }
            }
            least[set] = heights;
            if (heights[width] <= height) {
                best = Math.max(best, value(set, types));
            }
        }
        return best;
    }

    private static void join(int[] one, int[] other, int[] heights) {
        for (int x = 1; x < heights.length; x++) {
            heights[x] = Math.min(heights[x], one[x] + other[x]);
            for (int left = 1; left < x; left++) {
                heights[x] = Math.min(heights[x], Math.max(one[left], other[x - left]));
            }
        }
    }

    private static double value(int set, List<CutType> types) {
        double sum = 0;
        for (int type = 0; type < types.size(); type++) {
            sum += (set >> type & 1) * types.get(type).value();
        }
        return sum;
    }
}
