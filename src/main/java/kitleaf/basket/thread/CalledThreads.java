package kitleaf.basket.thread;

import java.util.AbstractList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.RandomAccess;

/**
 * A list of threads that never changes, kept in less than half the memory: a large basket is little else. A thread is made anew each
 * time it is asked for; what few threads have takes no room where none has it.
 */
public final class CalledThreads extends AbstractList<CalledThread> implements RandomAccess {

    /** What every thread has, side by side: code, name, colour, symbol, stitches. */
    private static final int FACTS = 5;

    /** What few threads have. */
    private record Rare(OptionalDouble share, Optional<Used> used, OptionalInt over, Optional<String> lot, boolean mixLots,
                        Map<StitchKind, Integer> strands) {

        private static final Rare NOTHING = new Rare(OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(),
                false, Map.of());

        static Rare of(CalledThread thread) {
            boolean nothing = thread.share().isEmpty() && thread.used().isEmpty() && thread.over().isEmpty() && thread.lot().isEmpty()
                    && !thread.mixLots() && !thread.strands().differ();
            return nothing ? NOTHING
                    : new Rare(thread.share(), thread.used(), thread.over(), thread.lot(), thread.mixLots(), thread.strands().others());
        }
    }

    private final Object[] facts;
    private final byte[] strands;
    /** The put-up of each, or the one that all come in. */
    private final String[] skeins;
    /** Null where no thread has any of it. */
    private final Rare[] rare;

    private CalledThreads(List<CalledThread> threads) {
        facts = new Object[FACTS * threads.size()];
        strands = new byte[threads.size()];
        String[] putUps = new String[threads.size()];
        boolean several = false;
        Rare[] rest = new Rare[threads.size()];
        boolean any = false;
        for (int i = 0; i < threads.size(); i++) {
            CalledThread thread = threads.get(i);
            int at = FACTS * i;
            facts[at] = thread.code();
            facts[at + 1] = thread.name();
            facts[at + 2] = thread.colour();
            facts[at + 3] = thread.symbol();
            facts[at + 4] = thread.stitches();
            strands[i] = (byte) thread.strands().usual();
            putUps[i] = thread.skein();
            several |= !putUps[i].equals(putUps[0]);
            rest[i] = Rare.of(thread);
            any |= rest[i] != Rare.NOTHING;
        }
        skeins = several ? putUps : new String[] {putUps[0]};
        rare = any ? rest : null;
    }

    /** A list of the same threads. */
    public static List<CalledThread> copyOf(List<CalledThread> threads) {
        return threads instanceof CalledThreads ? threads : threads.isEmpty() ? List.of() : new CalledThreads(threads);
    }

    @Override
    public int size() {
        return strands.length;
    }

    @Override
    @SuppressWarnings("unchecked")
    public CalledThread get(int index) {
        Rare rest = rare == null ? Rare.NOTHING : rare[index];
        int at = FACTS * index;
        Strands needle = rest.strands().isEmpty() ? Strands.of(strands[index]) : new Strands(strands[index], rest.strands());
        return new CalledThread((String) facts[at], (Optional<String>) facts[at + 1], (Optional<Colour>) facts[at + 2],
                (Optional<String>) facts[at + 3], skeins[skeins.length == 1 ? 0 : index], needle, (List<StitchCount>) facts[at + 4],
                rest.share(), rest.used(), rest.over(), rest.lot(), rest.mixLots());
    }
}
