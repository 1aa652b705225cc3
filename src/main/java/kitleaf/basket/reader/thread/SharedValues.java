package kitleaf.basket.reader.thread;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import kitleaf.basket.Margins;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;

/**
 * What comes again in thread after thread and piece after piece: names, symbols, colours, small counts, cloths. Each is kept once, since a
 * large basket is little else. May be asked from several readers at a time.
 */
public final class SharedValues {

    /** So many of a kind are known at most; those that come after are kept by each thread for itself. */
    private static final int MOST = 10_000;

    private final Map<String, Optional<String>> words = new ConcurrentHashMap<>();
    private final Map<String, Optional<Colour>> colours = new ConcurrentHashMap<>();
    private final Map<Integer, List<StitchCount>> crosses = new ConcurrentHashMap<>();
    private final Map<Cloth, Cloth> cloths = new ConcurrentHashMap<>();
    private final Map<Margins, Margins> margins = new ConcurrentHashMap<>();

    /** The same words, or the same nothing. */
    public Optional<String> words(Optional<String> read) {
        return read.isEmpty() ? read : once(words, read.get(), read);
    }

    /** The same colour, or the same nothing. */
    public Optional<Colour> colour(Optional<Colour> read) {
        return read.isEmpty() ? read : once(colours, read.get().hex(), read);
    }

    /** The same stitches. Only a number of plain crosses comes again often. */
    public List<StitchCount> stitches(List<StitchCount> read) {
        if (read.size() != 1 || read.get(0).kind() != StitchKind.CROSS || read.get(0).worked().isPresent()) {
            return List.copyOf(read);
        }
        List<StitchCount> known = crosses.get(read.get(0).count());
        return known == null ? once(crosses, read.get(0).count(), List.copyOf(read)) : known;
    }

    /** The same cloth. */
    public Cloth cloth(Cloth read) {
        return once(cloths, read, read);
    }

    /** The same margins. */
    public Margins margins(Margins read) {
        return once(margins, read, read);
    }

    private static <K, V> V once(Map<K, V> all, K key, V value) {
        V known = all.get(key);
        if (known != null) {
            return known;
        }
        if (all.size() < MOST) {
            all.put(key, value);
        }
        return value;
    }
}
