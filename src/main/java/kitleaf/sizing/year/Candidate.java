package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A piece that could be finished.
 *
 * @param id the piece's
 * @param hours still to do, 0 or more: to stitch and to make up
 * @param weight what finishing it is worth, 1 or more
 * @param must whether it has to be among the chosen
 * @param due the day it is wanted, where there is one
 */
record Candidate(String id, double hours, long weight, boolean must, Optional<LocalDate> due) {

    Candidate {
        Objects.requireNonNull(id);
        Objects.requireNonNull(due);
        if (!(hours >= 0 && hours < Double.POSITIVE_INFINITY) || weight < 1) {
            throw new IllegalArgumentException("no such candidate: " + id + ", " + hours + " hours, weight " + weight);
        }
    }

    /** Whether it is wanted before a day. */
    boolean wantedBefore(LocalDate day) {
        return due.filter(wanted -> wanted.isBefore(day)).isPresent();
    }

    /** The same with so many hours still to do. */
    Candidate with(double left) {
        return new Candidate(id, left, weight, must, due);
    }
}
