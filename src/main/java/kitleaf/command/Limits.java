package kitleaf.command;

import java.util.function.IntConsumer;
import kitleaf.basket.Basket;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sizing.thread.ThreadReckoning;
import picocli.CommandLine.Model.OptionSpec;

/** How much one run prints before it asks whether that is meant. */
final class Limits {

    /** A template may make this many pages for each it was given: more is a loop without end. */
    private static final int PAGES_FOR_ONE = 100;

    private final OptionSpec mostPages;
    private final OptionSpec mostLabels;

    /** The limits a command takes. */
    Limits(Task task) {
        mostPages = task.add(Options.most("--most-pages").defaultValue("20000"));
        mostLabels = task.add(Options.most("--most-labels").defaultValue("500000"));
    }

    /** Refuses labels past the limit, before any is laid out. */
    void checkLabels(SheetKind kind, Basket basket) {
        int labels = mostLabels.getValue();
        if (kind != SheetKind.BOBBIN_LABELS || calledFor(basket) <= labels) {
            return;
        }
        long number = ThreadReckoning.unfinished(basket);
        if (number > labels) {
            throw Failure.of(Exit.BASKET_HAS_PROBLEMS, "print.most-labels", number, labels);
        }
    }

    /** Refuses a sheet of more pages than the limit. */
    void checkPages(Sheet sheet) {
        int pages = mostPages.getValue();
        if (sheet.pages() > pages) {
            throw Failure.of(Exit.BASKET_HAS_PROBLEMS, "print.most-pages", sheet.kind().id(), sheet.pages(), pages);
        }
    }

    /** Passes each page on until there are far more than the sheet was laid out with. */
    IntConsumer guard(Sheet sheet, IntConsumer next) {
        long most = PAGES_FOR_ONE + (long) PAGES_FOR_ONE * sheet.pages();
        return page -> {
            if (page > most) {
                throw Failure.of(Exit.BASKET_HAS_PROBLEMS, sheet.pages() == 1 ? "print.endless.one" : "print.endless.many", sheet.kind().id(), most,
                        sheet.pages());
            }
            next.accept(page);
        };
    }

    /** Threads counted by entry, never fewer than labels; cheap. */
    private static long calledFor(Basket basket) {
        return basket.pieces().stream().mapToLong(piece -> piece.threads().size()
                + piece.parts().stream().mapToLong(part -> part.threads().size()).sum()).sum();
    }
}
