package kitleaf.press;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The elements of the page markup, where each may stand and which attributes it takes.
 *
 * <p>To add an element, add it here and draw it in {@link PageArtist}.
 */
final class Vocabulary {

    private static final Set<String> PRESENTATION = Set.of("fill", "stroke", "stroke-width", "stroke-dasharray",
            "stroke-linecap", "stroke-linejoin", "font-family", "font-size", "font-weight", "letter-spacing",
            "text-anchor", "line-height", "font-variant-numeric");

    private static final Set<String> SPAN = Set.of("fill", "font-weight", "font-size", "font-family",
            "letter-spacing");

    private static final Set<String> DRAWN = Set.of("g", "rect", "line", "circle", "path", "text", "code",
            "bookmark");

    private static final Map<String, Set<String>> CHILDREN = Map.of(
            "document", Set.of("page"),
            "page", DRAWN,
            "g", DRAWN,
            "text", Set.of("tspan"));

    private static final Map<String, Set<String>> OWN = Map.ofEntries(
            Map.entry("document", Set.of("title", "subject", "lang")),
            Map.entry("page", Set.of("width", "height")),
            Map.entry("g", Set.of("transform")),
            Map.entry("rect", Set.of("x", "y", "width", "height", "rx", "ry", "transform")),
            Map.entry("line", Set.of("x1", "y1", "x2", "y2", "transform")),
            Map.entry("circle", Set.of("cx", "cy", "r", "transform")),
            Map.entry("path", Set.of("d", "transform")),
            Map.entry("text", Set.of("x", "y", "width", "lines", "fit", "transform")),
            Map.entry("tspan", Set.of()),
            Map.entry("code", Set.of("x", "y", "size", "level", "transform")),
            Map.entry("bookmark", Set.of("title", "level")));

    private static final Set<String> PRESENTED = Set.of("page", "g", "rect", "line", "circle", "path", "text",
            "code");

    private static final Set<String> WORDED = Set.of("text", "tspan", "code");

    private Vocabulary() {
    }

    static boolean isElement(String name) {
        return OWN.containsKey(name);
    }

    static Collection<String> elements() {
        return OWN.keySet();
    }

    /** Whether characters may stand in it. */
    static boolean takesText(String element) {
        return WORDED.contains(element);
    }

    static boolean allows(String parent, String child) {
        return CHILDREN.getOrDefault(parent, Set.of()).contains(child);
    }

    static boolean isPresentation(String element, String attribute) {
        return PRESENTED.contains(element) ? PRESENTATION.contains(attribute)
                : element.equals("tspan") && SPAN.contains(attribute);
    }

    static boolean takes(String element, String attribute) {
        return OWN.get(element).contains(attribute) || isPresentation(element, attribute);
    }

    static Collection<String> attributes(String element) {
        Set<String> all = new TreeSet<>(OWN.get(element));
        PRESENTATION.stream().filter(name -> isPresentation(element, name)).forEach(all::add);
        return all;
    }
}
