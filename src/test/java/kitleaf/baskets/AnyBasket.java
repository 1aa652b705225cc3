package kitleaf.baskets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A basket nobody has written: charts of 1 to 2,000 stitches either way, all kinds of cloth, finishes, margins up to 30 cm, 0 to 400
 * threads a piece, parts, progress, goals, cloth, stash, stock, tags, papers and languages. It is meant to be one that
 * {@code check} passes; where a draw breaks one of the basket's bounds after all, {@code check} says so.
 *
 * @param seed what it is drawn by
 * @param files what stands in its files, by their places in the folder
 * @param large whether its paper has room for large print, A5 upright or larger
 * @param titles of pieces, parts, threads and the basket, and codes of threads, which may be cut short where they stand alone
 */
public record AnyBasket(long seed, Map<String, String> files, boolean large, Set<String> titles) {

    /** Copies the files and titles. */
    public AnyBasket {
        files = Map.copyOf(files);
        titles = Set.copyOf(titles);
    }

    /** The basket of a seed. */
    public static AnyBasket of(long seed) {
        Draw draw = new Draw(seed);
        Map<String, String> files = new TreeMap<>();
        Set<String> titles = new TreeSet<>();
        // Many small baskets and few large ones: a household has some threads a piece, a hundred is much.
        int pieces = draw.log(1, 6);
        AnySettings settings = AnySettings.of(draw, pieces, titles);
        files.put("basket.yaml", settings.text());
        for (int i = 1; i <= pieces; i++) {
            int mostThreads = draw.once(20) ? 400 : 400 / (pieces * 6 + 14);
            files.put("pieces/piece-" + i + ".yaml", new AnyPiece(draw, titles).text(settings.clothNames(), mostThreads));
        }
        return new AnyBasket(seed, files, settings.large(), titles);
    }

    /** Writes it into a folder, which is made. */
    public Path write(Path folder) throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        return folder;
    }
}
