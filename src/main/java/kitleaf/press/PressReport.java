package kitleaf.press;

import java.util.List;
import kitleaf.words.Said;

/**
 * What came out of the press.
 *
 * @param pages the number of pages drawn, at least 1
 * @param warnings what the reader of the sheet should know: text cut short, characters no bundled
 *     face has, codes too fine to print; each names its page and is spoken with {@link PressWords}
 */
public record PressReport(int pages, List<Said> warnings) {

    /** Copies the warnings. */
    public PressReport {
        if (pages < 1) {
            throw new IllegalArgumentException("a document has at least one page: " + pages);
        }
        warnings = List.copyOf(warnings);
    }
}
