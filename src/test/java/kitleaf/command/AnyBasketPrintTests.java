package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Letter;
import kitleaf.baskets.AnyBasket;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever {@code check} passes, prints: baskets nobody has written, in both prints, read back with PDFBox. So many as the system property
 * {@code baskets} says, fifty by fixed seeds where it says nothing; where it does ({@code mvn -Pbaskets verify}), half of them by fresh
 * ones. A
 * failure names its seed, and {@code -Dbasket.seed=...} runs that alone.
 */
class AnyBasketPrintTests {

    private static final int USUAL = 50;
    /** Of these the heading of a wall once ended in an ellipsis. */
    private static final long LONG_HEADING = -7734852025183300478L;

    @TempDir
    private Path folder;

    @Test
    void whateverCheckPassesPrintsWithEveryFigureWhole() throws IOException {
        int number = Integer.getInteger("baskets", USUAL);
        long fresh = new Random().nextLong();
        long[] seeds = Long.getLong("basket.seed") != null ? new long[] {Long.getLong("basket.seed")}
                : number == USUAL ? LongStream.concat(LongStream.range(0, number), LongStream.of(LONG_HEADING)).toArray()
                : LongStream.concat(LongStream.range(0, number / 2), new Random(fresh).longs(number - number / 2)).toArray();
        List<String> faults = new ArrayList<>();
        int passed = 0;
        for (long seed : seeds) {
            AnyBasket drawn = AnyBasket.of(seed);
            Path basket = drawn.write(folder.resolve("basket-" + seed));
            Ran check = Ran.kitleaf("check", basket);
            if (check.code() == 0) {
                passed++;
                print(drawn, basket, faults);
            }
        }
        assertEquals(List.of(), faults);
        assertTrue(passed >= 0.8 * seeds.length, "only " + passed + " of " + seeds.length + " passed check");
    }

    private void print(AnyBasket drawn, Path basket, List<String> faults) throws IOException {
        for (boolean large : drawn.large() ? new boolean[] {false, true} : new boolean[] {false}) {
            String where = "seed " + drawn.seed() + (large ? ", large: " : ": ");
            Path out = folder.resolve("out-" + drawn.seed() + large);
            Ran ran = Ran.kitleaf("print", basket, "--out", out, large ? "--large" : "--most-pages=20000");
            if (large && ran.code() == 1 && ran.err().contains("(--large)")
                    && (ran.err().contains("cards have no room") || ran.err().contains("keinen Platz: Ihre Wörter"))) {
                // Check does not know of the option that leaves no room.
                continue;
            }
            if (ran.code() != 0) {
                faults.add(where + "exit " + ran.code() + ", " + ran.err());
                continue;
            }
            for (String file : Ran.files(out).stream().filter(it -> it.endsWith(".pdf")).toList()) {
                int page = 0;
                for (List<Letter> letters : ReadBack.lettersByPage(Files.readAllBytes(out.resolve(file)))) {
                    page++;
                    for (String cut : cutFigures(letters, drawn)) {
                        faults.add(where + file + ", page " + page + ": cut in " + cut);
                    }
                }
            }
        }
    }

    /** What ends in an ellipsis and is not one of the titles, which may: what follows there may have been a figure. */
    private static List<String> cutFigures(List<Letter> letters, AnyBasket drawn) {
        List<String> cut = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            if (letters.get(i).text().equals("…")) {
                int from = i;
                while (from > 0 && Math.abs(letters.get(from - 1).y() - letters.get(i).y()) < 0.01
                        && letters.get(from - 1).x() < letters.get(from).x()) {
                    from--;
                }
                StringBuilder seen = new StringBuilder();
                letters.subList(from, i).forEach(letter -> seen.append(letter.text()));
                String kept = bare(seen.toString());
                if (drawn.titles().stream().noneMatch(title -> bare(title).contains(kept))) {
                    cut.add(seen + "…");
                }
            }
        }
        return cut;
    }

    private static String bare(String text) {
        return text.replaceAll("\\s|\u00ad", "");
    }
}
