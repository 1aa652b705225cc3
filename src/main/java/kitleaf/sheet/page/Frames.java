package kitleaf.sheet.page;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Printer;
import kitleaf.sheet.words.Figures;
import kitleaf.words.Words;

/** Makes the frames of a sheet's pages. */
public final class Frames {

    /** Space kept free at every side. */
    public static final double MARGIN_MM = 12;
    /** Where content starts below a heading with a line under its title. */
    public static final double HEADER_MM = 41;
    /** Check bars, separator and signature. */
    public static final double FOOT_MM = 31;

    /** The bars above their captions, and what is blank beside them, around all, and above the signature of a close foot, in lines. */
    private static final double BAR_MM = 2.4;
    private static final double FOOT_GAP_MM = 5;
    private static final double ABOVE_BARS_MM = 1.2;
    private static final double AROUND_MM = 7.4;
    private static final double ABOVE_SIGNATURE = 0.5;

    /** What is read at the table is no smaller than this. */
    private static final double WORK_PT = 10;
    /** Before the signature, set bold. */
    private static final String PROGRAM = "Kitleaf" + String.valueOf(Figures.NO_BREAK).repeat(3);
    /** What is blank above a foot that is set close. */
    public static final double CLEAR_MM = 2.5;
    /** What a page's foot keeps from the paper's edge. */
    public static final double LOWEST_MM = 8;
    /** Lines of the signature, and more than stand beside the bars. */
    private static final int MOST_LINES = 6;
    /** The bars of 50 mm and 2 in, and what lies between them and words beside them. */
    private static final double BESIDE_BARS_MM = 114;
    /** A page number as wide as one may become. */
    private static final int WIDEST = 888;

    private final Basket basket;
    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final String sheetTitle;
    private final String dayPhrase;
    private final Optional<LocalDate> day;

    /**
     * Frames that name the latest day in the basket's data.
     *
     * @param sheetTitle for the signature, such as "cut sheets"
     */
    public Frames(Basket basket, SheetSettings settings, Words words, String sheetTitle) {
        this(basket, settings, words, sheetTitle, "signature.data", basket.latest());
    }

    /** Frames of a sheet that looks from a day of its own. */
    public static Frames asOf(LocalDate day, Basket basket, SheetSettings settings, Words words, String sheetTitle) {
        return new Frames(basket, settings, words, sheetTitle, "signature.as-of", Optional.of(day));
    }

    private Frames(Basket basket, SheetSettings settings, Words words, String sheetTitle, String dayPhrase, Optional<LocalDate> day) {
        this.basket = basket;
        this.settings = settings;
        this.words = words;
        this.figures = new Figures(settings.units(), words);
        this.sheetTitle = sheetTitle;
        this.dayPhrase = dayPhrase;
        this.day = day;
    }

    /**
     * A sheet whose template flows: what all of these have, and what it has of its own.
     *
     * @param parts how many things flow down pages of their own; 0 for a sheet of no pages
     */
    public Sheet flowing(SheetKind kind, int parts, String subject, Map<String, Object> own) {
        Map<String, Object> model = new HashMap<>(own);
        model.putAll(Map.of("title", basket.title() + ": " + sheetTitle, "subject", subject, "language", settings.language()
                .toLanguageTag(),
                "paper", new Box(0, 0, settings.paper().widthMm(), settings.paper().heightMm()), "correction", correction(), "signature",
                signature()));
        return new Sheet(kind, parts, model);
    }

    /**
     * How high the foot is at most that {@code flow.ftlx} sets in a width.
     *
     * @param note what stands beside its bars, and then all of it is set close; if empty, what is briefly said of them, to be
     *     read at the table
     */
    public double footMm(String note, double widthMm) {
        return footMm(note, note.isEmpty() ? settings.type().floor(WORK_PT) : settings.type().fine(), widthMm);
    }

    /** The same where what is said of the bars, if anything is, is of so many points. */
    public double footMm(String note, double saidPt, double widthMm) {
        TypeScale type = settings.type();
        double lineMm = type.lineMm(type.fine());
        double saidMm = type.lineMm(saidPt);
        String said = !note.isEmpty() ? note : correction().isEmpty() ? words.say("bars.note-large") : correction();
        int beside = widthMm > BESIDE_BARS_MM ? lines(said, 400, saidPt, widthMm - BESIDE_BARS_MM) : MOST_LINES;
        double barsMm = BAR_MM + saidMm;
        double notedMm = beside <= 2 ? Math.max(barsMm, beside * saidMm)
                : lines(said, 400, saidPt, widthMm) * saidMm + ABOVE_BARS_MM + barsMm;
        double pageMm = settings.ruler().widthMm(words.say("signature.page", WIDEST, WIDEST), "text", 400, type.fine());
        int signed = Math.min(MOST_LINES, lines(PROGRAM + signature(), 600, type.fine(), widthMm - pageMm - FOOT_GAP_MM));
        return notedMm + (note.isEmpty() ? AROUND_MM : ABOVE_SIGNATURE * lineMm) + signed * lineMm;
    }

    private int lines(String text, int weight, double sizePt, double widthMm) {
        return settings.ruler().lines(text, "text", weight, sizePt, widthMm);
    }

    private String signature() {
        String date = date();
        return basket.title() + " · " + sheetTitle + (date.isEmpty() ? "" : " · " + date);
    }

    private String date() {
        return day.map(it -> words.say(dayPhrase, figures.day(it)))
                .orElse("");
    }

    private String correction() {
        Printer printer = basket.printer();
        return printer.isTrue() ? ""
                : words.say("bars.corrected", millimetres(printer.measuredAcrossMm()), millimetres(printer.measuredDownMm()));
    }

    private String millimetres(double mm) {
        return figures.decimal(mm, 2) + figures.unit("mm") ;
    }
}
