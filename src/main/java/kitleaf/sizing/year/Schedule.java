package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import kitleaf.basket.Goals;
import kitleaf.basket.InHand;
import kitleaf.basket.Pace;

/**
 * The order of the chosen pieces.
 *
 * <p>Dated pieces that can be in time come by their dates; which those are, {@link LateJobs} says. Late ones, by date, and
 * then undated ones, shortest first, are fitted before them where that leaves a quarter of the hours up to every date free, and
 * after them otherwise. A piece she has in focus comes before all, and the one beside it next; dates are kept with the hours these leave.
 * The quarter is an assumption, no source: without it every date would hang on the last hour.
 *
 * <p>Where a {@link Lead} comes before the year, its hours are given out first, and only what they leave of a piece is ordered in the year.
 *
 * @param turns in order
 * @param before the places in {@code turns} of those worked before the year begins, in the order they are worked then: wanted before
 *        the year, then begun, each by date and then the shortest first
 * @param begins the day the year begins, from which on all are worked; 0 without a lead
 */
record Schedule(List<Turn> turns, List<Integer> before, int begins) {

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
        before = List.copyOf(before);
    }

    /**
     * Orders pieces that are all worked from the first day on.
     *
     * @param hoursPerWeek in a week without time off, above 0
     * @param yearEnd the last day of the year
     */
    static Schedule of(List<Candidate> chosen, Days days, double hoursPerWeek, LocalDate yearEnd) {
        return of(chosen, InHand.NONE, days, hoursPerWeek, yearEnd);
    }

    private static Schedule of(List<Candidate> chosen, InHand hand, Days days, double hoursPerWeek, LocalDate yearEnd) {
        return new Schedule(turns(chosen, hand, days, 0, hoursPerWeek, yearEnd), List.of(), 0);
    }

    /**
     * Orders the early pieces of a lead, and the chosen ones after them.
     *
     * @param goals which pieces she has in focus and beside it, and the share of the main one as {@link Work} takes it
     */
    static Schedule of(List<Candidate> chosen, Lead lead, Days days, double hoursPerWeek, Goals goals, LocalDate yearEnd) {
        InHand hand = goals.hand();
        if (lead.begins() == 0) {
            return of(chosen, hand, days, hoursPerWeek, yearEnd);
        }
        List<Turn> leading = leading(chosen, hand, lead, days, hoursPerWeek, yearEnd);
        Map<String, Double> left = new HashMap<>();
        leading.forEach(turn -> left.put(turn.candidate().id(), turn.candidate().hours()));
        Schedule alone = new Schedule(leading, IntStream.range(0, leading.size()).boxed().toList(), lead.begins());
        new Work(alone, days, hoursPerWeek, goals.mainShare()).finished(week -> hoursPerWeek, (day, piece, hours, main) -> {
            if (day < lead.begins()) {
                left.merge(leading.get(piece).candidate().id(), -hours, Double::sum);
            }
        });
        List<Turn> turns = new ArrayList<>(leading.subList(0, lead.early().size()));
        List<Candidate> inYear = chosen.stream().map(one -> one.with(Math.max(0, left.getOrDefault(one.id(), one.hours())))).toList();
        for (Turn turn : turns(inYear, hand, days, lead.begins(), hoursPerWeek, yearEnd)) {
            Candidate whole = find(chosen, turn.candidate().id());
            // What is wanted before the year is saved, if at all, by more hours from the first day on.
            turns.add(whole.wantedBefore(lead.newYear()) ? find(leading, whole)
                    : new Turn(whole, turn.deadline(), turn.place(), turn.rescue()));
        }
        return new Schedule(turns, leading.stream().map(turn -> find(turns, turn.candidate())).map(turns::indexOf).toList(), lead.begins());
    }

    /** Those a lead serves, in the order it does: the early ones, others wanted before the year, begun ones. */
    private static List<Turn> leading(List<Candidate> chosen, InHand hand, Lead lead, Days days, double hoursPerWeek, LocalDate yearEnd) {
        List<Turn> leading = new ArrayList<>(turns(lead.early(), InHand.NONE, days, 0, hoursPerWeek, yearEnd));
        List<LateJobs.Job> inTime = leading.stream().filter(turn -> turn.place() == Place.DUE)
                .map(turn -> job(turn.candidate(), days, 0, hoursPerWeek, yearEnd)).toList();
        Comparator<Candidate> order = Comparator.comparing((Candidate one) -> !hand.focus().equals(Optional.of(one.id())))
                .thenComparing(one -> !hand.beside().equals(Optional.of(one.id())))
                .thenComparing(one -> !one.wantedBefore(lead.newYear())).thenComparing(one -> one.due().orElse(LocalDate.MAX))
                .thenComparingDouble(Candidate::hours).thenComparing(Candidate::id);
        for (Candidate one : chosen.stream().filter(lead::serves).sorted(order).toList()) {
            boolean late = one.wantedBefore(lead.newYear());
            leading.add(new Turn(one, deadline(one, yearEnd), late ? Place.LATE : Place.DUE,
                    late ? Optional.of(rescue(job(one, days, 0, hoursPerWeek, yearEnd), inTime, lead.early(), 0, hoursPerWeek))
                            : Optional.empty()));
        }
        return leading;
    }

    /**
     * @param hand what she has in focus and beside it, whether they are chosen or not
     * @param from the day the work begins
     */
    private static List<Turn> turns(List<Candidate> all, InHand hand, Days days, int from, double hoursPerWeek, LocalDate yearEnd) {
        List<Candidate> leading = hand.ids().stream().flatMap(id -> all.stream().filter(one -> one.id().equals(id))).toList();
        List<Candidate> chosen = all.stream().filter(one -> !leading.contains(one)).toList();
        double before = leading.stream().mapToDouble(Candidate::hours).sum();
        List<LateJobs.Job> dated = chosen.stream().filter(one -> one.due().isPresent())
                .map(one -> job(one, days, from, hoursPerWeek, yearEnd)).sorted(LateJobs.EARLIEST).toList();
        Set<String> late = LateJobs.fewest(after(dated, before));
        List<LateJobs.Job> inTime = new ArrayList<>(dated.stream().filter(job -> !late.contains(job.id())).toList());
        List<Turn> waiting = new ArrayList<>();
        for (LateJobs.Job job : dated) {
            if (late.contains(job.id())) {
                waiting.add(new Turn(find(chosen, job.id()), deadline(find(chosen, job.id()), yearEnd), Place.LATE,
                        Optional.of(rescue(job, inTime, chosen, before, hoursPerWeek))));
            }
        }
        chosen.stream().filter(one -> one.due().isEmpty())
                .sorted(Comparator.comparingDouble(Candidate::hours).thenComparing(Candidate::id))
                .forEach(one -> waiting.add(new Turn(one, yearEnd, Place.SHORTEST, Optional.empty())));
        List<Turn> turns = new ArrayList<>();
        for (Candidate one : leading) {
            turns.add(new Turn(one, deadline(one, yearEnd), hand.beside().equals(Optional.of(one.id())) ? Place.BESIDE : Place.FOCUS,
                    Optional.empty()));
        }
        double done = before;
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
        if (turns.size() > 1 && turns.get(0).place() == Place.BESIDE) {
            // Only the one beside was named: the plan's own first piece is in focus.
            Collections.swap(turns, 0, 1);
        }
        return turns;
    }

    private static LateJobs.Job job(Candidate one, Days days, int from, double hoursPerWeek, LocalDate yearEnd) {
        return new LateJobs.Job(one.id(), one.hours(), hoursPerWeek / Days.WEEK * days.between(from, days.day(deadline(one, yearEnd))));
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

    /** Jobs as they are when so many hours are taken by others before them. */
    private static List<LateJobs.Job> after(List<LateJobs.Job> jobs, double before) {
        return jobs.stream().map(job -> new LateJobs.Job(job.id(), job.hours(), Math.max(0, job.wanted() - before))).toList();
    }

    /** @param before hours of what is worked before all of them */
    private static Rescue rescue(LateJobs.Job late, List<LateJobs.Job> inTime, List<Candidate> chosen, double before, double hoursPerWeek) {
        List<LateJobs.Job> all = new ArrayList<>(inTime);
        all.add(late);
        OptionalDouble speed = LateJobs.speed(all, before);
        double week = speed.orElse(Double.POSITIVE_INFINITY) * hoursPerWeek;
        OptionalDouble more = week <= Pace.MOST_HOURS ? OptionalDouble.of(Math.max(0, week - hoursPerWeek)) : OptionalDouble.empty();
        Optional<String> instead = inTime.stream().map(job -> find(chosen, job.id())).filter(one -> !one.must())
                .filter(one -> LateJobs.fewest(after(all.stream().filter(job -> !job.id().equals(one.id())).toList(), before)).isEmpty())
                .min(Comparator.comparingLong(Candidate::weight).thenComparingDouble(Candidate::hours).thenComparing(Candidate::id))
                .map(Candidate::id);
        return new Rescue(more, instead);
    }

    private static LocalDate deadline(Candidate candidate, LocalDate yearEnd) {
        return candidate.due().filter(due -> due.isBefore(yearEnd)).orElse(yearEnd);
    }

    private static Turn find(List<Turn> turns, Candidate candidate) {
        return turns.stream().filter(turn -> turn.candidate().id().equals(candidate.id())).findFirst().orElseThrow();
    }

    private static Candidate find(List<Candidate> chosen, String id) {
        return chosen.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }
}
