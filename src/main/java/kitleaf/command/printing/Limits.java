package kitleaf.command.printing;

import java.util.function.IntConsumer;
import kitleaf.basket.Basket;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sizing.thread.ThreadReckoning;

/**
 * How much one run prints before it asks whether that is meant.
 *
 * @param mostPages of one sheet
 * @param mostLabels of all pieces
 */
public record Limits(int mostPages, int mostLabels) {

    /** A template may make this many pages for each it was given: more is a loop without end. */
    private static final int PAGES_FOR_ONE = 100;

    /** Refuses labels past the limit, before any is laid out. */
    void checkLabels(SheetKind kind, Basket basket) {
        if (kind != SheetKind.BOBBIN_LABELS || calledFor(basket) <= mostLabels) {
            return;
        }
        long number = ThreadReckoning.unfinished(basket);
        if (number > mostLabels) {
            throw Failure.of(Exit.BASKET_HAS_PROBLEMS, "print.most-labels", number, mostLabels);
        }
    }

    /** Refuses a sheet of more pages than the limit. */
    void checkPages(Sheet sheet) {
        if (sheet.pages() > mostPages) {
            throw Failure.of(Exit.BASKET_HAS_PROBLEMS, "print.most-pages", sheet.kind().id(), sheet.pages(), mostPages);
        }
    }

    /** Passes each page on until there are far more than the sheet was laid out with. */
    IntConsumer guard(Sheet sheet, IntConsumer next) {
        long most = PAGES_FOR_ONE + (long) PAGES_FOR_ONE * sheet.pages();
        return page -> {
            if (page > most) {
                throw Failure.of(Exit.BASKET_HAS_PROBLEMS, sheet.pages() == 1 ? "print.endless.one" : "print.endless.many",
                        sheet.kind().id(), most, sheet.pages());
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
