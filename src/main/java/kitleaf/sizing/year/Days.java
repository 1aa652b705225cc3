package kitleaf.sizing.year;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import kitleaf.basket.TimeOff;

/** The days from the one looked from to the horizon, and which of them are off. Days and weeks are counted from 0. */
final class Days {

    static final int WEEK = 7;

    private final LocalDate first;
    private final int intoWeek;
    /** Days at work before each day; one entry more than there are days. */
    private final int[] worked;

    /**
     * @param first the day looked from, the first that can be stitched on
     * @param last the horizon, not before the first
     */
    Days(LocalDate first, LocalDate last, List<TimeOff> timeOff) {
        this.first = first;
        this.intoWeek = first.getDayOfWeek().getValue() - 1;
        int count = (int) ChronoUnit.DAYS.between(first, last) + 1;
        boolean[] off = new boolean[count];
        for (TimeOff away : timeOff) {
            long from = Math.max(0, ChronoUnit.DAYS.between(first, away.from()));
            long to = Math.min(count - 1L, ChronoUnit.DAYS.between(first, away.to()));
            for (long day = from; day <= to; day++) {
                off[(int) day] = true;
            }
        }
        worked = new int[count + 1];
        for (int day = 0; day < count; day++) {
            worked[day + 1] = worked[day] + (off[day] ? 0 : 1);
        }
    }

    /** How many of a week's seven days are off. */
    static int off(LocalDate monday, List<TimeOff> timeOff) {
        int off = 0;
        for (int day = 0; day < WEEK; day++) {
            LocalDate date = monday.plusDays(day);
            if (timeOff.stream().anyMatch(away -> !date.isBefore(away.from()) && !date.isAfter(away.to()))) {
                off++;
            }
        }
        return off;
    }

    int count() {
        return worked.length - 1;
    }

    int weeks() {
        return week(count() - 1) + 1;
    }

    int week(int day) {
        return (day + intoWeek) / WEEK;
    }

    LocalDate date(int day) {
        return first.plusDays(day);
    }

    LocalDate monday(int week) {
        return first.minusDays(intoWeek).plusWeeks(week);
    }

    boolean working(int day) {
        return worked[day + 1] > worked[day];
    }

    /** The day with this date; below 0 before the first, and the horizon for all days after it. */
    int day(LocalDate date) {
        long day = ChronoUnit.DAYS.between(first, date);
        return (int) Math.max(-1, Math.min(count() - 1L, day));
    }

    /** Working days from one day to another, both counted; 0 when they run backwards. */
    int between(int from, int to) {
        return to < from ? 0 : worked[to + 1] - worked[from];
    }
}
