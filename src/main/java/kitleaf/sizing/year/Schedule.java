package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kitleaf.basket.Pace;

/**
 * The order of the chosen pieces.
 *
 * <p>Dated pieces that can be in time come by their dates; which those are, {@link LateJobs} says. Late ones, by date, and
 * then undated ones, shortest first, are fitted before them where that leaves a quarter of the hours up to every date free, and
 * after them otherwise. The quarter is an assumption, no source: without it every date would hang on the last hour.
 *
 * @param turns in order
 */
record Schedule(List<Turn> turns) {

    /** The part of the hours up to a date that pieces fitted before it leave free. */
    static final double SPARE = 0.25;

    /**
     * One piece's turn.
     *
     * @param candidate the piece
     * @param deadline the day it has to be finished by: its date, or the year's last day when that is earlier or it has none
     * @param place why it stands here
     * @param rescue what would bring it in by its date, when it is late
     */
    record Turn(Candidate candidate, LocalDate deadline, Place place, Optional<Rescue> rescue) { }

    Schedule {
        turns = List.copyOf(turns);
    }

    /**
     * Orders pieces.
     *
     * @param hoursPerWeek in a week without time off, above 0
     * @param yearEnd the last day of the year
     */
    static Schedule of(List<Candidate> chosen, Days days, double hoursPerWeek, LocalDate yearEnd) {
        double perDay = hoursPerWeek / Days.WEEK;
        List<LateJobs.Job> dated = chosen.stream().filter(one -> one.due().isPresent())
                .map(one -> new LateJobs.Job(one.id(), one.hours(), perDay * days.between(0, days.day(deadline(one, yearEnd)))))
                .sorted(LateJobs.EARLIEST).toList();
        Set<String> late = LateJobs.fewest(dated);
        List<LateJobs.Job> inTime = new ArrayList<>(dated.stream().filter(job -> !late.contains(job.id())).toList());
        List<Turn> waiting = new ArrayList<>();
        for (LateJobs.Job job : dated) {
            if (late.contains(job.id())) {
                waiting.add(new Turn(find(chosen, job.id()), deadline(find(chosen, job.id()), yearEnd), Place.LATE,
                        Optional.of(rescue(job, inTime, chosen, hoursPerWeek))));
            }
        }
        chosen.stream().filter(one -> one.due().isEmpty())
                .sorted(Comparator.comparingDouble(Candidate::hours).thenComparing(Candidate::id))
                .forEach(one -> waiting.add(new Turn(one, yearEnd, Place.SHORTEST, Optional.empty())));
        List<Turn> turns = new ArrayList<>();
        double done = 0;
        while (!inTime.isEmpty() || !waiting.isEmpty()) {
            double room = room(inTime, done);
            Optional<Turn> fitting = waiting.stream().filter(turn -> turn.candidate().hours() <= room).findFirst();
            if (fitting.isPresent()) {
                Turn turn = fitting.get();
                waiting.remove(turn);
                turns.add(turn.place() == Place.SHORTEST && !inTime.isEmpty()
                        ? new Turn(turn.candidate(), turn.deadline(), Place.FITS_BEFORE, turn.rescue()) : turn);
            } else {
                Candidate next = find(chosen, inTime.remove(0).id());
                turns.add(new Turn(next, deadline(next, yearEnd), Place.DUE, Optional.empty()));
            }
            done += turns.get(turns.size() - 1).candidate().hours();
        }
        return new Schedule(turns);
    }

    /** Hours that can go to others before the next dated piece has to begin; without end when none is left. */
    private static double room(List<LateJobs.Job> inTime, double done) {
        double hours = done;
        double room = Double.POSITIVE_INFINITY;
        for (LateJobs.Job job : inTime) {
            hours += job.hours();
            room = Math.min(room, job.wanted() - hours - SPARE * (job.wanted() - done));
        }
        return room;
    }

    private static Rescue rescue(LateJobs.Job late, List<LateJobs.Job> inTime, List<Candidate> chosen, double hoursPerWeek) {
        List<LateJobs.Job> all = new ArrayList<>(inTime);
        all.add(late);
        OptionalDouble speed = LateJobs.speed(all);
        double week = speed.orElse(Double.POSITIVE_INFINITY) * hoursPerWeek;
        OptionalDouble more = week <= Pace.MOST_HOURS ? OptionalDouble.of(Math.max(0, week - hoursPerWeek)) : OptionalDouble.empty();
        Optional<String> instead = inTime.stream().map(job -> find(chosen, job.id())).filter(one -> !one.must())
                .filter(one -> LateJobs.fewest(all.stream().filter(job -> !job.id().equals(one.id())).toList()).isEmpty())
                .min(Comparator.comparingLong(Candidate::weight).thenComparingDouble(Candidate::hours).thenComparing(Candidate::id))
                .map(Candidate::id);
        return new Rescue(more, instead);
    }

    private static LocalDate deadline(Candidate candidate, LocalDate yearEnd) {
        return candidate.due().filter(due -> due.isBefore(yearEnd)).orElse(yearEnd);
    }

    private static Candidate find(List<Candidate> chosen, String id) {
        return chosen.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }
}
