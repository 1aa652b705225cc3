package kitleaf.command.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;

/**
 * A run's turn at a folder: while it lasts, no other run of Kitleaf puts files in place there. It is a hidden file that is locked, and
 * gone again afterwards; the system lets go of the lock of a run that is killed. On a disk that knows no locks nobody waits.
 */
public final class Turn implements Closeable {

    /** What is locked. */
    public static final String FILE = ".kitleaf-lock";

    /** To put a year's sheets in place takes far less; common practice, no source. */
    static final Duration PATIENCE = Duration.ofSeconds(10);

    /** A shorter wait is not worth a sentence. */
    private static final Duration UNTOLD = Duration.ofMillis(500);
    private static final int LOOK_EVERY_MILLIS = 10;
    private static final int MOST_BYTES = 1 << 16;

    private final Path file;
    private final FileChannel channel;
    private final boolean locked;

    private Turn(Path file, FileChannel channel, boolean locked) {
        this.file = file;
        this.channel = channel;
        this.locked = locked;
    }

    /**
     * Waits for the turn.
     *
     * @param waiting called once, if the wait is long enough to be told of
     * @throws InTheWay if another run still has it after that long
     */
    public static Turn at(Path folder, Duration patience, Runnable waiting) throws IOException {
        long begun = System.nanoTime();
        boolean told = false;
        Optional<Turn> turn = tried(folder);
        while (turn.isEmpty()) {
            long waited = System.nanoTime() - begun;
            if (waited > patience.toNanos()) {
                throw new InTheWay(folder, "write.busy", FILE);
            }
            if (!told && waited > UNTOLD.toNanos()) {
                waiting.run();
                told = true;
            }
            rest();
            turn = tried(folder);
        }
        return turn.get();
    }

    /** The turn, if no other run has it. */
    static Optional<Turn> tried(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        FileChannel channel;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        } catch (AccessDeniedException e) {
            // Another person's run has it, or has just let go of it.
            if (Files.isWritable(folder)) {
                return Optional.empty();
            }
            throw e;
        }
        try {
            FileLock lock = channel.tryLock();
            if (lock != null && leadsTo(channel, file)) {
                return Optional.of(new Turn(file, channel, true));
            }
        } catch (OverlappingFileLockException e) {
            // Another thread has it.
            channel.close();
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new Turn(file, channel, false));
        }
        channel.close();
        return Optional.empty();
    }

    /** Whether this disk knows locks, so that no other run has the turn now. */
    boolean locked() {
        return locked;
    }

    /**
     * Whether the name leads to what is locked: who had the turn before may have taken the file away between. Its size tells, twice since
     * another may have the same by chance; to open it by its name and close it would let go of the lock.
     */
    private static boolean leadsTo(FileChannel channel, Path file) throws IOException {
        for (int look = 0; look < 2; look++) {
            int size = ThreadLocalRandom.current().nextInt(1, MOST_BYTES);
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(new byte[1]), size - 1L);
            try {
                if (Files.size(file) != size) {
                    return false;
                }
            } catch (NoSuchFileException e) {
                return false;
            }
        }
        return true;
    }

    private static void rest() throws IOException {
        try {
            Thread.sleep(LOOK_EVERY_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }

    /** Lets the next run have its turn. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
        }
    }
}
