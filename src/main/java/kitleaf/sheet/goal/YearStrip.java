package kitleaf.sheet.goal;

import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Masthead;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Passage;

/**
 * The year as a strip of weeks, one row a piece, placed on its page. A place of 0 stands for nothing there.
 *
 * @param frame of the page
 * @param title of the page
 * @param subtitle whether it fits
 * @param labelsMm room for the titles of the pieces
 * @param topMm where the strip begins
 * @param bottomMm where it ends
 * @param todayMm where the data's day is
 * @param off weeks with time off
 * @param months where they begin
 * @param rows the pieces in their order
 * @param notes what stands in the way
 * @param head of the page in large print, or null
 * @param legend what stands below the strip in large print; else empty
 */
public record YearStrip(PageFrame frame, String title, String subtitle, double labelsMm, double topMm, double bottomMm, double todayMm,
                        List<Box> off, List<Month> months, List<Row> rows, List<Note> notes,
                        Masthead head, List<Passage> legend) {

    /** Copies the lists. */
    public YearStrip {
        off = List.copyOf(off);
        months = List.copyOf(months);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
        legend = List.copyOf(legend);
    }

    /** Where a word so wide starts from today's line: right of it, or left where it would run off the page. */
    public double todayWordMm(double wordMm) {
        return todayMm + wordMm + 1 > frame.widthMm() - Frames.MARGIN_MM ? -wordMm - 0.8 : 0.8;
    }

    /**
     * A month.
     *
     * @param xMm where it begins
     * @param yMm the top of its line
     * @param bottomMm the end of its line
     * @param name short
     */
    public record Month(double xMm, double yMm, double bottomMm, String name) { }

    /**
     * A piece.
     *
     * @param title its title
     * @param titleLines on so many lines
     * @param yMm its top
     * @param heightMm of its row
     * @param main weeks as the main piece
     * @param beside weeks as the second one
     * @param likelyFromMm the day it is finished in one of ten cases
     * @param likelyToMm the day it is finished in nine of ten
     * @param byMm the day it is wanted
     */
    public record Row(String title, int titleLines, double yMm, double heightMm, List<Box> main, List<Box> beside, double likelyFromMm, double likelyToMm,
                      double byMm) {
        /** Copies the lists. */
        public Row {
            main = List.copyOf(main);
            beside = List.copyOf(beside);
        }
    }

    /**
     * A sentence.
     *
     * @param text what it says
     * @param yMm its top
     */
    public record Note(String text, double yMm) { }
}
