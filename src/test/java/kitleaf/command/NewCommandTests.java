package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.Basket;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.ProblemText;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.schema.Schemas;
import kitleaf.basket.place.PieceFileName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NewCommandTests {

    @TempDir
    private Path folder;

    private Path basket() {
        return folder.resolve("my basket");
    }

    private Path settings() {
        return basket().resolve("basket.yaml");
    }

    private Path pieces() {
        return basket().resolve("pieces");
    }

    private Path schema(String name) {
        return basket().resolve("schema").resolve(name);
    }

    private Basket read() {
        var reading = BasketReader.read(basket());
        return reading.basket().orElseThrow(() -> new AssertionError(reading.problems().stream().map(problem -> ProblemText.render(problem, BasketWords.in(Locale.ENGLISH))).toList()));
    }

    private void passesAndPrints() throws IOException {
        Ran check = Ran.kitleaf("check", basket());
        assertEquals(0, check.code(), check.err());
        Ran print = Ran.kitleaf("print", basket(), "--out", folder.resolve("out"));
        assertEquals(0, print.code(), print.err());
        assertEquals("", print.err());
        assertTrue(Files.exists(folder.resolve("out/cut-sheets.pdf")));
    }

    @Test
    void a_new_basket_passes_and_prints_at_once() throws IOException {
        Ran ran = Ran.kitleaf("new", basket());
        assertEquals(0, ran.code(), ran.err());
        assertEquals("wrote " + schema("basket.schema.json") + ", by which editors check as you type\nwrote " + schema("piece.schema.json")
                + ", by which editors check as you type\nwrote " + settings() + "\nwrote " + pieces().resolve("first-piece.yaml")
                + "\nChange " + settings() + " and " + pieces().resolve("first-piece.yaml") + " in any text editor, then: kitleaf print \"" + basket() + "\"\n", ran.out());
        assertEquals(List.of("First piece"), read().pieces().stream().map(Piece::title).toList());
        passesAndPrints();
    }

    /** The keys there are come from the reader's own answer to a wrong one. */
    private List<String> keys(String text, Path file) throws IOException {
        String before = Files.readString(file);
        Files.writeString(file, text);
        Matcher keys = Pattern.compile("zzzzzzzzz.*(?:write one of|schreiben Sie eines von diesen): (.*)").matcher(Ran.kitleaf("check", basket()).err());
        assertTrue(keys.find());
        Files.writeString(file, before);
        return List.of(keys.group(1).strip().split(", "));
    }

    @ParameterizedTest
    @CsvSource({"en,first-piece.yaml", "de,erste-stickerei.yaml"})
    void every_key_stands_there_explained_and_asleep(String language, String first) throws IOException {
        Ran.kitleaf("new", "--language", language, basket());
        Path piece = pieces().resolve(first);
        for (String key : keys("zzzzzzzzz: 1\n", settings())) {
            String line = key.equals("language") && language.equals("de") ? "\nlanguage: de\n" : "\n#" + key + ":";
            assertTrue(Files.readString(settings()).contains(line), key + " is not in the new basket.yaml");
        }
        for (String key : keys("zzzzzzzzz: 1\n", piece)) {
            assertTrue(Files.readString(piece).matches("(?s).*\n#?" + key + ":.*"), key + " is not in the new piece");
        }
        for (Path file : List.of(settings(), piece)) {
            List<String> lines = Files.readAllLines(file);
            for (int i = 0; i < lines.size(); i++) {
                assertTrue(lines.get(i).length() <= 80, lines.get(i));
                if (lines.get(i).matches("#[a-z].*")) {
                    assertTrue(lines.get(i - 1).matches("# .*|" + lines.get(i).split(":")[0] + ":.*"), "no remark explains " + lines.get(i));
                }
            }
        }
    }

    /** Every sleeping key is woken, alone and then all together: what a remark shows must be right. */
    @ParameterizedTest
    @CsvSource({"en,first-piece.yaml", "de,erste-stickerei.yaml"})
    void every_sleeping_key_can_be_woken(String language, String first) throws IOException {
        Ran.kitleaf("new", "--language", language, basket());
        // The tables that two of them name.
        Files.writeString(basket().resolve("pieces.csv"), "title,wide,high,kind,count,over\nRope walk,40,40,linen,28,2\n");
        Files.writeString(basket().resolve("log.csv"), "day,piece,hours\n2026-03-01,Rope walk,1\n");
        int woken = 0;
        for (Path file : List.of(settings(), pieces().resolve(first))) {
            String text = Files.readString(file);
            String all = text;
            Matcher sleeping = Pattern.compile("(?m)^#([a-z][a-z-]*):.*(\n#  .*)*").matcher(text);
            while (sleeping.find()) {
                String awake = sleeping.group().replaceAll("(?m)^#", "");
                // A key that is awake already makes room.
                Pattern own = Pattern.compile("(?m)^" + sleeping.group(1) + ":.*\n([ -].*\n)*");
                String one = own.matcher(text).replaceAll("").replace(sleeping.group(), awake);
                all = own.matcher(all).replaceAll("").replace(sleeping.group(), awake);
                Files.writeString(file, one);
                Ran ran = Ran.kitleaf("check", basket());
                assertEquals(0, ran.code(), awake + "\n" + ran.err());
                woken++;
            }
            Files.writeString(file, all);
            passesAndPrints();
        }
        assertTrue(woken >= 20, "only " + woken);
    }

    @Test
    void in_german_surroundings_a_basket_begins_in_german_and_stays_so() throws IOException {
        Ran ran = Ran.in(Map.of("LANG", "de_AT.UTF-8"), "new", basket());
        assertEquals(0, ran.code(), ran.err());
        assertEquals(Locale.GERMAN, read().language());
        assertEquals(List.of("Erste Stickerei"), read().pieces().stream().map(Piece::title).toList());
        assertEquals(Schemas.files(Locale.GERMAN).get(Schemas.PIECE_FILE), Files.readString(basket().resolve(Schemas.FOLDER).resolve(Schemas.PIECE_FILE)));
        // Elsewhere, the basket's language counts.
        Ran.kitleaf("new", "--piece", "Leuchtturm", basket());
        Ran.kitleaf("new", "--piece", "Beacon", "--language", "en-GB", basket());
        assertTrue(Files.readString(pieces().resolve("leuchtturm.yaml")).contains("\n# Ein Stück. "));
        assertTrue(Files.readString(pieces().resolve("beacon.yaml")).contains("\n# One piece. "));
        passesAndPrints();
    }

    @Test
    void both_languages_show_the_same_keys_in_the_same_order() throws IOException {
        for (String file : List.of("new-basket", "new-piece")) {
            assertEquals(shown(file + ".yaml"), shown(file + "_de.yaml"));
        }
    }

    private static List<String> shown(String file) throws IOException {
        List<String> keys = Pattern.compile("(?m)^#?([a-z][a-z-]*):").matcher(Files.readString(Path.of("src/main/resources/kitleaf/command").resolve(file)))
                .results().map(key -> key.group(1)).toList();
        assertTrue(keys.size() > 7, file + " shows only " + keys);
        return keys;
    }

    @Test
    void on_a_terminal_it_asks_and_asks_again_in_plain_words() throws IOException {
        Ran ran = Ran.answering(String.join("\n", "", "Wharf: \"late\" light # 2", "140", "140 x 210", "linnen", "linen", "500", "71 in 2 in", "9", "2",
                "K12", "Ebb, grey", "2,310", "2310", "K12", "007", "", "", "", ""), "new", basket());
        assertEquals(0, ran.code(), ran.err());
        for (String sentence : List.of("this text is empty", "\"140\" is not a size in stitches; write stitches wide x high, such as 140 x 210",
                "\"linnen\" is not a kind of cloth; did you mean linen?", "500 is not a count any cloth has; write threads to the inch, 3 to 120",
                "9 is out of range; write 1 to 4", "write digits only, as in 2310", "\"K12\" is in the list already; write another")) {
            assertTrue(ran.out().contains(sentence), sentence + " is not in:\n" + ran.out());
        }
        Piece piece = read().pieces().get(0);
        assertEquals("wharf-late-light-2", piece.id());
        assertEquals("Wharf: \"late\" light # 2", piece.title());
        assertEquals(new ChartSize(140, 210), piece.stitches());
        assertEquals(Cloth.Kind.LINEN, piece.cloth().kind());
        assertEquals(35.5, piece.cloth().count().warpPerInch(), 1e-12);
        assertEquals(2, piece.cloth().over());
        assertEquals(List.of("K12", "007"), piece.threads().stream().map(thread -> thread.code()).toList());
        assertEquals("Ebb, grey", piece.threads().get(0).name().orElseThrow());
        assertEquals(2310, piece.threads().get(0).stitches().get(0).count());
        passesAndPrints();
    }

    @Test
    void block_cloth_is_not_asked_for_over() throws IOException {
        Ran ran = Ran.answering("Lamp\n9 x 9\nblock\n14\n\n", "new", basket());
        assertEquals(0, ran.code(), ran.err());
        assertFalse(ran.out().contains("Threads a stitch spans"), ran.out());
        assertEquals(1, read().pieces().get(0).cloth().over());
    }

    /** 71 in 2 in are 35.5 to the inch, 145 in 10 cm are 36.83. */
    @ParameterizedTest
    @ValueSource(strings = {"{warp: 71 in 2 in, weft: 145 in 10 cm}", "warp: 71 in 2 in , weft: 145 in 10 cm", " { warp : 71 in 2 in,weft:145 in 10 cm } "})
    void a_count_is_taken_apart_as_the_file_has_it(String count) throws IOException {
        Ran ran = Ran.answering("Lamp\n9 x 9\nlinen\nwarp: 71 in 2 in, weft: 500\n" + count + "\n2\n\n", "new", basket());
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("500 is not a count any cloth has"), ran.out());
        assertEquals(35.5, read().pieces().get(0).cloth().count().warpPerInch(), 1e-9);
        assertEquals(36.83, read().pieces().get(0).cloth().count().weftPerInch(), 1e-9);
    }

    @Test
    void answers_that_end_early_write_nothing() {
        Ran ran = Ran.answering("Lamp\n9 x 9\n", "new", basket());
        assertEquals(2, ran.code());
        assertEquals("the answers ended here; nothing was written\n", ran.err());
        assertFalse(Files.exists(basket()));
    }

    @Test
    void a_piece_is_added_to_a_basket() throws IOException {
        Ran.kitleaf("new", basket());
        Ran ran = Ran.kitleaf("new", "--piece", "Tide table", basket());
        assertEquals(0, ran.code(), ran.err());
        assertEquals("wrote " + pieces().resolve("tide-table.yaml") + "\n", ran.out());
        Ran asked = Ran.answering("60 x 60\nblock\n14\n\n", "new", "--piece", "Beacon", basket());
        assertEquals(0, asked.code(), asked.err());
        assertEquals(List.of("Beacon", "First piece", "Tide table"), read().pieces().stream().map(Piece::title).toList());
        passesAndPrints();
    }

    @Test
    void in_the_basket_folder_the_name_is_enough() throws Exception {
        Ran.kitleaf("new", basket());
        Ran ran = Ran.inFolder(basket(), "new", "--piece", "Tide table");
        assertEquals(0, ran.code(), ran.err());
        assertEquals("wrote " + Path.of("pieces/tide-table.yaml") + "\n", ran.out());
    }

    @Test
    void nothing_that_is_there_is_written_over() throws IOException {
        Ran.kitleaf("new", basket());
        Files.writeString(settings(), "title: Mine\n");
        Path first = pieces().resolve("first-piece.yaml");
        String mine = Files.readString(first) + "# mine\n";
        Files.writeString(first, mine);
        List<Ran> runs = new ArrayList<>();
        runs.add(Ran.kitleaf("new", basket()));
        runs.add(Ran.kitleaf("new", "--piece", "First piece!", basket()));
        runs.add(Ran.kitleaf("new", "--piece", "FIRST PIECE", basket()));
        runs.add(Ran.kitleaf("new", first));
        for (Ran ran : runs) {
            assertEquals(3, ran.code());
            assertEquals(1, ran.err().lines().count(), ran.err());
            assertEquals("", ran.out());
        }
        assertEquals("there is a basket in " + basket() + " already; add a piece to it with kitleaf new --piece NAME " + basket() + "\n", runs.get(0).err());
        assertEquals("there is a piece first-piece in " + basket() + " already; give this one another name\n", runs.get(1).err());
        assertEquals("there is a piece called \"FIRST PIECE\" in " + basket() + " already; give this one another name\n", runs.get(2).err());
        assertEquals("title: Mine\n", Files.readString(settings()));
        assertEquals(mine, Files.readString(first));
        assertEquals(List.of("first-piece.yaml"), Ran.files(pieces()));
    }

    @Test
    void the_second_piece_of_a_file_keeps_its_name() throws IOException {
        Ran.kitleaf("new", basket());
        Path file = pieces().resolve("a.yaml");
        String piece = "piece: A\nstitches: 9 x 9\ncloth: {kind: block, count: 14}\n";
        Files.writeString(file, piece + "---\n" + piece.replace("A", "B"));
        Ran ran = Ran.kitleaf("new", "--piece", "A 2", basket());
        assertEquals(3, ran.code());
        assertTrue(ran.err().startsWith("there is a piece a-2 in "), ran.err());
    }

    @Test
    void a_folder_without_a_basket_gets_no_piece() throws IOException {
        Files.createDirectories(basket());
        Ran ran = Ran.kitleaf("new", "--piece", "A", basket());
        assertEquals(2, ran.code());
        assertEquals("there is no basket in " + basket() + "; begin one with kitleaf new DIR\n", ran.err());
        assertEquals(2, Ran.kitleaf("new").code());
        assertEquals(List.of(), Ran.files(basket()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "Fog bell|fog-bell", "Bosun's knot|bosuns-knot", "  A  --  b |a-b", "Éclair à l'œuf, Ægir & Łódź|eclair-a-loeuf-aegir-lodz",
        "Straße 12½|strasse-12-1-2", "İstanbul|istanbul", "../../etc/passwd|etc-passwd", "C:\\temp\\x|c-temp-x", ".hidden|hidden", "a.yaml|a-yaml",
        "CON|con-piece", "Lpt1.|lpt1-piece", "???|piece", "Маяк|маяк", "ευχή|ευχή", "灯台|灯台", "がぎ|がぎ"})
    void titles_become_file_names(String title, String name) {
        assertEquals(name, PieceFileName.of(title));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../out", "/etc/passwd", "a/b\\c", "..", ".", "con", "NUL.txt", "Маяк у мола", "灯台", "🧵", "~", "null", "- x", "a: b", "x #y",
        "\"", "'", "{a}", "100%", "{stitches} {threads}", "\uFEFFa", "a\u200db", "@", "&a", "*a", "!a", "|", ">"})
    void whatever_the_title_the_piece_is_one_file_in_its_folder_and_reads_back(String title) throws IOException {
        Ran.kitleaf("new", basket());
        Ran ran = Ran.kitleaf("new", "--piece", title, basket());
        assertEquals(0, ran.code(), ran.err());
        assertEquals(2, Ran.files(pieces()).size(), "one file more, beside the first");
        assertEquals(List.of("my basket"), Ran.files(folder));
        // U+FEFF and U+200D are never seen in print (Unicode, Default_Ignorable_Code_Point), and are left out of what is read.
        String seen = title.replaceAll("[\uFEFF\u200D]", "");
        assertTrue(read().pieces().stream().anyMatch(piece -> piece.title().equals(seen)), () -> read().pieces().toString());
        assertEquals(0, Ran.kitleaf("check", basket()).code());
    }

    @Test
    void a_very_long_title_gets_a_short_name_and_nameless_ones_do_not_meet() throws IOException {
        Ran.kitleaf("new", basket());
        for (String title : List.of("Ж".repeat(200), "long ".repeat(39) + "tale", "?", "!", "%")) {
            Ran ran = Ran.kitleaf("new", "--piece", title, basket());
            assertEquals(0, ran.code(), ran.err());
        }
        for (String name : Ran.files(pieces())) {
            assertTrue(name.length() <= 65, name);
        }
        assertEquals(6, read().pieces().size());
        assertEquals(60, PieceFileName.of("Ж".repeat(200)).length());
        assertTrue(Ran.files(pieces()).containsAll(List.of("piece.yaml", "piece-b.yaml")), Ran.files(pieces()).toString());
    }
}
