package kitleaf.press;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.press.markup.PressWords;
import kitleaf.words.Said;

/**
 * What came out of the press.
 *
 * @param pages the number of pages drawn, at least 1
 * @param warnings what the reader of the sheet should know: text cut short, characters no bundled
 *     face has, codes too fine to print; each names its page and is spoken with {@link PressWords}
 */
public record PressReport(int pages, List<Said> warnings) {

    /** How each cause is told when it comes more than once. */
    private static final Map<String, String> OF_SEVERAL = Map.of("warning.cut", "warning.cut.several", "warning.no-room",
            "warning.no-room.several", "warning.missing", "warning.missing.several", "warning.fine", "warning.fine.several");

    /** Copies the warnings. */
    public PressReport {
        if (pages < 1) {
            throw new IllegalArgumentException("a document has at least one page: " + pages);
        }
        warnings = List.copyOf(warnings);
    }

    /** The warnings for somebody who reads them off a screen: one a cause, with how many there are and the first. */
    public List<Said> warningsByCause() {
        Map<String, List<Said>> causes = warnings.stream().collect(Collectors.groupingBy(Said::key, LinkedHashMap::new,
                Collectors.toList()));
        return causes.values().stream().map(PressReport::together).toList();
    }

    private static Said together(List<Said> warnings) {
        Said first = warnings.get(0);
        if (warnings.size() == 1) {
            return first;
        }
        return Said.of(OF_SEVERAL.get(first.key()), Stream.concat(Stream.of(warnings.size()), first.slots().stream()).toArray());
    }
}
