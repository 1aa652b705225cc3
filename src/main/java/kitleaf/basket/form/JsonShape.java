package kitleaf.basket.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.words.Said;

/**
 * How a form's values look to JSON Schema (draft 2020-12), after YAML 1.2 has typed them: {@code 36} is a number
 * there and {@code 3 in} a string. A shape takes all that its form takes, but for blanks around one of a few words; where a
 * pattern cannot be as strict as the form, such as about the range of a length, the note tells it.
 *
 * @param alternatives schemas of which one must hold, each as JSON: maps, lists, strings, numbers and booleans
 * @param notes what the schemas cannot say: phrases, or advice as a problem has it
 */
public record JsonShape(List<Map<String, Object>> alternatives, List<Said> notes) {

    public JsonShape {
        alternatives = List.copyOf(alternatives);
        notes = List.copyOf(notes);
    }

    /** Words of her own; YAML takes some of them for numbers, and so they are numbers here. */
    static JsonShape words(int most) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of("string", "number", "boolean"));
        schema.put("pattern", "\\S");
        schema.put("maxLength", most);
        return new JsonShape(List.of(schema), List.of());
    }

    /** One of these words and no other. */
    static JsonShape oneOf(Collection<?> words) {
        return new JsonShape(List.of(Map.of("enum", List.copyOf(words))), List.of());
    }

    /** A whole number, in quotes or without. */
    static JsonShape whole(int least, int most) {
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", "integer");
        number.put("minimum", least);
        number.put("maximum", most);
        return new JsonShape(List.of(number), List.of()).or(pattern("[0-9]+"));
    }

    /** A number with or without decimals, in quotes or without. */
    static JsonShape number(double least, boolean above, double most, Said note) {
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", "number");
        number.put(above ? "exclusiveMinimum" : "minimum", plain(least));
        number.put("maximum", plain(most));
        return new JsonShape(List.of(number), List.of(note)).or(pattern("([0-9]+(\\.[0-9]*)?|\\.[0-9]+)"));
    }

    private static BigDecimal plain(double number) {
        return new BigDecimal(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
    }

    /** A text all of which matches a pattern (ECMA-262), blanks around it aside. */
    static JsonShape pattern(String pattern, Said... notes) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", "^\\s*" + pattern + "\\s*$");
        return new JsonShape(List.of(schema), List.of(notes));
    }

    /** As JSON. */
    public Map<String, Object> schema() {
        return alternatives.size() == 1 ? alternatives.get(0) : Map.of("anyOf", alternatives);
    }

    /** This shape or another. */
    public JsonShape or(JsonShape other) {
        List<Map<String, Object>> both = new ArrayList<>(alternatives);
        other.alternatives.stream().filter(schema -> !both.contains(schema)).forEach(both::add);
        return new JsonShape(both, Stream.concat(notes.stream(), other.notes.stream()).distinct().toList());
    }

    /** A pattern for a word in any mixture of small letters and capitals. */
    static String anyCase(String word) {
        return word.codePoints().mapToObj(c -> {
            String small = Character.toString(Character.toLowerCase(c));
            String capital = Character.toString(Character.toUpperCase(c));
            return c == '.' ? "\\." : small.equals(capital) ? small : "[" + small + capital + "]";
        }).collect(Collectors.joining());
    }

    /** A pattern for a key's other name, all of it, with blanks or hyphens between its words. */
    public static String anyCaseKey(String name) {
        return "^" + anyCase(name).replace(" ", "[\\s-]+") + "$";
    }

    /** A pattern for one of these words in any mixture of small letters and capitals. */
    static String anyCase(Collection<String> words) {
        return words.stream().map(JsonShape::anyCase).collect(Collectors.joining("|", "(", ")"));
    }
}
