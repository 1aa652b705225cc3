package kitleaf.command.speech;

import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Where the time of a run went, for {@code --timings}. */
public final class Clock {

    private final Map<String, Long> spent = new LinkedHashMap<>();
    private long last = System.nanoTime();

    /** A clock that counts what went before it as the start of the program. */
    public static Clock sinceStart() {
        Clock clock = new Clock();
        clock.spent.put("start", (System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime()) * 1_000_000);
        return clock;
    }

    /** A clock nobody will read: to ask the Java machine when it started takes a twentieth of a second. */
    public static Clock unread() {
        return new Clock();
    }

    /** Books the time since the last mark. */
    public void mark(String phase) {
        long now = System.nanoTime();
        spent.merge(phase, now - last, Long::sum);
        last = now;
    }

    public void print(PrintWriter out) {
        spent.forEach((phase, nanos) -> out.printf(Locale.ROOT, "%-8s %7.1f ms%n", phase, nanos / 1e6));
    }
}
