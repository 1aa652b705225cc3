package kitleaf.command.speech;

import java.io.PrintWriter;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import kitleaf.words.Said;

/** One line that says what long work is at; silent when nobody watches, and in a run too short to be read about. */
public final class ProgressLine {

    private static final int SHOW_FROM_MILLIS = 400;
    private static final int SHOW_EVERY_MILLIS = 200;

    private final PrintWriter out;
    private final ScheduledExecutorService clock;
    private final Voice voice;
    private String now = "";
    private String shown = "";

    public ProgressLine(PrintWriter out, boolean watched, Voice voice) {
        // Shown by a clock rather than by the work, which may be long over one thing.
        this(out, watched ? Executors.newSingleThreadScheduledExecutor(ProgressLine::daemon) : null, voice);
    }

    /** @param clock what shows the line from time to time; null where nobody watches */
    public ProgressLine(PrintWriter out, ScheduledExecutorService clock, Voice voice) {
        this.out = Screen.exact(out);
        this.voice = voice;
        this.clock = clock;
        if (clock != null) {
            clock.scheduleWithFixedDelay(this::show, SHOW_FROM_MILLIS, SHOW_EVERY_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "progress");
        thread.setDaemon(true);
        return thread;
    }

    /** What is being done from here on. */
    public synchronized void step(String key, Object... slots) {
        if (clock != null) {
            now = voice.say(key, slots);
        }
    }

    /** What to tell of each page of a sheet. */
    public IntConsumer of(String sheet, int pages) {
        return page -> step("print.progress", sheet, page, pages);
    }

    /** What to tell of each picture of a sheet's pages. */
    public IntConsumer ofPictures(String sheet, int pages) {
        return page -> step("progress.pictures", sheet, page, pages);
    }

    /** Says something that stays, whether anybody watches or not. */
    public synchronized void tell(Said said) {
        wipe();
        out.println(voice.say(said));
    }

    public synchronized void show() {
        if (!now.equals(shown)) {
            out.print("\r" + now + " ".repeat(Math.max(0, shown.length() - now.length())));
            out.flush();
            shown = now;
        }
    }

    /** Wipes the line and shows no other. */
    public synchronized void clear() {
        if (clock != null) {
            clock.shutdownNow();
        }
        wipe();
        now = "";
    }

    private void wipe() {
        if (!shown.isEmpty()) {
            out.print("\r" + " ".repeat(shown.length()) + "\r");
            out.flush();
        }
        shown = "";
    }
}
