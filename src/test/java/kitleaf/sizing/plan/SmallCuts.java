package kitleaf.sizing.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tries every cut at every millimetre on small cloths, with a kerf of 1 mm: the largest rectangle that can stay whole when
 * some pieces are cut out. It shares no idea with the search it checks.
 */
final class SmallCuts {

    private final int[] widths;
    private final int[] heights;
    private final boolean turning;
    private final int usable;
    private final Map<List<Integer>, Integer> known = new HashMap<>();

    /**
     * @param usable the shorter side from which a remnant counts
     */
    SmallCuts(int[] widths, int[] heights, boolean turning, int usable) {
        this.widths = widths.clone();
        this.heights = heights.clone();
        this.turning = turning;
        this.usable = usable;
    }

    /**
     * The area of the largest usable rectangle left.
     *
     * @param pieces a bit for each piece that has to come out of it
     * @return -1 if they do not
     */
    int largest(int width, int height, int pieces) {
        return known.computeIfAbsent(List.of(width, height, pieces), key -> -2) == -2 ? tried(width, height, pieces)
                : known.get(List.of(width, height, pieces));
    }

    private int tried(int width, int height, int pieces) {
        int best = pieces == 0 ? (Math.min(width, height) >= usable ? width * height : 0)
                : Integer.bitCount(pieces) == 1 && exactly(width, height, Integer.numberOfTrailingZeros(pieces)) ? 0 : -1;
        if (pieces != 0) {
            for (int part = pieces; ; part = part - 1 & pieces) {
                // A strip narrower than the kerf is cut away with it.
                for (int at = 1; at < width; at++) {
                    best = Math.max(best, both(at, height, part, Math.max(0, width - at - 1), height, pieces & ~part));
                }
                for (int at = 1; at < height; at++) {
                    best = Math.max(best, both(width, at, part, width, Math.max(0, height - at - 1), pieces & ~part));
                }
                if (part == 0) {
                    break;
                }
            }
        }
        known.put(List.of(width, height, pieces), best);
        return best;
    }

    private int both(int width, int height, int pieces, int otherWidth, int otherHeight, int others) {
        int one = largest(width, height, pieces);
        int other = one < 0 ? -1 : largest(otherWidth, otherHeight, others);
        return one < 0 || other < 0 ? -1 : Math.max(one, other);
    }

    private boolean exactly(int width, int height, int piece) {
        return widths[piece] == width && heights[piece] == height || turning && widths[piece] == height && heights[piece] == width;
    }
}
