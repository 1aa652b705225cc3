package kitleaf.sizing.plan.search;

import java.util.Arrays;

/** The smallest boxes a selection of pieces can be cut from: none fits into another. The widest is the lowest. */
public final class Front {

    private static final int FIRST_ROOM = 4;

    private double[] widths = new double[FIRST_ROOM];
    private double[] heights = new double[FIRST_ROOM];
    private int size;

    public int size() {
        return size;
    }

    public double width(int index) {
        return widths[index];
    }

    public double height(int index) {
        return heights[index];
    }

    /** Takes a box in, unless a smaller one is there; drops those it makes needless. */
    public void add(double width, double height) {
        int at = firstFrom(width);
        // All before it are narrower, so the one just before is the lowest of them.
        if (at > 0 && heights[at - 1] <= height || at < size && widths[at] == width && heights[at] <= height) {
            return;
        }
        int end = at;
        while (end < size && heights[end] >= height) {
            end++;
        }
        if (end == at) {
            if (size == widths.length) {
                widths = Arrays.copyOf(widths, 2 * size);
                heights = Arrays.copyOf(heights, 2 * size);
            }
            System.arraycopy(widths, at, widths, at + 1, size - at);
            System.arraycopy(heights, at, heights, at + 1, size - at);
            size++;
        } else {
            System.arraycopy(widths, end, widths, at + 1, size - end);
            System.arraycopy(heights, end, heights, at + 1, size - end);
            size -= end - at - 1;
        }
        widths[at] = width;
        heights[at] = height;
    }

    /** Takes in the boxes of one selection that has those of another to its right, each as high as its own box. */
    public void addBeside(Front one, Front other, double mostWidth) {
        int right = 0;
        for (int at = 0; at < one.size; at++) {
            // Boxes get lower and lower, so what fits beside them is never further to the front.
            while (right < other.size && other.heights[right] > one.heights[at]) {
                right++;
            }
            if (right == other.size || one.widths[at] + other.widths[right] > mostWidth) {
                return;
            }
            add(one.widths[at] + other.widths[right], one.heights[at]);
        }
    }

    /** Takes in the boxes of one selection that has those of another below it, each as wide as its own box. */
    public void addBelow(Front one, Front other, double mostHeight) {
        int below = other.size - 1;
        for (int at = one.size - 1; at >= 0; at--) {
            while (below >= 0 && other.widths[below] > one.widths[at]) {
                below--;
            }
            if (below < 0 || one.heights[at] + other.heights[below] > mostHeight) {
                return;
            }
            add(one.widths[at], one.heights[at] + other.heights[below]);
        }
    }

    /** The least height of a box no wider than this; infinite if there is none. */
    public double leastHeight(double width) {
        int after = firstFrom(Math.nextUp(width));
        return after == 0 ? Double.POSITIVE_INFINITY : heights[after - 1];
    }

    /** The least width of a box no higher than this; infinite if there is none. */
    public double leastWidth(double height) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (heights[middle] <= height) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low == size ? Double.POSITIVE_INFINITY : widths[low];
    }

    /** The first box at least so wide. */
    private int firstFrom(double width) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (widths[middle] >= width) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
