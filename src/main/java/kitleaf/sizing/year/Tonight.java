package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitleaf.basket.LogEntry;
import kitleaf.basket.PieceState;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.StitchPace;

/**
 * What lies ready on a day: the piece in focus and the one beside it, and what an evening of hers moves them.
 *
 * @param turns the one in focus first; one or none where there is no more to do
 * @param hours a usual evening: the middle one of her logged sittings; empty where none is logged with its hours
 */
public record Tonight(List<Turn> turns, OptionalDouble hours) {

    /** Boxes of a goal card: one for every twentieth of the stitches. */
    public static final int BOXES = 20;

    /** As many pieces as lie beside each other. */
    private static final int PIECES = 2;

    /** Copies the list. */
    public Tonight {
        turns = List.copyOf(turns);
        Objects.requireNonNull(hours);
    }

    /**
     * One piece.
     *
     * @param reckoning what is reckoned of it
     * @param last its last sitting, if one is logged
     * @param stitches how many an evening is worth, 1 or more and no more than are left; empty where her pace or evening is unknown, or
     *        no stitch is left
     */
    public record Turn(PieceReckoning reckoning, Optional<LogEntry> last, Optional<Long> stitches) {

        /** Full boxes before this evening. */
        public long boxes() {
            return boxes(reckoning.tally().done());
        }

        /** Full boxes after this evening; as many as before where nobody knows what it is worth. */
        public long boxesAfter() {
            return boxes(reckoning.tally().done() + stitches.orElse(0L));
        }

        /** Evenings until the next box is full, 1 or more; empty where nobody knows what one is worth. */
        public Optional<Long> eveningsToNextBox() {
            long total = reckoning.tally().total();
            long next = (total * (boxes() + 1) + BOXES - 1) / BOXES - reckoning.tally().done();
            return stitches.map(each -> (next + each - 1) / each);
        }

        private long boxes(long done) {
            return reckoning.tally().total() == 0 ? 0 : done * BOXES / reckoning.tally().total();
        }
    }

    /**
     * What lies ready: the pieces of the day's week in the year's plan, the main one first; without a plan those she named, else the begun
     * ones she sat over last.
     *
     * @param asOf the day
     */
    public static Tonight of(Reckoning reckoning, LocalDate asOf) {
        OptionalDouble hours = evening(reckoning);
        OptionalDouble perHour = StitchPace.of(reckoning.basket());
        return new Tonight(pieces(reckoning, asOf).map(piece -> turn(piece, hours, perHour)).toList(), hours);
    }

    private static Stream<PieceReckoning> pieces(Reckoning reckoning, LocalDate asOf) {
        Stream<String> planned = reckoning.year(asOf).stream().flatMap(year -> year.weeks().stream())
                .filter(week -> !week.monday().plusDays(Days.WEEK - 1).isBefore(asOf) && !week.shares().isEmpty()).limit(1)
                .flatMap(week -> week.shares().stream().sorted(Comparator.comparing(PlannedWeek.Share::main).reversed()))
                .map(PlannedWeek.Share::id);
        Stream<String> named = reckoning.basket().goals().stream().flatMap(goals -> goals.hand().ids().stream());
        Stream<String> touched = reckoning.pieces().stream().filter(piece -> piece.state() == PieceState.BEGUN)
                .sorted(Comparator.comparing(Tonight::touched).reversed().thenComparing(piece -> piece.piece().id()))
                .map(piece -> piece.piece().id());
        return Stream.of(planned, named, touched).flatMap(ids -> ids).distinct()
                .flatMap(id -> reckoning.pieces().stream().filter(piece -> piece.piece().id().equals(id)))
                .filter(piece -> piece.state() != PieceState.MADE_UP && !piece.state().laidAside()).limit(PIECES);
    }

    private static LocalDate touched(PieceReckoning piece) {
        return last(piece).map(LogEntry::on).or(() -> piece.piece().progress().started()).orElse(LocalDate.MIN);
    }

    private static Turn turn(PieceReckoning piece, OptionalDouble hours, OptionalDouble perHour) {
        long left = piece.tally().left();
        boolean known = hours.isPresent() && perHour.isPresent() && left > 0;
        return new Turn(piece, last(piece), !known ? Optional.empty() : Optional.of(Math.max(1, Math.min(left,
                Math.round(hours.getAsDouble() * perHour.getAsDouble() / Effort.of(piece).crossesPerStitch())))));
    }

    private static Optional<LogEntry> last(PieceReckoning piece) {
        return piece.piece().progress().log().stream().max(Comparator.comparing(LogEntry::on));
    }

    /** The middle one of all sittings whose hours are known; of two middle ones the shorter. */
    private static OptionalDouble evening(Reckoning reckoning) {
        double[] hours = reckoning.basket().pieces().stream().flatMap(piece -> piece.progress().log().stream())
                .flatMapToDouble(entry -> entry.hours().stream()).sorted().toArray();
        return hours.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(hours[(hours.length - 1) / 2]);
    }
}
