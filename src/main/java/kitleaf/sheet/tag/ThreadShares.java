package kitleaf.sheet.tag;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** How the threads of a piece are shared among as few tags as hold them: as even as can be, so that no tag is for a single one. */
final class ThreadShares {

    private ThreadShares() { }

    /**
     * How many threads each tag gets; together all of them.
     *
     * @param threads 0 or more
     * @param columns in which they stand; rows are filled where that leaves more than one for the last tag
     * @param room how many the tag of a number, from 0, has room for; more than 0 from some number on
     */
    static List<Integer> of(int threads, int columns, IntUnaryOperator room) {
        List<Integer> rooms = new ArrayList<>();
        for (int held = 0; held < threads; held += rooms.get(rooms.size() - 1)) {
            rooms.add(room.applyAsInt(rooms.size()));
        }
        if (rooms.size() < 2) {
            return rooms.isEmpty() ? List.of() : List.of(threads);
        }
        int level = IntStream.rangeClosed(1, threads).filter(most -> rooms.stream().mapToInt(it -> Math.min(it, most)).sum() >= threads).findFirst().orElseThrow();
        List<Integer> fullRows = filled(rooms, (level + columns - 1) / columns * columns, threads);
        List<Integer> shares = fullRows.get(fullRows.size() - 1) > 1 ? fullRows : filled(rooms, level, threads);
        return withoutSingle(shares, rooms);
    }

    /** From the first on as many as there are rooms for, up to a level. */
    private static List<Integer> filled(List<Integer> rooms, int level, int threads) {
        List<Integer> shares = new ArrayList<>();
        int left = threads;
        for (int room : rooms) {
            shares.add(Math.min(left, Math.min(room, level)));
            left -= shares.get(shares.size() - 1);
        }
        return shares;
    }

    /** What is left alone goes where there is room: from the first tag, which has facts to carry, on to the next; or to the last from the one before it. */
    private static List<Integer> withoutSingle(List<Integer> shares, List<Integer> rooms) {
        int last = shares.size() - 1;
        int before = shares.get(last - 1);
        if (shares.get(last) == 1 && (before > 2 || last == 1) && rooms.get(last) > 1) {
            // Two and one on two tags are three on the second, if it holds them.
            int moved = before > 2 ? 1 : rooms.get(last) > before ? before : 0;
            shares.set(last - 1, before - moved);
            shares.set(last, 1 + moved);
        }
        if (shares.get(0) == 1 && shares.get(1) < rooms.get(1)) {
            shares.set(0, 0);
            shares.set(1, shares.get(1) + 1);
        }
        return shares;
    }
}
