package kitleaf.basket.edit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.WrongValue;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.place.Fault;
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
 * What comes of writing news into a piece's file. Nothing is written here: the new text is only offered, and only when reading it
 * gives the same pieces as before but for those.
 */
public sealed interface LogEdit {

    String PROGRESS = "progress";
    String READINGS = "readings";
    String DONE = "done";


    /**
     * The news have found their place.
     *
     * @param after the bytes before with the news among them
     * @param was the piece without the news
     * @param piece the piece with the news
     */
    record Ready(Path file, byte[] before, byte[] after, Piece was, Piece piece) implements LogEdit, Edited {
        /** Takes the bytes as they are; they are not copied. */
        public Ready {
            Objects.requireNonNull(file);
            Objects.requireNonNull(before);
            Objects.requireNonNull(after);
            Objects.requireNonNull(was);
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

    /**
     * The news cannot be true of this piece.
     *
     * @param why what its reader says of them
     */
    record Unfit(WrongValue why) implements LogEdit { }

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

    /** What comes of writing news of a piece into its file. */
    static LogEdit of(PieceFile where, News news) {
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
            return noPlace(news);
        }
        Optional<Refused> refused = news.entry().flatMap(entry -> refused(entry, piece.get()));
        if (refused.isPresent()) {
            return refused.get();
        }
        byte[] after;
        try {
            after = told(KeyEdit.of(bytes, where.document()), news, news.dated(piece.get().progress())).bytes();
        } catch (ByHand none) {
            return noPlace(news);
        }
        Reading again = BasketReader.read(where, after);
        if (again.problems().stream().anyMatch(problem -> problem.wrong().key().equals(ClothReader.UNCUT + ".wrong"))) {
            // No place in the file would do for a first entry: she has to say what is true.
            return new Broken(again.problems());
        }
        if (!again.problems().isEmpty()) {
            Problem first = again.problems().get(0);
            return new Unfit(new WrongValue(Fault.of(first.wrong(), first.write())));
        }
        return LogCheck.only(news, piece.get(), before.basket().get(), again)
                .<LogEdit>map(told -> new Ready(file.get(), bytes, after, piece.get(), told)).orElseGet(() -> noPlace(news));
    }

    private static NoPlace noPlace(News news) {
        return new NoPlace(news.entry()
                .map(entry -> new ByHand(ByHand.Deed.ADD, List.of(PROGRESS, "log"), "- " + YamlWords.flow(item(entry))))
                .or(() -> news.reading().map(reading -> new ByHand(ByHand.Deed.ADD, List.of(PROGRESS, READINGS),
                        "- " + YamlWords.flow(item(reading)))))
                .or(() -> news.stitched().map(day -> new ByHand(ByHand.Deed.WRITE, List.of(PROGRESS), "stitched: " + day)))
                .orElseGet(() -> new ByHand(ByHand.Deed.WRITE, List.of(PROGRESS), "finished: " + news.finished().orElseThrow())));
    }

    private static KeyEdit told(KeyEdit file, News news, Optional<HowFar> dated) throws ByHand {
        KeyEdit edit = dated.isPresent() ? dated(file, dated.get()) : file;
        if (news.reading().isPresent()) {
            edit = edit.append(item(news.reading().get()), PROGRESS, READINGS);
        }
        if (news.entry().isPresent()) {
            edit = edit.append(item(news.entry().get()), PROGRESS, "log");
        }
        if (news.stitched().isPresent()) {
            edit = edit.set(news.stitched().get().toString(), PROGRESS, "stitched");
        }
        return news.finished().isPresent() ? edit.set(news.finished().get().toString(), PROGRESS, "finished") : edit;
    }

    /** Writes a figure that has no day as a reading of one, in her spelling and as near its old place as can be. */
    private static KeyEdit dated(KeyEdit file, HowFar reading) throws ByHand {
        Optional<Object> progress = file.value(PROGRESS);
        Map<String, String> item = item(reading);
        if (progress.isPresent() && progress.get() instanceof String amount) {
            item.put(DONE, amount);
            return file.set(Map.of(READINGS, List.of(item)), PROGRESS);
        }
        item.put(DONE, file.value(PROGRESS, DONE).map(Object::toString).orElseThrow());
        return file.value(PROGRESS, READINGS).isEmpty() ? file.replace(READINGS, List.of(item), PROGRESS, DONE)
                : file.append(item, PROGRESS, READINGS).remove(PROGRESS, DONE);
    }

    private static Map<String, String> item(HowFar reading) {
        Map<String, String> item = new LinkedHashMap<>();
        item.put("on", reading.on().toString());
        item.put(DONE, AmountText.written(reading.done()));
        return item;
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
