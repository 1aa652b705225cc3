package kitleaf.sizing.year;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The chosen pieces worked day by day in their order: a main one, and a second one beside it that gets the rest of the day's
 * hours. The second one waits where its hours would cost the main one its date, by the hours planned until then. Before the year
 * begins only those are worked that the schedule has before it, in their own order.
 * A week's hours lie evenly on its seven days; those of days off are lost.
 */
final class Work {

    /** Told what is done each day. */
    interface Diary {
        /** So many hours went to a piece, as the main one or as the second. */
        void entry(int day, int piece, double hours, boolean main);
    }

    private static final Diary NONE = (day, piece, hours, main) -> { };
    /** Less than this is finished: rounding of sums. */
    private static final double DONE_HOURS = 1e-9;

    private final Days days;
    /** Places of the pieces before the year begins, in the order of work, and from that day on. */
    private final int[] before;
    private final int[] after;
    private final int begins;
    private final double[] hours;
    /** The day each dated piece is wanted; below 0 for all others. */
    private final int[] wanted;
    private final double plannedPerDay;
    private final double mainShare;

    Work(Schedule schedule, Days days, double hoursPerWeek, double mainShare) {
        this.days = days;
        this.before = schedule.before().stream().mapToInt(Integer::intValue).toArray();
        this.after = IntStream.range(0, schedule.turns().size()).toArray();
        this.begins = schedule.begins();
        this.hours = schedule.turns().stream().mapToDouble(turn -> turn.candidate().hours()).toArray();
        this.wanted = schedule.turns().stream()
                .mapToInt(turn -> turn.candidate().due().isPresent() ? days.day(turn.deadline()) : -1).toArray();
        this.plannedPerDay = hoursPerWeek / Days.WEEK;
        this.mainShare = mainShare;
    }

    /**
     * The day each piece is finished; the horizon for those that are not finished by then.
     *
     * @param weekHours the hours of a week counted from 0; asked once a week, in order, until all is finished
     */
    int[] finished(IntToDoubleFunction weekHours) {
        return finished(weekHours, NONE);
    }

    int[] finished(IntToDoubleFunction weekHours, Diary diary) {
        double[] left = hours.clone();
        int[] finished = new int[left.length];
        Arrays.fill(finished, days.count() - 1);
        for (int piece = 0; piece < left.length; piece++) {
            if (left[piece] <= DONE_HOURS) {
                finished[piece] = 0;
            }
        }
        int[] order = before;
        int main = next(left, order, 0);
        int week = -1;
        double perDay = 0;
        for (int day = 0; day < days.count(); day++) {
            if (day == begins) {
                order = after;
                main = next(left, order, 0);
            }
            if (day >= begins && main == order.length) {
                break;
            }
            if (days.week(day) != week) {
                week = days.week(day);
                perDay = weekHours.applyAsDouble(week) / Days.WEEK;
            }
            double rest = days.working(day) ? perDay : 0;
            while (rest > DONE_HOURS && main < order.length) {
                int piece = order[main];
                int second = next(left, order, main + 1);
                double beside = second < order.length ? Math.min(left[order[second]], beside(piece, left[piece], day, rest)) : 0;
                double to = Math.min(left[piece], rest - beside);
                work(left, finished, piece, to, day, true, diary);
                if (beside > 0) {
                    work(left, finished, order[second], beside, day, false, diary);
                }
                rest -= to + beside;
                main = next(left, order, main);
            }
        }
        return finished;
    }

    private void work(double[] left, int[] finished, int piece, double amount, int day, boolean main, Diary diary) {
        left[piece] -= amount;
        diary.entry(day, piece, amount, main);
        if (left[piece] <= DONE_HOURS) {
            finished[piece] = day;
            left[piece] = 0;
        }
    }

    private double beside(int main, double left, int day, double rest) {
        double share = (1 - mainShare) * rest;
        if (wanted[main] < 0) {
            return share;
        }
        double spare = rest + plannedPerDay * days.between(day + 1, wanted[main]) - left;
        return Math.max(0, Math.min(share, spare));
    }

    private static int next(double[] left, int[] order, int from) {
        int place = from;
        while (place < order.length && left[order[place]] <= DONE_HOURS) {
            place++;
        }
        return place;
    }
}
