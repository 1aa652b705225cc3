package kitleaf.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.form.ValueForm;

/** Days and hours as one says them, in English and German whatever the language of the surroundings. */
final class SpokenTime {

    /** The day that all else told is of, which is read as {@link LocalDate#MIN}. */
    static final String SAME_DAY = "same day";

    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-5][0-9])");
    private static final Pattern PARTS = Pattern.compile("(?:([0-9]{1,2}) +)?([0-9]{1,2})/([1-9][0-9]?)");
    private static final Pattern MINUTES = Pattern.compile("([0-9]{1,4}) *min\\.?");
    private static final int MINUTES_AN_HOUR = 60;

    private SpokenTime() { }

    /** A day as a basket has it, today, yesterday, or the latest such weekday before today. */
    static LocalDate day(String text, LocalDate today) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        if (word.equals(SAME_DAY)) {
            return LocalDate.MIN;
        }
        if (List.of("today", "heute").contains(word)) {
            return today;
        }
        if (List.of("yesterday", "gestern").contains(word)) {
            return today.minusDays(1);
        }
        for (DayOfWeek day : DayOfWeek.values()) {
            for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                if (day.getDisplayName(TextStyle.FULL, language).toLowerCase(Locale.ROOT).equals(word)) {
                    return today.with(TemporalAdjusters.previous(day));
                }
            }
        }
        return ValueForm.DAY.read(text);
    }

    /** Hours as a basket has them, or as 1:15, 1 1/4 or 90 min; to the hundredth. */
    static double hours(String text) {
        String stripped = text.strip();
        Matcher clock = CLOCK.matcher(stripped);
        if (clock.matches()) {
            return hours(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2)), MINUTES_AN_HOUR);
        }
        Matcher parts = PARTS.matcher(stripped);
        if (parts.matches()) {
            return hours(parts.group(1) == null ? 0 : Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)),
                    Integer.parseInt(parts.group(3)));
        }
        Matcher minutes = MINUTES.matcher(stripped);
        return minutes.matches() ? hours(0, Integer.parseInt(minutes.group(1)), MINUTES_AN_HOUR) : ValueForm.HOURS.read(text);
    }

    private static double hours(int whole, int part, int of) {
        BigDecimal hours = BigDecimal.valueOf(part).divide(BigDecimal.valueOf(of), 2, RoundingMode.HALF_UP).add(BigDecimal.valueOf(whole));
        return ValueForm.HOURS.read(hours.toPlainString());
    }
}
