package kitleaf.basket.thread;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Plies in the needle: one number for all stitches of a thread, or another one for some kinds of them.
 *
 * @param usual what most stitches are worked with, 1 to {@value #MOST}
 * @param others kinds that are worked with another number, in the order of the kinds
 */
public record Strands(int usual, Map<StitchKind, Integer> others) {

    /** The most plies taken in one needle. */
    public static final int MOST = 12;

    /** Hardly a thread has others, so that each number is kept once. */
    private static final List<Strands> PLAIN = IntStream.rangeClosed(1, MOST).mapToObj(number -> new Strands(number, Map.of())).toList();

    /** Copies the map; refuses numbers outside 1 to {@value #MOST}, and kinds with the usual one. */
    public Strands {
        Map<StitchKind, Integer> sorted = new EnumMap<>(StitchKind.class);
        sorted.putAll(others);
        others = sorted.isEmpty() ? Map.of() : Collections.unmodifiableMap(sorted);
        if (usual < 1 || usual > MOST || others.values().stream().anyMatch(number -> number < 1 || number > MOST)) {
            throw new IllegalArgumentException("strands must be 1 to " + MOST + ": " + usual + ", " + others);
        }
        if (others.containsValue(usual)) {
            throw new IllegalArgumentException("the usual strands among the others: " + usual + ", " + others);
        }
    }

    /** So many for all stitches. */
    public static Strands of(int number) {
        if (number < 1 || number > MOST) {
            throw new IllegalArgumentException("strands must be 1 to " + MOST + ": " + number);
        }
        return PLAIN.get(number - 1);
    }

    /**
     * So many for each kind. The usual number is the one most stitches are worked with, of two with equally many the greater.
     *
     * @param kinds a number for each kind, one kind at least
     * @param stitches how many there are of each kind; what is not told counts as none
     */
    public static Strands of(Map<StitchKind, Integer> kinds, List<StitchCount> stitches) {
        long[] worked = new long[MOST + 1];
        for (StitchCount count : stitches) {
            worked[kinds.getOrDefault(count.kind(), 0)] += count.count();
        }
        int usual = kinds.values().stream()
                .max(Comparator.comparingLong((Integer number) -> worked[number]).thenComparing(number -> number)).orElseThrow();
        Map<StitchKind, Integer> others = new EnumMap<>(StitchKind.class);
        kinds.forEach((kind, number) -> {
            if (number != usual) {
                others.put(kind, number);
            }
        });
        return others.isEmpty() ? of(usual) : new Strands(usual, others);
    }

    /** Whether some kinds are worked with another number than the usual one. */
    public boolean differ() {
        return !others.isEmpty();
    }

    /** What this kind is worked with. */
    public int in(StitchKind kind) {
        return others.isEmpty() ? usual : others.getOrDefault(kind, usual);
    }
}
