package kitleaf.press;

import java.io.IOException;
import java.io.Reader;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Optional;

/**
 * The markup as it is read: remembers what its reader threw, and sums up all characters in a digest.
 */
final class MarkupSource extends Reader {

    private final Reader reader;
    private final MessageDigest digest;
    private byte[] bytes = new byte[0];
    private IOException failure;

    MarkupSource(Reader reader) {
        this.reader = reader;
        try {
            this.digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
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
            digest.update(bytes, 0, 2 * count);
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

    /** The digest of all that was read; the last call made here. */
    byte[] digest() {
        return digest.digest();
    }
}
