package kitleaf.sheet.goal;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Goals;
import kitleaf.basket.Piece;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.year.PaceFigure;
import kitleaf.sizing.year.PassedOver;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.sizing.year.YearWarning;
import kitleaf.words.Words;

/** Puts a reckoned year into the words of its cards and of the sentences below its strip. */
final class GoalWords {

    /** More than these nobody reads; the rest are counted. */
    private static final int MOST_NAMED = 12;

    /** A stitch that is worth a cross to within this is one: no hour is seen to differ. */
    private static final double WEIGHED = 0.02;

    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;
    private final YearReckoning year;

    GoalWords(Words words, Figures figures, YearReckoning year) {
        this.words = words;
        this.figures = figures;
        this.clothWords = new ClothWords(words, figures);
        this.year = year;
    }

    /** "Nine to finish". */
    String title(int number) {
        String[] names = words.say("goal.numbers").split(",");
        return words.say("goal.title", number < names.length ? names[number] : Integer.toString(number));
    }

    /** "9 hours a week · 112 stitches an hour · two in three to finish all". */
    private String pace() {
        String tempo = words.say("goal.pace", figures.decimal(year.hoursPerWeek().getAsDouble(), 1),
                Math.round(year.stitchesPerHour().getAsDouble()));
        return year.chanceAll().isPresent() ? tempo + " · " + all(year.chanceAll().getAsDouble()) : tempo;
    }

    private boolean paceKnown() {
        return year.hoursPerWeek().isPresent() && year.stitchesPerHour().isPresent();
    }

    /** How likely it is that all are finished; without weeks that differ, whether they are at the one pace that is known. */
    private String all(double chance) {
        if (year.spread()) {
            return words.say(dated() ? "goal.all-dated" : "goal.all", words.say(ChanceWords.key(chance)));
        }
        boolean stated = year.pace().hoursPerWeek().from() == PaceFigure.From.STATED;
        return words.say(chance > 0 ? "goal.in-time" : "goal.not-in-time", words.say(stated ? "goal.at-stated" : "goal.at-logged"));
    }

    /** Whether a chosen piece has a date of its own, before the year ends. */
    private boolean dated() {
        return year.chosen().stream().anyMatch(planned -> planned.deadline().isBefore(year.lastDay()));
    }

    /** "12 Jun – 3 Jul", or one day where it is one. */
    private String likely(PlannedPiece planned) {
        return !year.spread() ? words.say("goal.at-pace", day(planned.p50()))
                : planned.p10().equals(planned.p90()) ? day(planned.p50())
                        : words.say("goal.between", day(planned.p10()), day(planned.p90()));
    }

    /** The card of a piece that is planned. */
    GoalEntry entry(PlannedPiece planned) {
        PieceReckoning piece = planned.reckoning();
        return entry(piece, grouped(piece.tally().left()), words.say("goal.left", grouped(Math.round(planned.hoursLeft())), weeks(planned)),
                likely(planned), false);
    }

    /** The card of a piece that is done. */
    GoalEntry finished(PieceReckoning piece) {
        String when = piece.piece().progress().finished().map(day -> figures.day(day)).orElse("");
        return entry(piece, words.say("goal.finished"), when, "", true);
    }

    private GoalEntry entry(PieceReckoning reckoned, String number, String note, String likely, boolean finished) {
        Piece piece = reckoned.piece();
        PieceSize size = reckoned.cloth().size();
        double done = finished ? 1 : reckoned.tally().total() == 0 ? 0 : (double) reckoned.tally().done() / reckoned.tally().total();
        boolean unbegun = !finished && !reckoned.begun();
        return new GoalEntry(piece.title(), clothWords.worked(piece.cloth().kind(), piece.cloth().count(), piece.cloth().over()) + " · "
                + figures.size(size.across().finishedMm(), size.down().finishedMm()), size.across().finishedMm(), size.down().finishedMm(),
                number, note, likely, unbegun ? words.say("goal.unbegun")
                        : words.say("goal.percent", finished ? 100 : reckoned.tally().percentDone()).replace(' ', Figures.NO_BREAK),
                done, finished, unbegun);
    }

    private String weeks(PlannedPiece planned) {
        if (planned.finish().getYear() < year.year()) {
            return words.say("goal.before", year.year()).replace(' ', Figures.NO_BREAK);
        }
        // The first days of a year may belong to the last week of the year before; on the wall they are its first.
        int first = planned.firstWeek().get(IsoFields.WEEK_BASED_YEAR) < year.year() ? 1 : planned.firstWeek()
                .get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
        boolean beyond = planned.lastWeek().get(IsoFields.WEEK_BASED_YEAR) > year.year();
        int last = beyond ? (int) IsoFields.WEEK_OF_WEEK_BASED_YEAR.rangeRefinedBy(LocalDate.of(year.year(), 7, 1)).getMaximum()
                : planned.lastWeek().get(IsoFields.WEEK_BASED_YEAR) < year.year() ? 1 : planned.lastWeek()
                        .get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
        // What is begun before the year has no first week on the wall.
        boolean since = planned.firstWeek().isBefore(year.weeks().get(0).monday());
        return (since ? words.say("goal.until", last)
                : first == last ? words.say("goal.week", first) : words.say("goal.weeks", first, last)).replace(' ', Figures.NO_BREAK)
                + (beyond ? words.say("goal.beyond") : "");
    }

    /**
     * What there is to say below the strip: what is late and what would save it, what was left out and why.
     *
     * @param goals what she wanted of the year
     */
    List<String> notes(Goals goals) {
        List<String> notes = new ArrayList<>();
        if (!paceKnown()) {
            notes.add(words.say("strip.no-pace"));
            return notes;
        }
        notes.add(pace());
        long wall = year.chosen().size() - year.early() + year.finished().size();
        if (wall < goals.choose().orElse(0)) {
            notes.add(words.say("strip.fewer", goals.choose().getAsInt(), wall));
        }
        if (goals.proposes() && !year.chosen().isEmpty()) {
            notes.add(words.say("strip.proposed"));
        }
        for (PlannedPiece planned : year.chosen()) {
            if (planned.lateDays() > 0) {
                notes.add(late(planned));
            } else if (close(planned)) {
                notes.add(close(planned.reckoning().piece().title(), planned));
            }
        }
        weighed().ifPresent(notes::add);
        for (YearWarning warning : year.warnings()) {
            switch (warning.kind()) {
                case MUSTS_DO_NOT_FIT -> notes.add(words.say("strip.must", titles(warning.pieces())));
                case NO_SPREAD -> notes.add(words.say("strip.no-spread"));
                case YEAR_OVER -> notes.add(words.say("strip.over", year.year()));
                case FEW_WEEKS -> notes.add(words.say("strip.few-weeks", Math.round(warning.figure().orElse(0))));
                case CELLS_COUNTED -> notes.add(words.say("strip.cells", titles(warning.pieces())));
                case MORE_MUSTS_THAN_CHOSEN -> notes.add(words.say("strip.more-musts", Math.round(warning.figure().orElse(0))));
                case LAID_ASIDE -> notes.add(words.say("strip.laid-aside", titles(warning.pieces())));
                case MUSTS_NOT_NAMED -> notes.add(words.say("strip.musts-not-named", titles(warning.pieces())));
                case UNUSUAL_WEEKS -> notes.add(words.say("strip.outliers", figures.list(year.pace().outliers().stream()
                        .map(week -> day(week.monday()) + " (" + figures.decimal(week.hours(), 1) + figures.unit("h") + ")").toList())));
                default -> { }
            }
        }
        left("strip.not-fit", PassedOver.Why.DOES_NOT_FIT, notes);
        left("strip.not-best", PassedOver.Why.NOT_AMONG_BEST, notes);
        left("strip.unknown", PassedOver.Why.HOURS_UNKNOWN, notes);
        return notes;
    }

    /** "412 hours are needed, and 446 are there until the end of the year." */
    String fit() {
        if (year.hoursNeeded().isEmpty() || year.hoursAvailable().isEmpty()) {
            return words.say("goal.no-pace");
        }
        String fit = words.say(year.hoursShort() > 0 ? "strip.short" : "strip.fits", Math.round(year.hoursNeeded().getAsDouble()),
                Math.round(year.hoursAvailable().getAsDouble()));
        return dated() ? fit + " " + words.say("strip.dated") : fit;
    }

    private String late(PlannedPiece planned) {
        StringBuilder note = new StringBuilder(words.say("strip.late", planned.reckoning().piece().title(), days(planned.lateDays()),
                day(planned.deadline())));
        planned.rescue().ifPresent(rescue -> {
            rescue.moreHoursPerWeek().ifPresent(hours -> note.append(' ')
                    .append(words.say("strip.save-hours", figures.decimal(Math.ceil(hours * 2) / 2, 1))));
            rescue.instead().ifPresent(id -> note.append(' ').append(words.say("strip.save-drop", titles(List.of(id)))));
        });
        return note.toString();
    }

    /** Why hours are not stitches by stitches an hour: what a stitch is worth, with the piece for which that matters most. */
    private Optional<String> weighed() {
        return year.chosen().stream().filter(planned -> Math.abs(planned.effort().crossesPerStitch() - 1) > WEIGHED && planned.reckoning()
                .tally().left() > 0)
                .max(Comparator.comparingDouble(planned -> Math.abs(planned.effort().crossesLeft() - planned.reckoning().tally().left())))
                .map(planned -> words.say("strip.weighed", planned.reckoning().piece().title(), grouped(planned.reckoning().tally().left()),
                        grouped(Math.round(planned.effort().crossesLeft())), Math.round(year.stitchesPerHour().orElseThrow())));
    }

    /** Without weeks that differ there is no chance to speak of. */
    private boolean close(PlannedPiece planned) {
        return planned.close() && year.spread();
    }

    private String close(String title, PlannedPiece planned) {
        return words.say("strip.close", title, words.say(ChanceWords.key(planned.chance())), day(planned.deadline()), day(planned.p50()))
                + planned.rescue().flatMap(rescue -> rescue.moreHoursPerWeek().stream().boxed().findFirst())
                        .map(hours -> " " + words.say("strip.even-hours", figures.decimal(hours, 1))).orElse("");
    }

    private void left(String key, PassedOver.Why why, List<String> notes) {
        List<String> titles = year.notChosen().stream().filter(it -> it.why() == why).map(it -> it.reckoning().piece().title()).toList();
        if (!titles.isEmpty()) {
            int more = titles.size() - MOST_NAMED;
            String shown = more > 0 ? figures.parted(titles.stream().limit(MOST_NAMED).toList()) : figures.list(titles);
            notes.add(words.say(key, more > 0 ? words.say("strip.more", shown, more) : shown));
        }
    }

    private String titles(List<String> ids) {
        return figures.list(ids.stream().map(this::title).toList());
    }

    private String title(String id) {
        return Stream.concat(Stream.concat(year.chosen().stream().map(PlannedPiece::reckoning), year.finished().stream()),
                        year.notChosen().stream().map(PassedOver::reckoning))
                .filter(it -> it.piece().id().equals(id)).map(it -> it.piece().title()).findFirst().orElse(id);
    }

    private String days(long days) {
        return days == 1 ? words.say("goal.day") : words.say("goal.days", days);
    }

    /** "30 Jun", with the year where it is another. */
    String day(LocalDate day) {
        return figures.shortDay(day, year.year());
    }

    /** A whole number in groups of three. */
    String grouped(long number) {
        return figures.grouped(number);
    }
}
