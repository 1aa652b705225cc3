package kitleaf.basket.edit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.form.NumberText;
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
     * @param after the bytes before with the entry between them
     * @param piece the piece with the entry in its log
     */
    record Ready(Path file, byte[] before, byte[] after, Piece piece) implements LogEdit, Edited {
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
     * @param how to write it by hand
     */
    record NoPlace(ByHand how) implements LogEdit { }

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
            return noPlace(entry);
        }
        Optional<Refused> refused = refused(entry, piece.get());
        if (refused.isPresent()) {
            return refused.get();
        }
        byte[] after;
        try {
            after = logged(KeyEdit.of(bytes, where.document()), entry).bytes();
        } catch (ByHand none) {
            return noPlace(entry);
        }
        Reading logged = BasketReader.read(where, after);
        if (logged.problems().stream().anyMatch(problem -> problem.wrong().key().equals(ClothReader.UNCUT + ".wrong"))) {
            // No place in the file would do for a first entry: she has to say what is true.
            return new Broken(logged.problems());
        }
        return LogCheck.only(entry, piece.get(), before.basket().get(), logged)
                .<LogEdit>map(one -> new Ready(file.get(), bytes, after, one)).orElseGet(() -> noPlace(entry));
    }

    private static NoPlace noPlace(LogEntry entry) {
        return new NoPlace(new ByHand(ByHand.Deed.ADD, List.of("progress", "log"), "- " + YamlWords.flow(item(entry))));
    }

    private static KeyEdit logged(KeyEdit file, LogEntry entry) throws ByHand {
        Optional<Object> progress = file.value("progress");
        KeyEdit roomy = progress.isPresent() && progress.get() instanceof String amount
                ? file.set(Map.of("done", amount), "progress") : file;
        return roomy.append(item(entry), "progress", "log");
    }

    /** An entry as its keys and values, in the order one writes them. */
    private static Map<String, String> item(LogEntry entry) {
        Map<String, String> item = new LinkedHashMap<>();
        item.put("on", entry.on().toString());
        entry.hours().ifPresent(hours -> item.put("hours", NumberText.written(hours)));
        entry.stitches().ifPresent(stitches -> item.put("stitches", Integer.toString(stitches)));
        if (entry.unpicked() > 0) {
            item.put("unpicked", Integer.toString(entry.unpicked()));
        }
        entry.note().ifPresent(note -> item.put("note", note));
        return item;
    }

    private static Optional<Refused> refused(LogEntry entry, Piece piece) {
        Progress progress = piece.progress();
        Optional<LocalDate> later = progress.started().filter(entry.on()::isBefore);
        if (later.isPresent()) {
            return Optional.of(new Refused(Slip.BEFORE_START, later.get().toString()));
        }
        if (LogLimits.afterLast(entry, progress.last())) {
            return Optional.of(new Refused(Slip.AFTER_FINISH, progress.last().get().toString()));
        }
        if (LogLimits.tooFast(entry)) {
            return Optional.of(new Refused(Slip.TOO_FAST, Integer.toString(LogLimits.MOST_AN_HOUR)));
        }
        long most = MostStitches.of(piece);
        long before = progress.log().stream().mapToLong(LogEntry::counted).sum();
        return LogLimits.tooMany(entry, before, most) ? Optional.of(new Refused(Slip.TOO_MANY, Long.toString(most))) : Optional.empty();
    }

    private static Optional<Piece> piece(Basket basket, String id) {
        return basket.pieces().stream().filter(piece -> piece.id().equals(id)).findFirst();
    }
}
