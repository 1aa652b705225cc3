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
 * @param finished the day of its last
 * @param done how much is done, where she gave a figure rather than a log
 * @param log the sittings, oldest first
 */
public record Progress(Optional<LocalDate> started, Optional<LocalDate> finished, Optional<Amount> done, List<LogEntry> log) {

    /** A piece nobody has put a needle in. */
    public static final Progress NONE = new Progress(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    /** Copies the log and sorts it by day. */
    public Progress {
        Objects.requireNonNull(started);
        Objects.requireNonNull(finished);
        Objects.requireNonNull(done);
        log = log.stream().sorted(Comparator.comparing(LogEntry::on)).toList();
    }

    /** Whether somebody has put a needle in it: a day, a sitting or a stitch that is written down tells. */
    public boolean begun() {
        return latest().isPresent() || done.filter(amount -> !amount.nothing()).isPresent();
    }

    /** The latest day this record speaks of. */
    public Optional<LocalDate> latest() {
        return Stream.concat(Stream.concat(started.stream(), finished.stream()), log.stream().map(LogEntry::on))
                .max(Comparator.naturalOrder());
    }
}
