package kitleaf.command;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file being written beside the one it will replace. */
final class Draft implements Closeable {

    private final Path file;
    private final Path target;
    private final OutputStream stream;

    Draft(Path file, Path target) throws IOException {
        this.file = file;
        this.target = target;
        this.stream = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
    }

    Path file() {
        return file;
    }

    Path target() {
        return target;
    }

    OutputStream stream() {
        return stream;
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
