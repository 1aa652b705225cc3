package kitleaf.sizing.year;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Goals;
import kitleaf.basket.Pace;
import kitleaf.basket.PieceState;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.StitchTally;

/** Reckons a year: pace, efforts, choice, order, projection, weeks. */
final class YearPlan {

    private static final double HALVES = 2;

    private final Basket basket;
    private final Goals goals;
    private final Map<String, PieceReckoning> pieces;
    private final LocalDate asOf;
    private final LocalDate lastDay;
    private final LocalDate horizon;
    private final Days days;
    /** The day the year begins; 0 when it has begun. */
    private final int begins;
    private final WeeklyPace pace;
    private final List<YearWarning> warnings = new ArrayList<>();

    YearPlan(Basket basket, List<PieceReckoning> reckoned, LocalDate asOf) {
        this.basket = basket;
        this.asOf = asOf;
        goals = basket.goals().orElseThrow(() -> new IllegalArgumentException("the basket has no goals"));
        pieces = new TreeMap<>(reckoned.stream().collect(Collectors.toMap(one -> one.piece().id(), one -> one)));
        lastDay = LocalDate.of(goals.year(), 12, 31);
        horizon = (asOf.isAfter(lastDay) ? asOf : lastDay).plusYears(YearReckoning.HORIZON_YEARS);
        days = new Days(asOf, horizon, basket.timeOff());
        begins = Math.max(0, days.day(lastDay.withDayOfYear(1)));
        pace = WeeklyPace.of(basket.pace(), basket.pieces(), basket.timeOff(), asOf);
    }

    YearReckoning reckon() {
        OptionalDouble perWeek = pace.hoursPerWeek().figure();
        boolean known = warnOfPace();
        OptionalDouble available = perWeek.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(perWeek.getAsDouble() / Days.WEEK * days.between(begins, days.day(lastDay)));
        return known ? planned(perWeek.getAsDouble(), available.orElseThrow()) : unplanned(available);
    }

    private boolean warnOfPace() {
        if (pace.stitchesPerHour().figure().isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.NO_STITCHES_PER_HOUR, List.of()));
        }
        if (pace.hoursPerWeek().figure().isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.NO_HOURS_PER_WEEK, List.of()));
        }
        if (asOf.isAfter(lastDay)) {
            warnings.add(YearWarning.of(YearWarning.Kind.YEAR_OVER, List.of()));
        }
        return pace.stitchesPerHour().figure().isPresent() && pace.hoursPerWeek().figure().isPresent();
    }

    private YearReckoning unplanned(OptionalDouble available) {
        warnOfNames(List.of());
        List<PassedOver> passed = new ArrayList<>();
        for (PieceReckoning piece : namedFirst()) {
            PassedOver.Why why = goals.pieces().isEmpty() || goals.pieces().contains(piece.piece().id())
                    ? PassedOver.Why.HOURS_UNKNOWN : PassedOver.Why.NOT_NAMED;
            passedOver(piece, why).ifPresent(passed::add);
        }
        return new YearReckoning(goals.year(), asOf, pace, available, OptionalDouble.empty(), List.of(), finished(), passed,
                OptionalDouble.empty(), horizon, weeks(List.of(), new double[0][0], new boolean[0][0]), warnings);
    }

    private YearReckoning planned(double perWeek, double available) {
        List<Candidate> candidates = pieces.values().stream().filter(YearPlan::open).map(this::candidate).toList();
        Set<String> begun = pieces.values().stream().filter(PieceReckoning::begun)
                .map(piece -> piece.piece().id()).collect(Collectors.toSet());
        Lead lead = Lead.of(candidates, begun, days, perWeek, lastDay);
        Choice choice = choose(candidates.stream().filter(one -> !lead.early().contains(one)).toList(), lead, available);
        Schedule schedule = Schedule.of(choice.chosen(), lead, days, perWeek, goals, lastDay);
        Work work = new Work(schedule, days, perWeek, goals.mainShare());
        Projection projection = Projection.of(schedule, work, days, pace, goals.seed().orElse(Projection.USUAL_SEED));
        double[][] hours = new double[schedule.turns().size()][days.weeks()];
        boolean[][] main = new boolean[schedule.turns().size()][days.weeks()];
        double[] toStitch = schedule.turns().stream().mapToDouble(turn -> turn.candidate().hours()
                - Effort.makingUpHours(pieces.get(turn.candidate().id()).piece())).toArray();
        int[] stitched = new int[toStitch.length];
        int[] finishes = work.finished(week -> perWeek, (day, piece, amount, asMain) -> {
            stitched[piece] = toStitch[piece] > LateJobs.SAME_HOURS ? day : stitched[piece];
            toStitch[piece] -= amount;
            hours[piece][days.week(day)] += amount;
            main[piece][days.week(day)] |= asMain;
        });
        List<PlannedPiece> planned = new ArrayList<>();
        IntStream.range(0, stitched.length).filter(i -> toStitch[i] > LateJobs.SAME_HOURS).forEach(i -> stitched[i] = days.count() - 1);
        for (int i = 0; i < schedule.turns().size(); i++) {
            PlannedPiece piece = planned(schedule.turns().get(i), projection.finishes().get(i), days.date(stitched[i]),
                    days.date(finishes[i]), hours[i], main[i]);
            planned.add(piece.close() && piece.rescue().isEmpty() && projection.spread() ? piece.saved(evened(schedule, i, perWeek))
                    : piece);
        }
        warnOfPlan(planned, projection);
        List<PassedOver> passed = new ArrayList<>();
        for (PieceReckoning piece : namedFirst()) {
            String id = piece.piece().id();
            if (planned.stream().noneMatch(one -> one.id().equals(id))) {
                boolean tooLong = choice.tooLong().stream().anyMatch(one -> one.id().equals(id));
                passedOver(piece, !goals.pieces().isEmpty() ? PassedOver.Why.NOT_NAMED
                        : tooLong ? PassedOver.Why.DOES_NOT_FIT : PassedOver.Why.NOT_AMONG_BEST).ifPresent(passed::add);
            }
        }
        return new YearReckoning(goals.year(), asOf, pace, OptionalDouble.of(available), OptionalDouble.of(choice.hoursNeeded()), planned,
                finished(), passed,
                planned.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(projection.chanceAll()), horizon,
                weeks(planned, hours, main), warnings);
    }

    /** By how many hours a week, in halves, one piece's chance becomes even: more hours are never less likely to do. */
    private Rescue evened(Schedule schedule, int turn, double perWeek) {
        int most = (int) Math.floor((Pace.MOST_HOURS - perWeek) * HALVES);
        int enough = 1;
        boolean reached = false;
        while (enough < most && !reached) {
            reached = even(schedule, turn, perWeek, enough);
            enough = reached ? enough : 2 * enough;
        }
        int tooFew = enough / 2;
        enough = Math.min(enough, most);
        if (enough < 1 || !reached && !even(schedule, turn, perWeek, enough)) {
            return new Rescue(OptionalDouble.empty(), Optional.empty());
        }
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) / 2;
            if (even(schedule, turn, perWeek, middle)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return new Rescue(OptionalDouble.of(enough / HALVES), Optional.empty());
    }

    private boolean even(Schedule schedule, int turn, double perWeek, int halves) {
        double raised = perWeek + halves / HALVES;
        return Projection.of(schedule, new Work(schedule, days, raised, goals.mainShare()), days, pace, raised / perWeek,
                goals.seed().orElse(Projection.USUAL_SEED)).finishes().get(turn).chance() >= PlannedPiece.EVEN;
    }

    private Choice choose(List<Candidate> candidates, Lead lead, double available) {
        warnOfNames(lead.early());
        if (!goals.pieces().isEmpty()) {
            List<String> named = Stream.concat(goals.pieces().stream(), goals.hand().ids().stream()).toList();
            Choice choice = Choice.named(candidates, named, available, lead);
            if (choice.hoursShort() > LateJobs.SAME_HOURS) {
                warnings.add(YearWarning.of(YearWarning.Kind.NAMED_DO_NOT_FIT, goals.pieces(), choice.hoursShort()));
            }
            return choice;
        }
        List<Candidate> musts = candidates.stream().filter(Candidate::must).toList();
        OptionalInt choose = goals.choose().isEmpty() ? OptionalInt.empty()
                : OptionalInt.of(Math.max(0, goals.choose().getAsInt() - finished().size()));
        double missing = lead.yearHours(musts) - available;
        if (missing > LateJobs.SAME_HOURS) {
            warnings.add(YearWarning.of(YearWarning.Kind.MUSTS_DO_NOT_FIT, ids(musts), missing));
        }
        if (musts.size() > choose.orElse(Integer.MAX_VALUE)) {
            warnings.add(YearWarning.of(YearWarning.Kind.MORE_MUSTS_THAN_CHOSEN, ids(musts), musts.size() - choose.getAsInt()));
        }
        return Choice.best(candidates, available, lead, choose, goals.by());
    }

    private void warnOfNames(List<Candidate> early) {
        List<String> aside = pieces.values().stream().filter(piece -> piece.state().laidAside())
                .filter(piece -> piece.piece().goal().must() || goals.pieces().contains(piece.piece().id())
                        || goals.hand().ids().contains(piece.piece().id()))
                .map(piece -> piece.piece().id()).toList();
        if (!aside.isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.LAID_ASIDE, aside));
        }
        if (goals.pieces().isEmpty()) {
            return;
        }
        List<String> missing = goals.pieces().stream().filter(id -> !pieces.containsKey(id)).toList();
        if (!missing.isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.NAMED_MISSING, missing));
        }
        List<String> musts = pieces.values().stream().filter(piece -> open(piece) && piece.piece().goal().must())
                .map(piece -> piece.piece().id()).filter(id -> !goals.pieces().contains(id) && !ids(early).contains(id)).toList();
        if (!musts.isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.MUSTS_NOT_NAMED, musts));
        }
    }

    private void warnOfPlan(List<PlannedPiece> planned, Projection projection) {
        List<String> late = planned.stream().filter(one -> one.lateDays() > 0).map(PlannedPiece::id).toList();
        if (!late.isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.LATE, late));
        }
        List<String> beyond = planned.stream().filter(one -> !one.p90().isBefore(horizon) || !one.finish().isBefore(horizon))
                .map(PlannedPiece::id).toList();
        if (!beyond.isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.BEYOND_HORIZON, beyond, YearReckoning.HORIZON_YEARS));
        }
        if (!projection.spread()) {
            warnings.add(YearWarning.of(YearWarning.Kind.NO_SPREAD, List.of()));
        } else if (pace.weeks().size() < YearReckoning.FEW_WEEKS) {
            warnings.add(YearWarning.of(YearWarning.Kind.FEW_WEEKS, List.of(), pace.weeks().size()));
        }
        if (!pace.outliers().isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.UNUSUAL_WEEKS, List.of(), pace.outliers().size()));
        }
        List<String> cells = planned.stream().filter(one -> one.reckoning().tally().from() == StitchTally.From.CELLS)
                .map(PlannedPiece::id).toList();
        if (!cells.isEmpty()) {
            warnings.add(YearWarning.of(YearWarning.Kind.CELLS_COUNTED, cells));
        }
    }

    private PlannedPiece planned(Schedule.Turn turn, Projection.Finish projected, LocalDate stitched, LocalDate finish, double[] hours,
                                 boolean[] main) {
        PieceReckoning piece = pieces.get(turn.candidate().id());
        int first = 0;
        int mainWeek = -1;
        int last = 0;
        for (int week = hours.length - 1; week >= 0; week--) {
            if (hours[week] > 0) {
                first = week;
                last = Math.max(last, week);
                mainWeek = main[week] ? week : mainWeek;
            }
        }
        return new PlannedPiece(piece, Effort.of(piece), turn.candidate().hours(), days.monday(first),
                days.monday(mainWeek < 0 ? first : mainWeek), days.monday(last),
                piece.piece().progress().stitched().orElse(stitched), finish, projected.p10(), projected.p50(),
                projected.p90(), turn.deadline(), projected.chance(), Math.max(0, ChronoUnit.DAYS.between(turn.deadline(), finish)),
                turn.place(), turn.rescue());
    }

    private List<PlannedWeek> weeks(List<PlannedPiece> planned, double[][] hours, boolean[][] main) {
        List<PlannedWeek> weeks = new ArrayList<>();
        double perDay = pace.hoursPerWeek().figure().orElse(0) / Days.WEEK;
        LocalDate monday = WeeklyPace.monday(LocalDate.of(goals.year(), 1, 1));
        for (; !monday.isAfter(lastDay); monday = monday.plusWeeks(1)) {
            int from = Math.max(begins, days.day(monday));
            int to = days.day(monday.plusDays(Days.WEEK - 1).isAfter(lastDay) ? lastDay : monday.plusDays(Days.WEEK - 1));
            List<PlannedWeek.Share> shares = new ArrayList<>();
            for (int i = 0; to >= 0 && i < planned.size(); i++) {
                int week = days.week(to);
                if (hours[i][week] > 0) {
                    shares.add(new PlannedWeek.Share(planned.get(i).id(), hours[i][week], main[i][week]));
                }
            }
            weeks.add(new PlannedWeek(monday, perDay * days.between(from, to), Days.off(monday, basket.timeOff()) / (double) Days.WEEK,
                    shares));
        }
        return weeks;
    }

    private Candidate candidate(PieceReckoning piece) {
        Goal goal = piece.piece().goal();
        return new Candidate(piece.piece().id(), hours(piece).orElseThrow(), goal.weight(),
                goal.must() || goals.hand().ids().contains(piece.piece().id()), goal.by());
    }

    private OptionalDouble hours(PieceReckoning piece) {
        OptionalDouble perHour = pace.stitchesPerHour().figure();
        return perHour.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(Effort.of(piece).hours(perHour.getAsDouble()) + Effort.makingUpHours(piece.piece()));
    }

    private List<PieceReckoning> finished() {
        return pieces.values().stream().filter(piece -> piece.piece().progress().finished().filter(day -> day.getYear() == goals.year())
                .isPresent())
                .sorted(Comparator.comparing(piece -> piece.piece().progress().finished().orElseThrow())).toList();
    }

    /** A piece that was not chosen; empty when it was finished in the year, since then it stands elsewhere. */
    private Optional<PassedOver> passedOver(PieceReckoning piece, PassedOver.Why why) {
        Optional<LocalDate> day = piece.piece().progress().finished();
        if (day.isPresent()) {
            return day.get().getYear() == goals.year() ? Optional.empty()
                    : Optional.of(new PassedOver(piece, OptionalDouble.of(0), PassedOver.Why.FINISHED));
        }
        return Optional.of(new PassedOver(piece, hours(piece), switch (piece.state()) {
            case RESTING -> PassedOver.Why.RESTING;
            case GIVEN_UP -> PassedOver.Why.GIVEN_UP;
            default -> why;
        }));
    }

    private List<PieceReckoning> namedFirst() {
        return Stream.concat(goals.pieces().stream(), pieces.keySet().stream()).distinct().filter(pieces::containsKey).map(pieces::get)
                .toList();
    }

    /** Whether it may be chosen: a piece that is made up needs no plan, and one that is laid aside wants none. */
    private static boolean open(PieceReckoning piece) {
        return piece.state() != PieceState.MADE_UP && !piece.state().laidAside();
    }

    private static List<String> ids(List<Candidate> candidates) {
        return candidates.stream().map(Candidate::id).toList();
    }
}
