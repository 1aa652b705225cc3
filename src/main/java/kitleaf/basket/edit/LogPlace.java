package kitleaf.basket.edit;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import kitleaf.basket.LogEntry;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Finds where in a piece's text a log entry goes, by the marks of the YAML parser. Texts are only put in, nothing
 * is taken out: comments, blank lines and line ends stay as they are, and a remark stays on the line it is about. What is found is
 * a proposal; whoever takes it reads the new text again.
 */
public final class LogPlace {

    private static final int USUAL_STEP = 2;
    private static final String SLEEPING = "#progress:";

    /**
     * A text to put in.
     *
     * @param at the character it goes before, from 0
     */
    record Insertion(int at, String text) {
    }

    private final int[] characters;
    private final String lineEnd;
    private final LogEntry entry;

    private LogPlace(String text, LogEntry entry) {
        this.characters = text.codePoints().toArray();
        this.lineEnd = text.contains("\r\n") ? "\r\n" : text.indexOf('\n') >= 0 || text.indexOf('\r') < 0 ? "\n" : "\r";
        this.entry = entry;
    }

    /**
     * What to put into a text, from its beginning on; nothing if no place is seen.
     *
     * @param document which document of the text, from 1
     */
    static List<Insertion> of(String text, int document, LogEntry entry) {
        Node root = null;
        try {
            int number = 0;
            for (Node node : new Yaml(new LoaderOptions()).composeAll(new StringReader(text))) {
                if (++number == document) {
                    root = node;
                    break;
                }
            }
        } catch (YAMLException e) {
            return List.of();
        }
        return root instanceof MappingNode piece ? new LogPlace(text, entry).in(piece) : List.of();
    }

    /** An entry as one writes it. */
    static String written(LogEntry entry) {
        return "{on: " + entry.on() + ", hours: " + hours(entry) + ", stitches: " + entry.stitches() + "}";
    }

    /** The hours of an entry as one writes them. */
    public static String hours(LogEntry entry) {
        return BigDecimal.valueOf(entry.hours()).stripTrailingZeros().toPlainString();
    }

    private List<Insertion> in(MappingNode piece) {
        Optional<NodeTuple> progress = find(piece, "progress");
        if (progress.isEmpty()) {
            return flow(piece) ? amongFlow(piece, "progress: {log: [" + written(entry) + "]}")
                    : List.of(below(sleeping(piece).orElse(end(piece)), Stream.concat(Stream.of(pad(column(piece)) + "progress:"),
                            newLog(column(piece) + step(piece), step(piece)))));
        }
        Node value = progress.get().getValueNode();
        if (value instanceof ScalarNode) {
            return besideAmount(piece, progress.get());
        }
        return value instanceof MappingNode keys ? inProgress(piece, keys) : List.of();
    }

    private List<Insertion> inProgress(MappingNode piece, MappingNode progress) {
        Optional<Node> log = find(progress, "log").map(NodeTuple::getValueNode);
        if (log.isPresent()) {
            return log.get() instanceof SequenceNode list ? inLog(list) : List.of();
        }
        return flow(progress) ? amongFlow(progress, "log: [" + written(entry) + "]")
                : List.of(below(end(progress), newLog(column(progress), Math.max(1, column(progress) - column(piece)))));
    }

    private List<Insertion> inLog(SequenceNode list) {
        if (flow(list)) {
            return amongFlow(list, written(entry));
        }
        Node last = list.getValue().get(list.getValue().size() - 1);
        int dash = last.getStartMark().getIndex() - 1;
        while (dash > 0 && characters[dash] != '-') {
            dash--;
        }
        int column = dash - lineStart(dash);
        boolean besideDash = lineStart(dash) == lineStart(last.getStartMark().getIndex());
        int gap = besideDash ? column(last) - column : USUAL_STEP;
        String start = pad(column) + "-" + pad(gap - 1);
        Stream<String> item = last instanceof MappingNode && !flow(last)
                ? Stream.of(start + "on: " + entry.on(), pad(column + gap) + "hours: " + hours(entry),
                        pad(column + gap) + "stitches: " + entry.stitches())
                : Stream.of(start + written(entry));
        return List.of(below(end(list), item));
    }

    private Stream<String> newLog(int column, int step) {
        return Stream.of(pad(column) + "log:", pad(column + step) + "- " + written(entry));
    }

    /** Turns {@code progress: 45%} into a group that says {@code done: 45%} and has a log. */
    private List<Insertion> besideAmount(MappingNode piece, NodeTuple progress) {
        int from = progress.getValueNode().getStartMark().getIndex();
        int to = progress.getValueNode().getEndMark().getIndex();
        int colon = progress.getKeyNode().getEndMark().getIndex();
        while (colon < from && characters[colon] == ' ') {
            colon++;
        }
        boolean oneLine = lineStart(colon) == lineStart(to) && characters[colon] == ':';
        if (flow(piece) || !oneLine) {
            return List.of(new Insertion(from, "{done: "), new Insertion(to, ", log: [" + written(entry) + "]}"));
        }
        int column = column(piece) + step(piece);
        return List.of(new Insertion(colon + 1, lineEnd + pad(column) + "done:"),
                below(end(progress.getValueNode()), newLog(column, step(piece))));
    }

    /** Where the last remark between the keys of a piece says how progress would be written, as new pieces have it. */
    private OptionalInt sleeping(MappingNode piece) {
        OptionalInt last = OptionalInt.empty();
        for (int at = piece.getStartMark().getIndex(); at < piece.getEndMark().getIndex(); at = lineEnd(at) + 1) {
            int line = at;
            boolean remark = at == lineStart(at) && new String(characters, at, lineEnd(at) - at).startsWith(SLEEPING);
            if (remark && piece.getValue().stream().map(NodeTuple::getValueNode)
                    .noneMatch(value -> value.getStartMark().getIndex() <= line && line < end(value))) {
                last = OptionalInt.of(lineEnd(at));
            }
        }
        return last;
    }

    /** Lines of their own after the line on which something ends; remarks on that line stay there. */
    private Insertion below(int place, Stream<String> lines) {
        int end = place;
        while (end > 0 && Character.isWhitespace(characters[end - 1])) {
            // The parser ends a text in several lines only where the next thing begins.
            end--;
        }
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(lineEnd).append(line));
        return new Insertion(lineEnd(end), text.toString());
    }

    /** One more item in brackets or braces. */
    private List<Insertion> amongFlow(CollectionNode<?> group, String item) {
        List<Node> items = group.getValue().stream().map(one -> one instanceof NodeTuple pair ? pair.getValueNode() : (Node) one).toList();
        int open = group.getStartMark().getIndex();
        if (items.isEmpty()) {
            return List.of(new Insertion(open + 1, item));
        }
        Node first = group.getValue().get(group.getValue().size() - 1) instanceof NodeTuple pair ? pair.getKeyNode()
                : items.get(items.size() - 1);
        boolean ownLine = blank(lineStart(first.getStartMark().getIndex()), first.getStartMark().getIndex());
        int column = ownLine ? column(first) : column(group) + 1;
        int end = items.get(items.size() - 1).getEndMark().getIndex();
        int close = group.getEndMark().getIndex() - 1;
        int comma = end;
        while (comma < close && characters[comma] != ',' && characters[comma] != '#') {
            comma++;
        }
        boolean hasComma = comma < close && characters[comma] == ',';
        int after = hasComma ? comma + 1 : end;
        boolean remark = false;
        for (int i = after; i < Math.min(close, lineEnd(after)); i++) {
            remark |= characters[i] == '#';
        }
        String before = hasComma ? "" : ",";
        String behind = item + (hasComma ? "," : "");
        if (!remark) {
            return List.of(new Insertion(after, before + (ownLine ? lineEnd + pad(column) : " ") + behind));
        }
        List<Insertion> insertions = new ArrayList<>();
        if (!hasComma) {
            insertions.add(new Insertion(after, before));
        }
        insertions.add(new Insertion(lineEnd(after), lineEnd + pad(column) + behind));
        return insertions;
    }

    private static Optional<NodeTuple> find(MappingNode mapping, String key) {
        return mapping.getValue().stream().filter(pair -> pair.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key))
                .findFirst();
    }

    /** How deep she indents in this piece. */
    private static int step(MappingNode piece) {
        return piece.getValue().stream().map(NodeTuple::getValueNode)
                .filter(value -> value instanceof CollectionNode<?> && !flow(value) && column(value) > column(piece))
                .map(value -> column(value) - column(piece)).findFirst().orElse(USUAL_STEP);
    }

    private static boolean flow(Node node) {
        return node instanceof CollectionNode<?> group && group.getFlowStyle() == FlowStyle.FLOW;
    }

    private static int column(Node node) {
        return node.getStartMark().getColumn();
    }

    /** Where a node ends: a group of lines ends with its last value, not where the next thing begins. */
    private static int end(Node node) {
        if (node instanceof MappingNode mapping && !flow(mapping) && !mapping.getValue().isEmpty()) {
            return end(mapping.getValue().get(mapping.getValue().size() - 1).getValueNode());
        }
        if (node instanceof SequenceNode list && !flow(list) && !list.getValue().isEmpty()) {
            return end(list.getValue().get(list.getValue().size() - 1));
        }
        return node.getEndMark().getIndex();
    }

    private int lineStart(int at) {
        int start = at;
        while (start > 0 && characters[start - 1] != '\n' && characters[start - 1] != '\r') {
            start--;
        }
        return start;
    }

    private int lineEnd(int at) {
        int end = at;
        while (end < characters.length && characters[end] != '\n' && characters[end] != '\r') {
            end++;
        }
        return end;
    }

    private boolean blank(int from, int to) {
        for (int i = from; i < to; i++) {
            if (characters[i] != ' ') {
                return false;
            }
        }
        return true;
    }

    private static String pad(int columns) {
        return " ".repeat(Math.max(0, columns));
    }
}
