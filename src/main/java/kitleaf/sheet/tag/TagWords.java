package kitleaf.sheet.tag;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Swatch;

/**
 * What a bag tag says of its piece. Absent text is empty.
 *
 * @param title of the piece
 * @param facts a line each, of one or more: designer and chart, cloth, design, cut, needle and strands, dates
 * @param threads in the order of the chart
 * @param log the sittings, oldest first
 * @param plain facts and codes of threads as plain text, for the code
 */
public record TagWords(String title, List<List<Fact>> facts, List<Thread> threads, List<Sitting> log, String plain) {

    /** Copies the lists. */
    public TagWords {
        Objects.requireNonNull(title);
        facts = List.copyOf(facts);
        threads = List.copyOf(threads);
        log = List.copyOf(log);
    }

    /**
     * A label and what is so called.
     *
     * @param label such as "cut"
     * @param value such as "16 × 21 in (40.7 × 53.4 cm)"
     */
    public record Fact(String label, String value) { }

    /**
     * A thread to tick off.
     *
     * @param code what stands on the skein
     * @param name of its colour
     * @param swatch its colour and symbol
     */
    public record Thread(String code, String name, Swatch swatch) { }

    /**
     * A line of the log.
     *
     * @param day written out
     * @param hours so many
     * @param stitches so many
     */
    public record Sitting(String day, String hours, String stitches) { }
}
