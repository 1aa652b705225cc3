package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import kitleaf.basket.Units;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.YearReckoning;

/** A year's goals as plain lines of text, at most 80 columns wide where IDs allow. */
public final class PlainYear {

    private static final int WIDTH = 18;

    private final PlainWords words;
    private final Figures figures;

    /** A year in words of this language. */
    public PlainYear(Locale language) {
        this.words = new PlainWords(language, WIDTH);
        // Nothing here is measured, so either units will do.
        this.figures = words.figures(Units.CM);
    }

    /** One year. */
    public List<String> of(YearReckoning year) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("goals", year.year(), year.asOf()));
        lines.add(words.row(words.say("row.pace"), words.say("pace", figure(year.stitchesPerHour()), figure(year.hoursPerWeek())), ""));
        lines.add(words.row(words.say("row.hours"), words.say("hours", figure(year.hoursAvailable()), figure(year.hoursNeeded())), ""));
        for (PieceReckoning piece : year.finished()) {
            lines.add(words.row(words.say("row.done"), piece.piece().id(), piece.piece().progress().finished().orElseThrow().toString()));
        }
        lines.addAll(words.rows(words.say("row.chosen"), year.chosen(), PlannedPiece::id, piece ->
                (year.spread() ? words.say("chosen", piece.p50(), piece.p10(), piece.p90(), percent(piece.chance()))
                        : words.say("chosen.one-pace", piece.p50()))
                        + (piece.lateDays() > 0 ? words.say("chosen.late", piece.lateDays()) : "")));
        year.chanceAll().ifPresent(chance -> lines.add(words.row(words.say("row.all"), year.spread() ? percent(chance)
                : words.say(chance > 0 ? "all.in-time" : "all.late"), "")));
        lines.addAll(words.rows(words.say("row.not-chosen"), year.notChosen(), piece -> piece.reckoning().piece().id(),
                piece -> words.of("why", piece.why())));
        lines.addAll(words.rows(words.say("row.to-know"), year.warnings(), warning -> words.of("warning", warning.kind())
                + (warning.figure().isPresent() ? ": " + figure(warning.figure()) : ""), warning -> String.join(", ", warning.pieces())));
        return lines;
    }

    private String figure(OptionalDouble figure) {
        return figure.isPresent() ? figures.decimal(figure.getAsDouble(), 1) : words.say("figure.unknown");
    }

    /** Whole percents; what is not certain in all drawn years never reads as certain. */
    private String percent(double chance) {
        long whole = Math.round(chance * 100);
        return chance < 1 && whole == 100 ? words.say("percent.over") : chance > 0 && whole == 0 ? words.say("percent.under") : whole
                + " %";
    }
}
