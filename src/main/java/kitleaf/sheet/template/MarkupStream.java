package kitleaf.sheet.template;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.Reader;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import kitleaf.words.Said;

/**
 * A reader of what another thread writes, with a few chunks between them, so that a template and the press
 * work side by side in constant memory. The JDK's piped reader wakes only once a second when it waits.
 */
final class MarkupStream extends Reader {

    /** What writes the markup. */
    interface Source {
        void writeTo(Writer out) throws IOException;
    }

    private static final int CHUNK = 16_384;
    /** The first ones are smaller, so that the press need not wait for half a page. */
    private static final int FIRST_CHUNK = 1_024;
    private static final int CHUNKS = 8;
    private static final int LOOK_EVERY_MILLIS = 20;

    /** Writers that have not ended. */
    private static final AtomicInteger RUNNING = new AtomicInteger();

    private static final char[] END = new char[0];

    private final BlockingQueue<char[]> queue = new ArrayBlockingQueue<>(CHUNKS);
    private volatile Throwable failure;
    private volatile boolean closed;
    private char[] chunk = new char[0];
    private int next;

    private final String name;
    private final Bounds bounds;
    private final Thread writer;
    private volatile TemplateFault broken;
    private volatile long passed;

    private MarkupStream(String name, Source source, Bounds bounds) {
        this.name = name;
        this.bounds = bounds;
        this.writer = new Thread(() -> fill(source), "templates");
        // What cannot be stopped ends with the program.
        writer.setDaemon(true);
    }

    /**
     * A stream of what is written.
     *
     * @param name of the template that writes, for its user
     */
    static MarkupStream of(String name, Source source, Bounds bounds) {
        MarkupStream stream = new MarkupStream(name, source, bounds);
        RUNNING.incrementAndGet();
        stream.writer.start();
        if (bounds.watched()) {
            Thread watch = new Thread(stream::watch, "templates' watch");
            watch.setDaemon(true);
            watch.start();
        }
        return stream;
    }

    /** Whether all writers have ended, or do within some seconds. */
    static boolean allEnded() throws InterruptedException {
        for (int looks = 0; looks < 150 && RUNNING.get() > 0; looks++) {
            Thread.sleep(LOOK_EVERY_MILLIS);
        }
        return RUNNING.get() == 0;
    }

    /** Gives the writer up where it goes too far, whether or not anybody reads. */
    private void watch() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long end = System.nanoTime() + bounds.whole().toNanos();
        long seen = -1;
        long before = 0;
        try {
            while (writer.isAlive() && !closed && broken == null) {
                long asked = threads.getThreadAllocatedBytes(writer.getId());
                if (passed != seen) {
                    seen = passed;
                    before = asked;
                }
                if (asked - before > bounds.bytes()) {
                    giveUp(Said.of("template.much-memory", bounds.bytes() >> 20));
                } else if (System.nanoTime() - end > 0) {
                    giveUp(Said.of("template.long", bounds.whole().toSeconds()));
                }
                Thread.sleep(LOOK_EVERY_MILLIS);
            }
        } catch (InterruptedException nobodyDoes) {
            Thread.currentThread().interrupt();
        }
    }

    private void giveUp(Said said) {
        broken = new TemplateFault(name, said);
        writer.interrupt();
    }

    private void fill(Source source) {
        try (ChunkWriter out = new ChunkWriter()) {
            source.writeTo(out);
        } catch (IOException | RuntimeException | Error e) {
            failure = e;
        } finally {
            RUNNING.decrementAndGet();
        }
        try {
            put(END);
        } catch (IOException e) {
            // The reader has gone; nobody waits for the end.
            failure = e;
        }
    }

    private void put(char[] full) throws IOException {
        try {
            while (!queue.offer(full, 50, TimeUnit.MILLISECONDS)) {
                if (closed) {
                    throw new IOException("the reader was closed");
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException();
        }
    }

    @Override
    public int read(char[] buffer, int from, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        while (next == chunk.length) {
            if (chunk == END) {
                return -1;
            }
            try {
                char[] full = await();
                chunk = full;
                next = 0;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new InterruptedIOException();
            }
            if (chunk == END) {
                rethrow();
                return -1;
            }
        }
        int copied = Math.min(length, chunk.length - next);
        System.arraycopy(chunk, next, buffer, from, copied);
        next += copied;
        return copied;
    }

    private char[] await() throws InterruptedException, TemplateFault {
        long end = System.nanoTime() + bounds.patience().toNanos();
        while (true) {
            char[] full = queue.poll(LOOK_EVERY_MILLIS, TimeUnit.MILLISECONDS);
            if (full == null && broken == null && System.nanoTime() - end > 0) {
                broken = new TemplateFault(name, Said.of("template.silent", bounds.patience().toSeconds()));
            }
            if (broken != null) {
                close();
                throw broken;
            }
            if (full != null) {
                return full;
            }
        }
    }

    private void rethrow() throws IOException {
        Throwable thrown = failure;
        if (thrown instanceof IOException e) {
            throw e;
        } else if (thrown instanceof RuntimeException e) {
            throw e;
        } else if (thrown instanceof Error e) {
            throw e;
        }
    }

    @Override
    public void close() {
        closed = true;
        queue.clear();
        writer.interrupt();
    }

    private final class ChunkWriter extends Writer {

        private final char[] pending = new char[CHUNK];
        private int used;
        private int full = FIRST_CHUNK;

        @Override
        public void write(char[] buffer, int from, int length) throws IOException {
            for (int done = 0; done < length;) {
                int copied = Math.min(length - done, room());
                System.arraycopy(buffer, from + done, pending, used, copied);
                used += copied;
                done += copied;
            }
        }

        /** Without the copy that would be made first: most of a sheet comes as strings. */
        @Override
        public void write(String text, int from, int length) throws IOException {
            for (int done = 0; done < length;) {
                int copied = Math.min(length - done, room());
                text.getChars(from + done, from + done + copied, pending, used);
                used += copied;
                done += copied;
            }
        }

        /** How much the chunk still holds, which is handed on first if it is full. */
        private int room() throws IOException {
            if (used == full) {
                pass();
                full = Math.min(CHUNK, 2 * full);
            }
            return full - used;
        }

        private void pass() throws IOException {
            if (used > 0) {
                passed += used;
                if (passed > bounds.characters()) {
                    throw new TemplateFault(name, Said.of("template.much-markup", bounds.characters() / 1_000_000));
                }
                put(Arrays.copyOf(pending, used));
                used = 0;
            }
        }

        @Override
        public void flush() { }

        @Override
        public void close() throws IOException {
            pass();
        }
    }
}
