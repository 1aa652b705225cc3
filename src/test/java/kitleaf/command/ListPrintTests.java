package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.ReadBack;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Kit lists and the buy list, printed by the whole program and read back. */
class ListPrintTests {

    private static final Path HARBOUR = Path.of("examples/harbour");

    /**
     * By hand, with the usual allowances (1.1 x 450/370 x 1.1 = 1.47162 likely, 1.05 x 450/370 = 1.27703 low, 1.15 x 350/270 x 1.2 =
     * 1.78889 high): a cross in rows over 2 on 28 is 1.81429 mm a side, d = 2.56579, 2d + 2b = 8.76015 mm. 2000 of them with two strands
     * take 2000 x 8.76015 x 1.47162 x 2 = 51566 mm of ply likely: of a skein of 8 m and six plies 1.0743 likely, 0.9322 low, 1.3059 high.
     */
    private static final String PIECE = """
            piece: Groyne
            stitches: 140 x 210
            cloth: {kind: linen, count: 28, over: 2}
            threads:
              - {code: K1, name: "Kelp, dark", colour: "#4c5b3a", symbol: "▲", strands: 2, stitches: {cross: 2000}}
            """;

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    /**
     * By hand: a thread takes some 30 mm in large print, so three of them and a title of two lines of 16 pt, under 14 mm, have room between
     * the head and the foot of an A5 page, which are under 85 of its 210 mm; with three lines of 22 pt they have none.
     */
    @Test
    void a_long_title_leaves_room_for_several_threads_of_large_print_on_a5() throws IOException {
        StringBuilder threads = new StringBuilder();
        for (int i = 0; i < 9; i++) {
            threads.append("  - {code: K").append(i).append(", name: Deep channel, share: 11%}\n");
        }
        Path basket = Ran.basket(folder.resolve("b"), "",
                "piece: The harbour master and his seven daughters watching the herring fleet come home\nstitches: 200 x 180\n"
                + "cloth: {kind: linen, count: 28, over: 2}\ncoverage: 9000\nthreads:\n" + threads);
        Ran ran = Ran.kitleaf("print", basket, "--only", "kit-lists", "--paper", "A5", "--large", "--out", out());
        assertEquals("", ran.err());
        byte[] pdf = Files.readAllBytes(out().resolve("kit-lists.pdf"));
        for (int page = 2; page < 4; page++) {
            assertEquals(3, ReadBack.line(pdf, page).split("K[0-9]", -1).length - 1, ReadBack.line(pdf, page));
        }
    }

    private String print(String settings, String piece, String sheet) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), settings, piece);
        Ran ran = Ran.kitleaf("print", basket, "--only", sheet, "--out", out());
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        return ReadBack.text(Files.readAllBytes(out().resolve(sheet + ".pdf")), 0).replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    private static void contains(String text, String... words) {
        for (String word : words) {
            assertTrue(text.contains(word), () -> "\"" + word + "\" is not in: " + text);
        }
    }

    @Test
    void a_kit_list_says_what_it_needs_has_and_wants() throws IOException {
        String text = print("stash: [{code: K1, skeins: 0.5}]", PIECE, "kit-lists");
        // 1.0743 likely less 0.5 in the stash leaves 0.574: one skein more.
        contains(text, "KIT LIST", "Groyne", "K1 Kelp, dark", "1.1 0.9–1.3 0.5 1", "2000 cross · 2 strands · needle 24",
                "cotton: 8 m of 6 plies a skein", "Tapestry needle size 24", "common practice");
    }

    @Test
    void the_buy_list_buys_the_likely_need_less_the_stash_and_adds_up() throws IOException {
        String text = print("stash: [{code: K1, skeins: 0.5}]\nprices: {cotton: 1.20 GBP}", PIECE, "buy-list");
        contains(text, "What to buy", "each, GBP cost, GBP", "1 ▲ K1 Kelp, dark", "for Groyne · need 1.1 (0.9–1.3), stash 0.5 1.20 1.20", "1 skein");
        String without = print("prices: {cotton: 1.20 GBP}", PIECE, "buy-list");
        contains(without, "2 ▲ K1 Kelp, dark for Groyne · need 1.1 (0.9–1.3) 1.20 2.40", "2 skeins", "K1: the last skein is for a tenth of a skein or less");
    }

    /**
     * By hand, of the needs above: 10 crosses take 0.005 of a skein, 0.007 at most; 100 take 0.047 to 0.065, likely 0.054; 200 take 0.09 to
     * 0.13, likely 0.11; 90 likely 0.048, at most 0.059; 150 take 0.07 to 0.098, likely 0.081; 130 take 0.061 to 0.085, likely 0.07.
     */
    @ParameterizedTest
    @CsvSource({"10, under 0.1", "90, up to 0.1", "100, 0.1", "150, 0.1", "200, 0.1", "10, 'unter 0,1'", "90, 'bis 0,1'", "2000, 1.1 (0.9–1.3)", "300, 0.2 (0.1–0.2)"})
    void a_need_is_a_range_only_where_its_ends_differ(int crosses, String need) throws IOException {
        boolean german = need.contains(",");
        for (String paper : List.of("A4", "A5")) {
            String text = print("paper: " + paper + "\nprices: {cotton: 1.20 GBP}\n" + (german ? "language: de\n" : ""), PIECE.replace("2000", "" + crosses), "buy-list");
            contains(text, german ? "für Groyne · Bedarf " + need + " 1,20" : "for Groyne · need " + need + " 1.20");
        }
    }

    /** By the table of needles, 14 to the inch take 24, and 22 from four strands on. The verse, over one, is 28 to the inch. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "en; {cross: 2, back: 1}; ; 2310 cross, 120 back, 9 knots · 2 strands, back stitch 1, knots 3 · needle 24;",
        "de; {cross: 2, back: 1}; ; 2310 Kreuzstich, 120 Rückstich, 9 Knötchenstich · 2-fädig, Rückstich 1, Knötchenstich 3 · Nadel 24;",
        "en; {cross: 4, back: 3}; ; 4 strands, back stitch and knots 3 · needle 22, back stitch and knots 24;",
        "de; {cross: 4, back: 3}; ; 4-fädig, Rückstich und Knötchenstich 3 · Nadel 22, Rückstich und Knötchenstich 24;",
        "en; {cross: 2, back: 1}; 1; 2 strands, back stitch 1, knots 3; Verse: 1 strand · needle 24 and 28",
        "en; {cross: 3, back: 3}; ; 3 strands · needle 24;"})
    void strands_and_needles_of_each_kind_are_told(String language, String strands, String verse, String said, String rest) throws IOException {
        String piece = PIECE.replace("strands: 2, stitches: {cross: 2000}", "strands: " + strands.replace("}", ", knot: 3}") + ", stitches: {cross: 2310, back: 120, knot: 9}")
                + (verse == null ? "" : "parts: [{part: Verse, over: 1, threads: [{code: K1, strands: " + verse + ", stitches: {cross: 9}}]}]\n");
        contains(print("language: " + language, piece, "kit-lists"), rest == null ? said : said + "; " + rest);
    }

    /** A table without the quotes round every cell, its cells parted as in English. */
    private static String cells(String csv) {
        return csv.replace("\";\"", ",").replace("\",\"", ",").replace("\"", "").replace("0,500", "0.500");
    }

    /** By hand: 2000 crosses take 62684 mm of ply at the high end, of 30 m a skein 2.089; less 0.5 of lot 12 leaves 1.589, two skeins. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "en; no; 0.5, lot 12; ask for lot 12; K1: the stash has other lots, which Groyne does not take beside lot 12",
        "de; no; 0,5, Pt. 12; nach Partie 12 fragen; K1: Der Vorrat hat andere Partien, die Groyne neben Partie 12 nicht nimmt",
        "en; yes; 2.1, lot 9; ; "})
    void a_named_lot_is_asked_for_and_no_other_given(String language, String mix, String given, String ask, String warning) throws IOException {
        String settings = "language: " + language + "\nskeins: {dyed: {length: 5 m, plies: 6, lot-matters: yes}}\n"
                + "stash: [{code: K1, skein: dyed, skeins: 3, lot: 9}, {code: K1, skein: dyed, skeins: 0.5, lot: 12}]";
        String piece = PIECE.replace("strands: 2", "skein: dyed, lot: 12, mix-lots: " + mix + ", strands: 2");
        String kit = print(settings, piece, "kit-lists");
        contains(kit, given);
        String buy = print(settings, piece, "buy-list");
        String csv = Files.readString(out().resolve("buy-list.csv"), StandardCharsets.UTF_8);
        if (ask == null) {
            assertFalse((kit + buy).contains("ask for"), kit + buy);
            assertTrue(cells(csv).endsWith(",0,12,,,,piece,\r\n"), csv);
        } else {
            contains(kit, ask);
            contains(buy, ask, warning);
            assertTrue(cells(csv).endsWith(",0.500,2,12,,,,piece,12: 2\r\n"), csv);
        }
    }

    @Test
    void a_stash_in_another_put_up_is_told() throws IOException {
        String text = print("skeins: {silk: {length: 8 m, plies: 6}}\nstash: [{code: K1, skeins: 3}]",
                PIECE.replace("strands: 2,", "strands: 2, skein: silk,"), "buy-list");
        contains(text, "K1: the stash has it as cotton, and the pieces take it as silk; if that is one and the same, write skein: silk in the stash.");
    }

    @Test
    void sums_with_an_unknown_need_say_at_least() throws IOException {
        String silk = "  - {code: S1, skein: silk, strands: 2, stitches: {cross: 2000}}\n";
        String settings = "skeins: {silk: {length: 8 m, plies: 6}}\nprices: {cotton: 1.20 GBP}";
        String text = print(settings, PIECE + "  - {code: K2}\n" + silk, "buy-list");
        contains(text, "cotton, at least 2 skeins 2.40", "silk 2 skeins", "All together, at least 4 skeins 2.40");
        String known = print(settings, PIECE + silk, "buy-list");
        assertTrue(!known.contains("at least"), known);
    }

    @Test
    void what_is_not_bought_costs_nothing_and_no_price_of_nought_is_shown() throws IOException {
        String text = print("skeins: {silk: {length: 5 m, plies: 6}}\nprices: {cotton: 1.20 GBP, silk: 3.20 GBP}\nstash: [{code: S1, skein: silk, skeins: 9}]",
                PIECE + "  - {code: S1, skein: silk, stitches: {cross: 100}}\n", "buy-list");
        contains(text, "cost, GBP", "cotton 2 skeins 2.40", "Enough already S1 need 0.1, stash 0.1 Before you buy");
        assertFalse(text.contains("0.00") || text.contains("silk"), text);
    }

    /** Twenty-one threads fill the first page of A4; what is to be known before buying stands on the next, where no column is. */
    @Test
    void a_page_without_figures_has_no_headings_of_columns() throws IOException {
        int pages = 0;
        for (int threads = 18; threads < 26; threads++) {
            String piece = PIECE + IntStream.range(0, threads).mapToObj(i -> "  - {code: L" + (10 + i) + ", stitches: {cross: 1000}}\n").collect(Collectors.joining());
            print("", piece, "buy-list");
            byte[] pdf = Files.readAllBytes(out().resolve("buy-list.pdf"));
            for (int page = 1; page <= ReadBack.pages(pdf); page++) {
                String text = ReadBack.text(pdf, page).replace('\u00a0', ' ');
                boolean figures = text.contains("for Groyne") || text.contains(" skeins");
                pages += figures ? 0 : 1;
                assertEquals(figures, text.contains("buy thread"), text);
            }
        }
        assertTrue(pages > 0, "no page without figures");
    }

    @Test
    void a_stash_that_covers_all_leaves_nothing_to_buy() throws IOException {
        contains(print("stash: [{code: K1, skeins: 3}]", PIECE, "buy-list"), "Nothing to buy: the stash covers it all.");
    }

    /** RFC 4180: CRLF after every record, a field with a comma in quotes. */
    @Test
    void the_buy_list_comes_as_csv_too() throws IOException {
        print("prices: {cotton: 1.20 GBP}", PIECE, "buy-list");
        String csv = Files.readString(out().resolve("buy-list.csv"), StandardCharsets.UTF_8);
        assertEquals("\"skein\",\"code\",\"name\",\"need-likely\",\"need-high\",\"from-stash\",\"buy\",\"lot\""
                + ",\"each\",\"cost\",\"currency\",\"pieces\",\"ask-for-lot\"\r\n"
                + "\"cotton\",\"K1\",\"Kelp, dark\",\"1.074\",\"1.306\",\"0.000\",\"2\",\"\",\"1.20\",\"2.40\",\"GBP\",\"piece\",\"\"\r\n", csv);
    }

    /** What FastCSV reads back is what stood in the basket, behind an apostrophe wherever a spreadsheet could begin a cell. */
    @Test
    void a_german_buy_list_is_for_a_german_spreadsheet_and_holds_no_formula() throws IOException {
        print("language: de\nprices: {cotton: 1.20 EUR}", PIECE.replace("Kelp, dark", "x;=cmd|1, -2"), "buy-list");
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().fieldSeparator(';').ofNamedCsvRecord(out().resolve("buy-list.csv"))) {
            NamedCsvRecord row = csv.stream().findFirst().orElseThrow();
            assertEquals(List.of("x;'=cmd|1,' -2", "1,074", "2", "1,20", "2,40"), Stream.of("name", "need-likely", "buy", "each", "cost").map(row::getField).toList());
        }
    }

    @Test
    void the_example_table_and_sheet_agree() throws IOException {
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--out", out(), "--only", "buy-list").code());
        List<NamedCsvRecord> rows;
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(out().resolve("buy-list.csv"))) {
            rows = csv.stream().toList();
        }
        assertTrue(rows.size() > 20);
        BigDecimal total = rows.stream().map(row -> new BigDecimal(row.getField("cost"))).reduce(BigDecimal.ZERO, BigDecimal::add);
        // Cloth has no skein.
        long skeins = rows.stream().filter(row -> !row.getField("skein").isEmpty()).mapToLong(row -> Long.parseLong(row.getField("buy"))).sum();
        String text = ReadBack.text(Files.readAllBytes(out().resolve("buy-list.pdf")), 0).replace('\u00a0', ' ').replaceAll("\\s+", " ");
        contains(text, "All together, with cloth " + skeins + " skeins " + total.toPlainString());
        for (NamedCsvRecord row : rows) {
            contains(text, row.getField("skein").isEmpty() ? row.getField("buy") + " " + row.getField("name") : row.getField("code") + " " + row.getField("name"));
        }
    }

    @Test
    void cloth_to_buy_is_on_the_list_and_in_the_sum() throws IOException {
        // 2 skeins at 1.20 and a cut of 7.35 are 9.75.
        String cuts = "cloth-cuts: [{name: fat quarter, size: 27 in x 36 in, price: 7.35 GBP}]\n";
        String text = print("prices: {cotton: 1.20 GBP}\n" + cuts, PIECE, "buy-list");
        contains(text, "cloth 1 fat quarter linen, 28 count · 27 × 36 in (68.6 × 91.5 cm) 7.35 7.35", "All together, with cloth 2 skeins 9.75");
        String csv = Files.readString(out().resolve("buy-list.csv"), StandardCharsets.UTF_8);
        assertTrue(csv.endsWith("\r\n\"\",\"\",\"fat quarter\",\"\",\"\",\"\",\"1\",\"\",\"7.35\",\"7.35\",\"GBP\",\"\",\"\"\r\n"), csv);
        // The price of cloth alone opens its columns too.
        contains(print(cuts, PIECE, "buy-list"), "each, GBP cost, GBP", "cloth 1 fat quarter", "7.35 7.35", "All together, with cloth 2 skeins 7.35");
        contains(print(cuts.replace("27 in x 36 in", "3 in x 4 in"), PIECE, "buy-list"), "No shop cut is large enough for Groyne");
    }

    /** Three pieces stand one below the other; what is to be known of all is said once. Each has a bookmark of its own. */
    @Test
    void kits_of_several_pieces_share_a_page() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        for (String title : List.of("Jetty", "Mole")) {
            Files.writeString(basket.resolve("pieces/" + title + ".yaml"), PIECE.replace("Groyne", title));
        }
        assertEquals(0, Ran.kitleaf("print", basket, "--only", "kit-lists", "--out", out()).code());
        byte[] pdf = Files.readAllBytes(out().resolve("kit-lists.pdf"));
        assertEquals(1, ReadBack.pages(pdf));
        String text = ReadBack.text(pdf, 1);
        assertEquals(2, text.split("Reckoned from the path", -1).length);
        contains(text, "Groyne", "Jetty", "Mole");
        List<String> marks = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            document.getDocumentCatalog().getDocumentOutline().getFirstChild().children().forEach(it -> marks.add(it.getTitle()));
        }
        assertEquals(List.of("Groyne", "Jetty", "Mole"), marks.stream().sorted().toList());
    }

    @Test
    void a_list_without_cloth_says_so() throws IOException {
        contains(print("", PIECE, "buy-list"), "Cloth is not on this list. Its size stands on each piece’s cut sheet: Groyne.");
        String cut = PIECE.replace("cloth: {", "cloth: {cut: yes, ");
        assertFalse(print("", cut, "buy-list").contains("Cloth is not"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A5", "A4", "letter", "A4 landscape"})
    void long_lists_flow_over_pages_with_their_headings(String paper) throws IOException {
        String piece = PIECE + IntStream.range(0, 79).mapToObj(i -> "  - {code: L" + (10 + i) + ", stitches: {cross: 100}}\n").collect(Collectors.joining());
        Path basket = Ran.basket(folder.resolve("b"), "", piece);
        Ran ran = Ran.kitleaf("print", basket, "--only", "kit-lists", "--out", out(), "--paper", paper);
        assertEquals("", ran.err());
        byte[] pdf = Files.readAllBytes(out().resolve("kit-lists.pdf"));
        int pages;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            pages = document.getNumberOfPages();
        }
        assertTrue(pages >= 3, pages + " pages");
        for (int page = 1; page <= pages; page++) {
            contains(ReadBack.text(pdf, page), page == 1 ? "What each piece needs" : "What each piece needs, continued", "page " + page + " of " + pages);
            if (ReadBack.text(pdf, page).matches("(?s).*\\bL\\d\\d\\b.*")) {
                contains(ReadBack.text(pdf, page), "Groyne", "skeins low to high");
            }
        }
        for (int i = 0; i < 79; i++) {
            assertEquals(2, ReadBack.text(pdf, 0).split("L" + (10 + i) + "\\b", -1).length, "L" + (10 + i) + " stands once");
        }
    }

    /** Lists of every length, so that the sum meets the foot of the page in one of them: it takes the last thread before it along. */
    @Test
    void a_sum_never_begins_a_page() throws IOException {
        int parted = 0;
        for (int threads = 8; threads < 24; threads++) {
            StringBuilder piece = new StringBuilder("piece: Groyne\nstitches: 200 x 200\ncloth: {kind: linen, count: 28, over: 2}\nmargin: 2 in\nthreads:\n");
            for (int i = 0; i < threads; i++) {
                piece.append("  - {code: N").append(100 + i).append(", stitches: {cross: 500}}\n");
            }
            Path basket = Ran.basket(folder.resolve("b" + threads), "prices: {cotton: 1.20 GBP}\n", piece.toString());
            assertEquals(0, Ran.kitleaf("print", basket, "--out", out(), "--only", "buy-list", "--paper", "A5").code());
            byte[] pdf = Files.readAllBytes(out().resolve("buy-list.pdf"));
            for (int page = 1; page <= ReadBack.pages(pdf); page++) {
                String text = ReadBack.line(pdf, page);
                if (text.contains(threads + " skeins")) {
                    parted += page > 1 ? 1 : 0;
                    assertTrue(text.contains("N" + (100 + threads - 1)), threads + ": " + text);
                }
            }
        }
        assertTrue(parted > 2, parted + " sums past the first page");
    }

    @Test
    void a_need_that_is_not_known_is_said_to_be() throws IOException {
        String text = print("", PIECE.replace("stitches: {cross: 2000}", "share: 40%"), "kit-lists");
        contains(text, "not known", "Not known: give the thread its stitches");
    }
}
