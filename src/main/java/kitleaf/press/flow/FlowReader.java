package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.Paint;
import kitleaf.press.markup.Presentation;
import kitleaf.press.markup.Quotes;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Styles;
import kitleaf.press.type.SpanGatherer;

/** Reads the markup of a flow, element by element, into blocks. */
public final class FlowReader {

    private static final int MOST_LINES = 1000;
    private static final FlowText.May[] MAY = FlowText.May.values();
    private static final Either.Saves[] SAVES = Either.Saves.values();

    /** An element, what it hands down, and what stands in it. */
    public static final class Node {

        final Element element;
        final Style style;
        /** Blocks in it; of what is no block itself (head, foot, front, back) the whole of it. */
        final List<Block> blocks;
        /** What is in it besides blocks, from first to last: heads, or the faces of a card. */
        final List<Node> parts;
        /** Blocks that were named in the flow, to be used again; a name means the latest of them. */
        private final Map<String, Block> named;
        private final SpanGatherer words;
        private final Recording drawing;
        private int depth;

        /** A flow's own element. */
        public Node(Element element, Style style, Quotes quotes) {
            this(element, style, quotes, new HashMap<>());
        }

        private Node(Element element, Style style, Quotes quotes, Map<String, Block> named) {
            this.element = element;
            this.style = style;
            this.named = named;
            words = is("text") ? new SpanGatherer(quotes) : null;
            drawing = is("place") || is("sheet") || is("slot") ? new Recording(style) : null;
            // Every label is made of these.
            blocks = words == null && drawing == null ? new ArrayList<>(4) : List.of();
            parts = is("card") || is("front") || is("back") || is("grid") ? new ArrayList<>(2) : List.of();
        }

        boolean is(String name) {
            return element.name().equals(name);
        }

        Recording drawing() {
            return drawing;
        }

        /** It as a block; null where it is none. */
        Block block() throws MarkupException {
            return switch (element.name()) {
                case "text" -> new FlowText(Stance.of(element), words.spans(), style, element.count("lines", 1, MOST_LINES,
                        MOST_LINES), element.count("together", 0, MOST_LINES, 0),
                        element.has("least") ? element.value("least", Presentation::sizePt) : 0,
                        element.has("narrow") ? element.value("narrow", Presentation::sizePt) : 0,
                        MAY[1 + element.word("may", "part", "cut")]);
                case "place" -> place();
                case "rule" -> new RuleLine(Stance.of(element), style);
                case "stack" -> new Stack(Stance.of(element), blocks, null);
                case "box" -> new Stack(Stance.of(element), blocks, frame());
                case "row" -> new Row(Stance.of(element), blocks, element.number("gap"));
                case "grid" -> new Grid(Stance.of(element), element.has("columns") ? element.value("columns", ColumnWidth::list)
                        : List.of(), parts.stream().flatMap(it -> it.blocks.stream()).toList(), blocks, element.number("gap"),
                        element.word("rows", "last") == 0 ? element.number("spare") : -1);
                case "either" -> new Either(Stance.of(element), blocks,
                        SAVES[1 + element.word("saves", "cards", "type")], element.word("height", "rest", "page") == 0);
                case "use" -> used();
                default -> null;
            };
        }

        private Block used() throws MarkupException {
            Block block = named.get(element.neededText("href"));
            if (block == null) {
                throw element.fault("markup.unnamed", element.neededText("href"));
            }
            return block;
        }

        private void add(Node child) throws MarkupException {
            if (child.is("head") || child.is("front") || child.is("back")) {
                parts.add(child);
            } else if (!child.is("defs")) {
                Block block = child.block();
                child.element.text("id").ifPresent(id -> named.put("#" + id, block));
                blocks.add(block);
            }
        }

        private DrawnPlace place() throws MarkupException {
            boolean rest = element.text("height").map("rest"::equals).orElse(false);
            return new DrawnPlace(Stance.of(element), element.neededLength("width"), rest ? 0 : element.neededLength("height"), rest,
                    element.number("every"), drawing);
        }

        private Stack.Frame frame() throws MarkupException {
            return new Stack.Frame(element.number("padding"), element.number("least"), element.has("most") ? element.neededLength("most")
                    : Double.POSITIVE_INFINITY, element.number("rx"), element.has("rule") ? outline() : null,
                    element.has("shrink") ? element.neededLength("shrink") : 1, element.word("shape", "round") == 0);
        }

        private Style outline() throws MarkupException {
            return style.withFill(Paint.NONE).withStroke(style.stroke().withPaint(element.value("rule", Paint::read)));
        }
    }

    private final Styles styles;
    private final Node root;
    private final boolean handsOut;
    private final List<Node> open = new ArrayList<>();
    private final List<Style> spans = new ArrayList<>(2);

    /**
     * Reads what stands in an element that has begun.
     *
     * @param handsOut whether what stands in it is handed out as it is read, or kept in it
     */
    public FlowReader(Node root, Styles styles, boolean handsOut) {
        this.styles = styles;
        this.root = root;
        this.handsOut = handsOut;
        open.add(root);
    }

    private Node top() {
        return open.get(open.size() - 1);
    }

    public void start(Element element) throws MarkupException {
        Node top = top();
        if (top.drawing != null) {
            top.drawing.start(element);
            top.depth++;
        } else if (element.name().equals("tspan")) {
            spans.add(element.style(spans.isEmpty() ? top.style : spans.get(spans.size() - 1), styles));
        } else {
            open.add(new Node(element, element.style(top.style, styles), styles.quotes(), top.named));
        }
    }

    public void text(String text) {
        Node top = top();
        if (top.drawing != null) {
            top.drawing.text(text);
        } else {
            top.words.add(text, spans.isEmpty() ? top.style : spans.get(spans.size() - 1));
        }
    }

    /** What has been read whole: the flow's own element, or one in it that is handed out; else null. */
    public Node end(Element element) throws MarkupException {
        Node top = top();
        if (top.drawing != null && top.depth > 0) {
            top.drawing.end(element);
            top.depth--;
            return null;
        }
        if (element.name().equals("tspan")) {
            spans.remove(spans.size() - 1);
            return null;
        }
        open.remove(open.size() - 1);
        if (top == root || handsOut && open.size() == 1) {
            return top;
        }
        top().add(top);
        return null;
    }
}
