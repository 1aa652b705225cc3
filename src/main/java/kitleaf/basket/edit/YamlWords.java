package kitleaf.basket.edit;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes values as YAML on one line. */
public final class YamlWords {

    private YamlWords() {
    }

    /** A text, or a map or list of values, as it may stand anywhere. */
    static String flow(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream().map(pair -> pair.getKey() + ": " + flow(pair.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        return value instanceof List<?> list ? list.stream().map(YamlWords::flow).collect(Collectors.joining(", ", "[", "]"))
                : of(value.toString());
    }

    /** Her words: bare where that is safe anywhere, else in quotes. */
    public static String of(String text) {
        if (text.matches("[\\p{L}\\p{N}]([\\p{L}\\p{M}\\p{N} .%’'/+-]*[\\p{L}\\p{M}\\p{N}.%’'])?") && !text.equals("null")) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (shows(c)) {
                quoted.appendCodePoint(c);
            } else {
                quoted.append(String.format(Locale.ROOT, "\\U%08x", c));
            }
        });
        return quoted.append('"').toString();
    }

    private static boolean shows(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED,
                    Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
