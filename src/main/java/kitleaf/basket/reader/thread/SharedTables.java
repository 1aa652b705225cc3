package kitleaf.basket.reader.thread;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Visible;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.table.TableFile;
import kitleaf.basket.thread.CalledThread;

/**
 * The tables of threads that the pieces of a basket name. Each is read once and what is wrong in it is told once, however many pieces
 * share it; and so that a short basket cannot ask for threads without end, all that are called for are counted. May be asked from
 * several readers at a time.
 */
public final class SharedTables {

    /**
     * The most threads called for in one basket, twice the labels that are printed unasked. Every sheet takes time and memory for each,
     * and a line of YAML can call for a whole table.
     */
    public static final long MOST_THREADS = 1_000_000;

    private final Map<Path, TableRows> read = new ConcurrentHashMap<>();
    private final AtomicLong called = new AtomicLong();

    /** The rows of a table. */
    public TableRows rows(TableFile file, Settings settings, SharedValues recurring) {
        return read.computeIfAbsent(file.name(), name -> TableRows.of(file, settings, recurring));
    }

    /** These threads, or none where they are too many with all that were called for before. */
    public List<CalledThread> counted(List<CalledThread> threads) {
        return roomFor(threads.size()) ? threads : List.of();
    }

    /** Counts threads that are called for; whether they may still be read. */
    public boolean roomFor(int threads) {
        return called.addAndGet(threads) <= MOST_THREADS;
    }

    /** Whether more were called for than are taken; once it is so, not all is read, and what else is told depends on who came first. */
    public boolean tooMany() {
        return called.get() > MOST_THREADS;
    }

    /** Tells what is wrong in the tables, but for rows that nobody took. */
    public void tell(Problems problems) {
        sorted().forEach(table -> table.tell(problems));
    }

    /**
     * Tells of rows for pieces there are not, and then of rows that their piece or part did not take.
     *
     * @param ids of all pieces there are
     */
    public void check(Collection<String> ids, Problems problems) {
        Set<String> seen = ids.stream().map(Visible::of).collect(Collectors.toSet());
        sorted().forEach(table -> table.check(seen, ids, problems));
    }

    private List<TableRows> sorted() {
        return read.entrySet().stream().sorted(Comparator.comparing(Map.Entry::getKey)).map(Map.Entry::getValue).toList();
    }
}
