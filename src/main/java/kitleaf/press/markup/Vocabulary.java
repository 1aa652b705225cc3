package kitleaf.press.markup;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The elements of the page markup, where each may stand and which attributes it takes.
 *
 * <p>To add an element, add it here and draw it in {@code PageArtist} (or, of a flow, in {@code FlowReader}).
 */
final class Vocabulary {

    private static final Set<String> PRESENTATION = Set.of("fill", "stroke", "stroke-width", "stroke-dasharray",
            "stroke-linecap", "stroke-linejoin", "font-family", "font-size", "font-weight", "letter-spacing",
            "text-anchor", "line-height", "fit", "font-variant-numeric");

    private static final Set<String> SPAN = Set.of("fill", "font-weight", "font-size", "font-family",
            "letter-spacing");

    private static final Set<String> DRAWN = Set.of("g", "rect", "line", "circle", "path", "text", "code",
            "bookmark", "box");

    /** What flows; and what each of these takes: how it stands among others, and a name to be used by. */
    private static final Set<String> BLOCKS = Set.of("text", "stack", "box", "row", "grid", "either", "place", "rule");
    private static final Set<String> STANCE = Set.of("before", "after", "keep", "break", "width", "align", "many", "id");
    private static final Set<String> PARTS = with(BLOCKS, "use", "defs");

    private static final Map<String, Set<String>> CHILDREN = Map.ofEntries(
            Map.entry("document", Set.of("page", "pages", "cards")),
            Map.entry("page", DRAWN),
            Map.entry("g", DRAWN),
            Map.entry("place", DRAWN),
            Map.entry("sheet", DRAWN),
            Map.entry("slot", DRAWN),
            Map.entry("pages", with(BLOCKS, "head", "foot")),
            Map.entry("head", PARTS),
            Map.entry("foot", PARTS),
            Map.entry("stack", PARTS),
            Map.entry("box", PARTS),
            Map.entry("row", PARTS),
            Map.entry("grid", with(PARTS, "head")),
            Map.entry("either", PARTS),
            Map.entry("defs", PARTS),
            Map.entry("cards", Set.of("slot", "sheet", "card")),
            Map.entry("card", Set.of("front", "back")),
            Map.entry("front", with(PARTS, "head")),
            Map.entry("back", with(PARTS, "head")),
            Map.entry("text", Set.of("tspan")));

    private static final Map<String, Set<String>> OWN = Map.ofEntries(
            Map.entry("document", Set.of("title", "subject", "lang")),
            Map.entry("page", Set.of("width", "height")),
            Map.entry("g", Set.of("transform")),
            Map.entry("rect", Set.of("x", "y", "width", "height", "rx", "ry", "transform")),
            Map.entry("line", Set.of("x1", "y1", "x2", "y2", "transform")),
            Map.entry("circle", Set.of("cx", "cy", "r", "transform")),
            Map.entry("path", Set.of("d", "transform")),
            Map.entry("text", Set.of("x", "y", "width", "lines", "transform", "together", "least", "narrow", "may")),
            Map.entry("pages", Set.of("width", "height", "left", "right", "top", "bottom", "bookmark")),
            Map.entry("head", Set.of()),
            Map.entry("foot", Set.of()),
            Map.entry("stack", Set.of()),
            Map.entry("box", Set.of("x", "y", "height", "padding", "least", "most", "rule", "rx", "shrink", "shape")),
            Map.entry("row", Set.of("gap")),
            Map.entry("grid", Set.of("gap", "columns", "rows", "spare")),
            Map.entry("either", Set.of("saves", "height")),
            Map.entry("place", Set.of("height", "every")),
            Map.entry("rule", Set.of()),
            Map.entry("defs", Set.of()),
            Map.entry("use", Set.of("href")),
            Map.entry("cards", Set.of("width", "height", "card-width", "card-height", "columns", "skip", "padding", "shrink", "backs")),
            Map.entry("slot", Set.of("x", "y", "turned", "back-x", "back-y", "back-turned")),
            Map.entry("sheet", Set.of("side", "rows")),
            Map.entry("card", Set.of("bookmark")),
            Map.entry("front", Set.of()),
            Map.entry("back", Set.of()),
            Map.entry("tspan", Set.of()),
            Map.entry("code", Set.of("x", "y", "size", "level", "transform")),
            Map.entry("bookmark", Set.of("title", "level")));

    private static final Set<String> UNPRESENTED = Set.of("document", "bookmark", "slot", "tspan", "use");

    private static final Set<String> WORDED = Set.of("text", "tspan", "code");

    /**
     * An attribute of an element.
     *
     * @param name the very string that stands in this program, so that names can be told apart by identity
     * @param presentation whether it changes the style
     */
    record Attribute(String name, boolean presentation) { }

    /** One element, with what it takes at hand: every tag of every sheet is looked up here. */
    static final class Tag {

        private final Set<String> children;
        private final Map<String, Attribute> attributes = new HashMap<>();
        private final boolean worded;

        private Tag(String name) {
            children = new HashSet<>(CHILDREN.getOrDefault(name, Set.of()));
            worded = WORDED.contains(name);
            OWN.get(name).forEach(own -> attributes.put(own, new Attribute(own, false)));
            if (BLOCKS.contains(name)) {
                STANCE.forEach(own -> attributes.put(own, new Attribute(own, false)));
            }
            (!UNPRESENTED.contains(name) ? PRESENTATION : name.equals("tspan") ? SPAN : Set.<String>of())
                    .forEach(presentation -> attributes.put(presentation, new Attribute(presentation, true)));
        }

        boolean allows(String child) {
            return children.contains(child);
        }

        /** Whether characters may stand in it. */
        boolean takesText() {
            return worded;
        }

        /** The attribute of that name, or null. */
        Attribute attribute(String attribute) {
            return attributes.get(attribute);
        }

        /** All it takes, in the alphabet's order. */
        Collection<String> attributes() {
            return new TreeSet<>(attributes.keySet());
        }
    }

    private static Set<String> with(Set<String> names, String... more) {
        Set<String> all = new HashSet<>(names);
        all.addAll(Set.of(more));
        return all;
    }

    private static final Map<String, Tag> TAGS = new HashMap<>();

    static {
        OWN.keySet().forEach(name -> TAGS.put(name, new Tag(name)));
    }

    private Vocabulary() {
    }

    /** The element of that name, or null. */
    static Tag tag(String name) {
        return TAGS.get(name);
    }

    static Collection<String> elements() {
        return OWN.keySet();
    }
}
