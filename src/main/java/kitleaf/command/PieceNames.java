package kitleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import kitleaf.basket.place.PieceFileName;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.words.NearMiss;

/**
 * What the pieces of a basket are called. Capitals, accents and what parts words do not count, so that {@code Fog bell}, {@code fog-bell}
 * and {@code fog} may mean the same one.
 *
 * @param titles by ID; of a basket that cannot be read the IDs of its files, each its own title
 */
record PieceNames(Map<String, String> titles) {

    /** More are not listed: {@code reckon} shows them better. */
    private static final int MOST_LISTED = 12;

    /** Those in a folder. */
    static PieceNames in(Path basket) {
        Map<String, String> titles = new LinkedHashMap<>();
        PieceFile.in(basket).forEach(piece -> titles.put(piece.id(), piece.id()));
        if (Files.isDirectory(basket)) {
            BasketReader.read(basket).basket().ifPresent(read -> read.pieces().forEach(piece -> titles.put(piece.id(), piece.title())));
        }
        return new PieceNames(titles);
    }

    boolean none() {
        return titles.isEmpty();
    }

    /** The ID of the one that is meant: by its ID or title, or by a beginning of either that no other has. */
    Optional<String> meant(String written) {
        if (titles.containsKey(written)) {
            return Optional.of(written);
        }
        String plain = PieceFileName.of(written);
        if (plain.equals(PieceFileName.NAMELESS) && !written.equalsIgnoreCase(plain)) {
            return Optional.empty();
        }
        return only(plain, String::equals).or(() -> only(plain, String::startsWith));
    }

    private Optional<String> only(String plain, BiPredicate<String, String> means) {
        List<String> found = titles.entrySet().stream().filter(piece -> Stream.of(piece.getKey(), piece.getValue())
                .anyMatch(name -> means.test(PieceFileName.of(name), plain))).map(Map.Entry::getKey).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /**
     * What to say where none is meant, or more than one.
     *
     * @param shown the basket as it is called
     */
    Failure unknown(String written, Object shown) {
        List<String> close = titles.keySet().stream().filter(id -> id.startsWith(PieceFileName.of(written))).toList();
        List<String> listed = close.isEmpty() ? List.copyOf(titles.keySet()) : close;
        Optional<String> near = NearMiss.of(PieceFileName.of(written), titles.keySet());
        if (close.isEmpty() && near.isPresent()) {
            return Failure.of(Exit.WRONG_USAGE, "piece.near", written, shown, near.get());
        }
        return listed.size() > MOST_LISTED ? Failure.of(Exit.WRONG_USAGE, "piece.among-many", written, shown, titles.size())
                : Failure.of(Exit.WRONG_USAGE, "basket.piece", written, shown, String.join(", ", listed));
    }
}
