package kitleaf.press;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * How one document is pressed: the printer's correction, the document's date and who hears of pages.
 *
 * @param acrossFactor stretch across the page about its centre, 1 for none; {@value #LEAST} to {@value #MOST}
 * @param downFactor stretch down the page about its centre, 1 for none; {@value #LEAST} to {@value #MOST}
 * @param date the document's creation date, taken at midnight UTC; a fixed date when absent, so that
 *     equal markup gives equal bytes
 * @param onPage called with the number of each page, from 1, once that page has been drawn
 */
public record PressSettings(double acrossFactor, double downFactor, Optional<LocalDate> date, IntConsumer onPage) {

    /** The smallest correction taken; a printer further out than this is broken. */
    public static final double LEAST = 0.8;

    /** The largest correction taken. */
    public static final double MOST = 1.25;

    /** Refuses factors outside {@value #LEAST} to {@value #MOST}. */
    public PressSettings {
        check(acrossFactor);
        check(downFactor);
        Objects.requireNonNull(date);
        Objects.requireNonNull(onPage);
    }

    /** No correction, no date, nobody told. */
    public static PressSettings plain() {
        return new PressSettings(1, 1, Optional.empty(), page -> { });
    }

    private static void check(double factor) {
        if (!(factor >= LEAST && factor <= MOST)) {
            throw new IllegalArgumentException("correction must be " + LEAST + " to " + MOST + ": " + factor);
        }
    }
}
