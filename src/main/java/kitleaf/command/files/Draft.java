package kitleaf.command.files;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file being written beside the one it will replace, with the rights of that from its first byte on. */
public final class Draft implements Closeable {

    private final Path file;
    private final Path target;
    private final OutputStream stream;

    Draft(Path file, Path target) throws IOException {
        this.file = file;
        this.target = target;
        this.stream = new BufferedOutputStream(Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                1 << 16);
        // For a run that is interrupted; one that is killed is cleaned up after by the next.
        file.toFile().deleteOnExit();
        Rights.keep(target, file);
    }

    public Path file() {
        return file;
    }

    public Path target() {
        return target;
    }

    public OutputStream stream() {
        return stream;
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
