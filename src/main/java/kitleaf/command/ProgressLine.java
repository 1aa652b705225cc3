package kitleaf.command;

import java.io.PrintWriter;
import java.util.function.IntConsumer;

/** One line that counts pages while a long sheet is printed; silent when nobody watches. */
final class ProgressLine {

    private static final int SHOW_FROM_MILLIS = 400;

    private final PrintWriter out;
    private final boolean watched;
    private final long started = System.nanoTime();
    private int shown;

    ProgressLine(PrintWriter out, boolean watched) {
        this.out = out;
        this.watched = watched;
    }

    /** What to tell of each page of a sheet. */
    IntConsumer of(String sheet, int pages) {
        return page -> {
            // A short run is over before a line could be read.
            if (watched && (System.nanoTime() - started) / 1_000_000 > SHOW_FROM_MILLIS && (page % 10 == 0 || page == pages)) {
                String line = sheet + ": page " + page + " of " + pages;
                out.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
                out.flush();
                shown = line.length();
            }
        };
    }

    /** Wipes the line. */
    void clear() {
        if (shown > 0) {
            out.print("\r" + " ".repeat(shown) + "\r");
            out.flush();
            shown = 0;
        }
    }
}
