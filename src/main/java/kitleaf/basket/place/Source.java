package kitleaf.basket.place;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The text of one file and the name to call it by. Places in it are counted in characters (Unicode
 * code points), as the YAML parser and the reader's eye count them, so the text is kept that way.
 */
public final class Source {

    private final Path name;
    private final String text;
    /** Null where every character is one char of the text, as nearly always. */
    private final int[] characters;
    /** Where each line starts in the text, and where one would start after the last. */
    private final int[] starts;

    /** A text whose line breaks are LF, CR LF or CR. */
    public Source(Path name, String text) {
        this.name = name;
        this.text = text;
        this.characters = text.codePointCount(0, text.length()) == text.length() ? null : text.codePoints().toArray();
        this.starts = starts(text);
    }

    private static int[] starts(String text) {
        int[] starts = new int[64];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                if (count == starts.length - 1) {
                    starts = Arrays.copyOf(starts, 2 * starts.length);
                }
                starts[count++] = i + 1;
            }
        }
        starts[count++] = text.length() + 1;
        return Arrays.copyOf(starts, count);
    }

    public Path name() {
        return name;
    }

    public String text() {
        return text;
    }

    /** The line of that number, from 1; nothing past the end. */
    public Optional<String> line(int number) {
        int index = number - 1;
        return index >= 0 && index < starts.length - 1 ? Optional.of(line(starts[index], starts[index + 1])) : Optional.empty();
    }

    private String line(int start, int next) {
        int end = next > text.length() ? text.length() : next - 1;
        return text.substring(start, end > start && next <= text.length() && text.charAt(end) == '\n' && text.charAt(end - 1) == '\r'
                ? end - 1 : end);
    }

    public int lineCount() {
        return starts.length - 1;
    }

    /** The character at an offset from 0, or -1 past the end. */
    public int characterAt(int offset) {
        if (characters == null) {
            return offset >= 0 && offset < text.length() ? text.charAt(offset) : -1;
        }
        return offset >= 0 && offset < characters.length ? characters[offset] : -1;
    }

    /** The characters from one offset up to another. */
    public String slice(int from, int to) {
        int end = Math.min(to, characters == null ? text.length() : characters.length);
        if (from >= end) {
            return "";
        }
        return characters == null ? text.substring(from, end) : new String(characters, from, end - from);
    }
}
