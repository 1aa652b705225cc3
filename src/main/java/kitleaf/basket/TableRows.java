package kitleaf.basket;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitleaf.words.Said;

/**
 * Shares the rows of a table out among the pieces and parts they name, and remembers who took which: a row that nobody
 * takes would be thread that nobody buys.
 */
final class TableRows {

    /**
     * Whose threads are read.
     *
     * @param piece the piece's ID
     * @param part a part of it, or nothing for the piece itself
     */
    record Owner(String piece, Optional<String> part) {
        Owner {
            piece = Visible.of(piece);
            part = part.map(Visible::of);
        }

        /** In words. */
        Said told() {
            return part.map(p -> Said.of("owner.part", Quote.bare(p), Quote.bare(piece))).orElse(Said.of("owner.piece", Quote.bare(piece)));
        }
    }

    /** A row by its table and its line, whoever reads the table. */
    private record Row(Path table, int line) {
    }

    /**
     * A row for somebody else.
     *
     * @param owner whose it is
     * @param place where that is said
     */
    private record Left(Owner owner, Place place) {
    }

    private final Set<Row> taken = new HashSet<>();
    private final Map<Row, Left> left = new LinkedHashMap<>();

    /** Whether a row is for this owner; remembered either way. A row that leaves its piece open is for the piece that reads it. */
    boolean isFor(Owner owner, Node.Mapping row) {
        Optional<Node.Entry> piece = Optional.ofNullable(row.entries().get(ThreadTable.PIECE));
        Optional<Node.Entry> part = Optional.ofNullable(row.entries().get(ThreadTable.PART));
        Owner named = new Owner(piece.map(TableRows::text).orElse(owner.piece()), part.map(TableRows::text));
        Row at = new Row(row.place().source().name(), row.place().line());
        if (named.equals(owner)) {
            taken.add(at);
            return true;
        }
        left.putIfAbsent(at, new Left(named, piece.or(() -> part).map(Node.Entry::key).orElse(row.place())));
        return false;
    }

    /** Whether no table was read. */
    boolean none() {
        return taken.isEmpty() && left.isEmpty();
    }

    /** Adds what was remembered of other files, which come after those remembered here. */
    void add(TableRows later) {
        taken.addAll(later.taken);
        later.left.forEach(left::putIfAbsent);
    }

    private static String text(Node.Entry cell) {
        return ((Node.Scalar) cell.value()).text().strip();
    }

    /** Tells of rows for pieces there are not, and then of rows that their piece or part did not take. */
    void check(Collection<String> ids, Problems problems) {
        Set<String> composed = new HashSet<>();
        ids.forEach(id -> composed.add(Visible.of(id)));
        left.keySet().removeAll(taken);
        left.forEach((row, other) -> {
            if (!composed.contains(other.owner().piece())) {
                problems.add(other.place(), Fault.of(Said.of("goals.no-piece", Quote.bare(other.owner().piece())),
                        Advice.on(other.owner().piece(), ids)));
            } else if (problems.none()) {
                problems.add(other.place(), Fault.of("table.untaken", other.owner().told(), row.table().getFileName().toString()));
            }
        });
    }
}
