package kitleaf.press.binding;

import java.io.InterruptedIOException;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import kitleaf.press.markup.Plate;

/**
 * Binds formes on a thread of its own while the next are laid: packing pages and writing the file is a good part of the work. A few
 * formes wait at most, so memory is constant; the file is the same as if all were done in turn.
 */
public final class Bindery implements AutoCloseable {

    private static final int WAITING = 4;

    /** How long a page in hand may take when nobody wants it any more. */
    private static final long PATIENCE_MILLIS = TimeUnit.SECONDS.toMillis(5);

    private static final Forme LAST = new Forme(new Plate(1, 1, 1, 1), 0);

    private final Binder binder;
    private final BlockingQueue<Forme> formes = new ArrayBlockingQueue<>(WAITING);
    private final Thread thread = new Thread(this::work, "binder");
    private byte[] id;
    private volatile Throwable failure;

    public Bindery(Binder binder) {
        this.binder = binder;
        // What cannot be stopped ends with the program.
        thread.setDaemon(true);
        thread.start();
    }

    private void work() {
        try {
            for (Forme forme = formes.take(); forme != LAST; forme = formes.take()) {
                // After a failure formes are only taken, so that nobody waits to hand one over.
                if (failure == null) {
                    bind(forme);
                }
            }
            if (failure == null) {
                binder.close(id);
            }
        } catch (InterruptedException closed) {
            formes.clear();
        } catch (RuntimeException | Error e) {
            failure = e;
        }
    }

    private void bind(Forme forme) {
        try {
            if (forme.isLate()) {
                binder.bindLate(forme);
            } else {
                binder.bind(forme);
            }
        } catch (RuntimeException | Error e) {
            failure = e;
        }
    }

    /**
     * Binds a page, soon, after those before it.
     *
     * @throws RuntimeException what binding an earlier page threw
     */
    public void take(Forme forme) throws InterruptedIOException {
        put(forme);
        rethrow();
    }

    /**
     * Writes what comes after the last page and waits until all is written.
     *
     * @param id the file's identifier
     * @throws RuntimeException what binding threw
     */
    public void finish(byte[] id) throws InterruptedIOException {
        this.id = id;
        put(LAST);
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw interrupted();
        }
        rethrow();
    }

    private void put(Forme forme) throws InterruptedIOException {
        try {
            formes.put(forme);
        } catch (InterruptedException e) {
            throw interrupted();
        }
    }

    private static InterruptedIOException interrupted() {
        Thread.currentThread().interrupt();
        return new InterruptedIOException();
    }

    private void rethrow() {
        Throwable thrown = failure;
        if (thrown instanceof RuntimeException e) {
            throw e;
        } else if (thrown instanceof Error e) {
            throw e;
        }
    }

    /** Stops after the page in hand, so that nothing is written to the file any more, and lets go of what waits. */
    @Override
    public void close() {
        thread.interrupt();
        try {
            thread.join(PATIENCE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
