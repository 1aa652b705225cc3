package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.year.PassedOver;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.sizing.year.YearWarning;

/** A year's goals as plain lines of text, at most 80 columns wide where IDs allow. */
public final class PlainYear {

    private static final String ROW = "  %-11s%-18s %s";

    private PlainYear() { }

    /** One year. */
    public static List<String> of(YearReckoning year) {
        List<String> lines = new ArrayList<>();
        lines.add("goals " + year.year() + ", as of " + year.asOf());
        lines.add(row("pace", figure(year.stitchesPerHour()) + " stitches an hour", figure(year.hoursPerWeek()) + " hours a week"));
        lines.add(row("hours", figure(year.hoursAvailable()) + " left in the year", figure(year.hoursNeeded()) + " needed"));
        for (PieceReckoning piece : year.finished()) {
            lines.add(row("done", piece.piece().id(), piece.piece().progress().finished().orElseThrow().toString()));
        }
        for (PlannedPiece piece : year.chosen()) {
            lines.add(row(first(lines, "chosen"), piece.id(), piece.p50() + " (" + piece.p10() + " to " + piece.p90() + "), "
                    + percent(piece.chance()) + (piece.lateDays() > 0 ? ", " + piece.lateDays() + " days late" : "")));
        }
        year.chanceAll().ifPresent(chance -> lines.add(row("all", percent(chance), "")));
        for (PassedOver piece : year.notChosen()) {
            lines.add(row(first(lines, "not chosen"), piece.reckoning().piece().id(), word(piece.why())));
        }
        for (YearWarning warning : year.warnings()) {
            lines.add(row(first(lines, "to know"), word(warning.kind()) + (warning.figure().isPresent() ? " " + figure(warning.figure()) : ""),
                    String.join(", ", warning.pieces())));
        }
        return lines;
    }

    /** The name of a row where the lines before do not bear it already. */
    private static String first(List<String> lines, String name) {
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (lines.get(i).startsWith("  " + name)) {
                return "";
            }
        }
        return name;
    }

    private static String figure(OptionalDouble figure) {
        return figure.isPresent() ? Figures.decimal(figure.getAsDouble(), 1) : "unknown";
    }

    /** Whole percents; what is not certain in all drawn years never reads as certain. */
    private static String percent(double chance) {
        long whole = Math.round(chance * 100);
        return chance < 1 && whole == 100 ? "over 99 %" : chance > 0 && whole == 0 ? "under 1 %" : whole + " %";
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String row(String name, String first, String second) {
        return String.format(Locale.ROOT, ROW, name, first, second).stripTrailing();
    }
}
