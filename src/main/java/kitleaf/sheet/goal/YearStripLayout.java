package kitleaf.sheet.goal;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.PlannedWeek;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.words.Words;

/** Places the year as a strip of weeks on pages, with what is to be said of it below. */
final class YearStripLayout {

    private static final double TOP_MM = 44;
    private static final double MONTHS_MM = 5;
    private static final double MOST_ROW_MM = 10;
    private static final double LEAST_ROW_MM = 5.2;
    private static final double LEGEND_MM = 13;
    private static final double NOTE_LINE_MM = 4;

    private final YearReckoning year;
    private final Words words;
    private final GoalWords says;
    private final TextRuler ruler;
    private final Locale language;
    private final double widthMm;
    private final double heightMm;
    private final double labelsMm;
    private final OptionalInt asked;

    YearStripLayout(YearReckoning year, Words words, GoalWords says, SheetSettings settings, double widthMm, double heightMm, OptionalInt asked) {
        this.year = year;
        this.words = words;
        this.says = says;
        this.ruler = settings.ruler();
        this.language = settings.language();
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.asked = asked;
        this.labelsMm = settings.type().large() ? 0 : Math.min(60, widthMm * 0.24);
    }

    /** One page's rows and sentences, still without a frame. */
    record Page(List<PlannedPiece> pieces, List<String> notes) { }

    /** How the pieces and the sentences part over pages; one page where they fit. */
    List<Page> pages() {
        List<String> notes = says.notes(asked);
        double roomMm = heightMm - Frames.FOOT_MM - TOP_MM - MONTHS_MM - LEGEND_MM;
        int most = Math.max(1, (int) Math.floor(roomMm / LEAST_ROW_MM));
        List<Page> pages = new ArrayList<>();
        for (int from = 0; from == 0 || from < year.chosen().size(); from += most) {
            pages.add(new Page(year.chosen().subList(from, Math.min(year.chosen().size(), from + most)), List.of()));
        }
        Page last = pages.get(pages.size() - 1);
        double freeMm = roomMm - last.pieces().size() * LEAST_ROW_MM;
        List<String> here = new ArrayList<>();
        List<String> over = new ArrayList<>();
        for (String note : notes) {
            freeMm -= height(note);
            (freeMm >= 0 && over.isEmpty() ? here : over).add(note);
        }
        pages.set(pages.size() - 1, new Page(last.pieces(), here));
        while (!over.isEmpty()) {
            List<String> next = new ArrayList<>();
            double leftMm = roomMm;
            while (!over.isEmpty() && (next.isEmpty() || leftMm >= height(over.get(0)))) {
                leftMm -= height(over.get(0));
                next.add(over.remove(0));
            }
            pages.add(new Page(List.of(), next));
        }
        return pages;
    }

    YearStrip strip(Page page, PageFrame frame) {
        int rows = page.pieces().size();
        double notesMm = page.notes().stream().mapToDouble(this::height).sum();
        double roomMm = heightMm - Frames.FOOT_MM - TOP_MM - MONTHS_MM - LEGEND_MM - notesMm;
        double rowMm = rows == 0 ? 0 : Math.max(LEAST_ROW_MM, Math.min(MOST_ROW_MM, roomMm / rows));
        double firstRowMm = TOP_MM + MONTHS_MM;
        double bottomMm = firstRowMm + rows * rowMm;
        List<YearStrip.Row> placed = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            PlannedPiece piece = page.pieces().get(i);
            boolean one = ruler.widthMm(piece.reckoning().piece().title(), "text", 600, 6) <= labelsMm - 3;
            placed.add(row(piece, one ? 1 : 2, firstRowMm + i * rowMm, rowMm));
        }
        List<YearStrip.Note> notes = new ArrayList<>();
        double yMm = bottomMm + LEGEND_MM;
        for (String note : page.notes()) {
            notes.add(new YearStrip.Note(note, yMm));
            yMm += height(note);
        }
        boolean inYear = year.asOf().getYear() == year.year();
        return new YearStrip(frame, words.say("strip.title", year.year()), says.fit(), labelsMm, TOP_MM, bottomMm, inYear && rows > 0 ? x(year.asOf()) : 0,
                rows == 0 ? List.of() : off(TOP_MM + MONTHS_MM, bottomMm),
                rows == 0 ? List.of() : months(TOP_MM, bottomMm, TextStyle.SHORT), placed, notes, null, List.of());
    }

    YearStrip.Row row(PlannedPiece piece, int titleLines, double yMm, double rowMm) {
        List<Box> main = new ArrayList<>();
        List<Box> beside = new ArrayList<>();
        for (PlannedWeek week : year.weeks()) {
            week.shares().stream().filter(share -> share.id().equals(piece.id())).findFirst().ifPresent(share -> {
                Box box = new Box(x(week.monday()) + 0.25, yMm + rowMm * 0.22, x(week.monday().plusWeeks(1)) - x(week.monday()) - 0.5, rowMm * 0.3);
                (share.main() ? main : beside).add(box);
            });
        }
        return new YearStrip.Row(piece.reckoning().piece().title(), titleLines, yMm, rowMm, main, beside, x(piece.p10()), x(piece.p90()),
                piece.reckoning().piece().goal().by().filter(by -> by.getYear() == year.year()).map(this::x).orElse(0.0));
    }

    List<Box> off(double topMm, double bottomMm) {
        return year.weeks().stream().filter(week -> week.timeOff() > 0)
                .map(week -> new Box(x(week.monday()), topMm, x(week.monday().plusWeeks(1)) - x(week.monday()), bottomMm - topMm))
                .filter(box -> box.widthMm() > 0).toList();
    }

    List<YearStrip.Month> months(double topMm, double bottomMm, TextStyle names) {
        List<YearStrip.Month> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            LocalDate first = LocalDate.of(year.year(), month, 1);
            months.add(new YearStrip.Month(x(first), topMm, bottomMm, first.getMonth().getDisplayName(names, language)));
        }
        return months;
    }

    /** Where a day stands; days outside the year stand at its ends. */
    double x(LocalDate day) {
        LocalDate first = LocalDate.of(year.year(), 1, 1);
        double fraction = (double) ChronoUnit.DAYS.between(first, day) / first.lengthOfYear();
        double fromMm = Frames.MARGIN_MM + labelsMm;
        return fromMm + Math.max(0, Math.min(1, fraction)) * (widthMm - Frames.MARGIN_MM - fromMm);
    }

    private double height(String note) {
        return 1.2 + NOTE_LINE_MM * Math.min(3, ruler.lines(note, "text", 400, 8.5, widthMm - 2 * Frames.MARGIN_MM));
    }
}
