package kitleaf.sheet.page;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
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

    /**
     * The bars of a flowing page's foot across, what is blank beside them, the bars above their captions, and what is blank below the
     * foot.
     */
    private static final double BARS_MM = 109;
    private static final double FOOT_GAP_MM = 5;
    private static final double BAR_MM = 2.4;
    private static final double BOTTOM_MM = 8;
    /** Above the bars of a foot that is set close, between its lines in parts of a line, and above all of it. */
    private static final double ABOVE_BARS_MM = 1.2;
    private static final double ABOVE_SIGNATURE = 0.5;
    private static final double CLEAR_MM = 2.5;

    /** Before the signature, set bold. */
    private static final String PROGRAM = "Kitleaf" + String.valueOf(Figures.NO_BREAK).repeat(3);
    /** What a page's foot keeps from the paper's edge. */
    public static final double LOWEST_MM = 8;
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

    private int lines(String text, int weight, double widthMm) {
        return settings.ruler().lines(text, "text", weight, settings.type().fine(), widthMm);
    }

    /** How high what {@code flow.ftlx} sets close together at a foot is, with what is blank around it. */
    public double closeFootMm(String note) {
        double lineMm = TypeScale.mm(settings.type().fine()) * TypeScale.LEADING;
        double innerMm = settings.paper().widthMm() - 2 * MARGIN_MM;
        int beside = lines(note, 600, innerMm - BARS_MM - FOOT_GAP_MM);
        double barsMm = BAR_MM + lineMm;
        double notedMm = beside <= 2 ? Math.max(barsMm, beside * lineMm) : lines(note, 600, innerMm) * lineMm + ABOVE_BARS_MM + barsMm;
        double pageMm = settings.ruler().widthMm(words.say("signature.page", WIDEST, WIDEST), "text", 400, settings.type().fine());
        return BOTTOM_MM + (lines(PROGRAM + signature(), 600, innerMm - pageMm - FOOT_GAP_MM) + ABOVE_SIGNATURE) * lineMm + notedMm
                + CLEAR_MM;
    }

    /** How high the foot is at most that {@code flow.ftlx} sets in a width: for pages on which something has its place above it. */
    public double placedFootMm(double widthMm) {
        TypeScale type = settings.type();
        TextRuler ruler = settings.ruler();
        double lineMm = type.lineMm(type.fine());
        String note = correction().isEmpty() ? words.say("bars.note-large") : correction();
        boolean beside = widthMm > BESIDE_BARS_MM && ruler.lines(note, "text", 400, type.fine(), widthMm - BESIDE_BARS_MM) <= 2;
        double noteMm = beside ? 0 : ruler.lines(note, "text", 400, type.fine(), widthMm) * lineMm + 1.2;
        double pageMm = ruler.widthMm(words.say("signature.page", WIDEST, WIDEST), "text", 400, type.fine());
        int lines = Math.min(MOST_LINES, ruler.lines(PROGRAM + signature(), "text", 600, type.fine(), widthMm - pageMm - 5));
        return 3 + noteMm + Math.max(2.4, lineMm) + lineMm + 4.4 + lines * lineMm;
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
