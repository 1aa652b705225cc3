package kitleaf.sheet.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.reader.BasketReader;
import kitleaf.sizing.thread.ThreadReckoning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlainThreadsTests {

    @TempDir
    private Path folder;

    private ThreadReckoning reckoned(String... threads) throws IOException {
        Files.writeString(folder.resolve("lamp.yaml"), "piece: Lamp\nstitches: 400 x 400\ncloth: {kind: linen, count: 28, over: 2}\n"
                + "margin: 2 in\nthreads:\n  - " + String.join("\n  - ", threads) + "\n");
        return ThreadReckoning.of(BasketReader.read(folder.resolve("lamp.yaml")).basket().orElseThrow());
    }

    /** By hand: a skein for 1000 stitches; 1500 take 1.5 (1.35 to 1.65), so 2; 1960 take 1.96 (1.764 to 2.156), only just 2; 2000 x 0.0062 = 12.4, 11.16 to 13.64. */
    @Test
    void threads_and_what_to_buy_stand_in_columns() throws IOException {
        ThreadReckoning it = reckoned("{code: L1, name: Lamp black, stitches: {cross: 1500}, used: {skeins: 1, stitches: 1000}}",
                "{code: L2, stitches: {cross: 1960}, used: {skeins: 1, stitches: 1000}}",
                "{code: L3, stitches: {cross: 2000}, used: {skeins: 6.2, stitches: 1000}}",
                "{code: L4, name: A light far out beyond the bar, share: 20%}");
        assertEquals(List.of(
                "  threads    L1 Lamp black           1.5 (1.35 to 1.65) skeins, buy 2",
                "             L2                      1.96 (1.76 to 2.16) skeins, buy 2, tight",
                "             L3                      12.4 (11.2 to 13.6) skeins, buy 13",
                "             L4 A light far out beyond the bar not known without coverage",
                "             for the whole piece, whatever is done or lies in the stash",
                "  needle     tapestry 24"), new PlainThreads(Locale.ENGLISH).of(it.pieces().get(0)));
        assertEquals(List.of(
                "  to buy     L1 cotton               buy 2",
                "             L2 cotton               buy 2, tight",
                "             L3 cotton               buy 13",
                "             L4 cotton               not known"), new PlainThreads(Locale.ENGLISH).of(it.buyList()));
    }

    /** By hand: 0.44 of lot 12 with 0.1 in the stash, 0.33 of lot 7 B: a skein of each, whatever lies there of lot 9. */
    @Test
    void lots_to_ask_for_stand_below() throws IOException {
        Files.writeString(folder.resolve("basket.yaml"), "skeins: {dyed: {length: 5 m, plies: 6, lot-matters: yes}}\n"
                + "stash: [{code: L1, skein: dyed, skeins: 0.1, lot: 12}, {code: L1, skein: dyed, skeins: 4, lot: 9}]\n");
        Files.createDirectories(folder.resolve("pieces"));
        String piece = "stitches: 400 x 400\ncloth: {kind: linen, count: 28, over: 2}\nthreads: [{code: L1, skein: dyed, lot: %s, "
                + "stitches: {cross: %d}, used: {skeins: 1, stitches: 1000}}]\n";
        Files.writeString(folder.resolve("pieces/a.yaml"), "piece: A\n" + piece.formatted("12", 400));
        assertEquals(List.of("  to buy     L1 dyed                 buy 1, stash 0.1", "                                     ask for lot 12"), toBuy(Locale.ENGLISH));
        Files.writeString(folder.resolve("pieces/b.yaml"), "piece: B\n" + piece.formatted("7 B", 300));
        assertEquals("                                     ask for 1 of lot 12, 1 of lot 7 B", toBuy(Locale.ENGLISH).get(1));
        assertEquals("nach 1 aus Partie 12, 1 aus Partie 7 B fragen", toBuy(Locale.GERMAN).get(1).strip());
    }

    private List<String> toBuy(Locale language) {
        return new PlainThreads(language).of(ThreadReckoning.of(BasketReader.read(folder).basket().orElseThrow()).buyList());
    }

    @Test
    void lines_keep_to_eighty_columns() throws IOException {
        ThreadReckoning it = reckoned("{code: L3, stitches: {cross: 99050}, used: {skeins: 10, stitches: 1000}}");
        new PlainThreads(Locale.ENGLISH).of(it.pieces().get(0)).forEach(line -> assertTrue(line.length() <= 80, line.length() + ": " + line));
    }
}
