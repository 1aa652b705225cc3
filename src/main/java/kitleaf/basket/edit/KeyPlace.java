package kitleaf.basket.edit;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitleaf.basket.place.Source;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Finds where in a text a value stands, or would stand, by the marks of the YAML parser, and writes new ones the way she writes. A
 * remark stays on the line it is about. What is found is a proposal, empty where no place is seen; whoever takes it reads the new
 * text again.
 */
final class KeyPlace {

    private static final int USUAL_STEP = 2;

    /**
     * A change of a text.
     *
     * @param from the first character that goes, from 0
     * @param to the one after the last that goes; the same where nothing goes
     * @param text what comes in its place
     */
    record Change(int from, int to, String text) {

        static Change at(int place, String text) {
            return new Change(place, place, text);
        }
    }

    private final int[] characters;
    private final String lineEnd;
    private final MappingNode root;

    private KeyPlace(String text, MappingNode root) {
        this.characters = text.codePoints().toArray();
        this.lineEnd = text.contains("\r\n") ? "\r\n" : text.indexOf('\n') >= 0 || text.indexOf('\r') < 0 ? "\n" : "\r";
        this.root = root;
    }

    /** The places of one document of a text, which may have nothing but remarks; nothing if it cannot be read as keys with values. */
    static Optional<KeyPlace> in(String text, int document) {
        try {
            int number = 0;
            for (Node node : new Yaml(new LoaderOptions()).composeAll(new StringReader(text))) {
                if (++number == document) {
                    return node instanceof MappingNode keys ? Optional.of(new KeyPlace(text, keys)) : Optional.empty();
                }
            }
            return number == 0 ? Optional.of(new KeyPlace(text, new MappingNode(Tag.MAP, List.of(), FlowStyle.BLOCK))) : Optional.empty();
        } catch (YAMLException e) {
            return Optional.empty();
        }
    }

    /** A text with changes, which do not overlap and stand in their order. */
    static String changed(Source source, List<Change> changes) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (Change change : changes) {
            out.append(source.slice(from, change.from())).append(change.text());
            from = change.to();
        }
        return out.append(source.slice(from, Integer.MAX_VALUE)).toString();
    }

    /** Which item of a list a step of a path means; -1 if none. */
    static int index(String step, int size) {
        int index = step.matches("[0-9]{1,6}") ? Integer.parseInt(step) : -1;
        return index < size ? index : -1;
    }

    List<Change> set(List<String> path, Object value) {
        return put(path, value, false);
    }

    List<Change> append(List<String> path, Object item) {
        return put(path, item, true);
    }

    List<Change> replace(List<String> path, String key, Object value) {
        Optional<NodeTuple> pair = group(path)
                .flatMap(group -> group instanceof MappingNode keys ? find(keys, last(path)) : Optional.empty());
        List<Change> changes = new ArrayList<>(pair.map(old -> inPlace(old, value)).orElse(List.of()));
        if (!changes.isEmpty()) {
            changes.add(0, new Change(start(pair.get().getKeyNode()), end(pair.get().getKeyNode()), key));
        }
        return changes;
    }

    List<Change> remove(List<String> path) {
        Optional<CollectionNode<?>> group = group(path);
        List<?> all = group.isPresent() ? group.get().getValue() : List.of();
        int index = group.isPresent() && group.get() instanceof MappingNode keys
                ? find(keys, last(path)).map(keys.getValue()::indexOf).orElse(-1) : index(last(path), all.size());
        if (index < 0) {
            return List.of();
        }
        return flow(group.get()) ? outOfFlow(all, index) : all.size() == 1 ? List.of() : lines(all.get(index));
    }

    /** The group that the last step of a path goes into. */
    private Optional<CollectionNode<?>> group(List<String> path) {
        Node held = root;
        for (String step : path.subList(0, path.size() - 1)) {
            Optional<Node> next = step(held, step);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            held = next.get();
        }
        return held instanceof CollectionNode<?> group ? Optional.of(group) : Optional.empty();
    }

    private static Optional<Node> step(Node from, String step) {
        if (from instanceof SequenceNode list) {
            int index = index(step, list.getValue().size());
            return index < 0 ? Optional.empty() : Optional.of(list.getValue().get(index));
        }
        return from instanceof MappingNode keys ? find(keys, step).map(NodeTuple::getValueNode) : Optional.empty();
    }

    private List<Change> put(List<String> path, Object value, boolean asItem) {
        Node held = root;
        int indent = rootStep();
        for (int i = 0; i < path.size(); i++) {
            Optional<Node> next = step(held, path.get(i));
            Object rest = wrapped(path.subList(i + 1, path.size()), asItem ? List.of(value) : value);
            if (next.isEmpty()) {
                return held instanceof MappingNode keys ? added(keys, path.get(i), rest, indent) : List.of();
            }
            boolean last = i == path.size() - 1;
            if (held instanceof MappingNode keys && (start(next.get()) == end(next.get()) || last && !asItem)) {
                return inPlace(find(keys, path.get(i)).orElseThrow(), rest);
            }
            if (next.get() instanceof MappingNode inner && !flow(inner)) {
                indent = Math.max(1, column(inner) - (held == root && root.getValue().isEmpty() ? 0 : column(held)));
            }
            held = next.get();
        }
        return !asItem ? replaced(held, value) : held instanceof SequenceNode list ? appended(list, value) : List.of();
    }

    /** What is left of a path, as groups round a value. */
    private static Object wrapped(List<String> path, Object value) {
        return path.isEmpty() ? value : Map.of(path.get(0), wrapped(path.subList(1, path.size()), value));
    }

    private List<Change> inPlace(NodeTuple pair, Object value) {
        Node old = pair.getValueNode();
        int colon = end(pair.getKeyNode());
        while (colon < characters.length && characters[colon] == ' ') {
            colon++;
        }
        if (colon == characters.length || characters[colon] != ':') {
            return List.of();
        }
        if (start(old) == end(old)) {
            return List.of(Change.at(colon + 1, " " + YamlWords.flow(value)));
        }
        if (old instanceof CollectionNode<?> && !flow(old)) {
            return remark(colon, end(old)) ? List.of() : List.of(new Change(colon + 1, end(old), " " + YamlWords.flow(value)));
        }
        return replaced(old, value);
    }

    /** A value in the place of another that stands on one line, or in brackets without a remark. */
    private List<Change> replaced(Node old, Object value) {
        int from = start(old);
        int to = end(old);
        if (old instanceof ScalarNode scalar) {
            ScalarStyle style = scalar.getScalarStyle();
            return style == ScalarStyle.LITERAL || style == ScalarStyle.FOLDED || lineStart(from) != lineStart(to) ? List.of()
                    : List.of(new Change(from, to, inHerWay(scalar, value)));
        }
        return !flow(old) || remark(from, to) ? List.of() : List.of(new Change(from, to, YamlWords.flow(value)));
    }

    /** A value with the quotes of the old one; where it holds the old one, that stands in it as she wrote it. */
    private String inHerWay(ScalarNode old, Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream().map(pair -> pair.getKey() + ": " + inHerWay(old, pair.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(item -> inHerWay(old, item)).collect(Collectors.joining(", ", "[", "]"));
        }
        String text = value.toString();
        if (text.equals(old.getValue())) {
            return new String(characters, start(old), end(old) - start(old));
        }
        return old.getScalarStyle() == ScalarStyle.SINGLE_QUOTED && YamlWords.of(text).equals(text) ? "'" + text.replace("'", "''") + "'"
                : old.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED && YamlWords.of(text).equals(text) ? '"' + text + '"'
                : YamlWords.of(text);
    }

    private List<Change> added(MappingNode group, String key, Object value, int indent) {
        if (flow(group)) {
            return amongFlow(group, key + ": " + YamlWords.flow(value));
        }
        boolean none = group.getValue().isEmpty();
        int column = none ? 0 : column(group);
        int from = none ? 0 : start(group);
        int to = none ? characters.length : group.getEndMark().getIndex();
        return List.of(below(asleep(group, pad(column) + "#" + key + ":", from, to).orElse(none ? characters.length : end(group)),
                lines(column, key, value, indent)));
    }

    private static List<String> lines(int column, String key, Object value, int indent) {
        List<String> lines = new ArrayList<>(List.of(pad(column) + key + ":"));
        if (value instanceof Map<?, ?> map) {
            map.forEach((inner, one) -> lines.addAll(lines(column + indent, inner.toString(), one, indent)));
        } else if (value instanceof List<?> list && list.stream().anyMatch(item -> item instanceof Map)) {
            list.forEach(item -> lines.add(pad(column + indent) + "- " + YamlWords.flow(item)));
        } else {
            lines.set(0, lines.get(0) + " " + YamlWords.flow(value));
        }
        return lines;
    }

    /** Where the last remark between the keys of a group that says how a key would be written ends, as new pieces have it. */
    private Optional<Integer> asleep(MappingNode group, String start, int from, int to) {
        Optional<Integer> last = Optional.empty();
        for (int at = lineStart(from); at < to; at = lineEnd(at) + 1) {
            int line = at;
            if (new String(characters, at, lineEnd(at) - at).startsWith(start) && group.getValue().stream().map(NodeTuple::getValueNode)
                    .noneMatch(value -> start(value) <= line && line < end(value))) {
                last = Optional.of(lineEnd(at));
            }
        }
        return last;
    }

    private List<Change> appended(SequenceNode list, Object item) {
        if (flow(list)) {
            return amongFlow(list, YamlWords.flow(item));
        }
        Node last = list.getValue().get(list.getValue().size() - 1);
        int dash = dash(last);
        int column = dash - lineStart(dash);
        int gap = lineStart(dash) == lineStart(start(last)) ? column(last) - column : USUAL_STEP;
        String dashed = pad(column) + "-" + pad(gap - 1);
        List<String> lines = new ArrayList<>();
        if (item instanceof Map<?, ?> map && last instanceof MappingNode && !flow(last)) {
            map.forEach((key, value) -> lines.add((lines.isEmpty() ? dashed : pad(column + gap)) + key + ": " + YamlWords.flow(value)));
        } else {
            lines.add(dashed + YamlWords.flow(item));
        }
        return List.of(below(end(list), lines));
    }

    /** Lines of their own after the line on which something ends; remarks on that line stay there. */
    private Change below(int place, List<String> lines) {
        int end = place;
        while (end > 0 && Character.isWhitespace(characters[end - 1])) {
            // The parser ends a text in several lines only where the next thing begins.
            end--;
        }
        return Change.at(lineEnd(end), lines.stream().map(line -> lineEnd + line).collect(Collectors.joining()));
    }

    /** One more item in brackets or braces. */
    private List<Change> amongFlow(CollectionNode<?> group, String item) {
        List<?> all = group.getValue();
        if (all.isEmpty()) {
            return List.of(Change.at(start(group) + 1, item));
        }
        Node first = first(last(all));
        boolean ownLine = blank(lineStart(start(first)), start(first));
        int column = ownLine ? column(first) : column(group) + 1;
        int end = behind(last(all));
        int close = end(group) - 1;
        int comma = end;
        while (comma < close && characters[comma] != ',' && characters[comma] != '#') {
            comma++;
        }
        boolean hasComma = comma < close && characters[comma] == ',';
        int after = hasComma ? comma + 1 : end;
        String before = hasComma ? "" : ",";
        String behind = item + (hasComma ? "," : "");
        if (!remark(after, Math.min(close, lineEnd(after)))) {
            return List.of(Change.at(after, before + (ownLine ? lineEnd + pad(column) : " ") + behind));
        }
        List<Change> changes = new ArrayList<>();
        if (!hasComma) {
            changes.add(Change.at(after, before));
        }
        changes.add(Change.at(lineEnd(after), lineEnd + pad(column) + behind));
        return changes;
    }

    /** Takes one out of brackets or braces, with the comma that parts it from its neighbour. */
    private List<Change> outOfFlow(List<?> all, int index) {
        int from = index > 0 ? behind(all.get(index - 1)) : start(first(all.get(0)));
        int to = index > 0 || all.size() == 1 ? behind(all.get(index)) : start(first(all.get(1)));
        return remark(from, to) ? List.of() : List.of(new Change(from, to, ""));
    }

    /** Takes out all lines that one of a group of lines stands on. */
    private List<Change> lines(Object one) {
        int sign = one instanceof NodeTuple ? start(first(one)) : dash(first(one));
        int from = lineStart(sign);
        int to = behind(one);
        while (to > sign && Character.isWhitespace(characters[to - 1])) {
            to--;
        }
        to = lineEnd(to);
        if (!blank(from, sign) || remark(from, to)) {
            return List.of();
        }
        // The last line of a file may have no end of its own; then the end before it goes.
        boolean ended = to < characters.length;
        int next = ended ? to + (characters[to] == '\r' && to + 1 < characters.length && characters[to + 1] == '\n' ? 2 : 1) : to;
        int start = ended || from == 0 ? from : from - (from > 1 && characters[from - 1] == '\n' && characters[from - 2] == '\r' ? 2 : 1);
        return List.of(new Change(start, next, ""));
    }

    private static Optional<NodeTuple> find(MappingNode mapping, String key) {
        return mapping.getValue().stream().filter(pair -> pair.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key))
                .findFirst();
    }

    /** How deep she indents in this document. */
    private int rootStep() {
        return root.getValue().stream().map(NodeTuple::getValueNode)
                .filter(value -> value instanceof CollectionNode<?> && !flow(value) && column(value) > column(root))
                .map(value -> column(value) - column(root)).findFirst().orElse(USUAL_STEP);
    }

    private static boolean flow(Node node) {
        return node instanceof CollectionNode<?> group && group.getFlowStyle() == FlowStyle.FLOW;
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }

    private static int column(Node node) {
        return node.getStartMark().getColumn();
    }

    private static int start(Node node) {
        return node.getStartMark().getIndex();
    }

    /** Where a node ends: a group of lines ends with its last value, not where the next thing begins. */
    private static int end(Node node) {
        return node instanceof CollectionNode<?> group && !flow(group) && !group.getValue().isEmpty() ? behind(last(group.getValue()))
                : node.getEndMark().getIndex();
    }

    /** The first node of an item, or of a key with its value. */
    private static Node first(Object one) {
        return one instanceof NodeTuple pair ? pair.getKeyNode() : (Node) one;
    }

    /** Where an item ends, or a key with its value, which may be missing. */
    private static int behind(Object one) {
        return one instanceof NodeTuple pair ? Math.max(end(pair.getKeyNode()), end(pair.getValueNode())) : end((Node) one);
    }

    private int dash(Node item) {
        int dash = start(item) - 1;
        while (dash > 0 && characters[dash] != '-') {
            dash--;
        }
        return dash;
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

    /** Whether there is a sign that begins a remark; one in quotes is taken for one too, which only refuses more. */
    private boolean remark(int from, int to) {
        for (int i = from; i < to; i++) {
            if (characters[i] == '#') {
                return true;
            }
        }
        return false;
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
