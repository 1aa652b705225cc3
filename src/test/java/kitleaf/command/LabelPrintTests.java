package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bobbin labels printed by the whole program and measured on the page with PDFBox. */
class LabelPrintTests {

    private static final double TRUE_MM = 0.02;
    private static final Path HARBOUR = Path.of("examples/harbour");
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz ABCDEÉÖŁőşțñçæßαβγδεζηθΩΦΨабвгдежзшщюяЖЯЩ-'";

    @TempDir
    private Path folder;

    private byte[] print(Path basket, Object... more) throws IOException {
        Object[] arguments = new Object[6 + more.length];
        System.arraycopy(new Object[] {"print", basket, "--only", "bobbin-labels", "--out", folder.resolve("out")}, 0, arguments, 0, 6);
        System.arraycopy(more, 0, arguments, 6, more.length);
        Ran ran = Ran.kitleaf(arguments);
        assertEquals(0, ran.code(), ran.err());
        return Files.readAllBytes(folder.resolve("out/bobbin-labels.pdf"));
    }

    private static String piece(int threads, String name) {
        return "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nthreads:\n"
                + IntStream.range(0, threads).mapToObj(i -> "  - {code: A" + (100 + i) + ", name: \"" + name
                        + "\", colour: \"#6b7f8c\", symbol: \"●\", strands: 1, stitches: {cross: 500}}\n").collect(Collectors.joining());
    }

    /** The swatches of a page, row by row. */
    private static List<Drawn> swatches(byte[] pdf, int page) throws IOException {
        return ReadBack.drawn(pdf, page).stream().filter(it -> it.filled() && it.stroked() && it.fill() == 0x6b7f8c)
                .sorted(Comparator.comparingDouble((Drawn it) -> Math.rint(it.least(false))).thenComparingDouble(it -> it.least(true))).toList();
    }

    /** By hand: 3 x 10 labels of 2 5/8 x 1 in on letter, the first 3/16 in from the left and 1/2 in from the top, 2 3/4 x 1 in apart. */
    @Test
    void labels_lie_where_the_stock_says_after_the_skipped_ones() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "label-stock: {paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, "
                + "first: 3/16 in x 1/2 in, pitch: 2 3/4 in x 1 in, style: face}\n", piece(40, "Kelp"));
        byte[] pdf = print(basket, "--skip", 4);
        List<Drawn> first = swatches(pdf, 1);
        List<Drawn> second = swatches(pdf, 2);
        assertEquals(26, first.size());
        assertEquals(14, second.size());
        for (int i = 0; i < first.size(); i++) {
            int place = i + 4;
            // Each swatch stands 1.8 mm in from its label's corner.
            assertEquals((3 / 16.0 + place % 3 * 2.75) * 25.4 + 1.8, first.get(i).least(true), TRUE_MM, "label " + i);
            assertEquals((1 / 2.0 + place / 3) * 25.4 + 1.8, first.get(i).least(false), TRUE_MM, "label " + i);
        }
        assertEquals(3 / 16.0 * 25.4 + 1.8, second.get(0).least(true), TRUE_MM);
        assertTrue(ReadBack.text(pdf, 1).contains("A125") && ReadBack.text(pdf, 2).contains("A126"));
    }

    /** A thread's own record stands for its need: one skein, or two, for as many stitches as the chart has. */
    @Test
    void one_skein_is_no_skeins() throws IOException {
        String thread = "  - {code: A1, stitches: {cross: 500}, used: {skeins: 1, stitches: 500}}\n";
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", piece(0, "") + thread + thread.replace("A1", "A2").replace("skeins: 1", "skeins: 2")));
        String text = ReadBack.line(pdf, 1).replace('\u00a0', ' ');
        assertTrue(text.contains("1 skein cotton") && text.contains("2 skeins cotton"), text);
    }

    @Test
    void bought_stock_carries_nothing_but_labels() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "label-stock: {paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, "
                + "first: 3/16 in x 1/2 in, pitch: 2 3/4 in x 1 in, style: face}\n", piece(3, "Kelp"));
        String text = ReadBack.text(print(basket), 1);
        assertFalse(text.contains("Kitleaf") || text.contains("page 1"), text);
    }

    @Test
    void a_corrected_printer_does_not_silence_the_caution() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "printer: {measured-across: 99.3 mm, measured-down: 99.8 mm}\n", piece(3, "Kelp")));
        assertTrue(ReadBack.text(pdf, 1).contains("Blades slip"));
    }

    /** By hand: the usual stock on A4 is 63 x 25 mm from 10 mm down, 3 across, centred: (210 - 3 x 63) / 2 = 10.5 mm in. */
    @Test
    void plain_paper_has_its_cut_lines_at_the_labels_edges_and_a_foot() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", piece(30, "Kelp"));
        byte[] pdf = print(basket);
        List<Drawn> cuts = ReadBack.drawn(pdf, 1).stream().filter(it -> it.stroked() && it.operations().equals("ML")
                && Math.abs(it.lineWidthMm() - 0.6) < 0.005).toList();
        List<Double> upright = cuts.stream().filter(it -> Math.abs(it.x(0) - it.x(1)) < 0.01).map(it -> it.x(0)).sorted().toList();
        List<Double> level = cuts.stream().filter(it -> Math.abs(it.y(0) - it.y(1)) < 0.01).map(it -> it.y(0)).sorted().toList();
        assertEquals(4, upright.size());
        assertEquals(11, level.size());
        for (int i = 0; i < 4; i++) {
            assertEquals(10.5 + i * 63, upright.get(i), TRUE_MM);
        }
        for (int i = 0; i < 11; i++) {
            assertEquals(10 + i * 25, level.get(i), TRUE_MM);
        }
        assertTrue(ReadBack.text(pdf, 1).contains("page 1 of 1"));
        assertTrue(ReadBack.text(pdf, 1).contains("Blades slip"));
    }

    @Test
    void a_wrap_label_says_its_code_and_piece_on_both_faces() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", piece(1, "Kelp")));
        String text = ReadBack.text(pdf, 1);
        assertEquals(2, text.split("A100", -1).length - 1, text);
        assertEquals(2, text.split("Groyne", -1).length - 1, text);
        for (String words : List.of("Kelp", "1 strand, needle 26", "skeins cotton", "lot ____")) {
            assertTrue(text.replace('\u00a0', ' ').contains(words), text);
        }
    }

    /** Names from 1 to 200 characters in three scripts: no letter leaves the face it belongs to. */
    @ParameterizedTest
    @ValueSource(strings = {"", "label-stock: {cut: 63 mm x 25 mm, style: face}\n"})
    void names_of_any_length_stay_inside_their_faces(String stock) throws IOException {
        Random random = new Random(20270630);
        StringBuilder threads = new StringBuilder("piece: Груз and Φάρος, the very long title of a long and winding piece\n"
                + "stitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nthreads:\n");
        for (int i = 0; i < 60; i++) {
            int length = i == 0 ? 1 : i == 1 ? 200 : 1 + random.nextInt(200);
            String name = random.ints(length, 0, LETTERS.length()).mapToObj(at -> String.valueOf(LETTERS.charAt(at))).collect(Collectors.joining());
            threads.append("  - {code: X").append(i).append(", name: \"n").append(name.strip(), 0, Math.max(0, name.strip().length() - 1))
                    .append("\", stitches: {cross: 100}}\n");
        }
        byte[] pdf = print(Ran.basket(folder.resolve("b"), stock, threads.toString()));
        double faceMm = stock.isEmpty() ? 31.5 : 63;
        int letters = 0;
        for (int page = 1; page <= 2; page++) {
            for (Letter letter : ReadBack.letters(pdf, page)) {
                if (letter.turned() != 0 || letter.y() > 260.5 || letter.text().isBlank() || letter.text().equals("✂")) {
                    continue;
                }
                letters++;
                double inFace = (letter.x() - 10.5) % faceMm;
                double inRow = (letter.y() - 10) % 25;
                assertTrue(inFace >= 1 && inFace + letter.width() <= faceMm - 1, "page " + page + ": " + letter);
                // Type of 7 pt rises 1.7 mm above its baseline and falls 0.6 mm below it.
                assertTrue(inRow >= 2.5 && inRow <= 24, "page " + page + ": " + letter);
            }
        }
        assertTrue(letters > 2000, letters + " letters");
    }

    /** Where the words have no room they are written in short forms, and what still has none is left out whole: nothing is cut. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "en; {cut: 63 mm x 25 mm}; 1 strand, needle 26 1.5 skeins cotton lot 7",
        "de; {cut: 63 mm x 25 mm}; 1-fädig, Nadel 26 1,5 Docken cotton Partie 7",
        "en; {cut: 35 mm x 20 mm, style: face}; 1 strand, needle 26, 1.5 skeins cotton, lot 7",
        "de; {cut: 35 mm x 20 mm, style: face}; 1-fädig, Nadel 26 · 1,5 Docken cotton · Partie 7",
        "en; {cut: 25 mm x 16 mm, style: face}; 1 str, nd 26, lot 7",
        "de; {cut: 25 mm x 16 mm, style: face}; 1-fäd., Nd. 26 · Part. 7",
        "en; {columns: 6, rows: 8, label: 26 mm, first: 16 mm x 15 mm, pitch: 30 mm x 32 mm, shape: round}; 1 str, nd 26, 1.5 sk cotton, lot 7",
        "de; {columns: 6, rows: 8, label: 26 mm, first: 16 mm x 15 mm, pitch: 30 mm x 32 mm, shape: round}; 1-fäd., Nd. 26 · 1,5 Dck. cotton · Part. 7"})
    void small_stock_shortens_its_words_before_it_cuts_any(String language, String stock, String facts) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "label-stock: " + stock + "\n", piece(0, "")
                + "  - {code: A1, name: Kelp, lot: \"7\", strands: 1, stitches: {cross: 500}, used: {skeins: 1.5, stitches: 500}}\n");
        Ran ran = Ran.kitleaf("print", basket, "--only", "bobbin-labels", "--language", language, "--out", folder.resolve("out"));
        assertEquals("", ran.err());
        String text = ReadBack.line(Files.readAllBytes(folder.resolve("out/bobbin-labels.pdf")), 1).replaceAll("[\\s\u00a0]+", " ");
        assertTrue(text.contains(facts), text);
    }

    /** The same ladder for strands by kind of stitch: whole, then in short forms; a lot stays. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "en| {cut: 63 mm x 25 mm}| 2 strands, back stitch 1 needle 26 1.5 skeins cotton lot 7",
        "de| {cut: 63 mm x 25 mm}| 2-fädig, Rückstich 1 Nadel 26 1,5 Docken cotton Partie 7",
        "en| {cut: 35 mm x 20 mm, style: face}| 2 strands, back stitch 1; needle 26; 1.5 skeins cotton; lot 7",
        "de| {cut: 35 mm x 20 mm, style: face}| 2-fädig, Rückstich 1 · Nadel 26 · 1,5 Docken cotton · Partie 7",
        "en| {cut: 25 mm x 20 mm, style: face}| 2 str, back 1; nd 26; 1.5 sk cotton; lot 7"})
    void small_stock_shortens_strands_by_kind(String language, String stock, String facts) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "label-stock: " + stock + "\n", piece(0, "")
                + "  - {code: A1, name: Kelp, lot: \"7\", strands: {cross: 2, back: 1}, stitches: {cross: 400, back: 100}, used: {skeins: 1.5, stitches: 500}}\n");
        Ran ran = Ran.kitleaf("print", basket, "--only", "bobbin-labels", "--language", language, "--out", folder.resolve("out"));
        assertEquals("", ran.err());
        String text = ReadBack.line(Files.readAllBytes(folder.resolve("out/bobbin-labels.pdf")), 1).replaceAll("[\\s\u00a0]+", " ");
        assertTrue(text.contains(facts), text);
    }

    /** By hand: 500 crosses by its own record are 1 skein, 1.1 at the high end: 0.4 of the named lot 12, and 0.7 of lot 9, which it may mix. */
    @ParameterizedTest
    @CsvSource({"yes, lot 12 + 9", "no, lot 12"})
    void a_label_says_every_lot_its_thread_comes_from(String mix, String lots) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "skeins: {dyed: {length: 5 m, plies: 6, lot-matters: yes}}\n"
                + "stash: [{code: A1, skein: dyed, skeins: 0.4, lot: 12}, {code: A1, skein: dyed, skeins: 0.8, lot: 9}]\n", piece(0, "")
                + "  - {code: A1, skein: dyed, lot: 12, mix-lots: " + mix + ", stitches: {cross: 500}, used: {skeins: 1, stitches: 500}}\n"));
        String text = ReadBack.line(pdf, 1).replaceAll("[\\s\u00a0]+", " ");
        assertTrue(text.contains("dyed " + lots + " Groyne"), text);
    }

    /** Two lines of title and one of name leave one line, which strands, needle and lot share. */
    @Test
    void a_lot_shares_its_line_with_what_has_room_beside_it() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "language: de\nlabel-stock: {cut: 25 mm x 20 mm, style: face}\n",
                "piece: Harbour-master's almanac\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nthreads:\n"
                + "  - {code: H01, name: January gale, lot: \"3\", strands: 1, stitches: {cross: 500}}\n");
        Ran ran = Ran.kitleaf("print", basket.toString(), "--only", "bobbin-labels", "--out", folder.resolve("out").toString());
        assertEquals("", ran.err());
        String text = ReadBack.line(Files.readAllBytes(folder.resolve("out/bobbin-labels.pdf")), 1).replace('\u00a0', ' ');
        assertTrue(text.contains("January gale 1-fäd., Nd. 26 · Part. 3 Harbour-master’s almanac"), text);
    }

    /** A wrong lot costs a skein: it stands whole on every stock, whatever has to go for it, over as many lines as it takes. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"{cut: 25 mm x 20 mm, style: face}", "{cut: 50 mm x 20 mm}", "{cut: 30 mm x 40 mm}", "{cut: 35 mm x 20 mm, style: face}",
        "{columns: 5, rows: 7, label: 32 mm, first: 12 mm x 10 mm, pitch: 36 mm x 36 mm, shape: round}"})
    void a_lot_is_never_cut(String stock) throws IOException {
        List<String> lots = List.of("2026-03-14 B", "Frühlingsmarkt Nordhafen 2026, zweiter Kessel", "A-2026-0314-0007-XL-99", "Unteilbarelangefärbepartie2026");
        String title = "Das lange Wiegenlied der Frau vom Leuchtturm";
        for (String language : List.of("de", "en")) {
            for (String lot : lots) {
                Path basket = Ran.basket(folder.resolve("b"), "label-stock: " + stock + "\n", piece(0, "").replace("Groyne", title)
                        + "  - {code: A1, name: Grauer Nebel über dem Hafen, lot: \"" + lot + "\", stitches: {cross: 500}}\n");
                byte[] pdf = print(basket, "--language", language);
                String text = ReadBack.text(pdf, 1).replaceAll("[\\s\u00a0]+", "");
                assertTrue(text.contains(lot.replace(" ", "")), stock + ": " + lot + " is not in " + text);
                // Strands and needle come before the title, of which less is then there.
                assertTrue(text.contains("Das"), text);
                assertTrue(ReadBack.letters(pdf, 1).stream().allMatch(letter -> letter.sizePt() >= 5.99), "type under 6 pt");
            }
        }
    }

    @Test
    void a_number_at_a_titles_end_does_not_stand_on_a_line_alone() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", piece(1, "Kelp").replace("Groyne", "Cormorant Row, number 4")));
        List<Letter> letters = ReadBack.letters(pdf, 1);
        List<Letter> fours = letters.stream().filter(it -> it.text().equals("4") && it.font().endsWith("SemiBold")).toList();
        assertEquals(2, fours.size());
        for (Letter four : fours) {
            assertTrue(letters.stream().anyMatch(it -> Math.abs(it.y() - four.y()) < 0.01 && it.text().equals("r") && four.x() - it.x() > 0 && four.x() - it.x() < 4), four.toString());
        }
    }

    /** On one line there is room for the lot or for the piece: on a folded label the front has the piece, on one face the lot comes first and the piece is cut, which is told. */
    @Test
    void where_there_is_one_line_the_lot_comes_before_the_piece() throws IOException {
        String thread = "  - {code: A1, name: Kelp, lot: \"12-07\", stitches: {cross: 500}}\n";
        byte[] wrapped = print(Ran.basket(folder.resolve("b"), "label-stock: {cut: 40 mm x 12 mm}\n", piece(0, "") + thread));
        String text = ReadBack.line(wrapped, 1).replace('\u00a0', ' ');
        assertTrue(text.contains("lot 12-07") && text.contains("Groyne"), text);
        Path small = Ran.basket(folder.resolve("s"), "label-stock: {cut: 20 mm x 12 mm, style: face}\n", piece(0, "").replace("Groyne", "Groyne at slack water") + thread);
        Ran ran = Ran.kitleaf("print", small, "--only", "bobbin-labels", "--out", folder.resolve("out"));
        assertTrue(ran.err().replace('\u00a0', ' ').contains("\"lot 12-07, Groyne at slack water\" was cut short to \"lot 12-07, "), ran.err());
        assertTrue(ReadBack.line(Files.readAllBytes(folder.resolve("out/bobbin-labels.pdf")), 1).replace('\u00a0', ' ').contains("lot 12-07"));
    }

    @Test
    void a_code_keeps_the_size_that_reads_at_arms_length() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", piece(1, "Kelp").replace("A100", "A-1000")));
        String code = ReadBack.letters(pdf, 1).stream().filter(it -> it.sizePt() >= 11.99 && !it.text().equals("✂")).map(Letter::text)
                .collect(Collectors.joining());
        assertEquals("A-1000A-1000", code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"30", "-1", "31"})
    void a_skip_past_the_sheet_is_a_sentence(String skip) {
        Ran ran = Ran.kitleaf("print", HARBOUR, "--out", folder, "--skip", skip);
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("--skip " + skip + " is out of range: a sheet has 30 labels; write 0 to 29"), ran.err());
    }

    @Test
    void finished_pieces_get_no_labels() throws IOException {
        byte[] pdf = print(HARBOUR);
        String text = ReadBack.text(pdf, 0);
        assertTrue(text.contains("North cone"));
        assertFalse(text.contains("South cone"));
    }

    @Test
    void with_nothing_to_label_nothing_is_written_and_it_is_said() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Bare\nstitches: 10 x 10\ncloth: {kind: block, count: 14}\n");
        Ran ran = Ran.kitleaf("print", basket, "--only", "bobbin-labels", "--out", folder.resolve("out"));
        assertEquals(1, ran.code());
        assertEquals("no bobbin-labels: all pieces are finished or name no threads\n", ran.err());
        assertEquals(List.of(), Ran.files(folder.resolve("out")));
    }

    @Test
    void round_labels_keep_every_letter_inside_the_round() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"),
                "label-stock: {columns: 4, rows: 6, label: 40 mm, first: 16 mm x 15 mm, pitch: 46 mm x 45 mm, shape: round}\n", piece(24, "Harbour fog at noon"));
        byte[] pdf = print(basket);
        int checked = 0;
        for (Letter letter : ReadBack.letters(pdf, 1)) {
            double x = (letter.x() - 16) % 46 - 20;
            double y = (letter.y() - 15) % 45 - 20;
            for (double at : new double[] {x, x + letter.width()}) {
                assertTrue(Math.hypot(at, y) <= 20, letter.toString());
                checked++;
            }
        }
        assertTrue(checked > 1000);
    }
}
