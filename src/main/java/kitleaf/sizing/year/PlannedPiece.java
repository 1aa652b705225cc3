package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import kitleaf.sizing.PieceReckoning;

/**
 * One chosen piece in the plan of a year.
 *
 * @param reckoning what is reckoned of it
 * @param effort what is still to stitch
 * @param hoursLeft what is still to do in hours, 0 or more: to stitch and to make up
 * @param stitched the day its last stitch is done at her usual pace, or was
 * @param firstWeek the Monday of the first week planned for it, beside another or as the main piece
 * @param mainWeek the Monday of the first week it is the main piece in; its first week when it never is
 * @param lastWeek the Monday of the last week planned for it
 * @param finish the day it is made up at her usual pace
 * @param p10 the day by which it is finished in one of ten drawn years; dates on the horizon mean then or later
 * @param p50 the day by which it is finished in one of two
 * @param p90 the day by which it is finished in nine of ten
 * @param deadline its date, or the year's last day when that is earlier or it has no date
 * @param chance to be finished by the deadline, 0 to 1
 * @param lateDays by how many days {@code finish} comes after the deadline; 0 when it does not
 * @param place why it stands where it does in the order
 * @param rescue what would bring it in by its date, when its place is {@link Place#LATE}; what would make its chance even, when it has a
 *        date of its own and less than an even chance to keep it
 */
public record PlannedPiece(PieceReckoning reckoning, Effort effort, double hoursLeft, LocalDate firstWeek, LocalDate mainWeek,
                           LocalDate lastWeek, LocalDate stitched, LocalDate finish, LocalDate p10, LocalDate p50, LocalDate p90,
                           LocalDate deadline, double chance, long lateDays, Place place, Optional<Rescue> rescue) {

    /** An even chance. */
    static final double EVEN = 0.5;

    /** Refuses dates out of order and chances outside 0 to 1. */
    public PlannedPiece {
        Objects.requireNonNull(reckoning);
        Objects.requireNonNull(effort);
        Objects.requireNonNull(stitched);
        Objects.requireNonNull(finish);
        Objects.requireNonNull(deadline);
        Objects.requireNonNull(place);
        Objects.requireNonNull(rescue);
        if (!(hoursLeft >= 0) || mainWeek.isBefore(firstWeek) || lastWeek.isBefore(firstWeek) || p50.isBefore(p10)
                || p90.isBefore(p50) || !(chance >= 0 && chance <= 1) || lateDays < 0) {
            throw new IllegalArgumentException("no such plan for " + reckoning.piece().id());
        }
    }

    /** Whether it is planned in time for a date of its own, and yet more likely to be late. */
    public boolean close() {
        return lateDays == 0 && chance < EVEN && reckoning.piece().goal().by().isPresent();
    }

    /** The same with what would save it. */
    PlannedPiece saved(Rescue by) {
        return new PlannedPiece(reckoning, effort, hoursLeft, firstWeek, mainWeek, lastWeek, stitched, finish, p10, p50, p90, deadline,
                chance, lateDays, place, Optional.of(by));
    }

    /** The ID of the piece. */
    public String id() {
        return reckoning.piece().id();
    }

    /** Hours to make it up, 0 to {@code hoursLeft}. */
    public double makingUpHours() {
        return Effort.makingUpHours(reckoning.piece());
    }
}
