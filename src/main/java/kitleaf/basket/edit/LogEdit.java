package kitleaf.basket.edit;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.ClothReader;
import kitleaf.basket.reader.LogLimits;
import kitleaf.basket.reader.MostStitches;
import kitleaf.basket.reader.PieceFile;
import kitleaf.basket.reader.Reading;

/**
 * What comes of adding an entry to a piece's log. Nothing is written here: the new text is only offered, and
 * only when reading it gives the same pieces as before but for that entry.
 */
public sealed interface LogEdit {

    /**
     * The entry has found its place.
     *
     * @param file where it really lies, which is where it was read
     * @param before the bytes of the file
     * @param after the same bytes with the entry between them
     * @param piece the piece with the entry in its log
     */
    record Ready(Path file, byte[] before, byte[] after, Piece piece) implements LogEdit {
        /** Takes the bytes as they are; they are not copied. */
        public Ready {
            Objects.requireNonNull(file);
            Objects.requireNonNull(before);
            Objects.requireNonNull(after);
            Objects.requireNonNull(piece);
        }
    }

    /**
     * The piece could not be read before.
     *
     * @param problems all of them
     */
    record Broken(List<Problem> problems) implements LogEdit {
        /** Copies the list. */
        public Broken {
            problems = List.copyOf(problems);
        }
    }

    /**
     * The entry cannot belong to this piece.
     *
     * @param slip why
     * @param bound the first or last day it may have, or how many stitches there may be
     */
    record Refused(Slip slip, String bound) implements LogEdit { }

    /** Why an entry cannot belong to a piece. */
    enum Slip {
        /** It is before the piece was started. */
        BEFORE_START,
        /** It has stitches after the piece was finished. */
        AFTER_FINISH,
        /** It has more stitches an hour than hands can make. */
        TOO_FAST,
        /** The log would have more stitches than the piece can hold. */
        TOO_MANY
    }

    /**
     * No place was found where the entry could stand without touching what is written.
     *
     * @param entry what to write by hand, as an item of the log
     */
    record ByHand(String entry) implements LogEdit { }

    /** What comes of adding an entry to a piece. */
    static LogEdit of(PieceFile where, LogEntry entry) {
        Problems problems = new Problems();
        Path name = BasketFiles.shown(where.file());
        Optional<Path> file = where.fence().find(where.file(), problems);
        // Read once: by a second look it may hold something else.
        Optional<byte[]> read = file.flatMap(real -> SourceReader.bytes(real, name, problems));
        Optional<Source> source = read.flatMap(bytes -> SourceReader.decode(bytes, name, problems));
        if (source.isEmpty()) {
            return new Broken(problems.all());
        }
        byte[] bytes = read.get();
        Reading before = BasketReader.read(where, bytes);
        if (before.basket().isEmpty()) {
            return new Broken(before.problems());
        }
        Optional<Piece> piece = piece(before.basket().get(), where.id());
        if (piece.isEmpty()) {
            return new ByHand(LogPlace.written(entry));
        }
        Optional<Refused> refused = refused(entry, piece.get());
        if (refused.isPresent()) {
            return refused.get();
        }
        byte[] after = inserted(bytes, source.get(), LogPlace.of(source.get().text(), where.document(), entry));
        Reading logged = BasketReader.read(where, after);
        if (logged.problems().stream().anyMatch(problem -> problem.wrong().key().equals(ClothReader.UNCUT + ".wrong"))) {
            // No place in the file would do for a first entry: she has to say what is true.
            return new Broken(logged.problems());
        }
        return LogCheck.only(entry, piece.get(), before.basket().get(), logged)
                .<LogEdit>map(one -> new Ready(file.get(), bytes, after, one)).orElseGet(() -> new ByHand(LogPlace.written(entry)));
    }

    private static Optional<Refused> refused(LogEntry entry, Piece piece) {
        Progress progress = piece.progress();
        Optional<LocalDate> later = progress.started().filter(entry.on()::isBefore);
        if (later.isPresent()) {
            return Optional.of(new Refused(Slip.BEFORE_START, later.get().toString()));
        }
        if (LogLimits.afterFinish(entry, progress.finished())) {
            return Optional.of(new Refused(Slip.AFTER_FINISH, progress.finished().get().toString()));
        }
        if (LogLimits.tooFast(entry)) {
            return Optional.of(new Refused(Slip.TOO_FAST, Integer.toString(LogLimits.MOST_AN_HOUR)));
        }
        long most = MostStitches.of(piece);
        long before = progress.log().stream().mapToLong(LogEntry::stitches).sum();
        return LogLimits.tooMany(entry, before, most) ? Optional.of(new Refused(Slip.TOO_MANY, Long.toString(most))) : Optional.empty();
    }

    private static Optional<Piece> piece(Basket basket, String id) {
        return basket.pieces().stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    /** The bytes of a file with texts between them; places are counted in characters after its byte order mark. */
    private static byte[] inserted(byte[] bytes, Source source, List<LogPlace.Insertion> insertions) {
        int length = source.text().getBytes(StandardCharsets.UTF_8).length;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(Arrays.copyOf(bytes, bytes.length - length));
        int from = 0;
        for (LogPlace.Insertion insertion : insertions) {
            out.writeBytes(source.slice(from, insertion.at()).getBytes(StandardCharsets.UTF_8));
            out.writeBytes(insertion.text().getBytes(StandardCharsets.UTF_8));
            from = insertion.at();
        }
        out.writeBytes(source.slice(from, Integer.MAX_VALUE).getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }
}
