package kitleaf.basket.place;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads the bytes of a table as text. Spreadsheets save tables in UTF-8, in UTF-16 with a byte order mark, or in the
 * older Windows-1252, and hardly say which. What cannot be told for sure is refused: a guess would turn letters into others.
 */
final class TableText {

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private TableText() {
    }

    /** The text of a table, or nothing and a problem with its place in what could be read before it. */
    static Optional<Source> decode(byte[] bytes, Path name, Problems problems) {
        Charset charset = charset(bytes);
        return charset == StandardCharsets.UTF_8 ? SourceReader.decode(bytes, name, problems)
                : read(bytes, charset == WINDOWS ? 0 : 2, charset, name, problems);
    }

    /** How the letters of a table are written. */
    static Charset charset(byte[] bytes) {
        if (starts(bytes, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        // One sequence that is sound UTF-8 tells its own: Windows-1252 all but never makes one by chance.
        boolean old = !sound(bytes) && !starts(bytes, 0xEF, 0xBB, 0xBF) && !anySequence(bytes);
        return old ? WINDOWS : StandardCharsets.UTF_8;
    }

    private static boolean starts(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean sound(byte[] bytes) {
        try {
            strict(ByteBuffer.wrap(bytes), StandardCharsets.UTF_8);
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    /** Whether a letter of two bytes or more stands anywhere in it: a leading byte and as many others as it asks for. */
    private static boolean anySequence(byte[] bytes) {
        for (int i = 0; i < bytes.length; i++) {
            int lead = bytes[i] & 0xFF;
            int more = lead >= 0xC2 && lead <= 0xDF ? 1 : lead >= 0xE0 && lead <= 0xEF ? 2 : lead >= 0xF0 && lead <= 0xF4 ? 3 : 0;
            boolean whole = more > 0 && i + more < bytes.length;
            for (int j = 1; whole && j <= more; j++) {
                whole = (bytes[i + j] & 0xC0) == 0x80;
            }
            if (whole) {
                return true;
            }
        }
        return false;
    }

    private static Optional<Source> read(byte[] bytes, int from, Charset charset, Path name, Problems problems) {
        ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
        try {
            return SourceReader.seen(new Source(name, strict(in, charset)), problems);
        } catch (CharacterCodingException e) {
            String before = new String(bytes, from, in.position() - from, charset);
            problems.add(SourceReader.unread(before, name, Fault.of(charset == WINDOWS ? "file.windows" : "file.utf-16")));
            return Optional.empty();
        }
    }

    private static String strict(ByteBuffer in, Charset charset) throws CharacterCodingException {
        return charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in).toString();
    }
}
