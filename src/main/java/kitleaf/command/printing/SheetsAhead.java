package kitleaf.command.printing;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import kitleaf.basket.Basket;
import kitleaf.sheet.Sheets;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.template.Templates;
import kitleaf.sizing.Reckoning;

/**
 * Lays sheets out while the one before is pressed, and sets their templates going. Never more than one ahead: a template stops
 * when a few pages of its own wait, so memory does not grow with the number of sheets.
 */
final class SheetsAhead implements AutoCloseable {

    /** A sheet and its page markup, which is still being written; without markup when there are no pages. */
    record Begun(Sheet sheet, Reader markup) { }

    /** The one being pressed and the one ahead of it. */
    private static final int AT_A_TIME = 2;

    private final PrintJob job;
    private final Reckoning reckoning;
    private final Templates templates;
    private final List<FutureTask<Begun>> sheets;
    private final Semaphore room = new Semaphore(AT_A_TIME);
    private final Thread thread;
    private int next;
    /** Closed twice is as good as once. */
    private final List<Reader> begun = new ArrayList<>();
    private boolean closed;

    private SheetsAhead(PrintJob job, Reckoning reckoning, Templates templates, List<SheetKind> kinds) {
        this.job = job;
        this.reckoning = reckoning;
        this.templates = templates;
        this.sheets = kinds.stream().map(kind -> new FutureTask<>(() -> begin(kind))).toList();
        this.thread = new Thread(this::layOut, "layouts");
        // What cannot be stopped ends with the program.
        thread.setDaemon(true);
    }

    /** Begins with the first of these sheets. */
    static SheetsAhead of(PrintJob job, Reckoning reckoning, Templates templates, List<SheetKind> kinds) {
        SheetsAhead ahead = new SheetsAhead(job, reckoning, templates, kinds);
        ahead.thread.start();
        return ahead;
    }

    private void layOut() {
        for (FutureTask<Begun> sheet : sheets) {
            try {
                room.acquire();
            } catch (InterruptedException closed) {
                return;
            }
            sheet.run();
        }
    }

    private Begun begin(SheetKind kind) {
        Basket basket = reckoning.basket();
        job.limits().checkLabels(kind, basket);
        Sheet sheet = Sheets.layOut(kind, reckoning, job.settings(basket));
        job.limits().checkPages(sheet);
        return new Begun(sheet, sheet.pages() > 0 ? open(sheet) : Reader.nullReader());
    }

    private synchronized Reader open(Sheet sheet) {
        if (closed) {
            return Reader.nullReader();
        }
        Reader markup = templates.open(sheet);
        begun.add(markup);
        return markup;
    }

    /** The next sheet, once it is laid out; to be called once for each of them, when the one before is done. */
    Begun next() throws IOException {
        if (next > 0) {
            room.release();
        }
        try {
            return sheets.get(next++).get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException unexpected) {
                throw unexpected;
            } else if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException();
        }
    }

    /** Stops what runs ahead: templates too that nobody will press. */
    @Override
    public synchronized void close() throws IOException {
        closed = true;
        thread.interrupt();
        for (Reader markup : begun) {
            markup.close();
        }
    }
}
