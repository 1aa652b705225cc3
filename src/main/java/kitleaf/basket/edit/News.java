package kitleaf.basket.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Progress;

/**
 * What she tells of a piece, one fact or several.
 *
 * @param entry a sitting
 * @param reading how far it is
 * @param stitched the day of its last stitch
 * @param finished the day it was made up
 */
public record News(Optional<LogEntry> entry, Optional<HowFar> reading, Optional<LocalDate> stitched, Optional<LocalDate> finished) {

    /** Refuses missing parts. */
    public News {
        Objects.requireNonNull(entry);
        Objects.requireNonNull(reading);
        Objects.requireNonNull(stitched);
        Objects.requireNonNull(finished);
    }

    /** A sitting alone. */
    public static News of(LogEntry entry) {
        return new News(Optional.of(entry), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The days it is of; none if it tells nothing. */
    public List<LocalDate> days() {
        return Stream.of(entry.map(LogEntry::on), reading.map(HowFar::on), stitched, finished).flatMap(Optional::stream).toList();
    }

    /**
     * The reading that a figure without a day becomes, so that what is told now counts on top of it: of the day it always meant, or,
     * where it meant none, of the day before all that is known.
     */
    public Optional<HowFar> dated(Progress before) {
        return before.done().map(done -> new HowFar(before.doneOn().orElseGet(() -> Stream.concat(
                before.readings().stream().map(HowFar::on), days().stream()).min(LocalDate::compareTo).orElseThrow().minusDays(1)), done));
    }

    /** Progress with the news. */
    Progress in(Progress before) {
        List<HowFar> readings = new ArrayList<>(before.readings());
        dated(before).ifPresent(readings::add);
        reading.ifPresent(readings::add);
        List<LogEntry> log = new ArrayList<>(before.log());
        entry.ifPresent(log::add);
        return new Progress(before.started(), stitched.or(before::stitched), finished.or(before::finished), Optional.empty(), readings, log,
                before.states());
    }
}
