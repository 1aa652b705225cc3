package kitleaf.basket.reader.thread;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.Visible;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.table.TableFile;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.CalledThreads;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/**
 * The rows of one table of threads, shared out among the pieces and parts they name. It remembers who took which: a row
 * that nobody takes would be thread that nobody buys.
 */
public final class TableRows {

    /**
     * Whose threads are read.
     *
     * @param piece the piece's ID
     * @param part a part of it, or nothing for the piece itself
     */
    public record Owner(String piece, Optional<String> part) {
        public Owner {
            piece = Visible.of(piece);
            part = part.map(Visible::of);
        }

        /** In words. */
        public Said told() {
            return part.map(p -> Said.of("owner.part", Quote.bare(p), Quote.bare(piece))).orElse(Said.of("owner.piece", Quote.bare(piece)));
        }
    }

    /**
     * The threads of one owner, or of all who read the table where it names none.
     *
     * @param shares of them
     * @param problems told where somebody takes them
     * @param places where it says whose each is
     */
    public record Taken(List<CalledThread> threads, Shares shares, List<Problem> problems, List<Place> places) {
    }

    private final Path name;
    private final boolean named;
    private final boolean pieces;
    private final Map<ThreadTable.Whose, Taken> rows = new LinkedHashMap<>();
    private final List<Problem> problems;
    private final Set<Owner> takers = ConcurrentHashMap.newKeySet();

    private TableRows(Path name, ThreadTable.Rows read, List<Problem> problems, Settings settings, SharedValues recurring) {
        this.name = name;
        this.named = read.named();
        this.pieces = read.pieces();
        this.problems = problems;
        read.threads().forEach((whose, threads) -> {
            Problems own = new Problems();
            Shares shares = new Shares();
            List<Node> nodes = new ArrayList<>();
            threads.forEach(row -> nodes.add(ThreadTable.thread(row, own)));
            List<CalledThread> called = CalledThreads.copyOf(new ThreadReader(settings, recurring, shares, own).read(nodes));
            rows.put(whose, new Taken(called, shares, own.all(), !named ? List.of()
                    : threads.stream().map(ThreadTable::whoseIsSaid).toList()));
        });
    }

    /** The rows of a table; of one that cannot be read, none. */
    static TableRows of(TableFile file, Settings settings, SharedValues recurring) {
        Problems problems = new Problems();
        return of(file.name(), file.read(problems), problems, settings, recurring);
    }

    /** The rows of a text, if there is one; what was wrong with it is told with what is wrong in it. */
    static TableRows of(Path name, Optional<Source> text, Problems problems, Settings settings, SharedValues recurring) {
        ThreadTable.Rows read = text.map(source -> new ThreadTable(source, problems).read()).orElse(ThreadTable.Rows.NONE);
        return new TableRows(name, read, problems.all(), settings, recurring);
    }

    /** Whether rows say whose they are, so that a piece may find none for itself. */
    public boolean named() {
        return named;
    }

    /** What is for this owner; remembered. Rows that leave their piece open are for each piece that reads them. */
    public Optional<Taken> take(Owner owner) {
        takers.add(owner);
        return Optional.ofNullable(rows.get(!named ? ThreadTable.Whose.ANYBODY
                : new ThreadTable.Whose(pieces ? Optional.of(owner.piece()) : Optional.empty(), owner.part())));
    }

    /** Tells what is wrong in it, and in those rows that somebody took. */
    void tell(Problems to) {
        problems.forEach(to::add);
        rows.forEach((whose, taken) -> {
            if (taken(whose)) {
                taken.problems().forEach(to::add);
            }
        });
    }

    private boolean taken(ThreadTable.Whose whose) {
        return !named || (pieces ? takers.contains(new Owner(whose.piece().orElseThrow(), whose.part()))
                : takers.stream().anyMatch(owner -> owner.part().equals(whose.part())));
    }

    /** Tells of rows for pieces there are not, and then of rows that their piece or part did not take. */
    void check(Set<String> seen, Collection<String> ids, Problems to) {
        rows.forEach((whose, taken) -> {
            if (!taken(whose)) {
                String piece = whose.piece()
                        .orElseGet(() -> takers.stream().map(Owner::piece).min(Comparator.naturalOrder()).orElseThrow());
                taken.places().forEach(place -> untaken(new Owner(piece, whose.part()), place, seen, ids, to));
            }
        });
    }

    private void untaken(Owner owner, Place place, Set<String> seen, Collection<String> ids, Problems to) {
        if (!seen.contains(owner.piece())) {
            to.add(place, Fault.of(Said.of("goals.no-piece", Quote.bare(owner.piece())), Advice.on(owner.piece(), ids)));
        } else if (to.none()) {
            to.add(place, Fault.of("table.untaken", owner.told(), name.getFileName().toString()));
        }
    }
}
