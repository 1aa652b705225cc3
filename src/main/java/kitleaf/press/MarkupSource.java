package kitleaf.press;

import java.io.IOException;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * The markup as it is read: remembers what its reader threw, and sums up all characters in a digest.
 * The digest tells documents apart and guards nothing, so two check sums and the length, which cost
 * next to no time, stand in for a cryptographic one.
 */
final class MarkupSource extends Reader {

    private final Reader reader;
    private final CRC32 first = new CRC32();
    private final CRC32C second = new CRC32C();
    private long characters;
    private byte[] bytes = new byte[0];
    private IOException failure;

    MarkupSource(Reader reader) {
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
            if (bytes.length < 2 * count) {
                bytes = new byte[2 * count];
            }
            for (int i = 0; i < count; i++) {
                char c = buffer[offset + i];
                bytes[2 * i] = (byte) (c >> 8);
                bytes[2 * i + 1] = (byte) c;
            }
            first.update(bytes, 0, 2 * count);
            second.update(bytes, 0, 2 * count);
            characters += count;
        }
        return count;
    }

    /** The markup's reader belongs to the caller. */
    @Override
    public void close() {
    }

    Optional<IOException> failure() {
        return Optional.ofNullable(failure);
    }

    /** 16 bytes that stand for all that was read so far. */
    byte[] digest() {
        return ByteBuffer.allocate(2 * Long.BYTES)
                .putInt((int) first.getValue()).putInt((int) second.getValue()).putLong(characters).array();
    }
}
