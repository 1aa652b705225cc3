package kitleaf.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Printer;
import kitleaf.basket.Units;

/** Makes the frames of a sheet's pages. */
final class Frames {

    /** Space kept free at every side. */
    static final double MARGIN_MM = 12;
    /** Where content starts below a heading with a line under its title. */
    static final double HEADER_MM = 41;
    /** Check bars, separator and signature. */
    static final double FOOT_MM = 31;

    private final Basket basket;
    private final SheetSettings settings;
    private final Words words;
    private final String sheetTitle;
    private final String dayPhrase;
    private final Optional<LocalDate> day;

    Frames(Basket basket, SheetSettings settings, Words words, String sheetTitle) {
        this(basket, settings, words, sheetTitle, "signature.data", basket.latest());
    }

    /** Frames of a sheet that looks from a day of its own. */
    static Frames asOf(LocalDate day, Basket basket, SheetSettings settings, Words words, String sheetTitle) {
        return new Frames(basket, settings, words, sheetTitle, "signature.as-of", Optional.of(day));
    }

    private Frames(Basket basket, SheetSettings settings, Words words, String sheetTitle, String dayPhrase, Optional<LocalDate> day) {
        this.basket = basket;
        this.settings = settings;
        this.words = words;
        this.sheetTitle = sheetTitle;
        this.dayPhrase = dayPhrase;
        this.day = day;
    }

    /** The frame of one page, on the basket's paper. */
    PageFrame of(int number, int count) {
        return of(settings.paper().widthMm(), settings.paper().heightMm(), number, count);
    }

    /** The frame of one page of any size. */
    PageFrame of(double widthMm, double heightMm, int number, int count) {
        return new PageFrame(widthMm, heightMm, number, count, basket.title(), sheetTitle, date(), correction(),
                settings.units() == Units.IN);
    }

    private String date() {
        return day.map(it -> words.say(dayPhrase, DateTimeFormatter.ofPattern("d MMMM uuuu", settings.language()).format(it)))
                .orElse("");
    }

    private String correction() {
        Printer printer = basket.printer();
        return printer.equals(Printer.TRUE) ? ""
                : words.say("bars.corrected", millimetres(printer.measuredAcrossMm()), millimetres(printer.measuredDownMm()));
    }

    private static String millimetres(double mm) {
        return Figures.decimal(mm, 2) + Figures.NO_BREAK + "mm";
    }
}
