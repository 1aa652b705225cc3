package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of pieces and the look back, read back from the PDF. Lengths of bars are worked by hand. */
class DiaryPrintTests {

    private static final double MM = 0.02;
    private static final double BAR_MM = 14;
    private static final String CLOTH = "cloth: {kind: linen, count: 36, over: 2}\n";

    @TempDir
    private Path folder;

    private Path basket(String... pieces) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "paper: A4\n",
                "piece: One\nstitches: 10 x 10\n" + CLOTH + pieces[0]);
        for (int i = 1; i < pieces.length; i++) {
            Files.writeString(basket.resolve("pieces/p" + i + ".yaml"), "piece: Number " + i
                    + "\nstitches: 100 x 100\n" + CLOTH + pieces[i]);
        }
        return basket;
    }

    private byte[] print(Path basket, String sheet, Object... more) throws IOException {
        List<Object> arguments = new ArrayList<>(List.of("print", basket, "--only", sheet, "--out", folder.resolve("out")));
        arguments.addAll(List.of(more));
        Ran ran = Ran.kitleaf(arguments.toArray());
        assertEquals(0, ran.code(), ran.err());
        return Files.readAllBytes(folder.resolve("out").resolve(sheet + ".pdf"));
    }

    /** Filled bars of one height, from the left and the top. */
    private static List<Drawn> bars(byte[] pdf, double leastMm, double mostMm) throws IOException {
        return ReadBack.drawn(pdf, 1).stream().filter(it -> it.filled() && !it.stroked())
                .filter(it -> it.most(true) - it.least(true) > leastMm && it.most(true) - it.least(true) <= mostMm + MM).toList();
    }

    @Test
    void every_piece_has_a_line_with_its_place_and_a_bar_as_long_as_it_is_done() throws IOException {
        byte[] pdf = print(basket("",
                "source: Winter quarterly, page 14\nbag: blue bag\nprogress: {readings: [{on: 2026-04-01, done: 45%}]}\n",
                "progress: {started: 2025-01-02, states: [{on: 2026-05-01, is: resting}]}\n"), "piece-list");
        String text = ReadBack.text(pdf, 1).replace('\u00a0', ' ');
        assertTrue(text.contains("Winter quarterly, page 14 · blue bag"), text);
        assertTrue(text.indexOf("Begun: 1") < text.indexOf("Waiting: 1") && text.indexOf("Waiting: 1") < text.indexOf("Resting: 1"), text);
        assertTrue(text.contains("45 %") && text.replace('\u202f', ' ').contains("5 500"), text);
        List<Drawn> done = bars(pdf, 0.5, BAR_MM);
        assertEquals(1, done.size(), done.toString());
        assertEquals(0.45 * BAR_MM, done.get(0).most(true) - done.get(0).least(true), MM);
    }

    @Test
    void sixty_pieces_take_two_pages() throws IOException {
        String[] pieces = new String[60];
        for (int i = 0; i < pieces.length; i++) {
            pieces[i] = i % 3 == 0 ? "" : i % 3 == 1 ? "progress: " + i + "%\n" : "progress: {states: [{on: 2026-05-01, is: given-up}]}\n";
        }
        byte[] pdf = print(basket(pieces), "piece-list");
        assertEquals(2, ReadBack.pages(pdf));
        String text = ReadBack.text(pdf, 1) + ReadBack.text(pdf, 2);
        for (int i = 1; i < pieces.length; i++) {
            assertTrue(text.contains("Number " + i), "Number " + i);
        }
    }

    /** 2 h in the first week of March, 4 h in the second, 1 h in April, which is not of the quarter: bars of half and all of 22 mm. */
    @Test
    void hours_of_a_quarter_are_bars_by_the_week() throws IOException {
        Path basket = basket("", "progress: {log: [{on: 2026-03-03, hours: 2, stitches: 200}, {on: 2026-03-10, hours: 1, stitches: 100}, "
                + "{on: 2026-03-12, hours: 3}, {on: 2026-04-01, hours: 1, stitches: 100}]}\n");
        byte[] pdf = print(basket, "look-back", "--span", "2026-Q1");
        TreeMap<Double, Drawn> byLeft = new TreeMap<>();
        double topMm = ReadBack.letters(pdf, 1).stream().filter(it -> it.text().equals("S")).mapToDouble(Letter::y).max().orElseThrow();
        bars(pdf, 5, 20).stream().filter(it -> it.most(false) < topMm).forEach(it -> byLeft.put(it.least(true), it));
        List<Double> heights = byLeft.values().stream().map(it -> it.most(false) - it.least(false)).toList();
        assertTrue(heights.size() >= 2, heights.toString());
        assertEquals(11, heights.get(0), MM);
        assertEquals(22, heights.get(1), MM);
        String text = ReadBack.text(pdf, 1);
        // 6 h; 300 stitches counted, and 3 h at the pace of 400 in 4 h, which the sitting in April teaches too late.
        assertTrue(text.contains("600"), text);
        assertFalse(text.contains("700"), text);
    }

    @Test
    void nothing_stitched_is_no_look_back_and_it_says_so() throws IOException {
        Ran ran = Ran.kitleaf("print", basket(""), "--only", "look-back", "--out", folder.resolve("out"));
        assertEquals(1, ran.code());
        assertEquals("no look-back: nothing was stitched in that time; name another with --span", ran.err().strip());
    }

    /** What is laid aside is neither bought for nor cut; the plan says that it is left out, and why. */
    @Test
    void a_resting_piece_is_not_bought_for_and_not_cut() throws IOException {
        String threads = "threads: [{code: K12, stitches: {cross: 3000}}]\n";
        Path basket = basket("threads: [{code: K15, stitches: {cross: 50}}]\n",
                threads + "progress: {states: [{on: 2026-05-01, is: resting}]}\n");
        Files.writeString(basket.resolve("basket.yaml"), "cloth-on-hand: [{name: Fog, kind: linen, count: 36, size: 60 cm x 60 cm}]\n");
        String buy = ReadBack.text(print(basket, "buy-list"), 1);
        assertTrue(buy.contains("K15") && !buy.contains("K12"), buy);
        assertTrue(buy.contains("for 1 piece"), buy);
        String plan = ReadBack.text(print(basket, "cloth-plan"), 1);
        assertTrue(plan.contains("Resting or given up: Number 1."), plan);
        assertEquals(Set.of("K15"), Set.copyOf(Files.readAllLines(folder.resolve("out/buy-list.csv")).stream()
                .filter(it -> it.contains("K1"))
                .map(it -> it.replaceAll(".*(K1[0-9]).*", "$1")).toList()));
    }
}
