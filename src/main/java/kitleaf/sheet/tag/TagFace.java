package kitleaf.sheet.tag;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
import kitleaf.sheet.page.Swatch;

/**
 * One face of a bag tag, everything on it placed from the face's top left corner. Absent parts are empty or null.
 *
 * @param box the face on its page
 * @param turned whether it stands on its head there
 * @param hole the middle of the punch mark
 * @param stripMm how deep the strip for the ribbon is
 * @param texts what is written
 * @param threads what is ticked off, on fronts
 * @param log lines to write on, some written already, on backs
 * @param logHead the column headings of the log, at the height of the first line above it
 * @param columns the left edges of the log's columns
 * @param logRightMm where its lines end
 * @param logPt the size of the log
 * @param code the code's text, on backs
 * @param codeBox where it stands, or null
 * @param lines ruled lines for notes, as boxes without height
 */
public record TagFace(Box box, boolean turned, Box hole, double stripMm, List<FittedText> texts, List<Tick> threads,
                      List<LogLine> log, List<String> logHead, List<Double> columns, double logRightMm, double logPt, String code,
                      Box codeBox, List<Box> lines) {

    /** Copies the lists. */
    public TagFace {
        Objects.requireNonNull(box);
        Objects.requireNonNull(hole);
        texts = List.copyOf(texts);
        threads = List.copyOf(threads);
        log = List.copyOf(log);
        logHead = List.copyOf(logHead);
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    /**
     * A thread to tick off.
     *
     * @param xMm of its box
     * @param yMm of its box
     * @param widthMm all of it may take
     * @param swatchMm the side of its swatch
     * @param codeXMm from the box's left side to the code
     * @param codeYMm from its top to the code's baseline
     * @param codePt the code's size
     * @param code what stands on the skein
     * @param nameXMm from the box's left side to the name
     * @param name of the colour, if it has room
     * @param swatch its colour and symbol
     */
    public record Tick(double xMm, double yMm, double widthMm, double swatchMm, double codeXMm, double codeYMm, double codePt,
                       String code, double nameXMm, String name, Swatch swatch) { }

    /**
     * A line of the log.
     *
     * @param baselineMm what is written on it stands here; the line is a little below
     * @param cells day, hours and stitches; empty to write in by hand
     */
    public record LogLine(double baselineMm, List<String> cells) {
        /** Copies the list. */
        public LogLine {
            cells = List.copyOf(cells);
        }
    }
}
