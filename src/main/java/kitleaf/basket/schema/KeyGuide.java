package kitleaf.basket.schema;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.SettingsReader;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;
import kitleaf.words.Words;

/** Tells of every key that can stand in a basket's files. It follows from the same declarations as the schemas. */
public final class KeyGuide {

    private static final String DEFINITION = "#/$defs/";

    /** Where keys stand: the file, the keys above them, and the keys themselves. */
    private record Room(Said file, Set<String> paths, List<Entry> entries) {

        boolean below(String above) {
            return above.isEmpty() || paths.stream().anyMatch(path -> path.equals(above) || path.endsWith("." + above));
        }
    }

    /** One key: whether it must stand there, what it says, and examples. */
    private record Entry(String name, boolean needed, String remark, List<String> examples) {
    }

    private final KeyTexts texts;
    private final Locale language;
    private final Words words;
    private final List<Room> rooms = new ArrayList<>();

    /**
     * The guide in a language.
     *
     * @throws IllegalStateException if a key that readers take has no text; tests see to it that it is not so
     */
    public KeyGuide(Locale language) {
        this.texts = KeyTexts.shipped(language);
        this.language = language;
        this.words = BasketWords.in(language);
        file(Said.of("guide.basket"), SettingsReader.KEYS);
        file(Said.of("guide.piece"), PieceReader.KEYS);
        texts.complete();
    }

    private void file(Said file, Keys root) {
        SchemaDraft draft = new SchemaDraft(texts, language);
        Map<String, Object> schema = draft.of(file, root);
        Map<String, Room> found = new LinkedHashMap<>();
        room("", "", file, map(schema), map(schema.get("$defs")), draft.declared(root), found);
        rooms.addAll(found.values());
    }

    /** Takes the keys of a thing, then those of what stands below each of them; a thing met again is only named once more. */
    private void room(String name, String path, Said file, Map<?, ?> thing, Map<?, ?> all, Map<String, Keys> declared,
            Map<String, Room> found) {
        Room known = found.get(name);
        if (known != null) {
            known.paths.add(path);
            return;
        }
        Room room = new Room(file, new TreeSet<>(Set.of(path)), new ArrayList<>());
        found.put(name, room);
        Map<?, ?> properties = map(thing.get("properties"));
        declared.get(name).all().forEach(key -> {
            Map<?, ?> property = map(properties.get(key.name()));
            List<String> sentences = new ArrayList<>();
            sentences.add((String) property.get("description"));
            ways(property).forEach(way -> sentences.add(words.say(way)));
            room.entries.add(new Entry(key.name(), key.needed(), String.join(" ", sentences),
                    key.shown().stream().map(value -> key.name() + ": " + inOneLine(value)).toList()));
        });
        declared.get(name).all().forEach(key -> references(properties.get(key.name())).forEach(below -> {
            String longer = path.isEmpty() ? key.name() : path + "." + key.name();
            room(below, longer, file, map(all.get(below)), all, declared, found);
        }));
    }

    /** A value in one line; a list whose entries stand behind dashes, in brackets. */
    private static String inOneLine(String yaml) {
        String line = yaml.replace("\n- ", ", ").replaceAll("\\s*\n\\s*", " ");
        return line.startsWith("- ") ? "[" + line.substring(2) + "]" : line;
    }

    /** How a value is written, where neither the text of its key nor a note says it. */
    private static List<Said> ways(Map<?, ?> schema) {
        List<Said> ways = new ArrayList<>();
        alternatives(schema).forEach(way -> {
            if (way.get("enum") instanceof Collection<?> any) {
                ways.add(any.contains(true) ? Said.of("guide.yes-or-no") : Said.of("guide.one-of",
                        any.stream().map(String::valueOf).collect(Collectors.joining(", "))));
            } else if ("integer".equals(way.get("type"))) {
                ways.add(Said.of("guide.whole", way.get("minimum"), way.get("maximum")));
            } else if ("array".equals(way.get("type"))) {
                ways.add(Said.of("guide.list"));
            } else if (way.containsKey("additionalProperties")) {
                ways.add(Said.of("guide.names"));
            } else if (way.containsKey("maxLength")) {
                ways.add(Said.of("guide.words", way.get("maxLength")));
            }
        });
        return ways;
    }

    private static Stream<Map<?, ?>> alternatives(Map<?, ?> schema) {
        return schema.get("anyOf") instanceof Collection<?> any ? any.stream().map(KeyGuide::map) : Stream.of(schema);
    }

    /** The things that may stand under a key, by their names. */
    private static List<String> references(Object schema) {
        List<String> names = new ArrayList<>();
        if (schema instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                if (key.equals("$ref")) {
                    names.add(((String) value).substring(DEFINITION.length()));
                } else if (!key.equals("examples")) {
                    names.addAll(references(value));
                }
            });
        } else if (schema instanceof Collection<?> list) {
            list.forEach(one -> names.addAll(references(one)));
        }
        return names;
    }

    private static Map<?, ?> map(Object json) {
        return (Map<?, ?>) json;
    }

    /** The names of all keys, by where they stand. */
    public String list() {
        return rooms.stream().map(room -> heading(room) + "\n  " + room.entries.stream().map(Entry::name)
                .collect(Collectors.joining(", ")) + "\n").collect(Collectors.joining("\n"));
    }

    /**
     * All that there is to say of a key, wherever it stands.
     *
     * @param key its name, such as {@code hours}, or with keys above it, such as {@code log.hours}
     * @return nothing if no key has this name
     */
    public Optional<String> about(String key) {
        String name = key.substring(key.lastIndexOf('.') + 1);
        String above = key.substring(0, Math.max(0, key.length() - name.length() - 1));
        String told = rooms.stream().filter(room -> room.below(above))
                .flatMap(room -> room.entries.stream().filter(entry -> entry.name.equals(name)).map(entry -> about(room, entry)))
                .collect(Collectors.joining("\n"));
        return Optional.of(told).filter(text -> !text.isEmpty());
    }

    private String about(Room room, Entry entry) {
        String below = rooms.stream().filter(other -> other.paths.stream().anyMatch(path -> room.paths.stream()
                .anyMatch(above -> path.equals(above.isEmpty() ? entry.name : above + "." + entry.name))))
                .map(other -> words.say("guide.keys", other.entries.stream().map(Entry::name).collect(Collectors.joining(", "))) + "\n")
                .distinct().collect(Collectors.joining());
        return words.say("guide.key", entry.name, heading(room)) + "\n" + remark(entry) + "\n" + below
                + entry.examples.stream().map(example -> "  " + example + "\n").collect(Collectors.joining());
    }

    private String remark(Entry entry) {
        return (entry.needed ? words.say("guide.needed") : words.say("guide.optional")) + " " + entry.remark;
    }

    private String heading(Room room) {
        return room.paths.contains("") ? words.say(room.file) : String.join(", ", room.paths);
    }

    /** What was probably meant by a key that nobody knows, or where to see them all. */
    public String meant(String key) {
        Set<String> names = rooms.stream().flatMap(room -> room.entries.stream()).map(Entry::name)
                .collect(Collectors.toCollection(TreeSet::new));
        return words.say(NearMiss.of(key.substring(key.lastIndexOf('.') + 1), names).map(Advice::meant).orElse(Said.of("guide.see-all")));
    }

    /** All of it as a page (Markdown). */
    public String page() {
        StringBuilder page = new StringBuilder(words.say("guide.title")).append("\n");
        for (Room room : rooms) {
            page.append("\n## ").append(heading(room)).append("\n\n| ").append(words.say("guide.columns")).append(" |\n|---|---|---|\n");
            room.entries.forEach(entry -> page.append("| `").append(entry.name).append("` | ")
                    .append(entry.needed ? remark(entry) : entry.remark).append(" | ")
                    .append(entry.examples.stream().map(example -> "`" + example + "`").collect(Collectors.joining(", "))).append(" |\n"));
        }
        return page.toString();
    }
}
