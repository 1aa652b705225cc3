package kitleaf.basket.place;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Reads the bytes of a file as text. */
public final class SourceReader {

    /** The largest file taken, 1 MB; a long piece with its log has a fiftieth of that. */
    static final int MOST_BYTES = 1_000_000;

    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private SourceReader() {
    }

    /** The text of a file within a fence, or nothing and a problem. */
    public static Optional<Source> read(LinkGuard fence, Path file, Problems problems) {
        Path name = BasketFiles.shown(file);
        return fence.find(file, problems).flatMap(real -> bytes(real, name, problems)).flatMap(bytes -> decode(bytes, name, problems));
    }

    /**
     * The text of a table, in any of the ways spreadsheets write letters.
     *
     * @param real where it really lies
     * @param name what to call it
     */
    public static Optional<Source> table(Path real, Path name, Problems problems) {
        return bytes(real, name, problems).flatMap(bytes -> table(bytes, name, problems));
    }

    /** The same of bytes that were read already. */
    public static Optional<Source> table(byte[] bytes, Path name, Problems problems) {
        return fits(bytes, name, problems) ? TableText.decode(bytes, name, problems) : Optional.empty();
    }

    /** How the letters of a table are written. */
    public static Charset tableCharset(byte[] bytes) {
        return TableText.charset(bytes);
    }

    /**
     * The bytes of a file, one more at most than are taken, or nothing and a problem.
     *
     * @param real where it really lies
     * @param name what to call it
     */
    public static Optional<byte[]> bytes(Path real, Path name, Problems problems) {
        try {
            // A pipe or a device could be read for ever.
            if (Files.exists(real, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(real, LinkOption.NOFOLLOW_LINKS)) {
                problems.add(name, Fault.of("file.no-text"));
                return Optional.empty();
            }
            return Optional.of(head(real, MOST_BYTES + 1));
        } catch (IOException e) {
            problems.add(unreadable(name, e));
            return Optional.empty();
        }
    }

    /** The first bytes of a file where it really lies: a link that has been put there meanwhile is not followed. */
    static byte[] head(Path real, int most) throws IOException {
        try (InputStream in = Files.newInputStream(real, LinkOption.NOFOLLOW_LINKS)) {
            return in.readNBytes(most);
        }
    }

    /** What to say of a file or folder that cannot be opened. */
    public static Problem unreadable(Path name, IOException e) {
        if (e instanceof AccessDeniedException) {
            return Problem.of(name, Fault.of("file.forbidden"));
        }
        if (e instanceof NoSuchFileException) {
            return Problem.of(name, Fault.of("file.missing"));
        }
        return Problem.of(name, Fault.of("file.disk"));
    }

    public static Optional<Source> decode(byte[] bytes, Path name, Problems problems) {
        if (!fits(bytes, name, problems)) {
            return Optional.empty();
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(in).toString();
            if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
                text = text.substring(1);
            }
            return seen(new Source(name, text), problems);
        } catch (CharacterCodingException e) {
            problems.add(unread(new String(bytes, 0, in.position(), StandardCharsets.UTF_8), name, Fault.of("file.utf-8")));
            return Optional.empty();
        }
    }

    private static boolean fits(byte[] bytes, Path name, Problems problems) {
        if (bytes.length > MOST_BYTES) {
            problems.add(name, Fault.of("file.large"));
        }
        return bytes.length <= MOST_BYTES;
    }

    /** A text, if nothing in it is hidden. */
    public static Optional<Source> seen(Source source, Problems problems) {
        return shown(source, problems) ? Optional.of(source) : Optional.empty();
    }

    /** The problem of a letter that cannot be read after the text before it. */
    static Problem unread(String text, Path name, Fault fault) {
        Source before = new Source(name, text);
        String last = before.line(before.lineCount()).orElse("");
        String start = before.lineCount() == 1 && last.startsWith("\uFEFF") ? last.substring(1) : last;
        return new Problem(name, before.lineCount(), start.codePointCount(0, start.length()) + 1, 1,
                fault.wrong(), fault.write(), Optional.of(start + "\uFFFD"));
    }

    /** Whether there is nothing but ASCII's letters, blanks and line breaks, as in most files. */
    private static boolean plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < ' ' || c > '~') && c != '\n' && c != '\r' && c != '\t') {
                return false;
            }
        }
        return true;
    }

    /** Refuses characters that steer screens, which YAML and CSV cannot hold either. */
    private static boolean shown(Source source, Problems problems) {
        if (plain(source.text())) {
            return true;
        }
        for (int number = 1; number <= source.lineCount(); number++) {
            String line = source.line(number).orElseThrow();
            int column = 0;
            for (int i = 0; i < line.length();) {
                int sign = line.codePointAt(i);
                i += Character.charCount(sign);
                column++;
                if ((sign != '\t' && Quote.hidden(sign)) || sign == BYTE_ORDER_MARK) {
                    problems.add(new Place(source, number, column, 1), Fault.of("file.hidden-sign"));
                    return false;
                }
            }
        }
        return true;
    }
}
