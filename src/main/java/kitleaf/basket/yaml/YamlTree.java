package kitleaf.basket.yaml;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.words.Said;

/**
 * Turns a YAML text into nodes that know their places. Only the parser's tokens are used: what a plain
 * word means is left to who asks for it. Anchors, aliases and tags are refused, so a node is a tree of no more than what
 * was typed.
 */
public final class YamlTree {

    /** The deepest nesting taken; a piece needs five. */
    static final int MOST_DEEP = 20;

    /** The most documents taken from one file. */
    static final int MOST_DOCUMENTS = 500;

    private static final YAMLFactory FACTORY = new TextParser.Factory();

    private final Source source;
    private final Problems problems;
    private final YAMLParser parser;

    // Of the token at hand: where it begins and ends, and its first character.
    private JsonLocation start;
    private JsonLocation end;
    private int first;

    private YamlTree(Source source, Problems problems, YAMLParser parser) {
        this.source = source;
        this.problems = problems;
        this.parser = parser;
    }

    /**
     * The documents of a text.
     *
     * @param documents those that could be read whole
     * @param whole whether that is all of them
     */
    public record Documents(List<Node> documents, boolean whole) {
        public Documents {
            documents = List.copyOf(documents);
        }
    }

    /** Reads a text to its end or to the first fault in its YAML, which becomes a problem. */
    public static Documents read(Source source, Problems problems) {
        List<Node> documents = new ArrayList<>();
        try (YAMLParser parser = FACTORY.createParser(source.text())) {
            YamlTree tree = new YamlTree(source, problems, parser);
            while (tree.next() != null) {
                if (documents.size() == MOST_DOCUMENTS) {
                    throw new Stop(tree.place(), Fault.of("document.most", MOST_DOCUMENTS + 1, MOST_DOCUMENTS));
                }
                documents.add(tree.node(0));
            }
            return new Documents(documents, true);
        } catch (Stop stop) {
            problems.add(stop.place, stop.fault);
        } catch (JacksonException e) {
            problems.add(new YamlFault(source).problem(e));
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory could not be read", e);
        }
        return new Documents(documents, false);
    }

    /** Goes to the next token and takes note of where it stands; the parser makes its places anew each time it is asked. */
    private JsonToken next() throws IOException {
        JsonToken token = parser.nextToken();
        start = parser.currentTokenLocation();
        end = parser.currentLocation();
        first = source.characterAt(Math.toIntExact(start.getCharOffset()));
        return token;
    }

    private Node node(int depth) throws IOException, Stop {
        JsonToken token = parser.currentToken();
        Place place = place();
        if (depth > MOST_DEEP) {
            throw new Stop(place, Fault.of("yaml.deep", MOST_DEEP));
        }
        boolean refused = refused(place);
        Node node = switch (token) {
            case START_OBJECT -> mapping(place, depth);
            case START_ARRAY -> sequence(place, depth);
            default -> scalar(place);
        };
        return refused ? new Node.Refused(place) : node;
    }

    private Node mapping(Place from, int depth) throws IOException, Stop {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        // A mapping in braces is marked at its brace, one on lines of its own at its first key.
        boolean braces = first == '{';
        Place place = from;
        String last = null;
        while (next() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            Place keyPlace = place();
            if (!braces && first != '"' && FalseBlank.begins(key)) {
                throw new Stop(keyPlace, Fault.of("yaml.false-blank"));
            }
            boolean refused = refused(keyPlace);
            next();
            Node value = node(depth + 1);
            if (entries.isEmpty() && !braces) {
                place = keyPlace;
            }
            if (refused) {
                continue;
            }
            if (braces && last != null && splitNumber(key, value)) {
                problems.add(keyPlace, Fault.of("yaml.comma", Quote.bare(key)));
                entries.computeIfPresent(last, (k, entry) -> new Node.Entry(entry.key(), new Node.Refused(entry.value().place())));
                continue;
            }
            last = key;
            if (entries.containsKey(key)) {
                problems.add(keyPlace, Fault.of("fields.twice", Quote.bare(key)));
            } else {
                entries.put(key, new Node.Entry(keyPlace, value));
            }
        }
        return new Node.Mapping(place, entries);
    }

    /** Whether a key is the tail of {@code 2,310} or {@code 7,5 cm} written inside braces. */
    private static boolean splitNumber(String key, Node value) {
        return !key.isEmpty() && Character.isDigit(key.charAt(0)) && value instanceof Node.Scalar scalar && scalar.missing();
    }

    private Node sequence(Place place, int depth) throws IOException, Stop {
        List<Node> items = new ArrayList<>();
        while (next() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return new Node.Sequence(place, items);
    }

    private Node scalar(Place place) throws IOException {
        boolean quoted = (first == '"' || first == '\'' || first == '|' || first == '>')
                && parser.currentToken() != JsonToken.VALUE_NULL;
        return new Node.Scalar(place, parser.getText(), quoted);
    }

    /** Whether the node or key at hand uses what is refused; if so it is told. */
    private boolean refused(Place place) {
        if (start.getCharOffset() == end.getCharOffset()) {
            // Nothing was written, or a mapping begins at its first key, which is asked next.
            return false;
        }
        String wrong = switch (first) {
            case '*' -> "yaml.alias";
            case '&' -> "yaml.anchor";
            case '!' -> "yaml.tag";
            default -> null;
        };
        if (wrong == null) {
            return false;
        }
        problems.add(place, Fault.of(Said.of(wrong), Said.of("yaml.itself")));
        return true;
    }

    /** The place of the token at hand: all of a value on one line, the first line of a longer one. */
    private Place place() {
        int length = end.getLineNr() == start.getLineNr() ? end.getColumnNr() - start.getColumnNr()
                : source.line(start.getLineNr()).map(line -> line.codePointCount(0, line.length())).orElse(1)
                        - start.getColumnNr() + 1;
        return new Place(source, start.getLineNr(), start.getColumnNr(), Math.max(1, length));
    }

    /** Ends the reading of a file. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1;
        private final transient Place place;
        private final Fault fault;

        Stop(Place place, Fault fault) {
            super(fault.getMessage(), null, false, false);
            this.place = place;
            this.fault = fault;
        }
    }
}
