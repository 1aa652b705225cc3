package kitleaf.basket.form;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/** A day, as ISO 8601 writes it: year, month, day. */
public record DateText() implements Form<LocalDate> {

    private static final Pattern DAY = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    @Override
    public LocalDate read(String text) throws Fault {
        String stripped = text.strip();
        Matcher day = DAY.matcher(stripped);
        if (!day.matches()) {
            throw Fault.of("date.form", Quote.bare(stripped));
        }
        int year = Integer.parseInt(day.group(1));
        int month = Integer.parseInt(day.group(2));
        int dayOfMonth = Integer.parseInt(day.group(3));
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw Fault.of("date.year", Quote.bare(stripped), year, FIRST_YEAR, LAST_YEAR);
        }
        if (month < 1 || month > 12) {
            throw Fault.of("date.month", Quote.bare(stripped));
        }
        int last = YearMonth.of(year, month).lengthOfMonth();
        if (dayOfMonth < 1 || dayOfMonth > last) {
            throw Fault.of("date.day", Quote.bare(stripped), String.format(Locale.ROOT, "%d-%02d-01", year, month),
                    String.format(Locale.ROOT, "%d-%02d-%d", year, month, last));
        }
        return LocalDate.of(year, month, dayOfMonth);
    }

    @Override
    public String example() {
        return "2026-02-14";
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("(19|20|21)[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])", Said.of("note.day"));
    }
}
