package kitleaf.press.type;

import java.util.List;

/**
 * A text set in type, ready for any page and any place on it.
 *
 * @param runs in the order they are drawn
 * @param cut whether not all of the text is there
 * @param whole the text as it should be
 * @param kept what is drawn of it
 * @param missing the glyphs drawn as boxes
 * @param lines so many
 * @param factor what its sizes were multiplied by to make it fit
 * @param parted whether a line ends within a word
 */
public record SetText(List<SetRun> runs, boolean cut, String whole, String kept, List<Glyph> missing, int lines, double factor,
        boolean parted) {

    public SetText {
        runs = List.copyOf(runs);
        missing = List.copyOf(missing);
    }

    /** Tells what the reader of the page should know. */
    public void warn(int page, Warnings warnings) {
        if (cut) {
            warnings.cut(page, whole, kept);
        }
        for (int i = 0; i < missing.size(); i++) {
            warnings.missing(page, missing.get(i));
        }
    }
}
