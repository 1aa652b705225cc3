package kitleaf.sheet.goal;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.LargeFlow;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.Masthead;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Passage;
import kitleaf.sheet.page.Passages;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.words.Words;

/** The strip of weeks in large print: each title above its bars, and what is to be said on as many pages as it takes. */
final class LargeYearStrip {

    private static final double MONTHS_MM = 8;
    private static final double BARS_MM = 9;
    private static final double TODAY_MM = 9;
    /** Months narrower than this show their first letter. */
    private static final double MONTH_NAME_MM = 14;
    /** A title that takes more is cut short, with a warning. */
    private static final int MOST_TITLE_LINES = 4;

    private final YearReckoning year;
    private final Words words;
    private final GoalWords says;
    private final SheetSettings settings;
    private final Frames frames;
    private final double widthMm;
    private final double heightMm;
    private final YearStripLayout layout;
    private final List<List<PlannedPiece>> parts = new ArrayList<>();
    /** What stands below the rows of the last strip page, and what goes over. */
    private final List<Passage> here = new ArrayList<>();
    private final List<LargePage> over;

    LargeYearStrip(YearReckoning year, Words words, GoalWords says, SheetSettings settings, Frames frames, double widthMm, double heightMm,
                   OptionalInt asked) {
        this.year = year;
        this.words = words;
        this.says = says;
        this.settings = settings;
        this.frames = frames;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.layout = new YearStripLayout(year, words, says, settings, widthMm, heightMm, asked);
        double bottomMm = frame(0, 0).foot().topMm();
        for (int from = 0; from == 0 || from < year.chosen().size();) {
            int to = from;
            double endMm = firstRowMm(from == 0);
            do {
                endMm += to < year.chosen().size() ? rowMm(year.chosen().get(to)) : 0;
                to++;
            } while (to < year.chosen().size() && endMm + rowMm(year.chosen().get(to)) <= bottomMm - TODAY_MM);
            to = Math.min(to, year.chosen().size());
            parts.add(year.chosen().subList(from, to));
            from = Math.max(to, 1);
        }
        this.over = over(asked, bottomMm);
    }

    /** Takes what has room below the last rows, and flows the rest. */
    private List<LargePage> over(OptionalInt asked, double bottomMm) {
        Passages set = new Passages(settings.type(), settings.ruler(), Frames.MARGIN_MM, widthMm - 2 * Frames.MARGIN_MM);
        List<Passage> passages = new ArrayList<>(set.paragraph(words.say("strip.legend"), set.quiet()));
        says.notes(asked).forEach(note -> passages.addAll(set.paragraph(note, set.text())));
        double topMm = rowsBottomMm(parts.size() - 1) + TODAY_MM;
        if (topMm + passages.get(0).heightMm() > bottomMm) {
            return LargePage.flow(frame(0, 0), head(false), head(false), "", passages);
        }
        List<List<Passage>> pages = LargeFlow.pages(passages, topMm, head(false).bottomMm(), bottomMm);
        here.addAll(pages.get(0));
        return pages.subList(1, pages.size()).stream().map(page -> new LargePage(frame(0, 0), "", head(false), page)).toList();
    }

    int pages() {
        return parts.size() + over.size();
    }

    List<YearStrip> strips(int before, int count) {
        List<YearStrip> strips = new ArrayList<>();
        for (int part = 0; part < parts.size(); part++) {
            boolean last = part == parts.size() - 1;
            double topMm = head(part == 0).bottomMm();
            double bottomMm = rowsBottomMm(part);
            boolean rows = !parts.get(part).isEmpty();
            List<YearStrip.Row> placed = new ArrayList<>();
            double endMm = firstRowMm(part == 0);
            for (PlannedPiece piece : parts.get(part)) {
                endMm += rowMm(piece);
                placed.add(layout.row(piece, titleLines(piece), endMm - BARS_MM, BARS_MM));
            }
            strips.add(new YearStrip(frame(before + part + 1, count), words.say("strip.title", year.year()), says.fit(), 0, topMm, bottomMm,
                    rows && year.asOf().getYear() == year.year() ? layout.x(year.asOf()) : 0, rows ? layout.off(topMm + MONTHS_MM, bottomMm) : List.of(),
                    rows ? layout.months(topMm, bottomMm, names()) : List.of(), placed, List.of(), head(part == 0), last ? here : List.of()));
        }
        return strips;
    }

    List<LargePage> words(int before, int count) {
        List<LargePage> pages = new ArrayList<>();
        for (LargePage page : over) {
            pages.add(page.in(frame(before + parts.size() + pages.size() + 1, count)));
        }
        return pages;
    }

    private TextStyle names() {
        return (widthMm - 2 * Frames.MARGIN_MM) / 12 >= MONTH_NAME_MM ? TextStyle.SHORT : TextStyle.NARROW;
    }

    private Masthead head(boolean first) {
        String title = words.say("strip.title", year.year());
        return Masthead.of(words.say("strip.eyebrow"), first ? title : words.say("kit.continued", title), says.fit(), first,
                widthMm - 2 * Frames.MARGIN_MM, settings.type(), settings.ruler(), settings.language());
    }

    private double firstRowMm(boolean first) {
        return head(first).bottomMm() + MONTHS_MM;
    }

    private double rowsBottomMm(int part) {
        return firstRowMm(part == 0) + parts.get(part).stream().mapToDouble(this::rowMm).sum();
    }

    private double rowMm(PlannedPiece piece) {
        return titleLines(piece) * settings.type().lineMm(settings.type().table()) + BARS_MM;
    }

    private int titleLines(PlannedPiece piece) {
        return Math.min(MOST_TITLE_LINES, settings.ruler().lines(piece.reckoning().piece().title(), "text", 600, settings.type().table(), widthMm - 2 * Frames.MARGIN_MM));
    }

    private PageFrame frame(int number, int count) {
        return frames.of(widthMm, heightMm, number, count);
    }
}
