package kitleaf.sheet.diary;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import kitleaf.basket.Piece;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.LookBack;
import kitleaf.sizing.year.Span;
import kitleaf.words.Words;

/** Lays out the look back on a month, a quarter or a year. */
public final class LookBackLayout {

    private final Reckoning reckoning;
    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;

    private LookBackLayout(Reckoning reckoning, SheetSettings settings) {
        this.reckoning = reckoning;
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
    }

    /** The look back on what is asked for, else on the year of the latest day; no pages where nothing was done in it. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new LookBackLayout(reckoning, settings).layOut();
    }

    /**
     * One bar of a chart of weeks.
     *
     * @param share of the highest, 0 to 1
     * @param month the month's first letter where one begins in this week, else empty
     */
    public record Bar(double share, String month) { }

    /**
     * A chart of weeks.
     *
     * @param name what it shows
     * @param most the highest of its bars, as a figure
     * @param bars a week each
     */
    public record Chart(String name, String most, List<Bar> bars) {
        /** Copies the list. */
        public Chart {
            bars = List.copyOf(bars);
        }
    }

    /**
     * How one piece moved.
     *
     * @param title what it is called
     * @param before whole percents before the span
     * @param after whole percents at its end
     * @param from what was done before it, 0 to 1
     * @param to what is done at its end, 0 to 1
     * @param stitches by how many it moved
     * @param hours logged for it; empty where none are
     * @param putRight what a reading put right; empty where none did
     */
    public record Moved(String title, String before, String after, double from, double to, String stitches, String hours,
                        String putRight) { }

    private Sheet layOut() {
        LocalDate latest = reckoning.basket().latest().or(settings::asOf).orElse(LocalDate.EPOCH);
        LookBack back = LookBack.of(reckoning.basket(), settings.span().orElseGet(() -> Span.year(latest.getYear())));
        boolean done = !back.moved().isEmpty() || !back.finished().isEmpty() || !back.stitched().isEmpty();
        String from = figures.day(back.span().from());
        String to = figures.day(back.span().to().isAfter(latest) ? latest : back.span().to());
        List<String> ended = List.of(
                ended("back.finished", back.finished(), piece -> piece.progress().finished().orElseThrow()),
                ended("back.stitched", back.stitched(), piece -> piece.progress().stitched().orElseThrow()));
        return new Frames(reckoning.basket(), settings, words, words.say("back.name"))
                .flowing(SheetKind.LOOK_BACK, done ? 1 : 0, words.say("back.subject"), Map.of("below", words.say("back.span", from, to),
                        "hours", figures.decimal(back.hours(), 1), "stitches", signed(back.stitches()).replaceFirst("^\\+", ""),
                        "number", Integer.toString(back.finished().size()), "ended", ended.stream().filter(it -> !it.isEmpty()).toList(),
                        "charts", List.of(chart("back.hours-week", back, LookBack.Week::hours, 1),
                                chart("back.stitches-week", back, week -> (double) Math.max(0, week.stitches() + week.inferred()), 0)),
                        "moved", back.moved().stream().map(this::moved).toList(),
                        "inferred", back.weeks().stream().anyMatch(week -> week.inferred() > 0) ? words.say("back.inferred") : ""));
    }

    private String ended(String phrase, List<Piece> pieces, Function<Piece, LocalDate> day) {
        return pieces.isEmpty() ? "" : words.say(phrase, figures.list(pieces.stream()
                .map(piece -> words.say("back.on", piece.title(), figures.day(day.apply(piece), "date.short"))).toList()));
    }

    private Chart chart(String phrase, LookBack back, Function<LookBack.Week, Double> figure, int places) {
        double most = back.weeks().stream().mapToDouble(figure::apply).max().orElse(0);
        Locale language = settings.language();
        String highest = places == 0 ? figures.grouped(Math.round(most)) : figures.decimal(most, places);
        return new Chart(words.say(phrase), most == 0 ? "" : highest,
                back.weeks().stream().map(week -> new Bar(most == 0 ? 0 : figure.apply(week) / most,
                        week.monday().getDayOfMonth() <= 7 ? week.monday().getMonth().getDisplayName(TextStyle.SHORT, language)
                                : "")).toList());
    }

    private Moved moved(LookBack.Moved it) {
        return new Moved(it.piece().title(), figures.percent(Integer.toString(it.before().percentDone())),
                figures.percent(Integer.toString(it.after().percentDone())), share(it.before().done(), it.before().total()),
                share(it.after().done(), it.after().total()), signed(it.after().done() - it.before().done()),
                it.hours() == 0 ? "" : figures.decimal(it.hours(), 2), it.putRight() == 0 ? "" : signed(it.putRight()));
    }

    private static double share(long part, long whole) {
        return whole == 0 ? 0 : (double) part / whole;
    }

    private String signed(long number) {
        return (number < 0 ? "−" : number > 0 ? "+" : "") + figures.grouped(Math.abs(number));
    }
}
