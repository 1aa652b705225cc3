package kitleaf.sizing.thread;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.PieceState;
import kitleaf.basket.Progress;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.sizing.Standing;
import kitleaf.sizing.StitchTally;

/**
 * The threads of one piece.
 *
 * @param piece what she wrote
 * @param threads each code and put-up once, in the order of the chart, the piece's own before those of its parts
 * @param left the part of the piece still to be stitched, 0 to 1
 * @param state how the piece stands
 */
public record PieceThreads(Piece piece, List<ThreadTotal> threads, double left, PieceState state) {

    /** Copies the list; refuses parts outside 0 to 1. */
    public PieceThreads {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(state);
        threads = List.copyOf(threads);
        if (!(left >= 0 && left <= 1)) {
            throw new IllegalArgumentException("left must be 0 to 1: " + left);
        }
    }

    /** Whether threads are bought for it: not for what is stitched, nor for what is laid aside. */
    public boolean boughtFor() {
        return left > 0 && !state.laidAside();
    }

    private record Key(String code, String skein) { }

    /**
     * The threads of a piece.
     *
     * @param putUps by name, every one the piece calls for; the built-in cotton may be missing
     * @param perHour her pace in stitches, where it is known
     * @throws IllegalArgumentException when a thread comes in a put-up that is not among them
     */
    static PieceThreads of(Piece piece, Map<String, PutUp> putUps, OptionalDouble perHour) {
        Map<Key, List<ThreadNeed>> needs = new LinkedHashMap<>();
        add(piece, Optional.empty(), piece.threads(), putUps, needs);
        for (Part part : piece.parts()) {
            add(piece, Optional.of(part), part.threads(), putUps, needs);
        }
        List<ThreadTotal> totals = needs.entrySet().stream()
                .map(entry -> new ThreadTotal(entry.getKey().code(), entry.getValue().get(0).putUp(), entry.getValue())).toList();
        StitchTally tally = StitchTally.of(piece, perHour);
        return new PieceThreads(piece, totals, left(piece.progress(), tally), Standing.of(piece.progress(), tally));
    }

    /** How many threads a piece has, each code and put-up once: as many as are reckoned, without reckoning them. */
    static int number(Piece piece) {
        Set<Key> keys = new HashSet<>();
        for (CalledThread thread : piece.threads()) {
            keys.add(new Key(thread.code(), thread.skein()));
        }
        for (Part part : piece.parts()) {
            for (CalledThread thread : part.threads()) {
                keys.add(new Key(thread.code(), thread.skein()));
            }
        }
        return keys.size();
    }

    private static void add(Piece piece, Optional<Part> part, List<CalledThread> threads, Map<String, PutUp> putUps,
                            Map<Key, List<ThreadNeed>> needs) {
        for (CalledThread thread : threads) {
            PutUp putUp = Optional.ofNullable(putUps.get(thread.skein()))
                    .or(() -> Optional.of(PutUp.COTTON).filter(cotton -> cotton.name().equals(thread.skein())))
                    .orElseThrow(() -> new IllegalArgumentException("no put-up " + thread.skein() + " for " + thread.code()));
            needs.computeIfAbsent(new Key(thread.code(), thread.skein()), key -> new ArrayList<>())
                    .add(ThreadNeed.of(piece, part, thread, putUp));
        }
    }

    /**
     * The part of a piece still to be stitched. Without a figure or a log nobody knows, and all of it is; a day it was
     * started on says nothing of how far it has come.
     */
    private static double left(Progress progress, StitchTally tally) {
        if (progress.last().isPresent()) {
            return 0;
        }
        boolean told = progress.reading().isPresent() || !progress.log().isEmpty();
        return told && tally.total() > 0 ? (double) tally.left() / tally.total() : 1;
    }
}
