package kitleaf.command.printing;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import kitleaf.basket.Basket;
import kitleaf.basket.Paper;
import kitleaf.command.speech.Clock;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.ProgressLine;
import kitleaf.press.PressSettings;
import kitleaf.sheet.Sheets;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.template.Templates;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.Span;

/**
 * What is to be printed, from what, on what and to where.
 *
 * @param from where the basket lies
 * @param basket reads it, with the paper and units asked for
 * @param rooms refuses what has no room on sheets of some kinds
 * @param kinds which sheets
 * @param asked whether she named them herself
 * @param out the folder for the PDFs
 * @param large whether large print was asked for; the basket may ask for it too
 * @param pictures whether each page becomes a picture as well
 * @param skip label places of the first sheet that are used already
 * @param asOf the day the year is looked at from
 * @param span what is looked back on
 * @param all whether pieces are printed too that need a sheet no more
 * @param templates her own templates folder
 * @param progress told of each step and each page of a sheet
 * @param reckoned told of the figures the sheets show
 * @param limits how much is printed without asking
 * @param clock where the time goes
 */
public record PrintJob(Path from, Supplier<Basket> basket, BiConsumer<Reckoning, List<SheetKind>> rooms, List<SheetKind> kinds,
        boolean asked, Path out, boolean large, boolean pictures, int skip, Optional<LocalDate> asOf, Optional<Span> span, boolean all,
        Optional<Path> templates, ProgressLine progress, Consumer<Reckoning> reckoned, Limits limits, Clock clock) {

    /** The sheets to print for a basket: those asked for, else those of the usual ones that are worthwhile for it. */
    List<SheetKind> kinds(Basket basket) {
        return asked ? kinds : kinds.stream().filter(kind -> Sheets.worthwhile(kind, basket)).toList();
    }

    /** The templates, speaking English until the basket's language is known. */
    Templates openTemplates() throws IOException {
        return new Templates(templates, Locale.ENGLISH);
    }

    /** How sheets are laid out; a wrong {@code --skip} is told of here, where the label stock is known. */
    SheetSettings settings(Basket basket) {
        SheetSettings settings = PageSettings.of(basket, large(basket), skip, asOf, span, all);
        if (large(basket)) {
            refuseTooSmall(basket.paper());
        }
        int perSheet = Sheets.labelPlaces(basket, settings);
        if (skip < 0 || skip >= Math.max(1, perSheet)) {
            throw Failure.of(Exit.WRONG_USAGE, "print.skip", skip, perSheet, perSheet - 1);
        }
        return settings;
    }

    /** Large print has to have room between a page's head and its foot. */
    private static void refuseTooSmall(Paper paper) {
        if (!Sheets.holdLargePrint(paper)) {
            throw Failure.of(Exit.WRONG_USAGE, "print.large.no-room", paper.name());
        }
    }

    /** Whether sheets are to be set in large print. */
    boolean large(Basket basket) {
        return large || basket.largePrint();
    }

    PressSettings pressSettings(Basket basket, Sheet sheet) {
        return new PressSettings(basket.printer().acrossFactor(), basket.printer().downFactor(), basket.latest(),
                limits.guard(sheet, progress.of(sheet.kind().id(), sheet.pages())));
    }
}
