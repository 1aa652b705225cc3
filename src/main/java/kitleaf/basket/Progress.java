package kitleaf.basket;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far a piece has come.
 *
 * @param started the day of its first stitch
 * @param stitched the day of its last
 * @param finished the day it was made up, which it can only be when it is stitched
 * @param done how much is done, where she gave a figure without a day
 * @param readings how much was done on a day, oldest first
 * @param log the sittings, oldest first
 * @param states what she says it is, oldest first
 */
public record Progress(Optional<LocalDate> started, Optional<LocalDate> stitched, Optional<LocalDate> finished, Optional<Amount> done,
                       List<HowFar> readings, List<LogEntry> log, List<SaidState> states) {

    /** A piece nobody has put a needle in. */
    public static final Progress NONE = new Progress(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    /** Copies the lists and sorts them by day; what has the same day stays in its order. */
    public Progress {
        Objects.requireNonNull(started);
        Objects.requireNonNull(stitched);
        Objects.requireNonNull(finished);
        Objects.requireNonNull(done);
        readings = readings.stream().sorted(Comparator.comparing(HowFar::on)).toList();
        log = log.stream().sorted(Comparator.comparing(LogEntry::on)).toList();
        states = states.stream().sorted(Comparator.comparing(SaidState::on)).toList();
    }

    /** Progress without readings and states. */
    public Progress(Optional<LocalDate> started, Optional<LocalDate> finished, Optional<Amount> done, List<LogEntry> log) {
        this(started, Optional.empty(), finished, done, List.of(), log, List.of());
    }

    /** Whether somebody has put a needle in it: a day, a sitting or a stitch that is written down tells. */
    public boolean begun() {
        return Stream.of(started, stitched, finished).anyMatch(Optional::isPresent) || !log.isEmpty()
                || Stream.concat(done.stream(), readings.stream().map(HowFar::done)).anyMatch(amount -> !amount.nothing());
    }

    /** The latest day this record speaks of. */
    public Optional<LocalDate> latest() {
        return days().max(Comparator.naturalOrder());
    }

    /** The day of the last stitch, as she said it: a piece that is made up was stitched by then. */
    public Optional<LocalDate> last() {
        return stitched.or(() -> finished);
    }

    /** The last day somebody had it in hand, by what is written: said states are no stitches. */
    public Optional<LocalDate> touched() {
        return Stream.of(Stream.of(started, stitched, finished).flatMap(Optional::stream), readings.stream().map(HowFar::on),
                log.stream().map(LogEntry::on)).flatMap(days -> days).max(Comparator.naturalOrder());
    }

    /**
     * The day a figure without one is of: the last of the log, so that nothing is counted twice; without a log the day the piece was
     * started. Empty where there is neither, and then it always held.
     */
    public Optional<LocalDate> doneOn() {
        return log.isEmpty() ? started : Optional.of(log.get(log.size() - 1).on());
    }

    /** The last reading there is, one without a day before all others of its day. */
    public Optional<HowFar> reading() {
        Optional<HowFar> undated = done.map(amount -> new HowFar(doneOn().orElse(LocalDate.MIN), amount));
        return Stream.concat(undated.stream(), readings.stream()).reduce((one, next) -> next.on().isBefore(one.on()) ? one : next);
    }

    /** What was known at the end of a day: what is of a later one is left out. */
    public Progress asOf(LocalDate day) {
        return new Progress(until(started, day), until(stitched, day), until(finished, day),
                done.filter(amount -> doneOn().filter(day::isBefore).isEmpty()),
                readings.stream().filter(one -> !one.on().isAfter(day)).toList(),
                log.stream().filter(one -> !one.on().isAfter(day)).toList(),
                states.stream().filter(one -> !one.on().isAfter(day)).toList());
    }

    /** How many facts there are. */
    public long facts() {
        return days().count() + done.stream().count();
    }

    private Stream<LocalDate> days() {
        return Stream.of(Stream.of(started, stitched, finished).flatMap(Optional::stream), readings.stream().map(HowFar::on),
                log.stream().map(LogEntry::on), states.stream().map(SaidState::on)).flatMap(days -> days);
    }

    private static Optional<LocalDate> until(Optional<LocalDate> fact, LocalDate day) {
        return fact.filter(on -> !on.isAfter(day));
    }
}
