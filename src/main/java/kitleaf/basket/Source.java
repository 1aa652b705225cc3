package kitleaf.basket;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The text of one file and the name to call it by. Places in it are counted in characters (Unicode
 * code points), as the YAML parser and the reader's eye count them, so the text is kept that way.
 */
final class Source {

    private final Path name;
    private final String text;
    private final int[] characters;
    private final List<String> lines;

    /** A text whose line breaks are LF, CR LF or CR. */
    Source(Path name, String text) {
        this.name = name;
        this.text = text;
        this.characters = text.codePoints().toArray();
        this.lines = split(text);
    }

    private static List<String> split(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r') {
                lines.add(text.substring(start, i));
                if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                    i++;
                }
                start = i + 1;
            }
        }
        lines.add(text.substring(start));
        return List.copyOf(lines);
    }

    Path name() {
        return name;
    }

    String text() {
        return text;
    }

    /** The line of that number, from 1; nothing past the end. */
    Optional<String> line(int number) {
        return number >= 1 && number <= lines.size() ? Optional.of(lines.get(number - 1)) : Optional.empty();
    }

    int lineCount() {
        return lines.size();
    }

    /** The character at an offset from 0, or -1 past the end. */
    int characterAt(int offset) {
        return offset >= 0 && offset < characters.length ? characters[offset] : -1;
    }

    /** The characters from one offset up to another. */
    String slice(int from, int to) {
        int end = Math.min(to, characters.length);
        return from >= end ? "" : new String(characters, from, end - from);
    }
}
