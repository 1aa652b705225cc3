package kitleaf.command.printing;

import java.io.IOException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import kitleaf.press.type.Typefaces;
import kitleaf.sheet.template.Templates;

/** Makes ready what every print needs whatever the basket says, while the basket is read: templates, then typefaces. */
final class Ahead {

    private final FutureTask<Templates> templates;

    private Ahead(FutureTask<Templates> templates) {
        this.templates = templates;
    }

    static Ahead of(PrintJob job) {
        FutureTask<Templates> templates = new FutureTask<>(job::openTemplates);
        Thread thread = new Thread(() -> {
            templates.run();
            try {
                templates.get().read(job.kinds());
                Typefaces.read();
            } catch (ExecutionException | InterruptedException | IOException | RuntimeException | OutOfMemoryError e) {
                // Whoever needs what could not be made ready meets the fault in its place, and tells of it.
                return;
            }
        }, "ahead");
        thread.setDaemon(true);
        thread.start();
        return new Ahead(templates);
    }

    /** The templates, when they are open. */
    Templates templates() throws IOException {
        try {
            return templates.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException io) {
                throw io;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }
}
