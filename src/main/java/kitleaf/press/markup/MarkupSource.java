package kitleaf.press.markup;

import java.io.IOException;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * The markup as it is read: remembers what its reader threw, sees that no page goes on for ever, and sums up all characters in
 * a digest.
 * The digest tells documents apart and guards nothing, so two check sums and the length, which cost
 * next to no time, stand in for a cryptographic one.
 */
public final class MarkupSource extends Reader {

    /** The most markup taken for one page; the fullest sheet of small labels has a tenth of it. */
    public static final int MOST_A_PAGE = 5_000_000;

    private final Reader reader;
    private final CRC32 first = new CRC32();
    private final CRC32C second = new CRC32C();
    private long characters;
    private long mostCharacters = MOST_A_PAGE;
    private boolean tooLong;
    private ByteBuffer bytes = ByteBuffer.allocate(0);
    private IOException failure;

    public MarkupSource(Reader reader) {
        this.reader = reader;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        int count;
        try {
            count = reader.read(buffer, offset, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
        if (count > 0) {
            if (bytes.capacity() < Character.BYTES * count) {
                bytes = ByteBuffer.allocate(Character.BYTES * count);
            }
            bytes.asCharBuffer().put(buffer, offset, count);
            first.update(bytes.array(), 0, Character.BYTES * count);
            second.update(bytes.array(), 0, Character.BYTES * count);
            characters += count;
            if (characters > mostCharacters) {
                tooLong = true;
                throw new IOException("a page without end");
            }
        }
        return count;
    }

    /** The markup's reader belongs to the caller. */
    @Override
    public void close() {
    }

    /** A page begins. */
    public void startPage() {
        mostCharacters = characters + MOST_A_PAGE;
    }

    /** Whether reading ended because a page, or what stands before the first one, is too long. */
    public boolean tooLong() {
        return tooLong;
    }

    public Optional<IOException> failure() {
        return Optional.ofNullable(failure);
    }

    /** 16 bytes that stand for all that was read so far. */
    public byte[] digest() {
        return ByteBuffer.allocate(2 * Long.BYTES)
                .putInt((int) first.getValue()).putInt((int) second.getValue()).putLong(characters).array();
    }
}
