package kitleaf.sheet.template;

import java.time.Duration;

/**
 * How far a template may go.
 *
 * @param patience how long nothing may come while its reader waits
 * @param whole how long it may take in all
 * @param characters the most markup it may write in all
 * @param bytes the most memory it may ask for between two chunks of markup, whatever it gives back
 */
record Bounds(Duration patience, Duration whole, long characters, long bytes) {

    /** A page takes milliseconds, so this is a loop without end. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** The program's own templates go as far as their sheets. */
    static final Bounds OURS = new Bounds(PATIENCE, Duration.ofDays(1), Long.MAX_VALUE, Long.MAX_VALUE);

    /** As much as the press takes for one page. */
    private static final long CHARACTERS = 5_000_000;
    /** Fifty times what our own ask for; a text or list made longer and longer has it in a moment. */
    private static final long BYTES = 256L << 20;

    /** The bounds of a stranger's template for a sheet that was laid out with so many pages; ours take a millisecond for each. */
    static Bounds of(int pages) {
        return new Bounds(PATIENCE, Duration.ofSeconds(60).plusMillis(50L * pages), CHARACTERS * (1 + pages), BYTES);
    }

    /** Whether memory and time have to be watched, which costs a short run a tenth. */
    boolean watched() {
        return bytes < Long.MAX_VALUE;
    }
}
