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

    private static final Set<String> DRAWN = Set.of("g", "rect", "line", "circle", "path", "text", "bookmark");

    private static final Map<String, Set<String>> CHILDREN = Map.of(
            "document", Set.of("page"),
            "page", DRAWN,
            "g", DRAWN,
            "text", Set.of("tspan"));

    private static final Map<String, Set<String>> OWN = Map.of(
            "document", Set.of("title", "subject", "lang"),
            "page", Set.of("width", "height"),
            "g", Set.of("transform"),
            "rect", Set.of("x", "y", "width", "height", "rx", "ry", "transform"),
            "line", Set.of("x1", "y1", "x2", "y2", "transform"),
            "circle", Set.of("cx", "cy", "r", "transform"),
            "path", Set.of("d", "transform"),
            "text", Set.of("x", "y", "width", "lines", "fit", "transform"),
            "tspan", Set.of(),
            "bookmark", Set.of("title", "level"));

    private static final Set<String> PRESENTED = Set.of("page", "g", "rect", "line", "circle", "path", "text");

    private Vocabulary() {
    }

    static boolean isElement(String name) {
        return OWN.containsKey(name);
    }

    static Collection<String> elements() {
        return OWN.keySet();
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
