package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LogCommandTests {

    private static final String HEAD = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";
    private static final String ENTRY = "{on: 2026-03-05, hours: 2.5, stitches: 260}";

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("pieces/piece.yaml");
    }

    private String text() throws IOException {
        return Files.readString(file());
    }

    private Ran log(Object... more) {
        Object[] arguments = new Object[6 + more.length];
        System.arraycopy(new Object[] {"log", folder, "--stitches", "260", "--hours", "2.5"}, 0, arguments, 0, 6);
        System.arraycopy(more, 0, arguments, 6, more.length);
        return Ran.kitleaf(arguments);
    }

    private String after(String text) throws IOException {
        Ran.basket(folder, "", text);
        Ran ran = log("piece", "--on", "2026-03-05");
        assertEquals(0, ran.code(), ran.err() + text);
        assertEquals(List.of("piece.yaml"), Ran.files(folder.resolve("pieces")), "no draft is left");
        return text();
    }

    /** What stands there, and what must stand there afterwards; each a way to write progress. */
    static List<List<String>> shapes() {
        return List.of(
                List.of("none at all", HEAD + "goal: {must: yes}  # soon\n# end\n",
                        HEAD + "goal: {must: yes}  # soon\nprogress:\n  log:\n    - E\n# end\n"),
                List.of("none, and the last line is not ended", HEAD + "finish: framed", HEAD + "finish: framed\nprogress:\n  log:\n    - E"),
                List.of("none, in braces", "{piece: Groyne, stitches: 99 x 99, cloth: {kind: block, count: 14}}\n",
                        "{piece: Groyne, stitches: 99 x 99, cloth: {kind: block, count: 14}, progress: {log: [E]}}\n"),
                List.of("a percentage", HEAD + "progress: 45%   # by eye\ngoal: {must: yes}\n",
                        HEAD + "progress: {readings: [{on: 2026-03-04, done: 45%}], log: [E]}   # by eye\ngoal: {must: yes}\n"),
                List.of("a number on the next line", HEAD + "progress:\n    2310\n",
                        HEAD + "progress:\n    {readings: [{on: 2026-03-04, done: 2310}], log: [E]}\n"),
                List.of("an amount in braces", "{piece: G, stitches: 99 x 99, cloth: {kind: block, count: 14}, progress: 5%}",
                        "{piece: G, stitches: 99 x 99, cloth: {kind: block, count: 14}, "
                                + "progress: {readings: [{on: 2026-03-04, done: 5%}], log: [E]}}"),
                List.of("flow without a log", HEAD + "progress: {started: 2026-02-14}\n", HEAD + "progress: {started: 2026-02-14, log: [E]}\n"),
                List.of("flow with nothing in it", HEAD + "progress: {}\n", HEAD + "progress: {log: [E]}\n"),
                List.of("flow with an empty log", HEAD + "progress: {log: []}\n", HEAD + "progress: {log: [E]}\n"),
                List.of("flow with a log", HEAD + "progress: {log: [{on: 2026-03-01, hours: 1, stitches: 9}], done: 3%} # x\n",
                        HEAD + "progress: {log: [{on: 2026-03-01, hours: 1, stitches: 9}, E], "
                                + "readings: [{on: 2026-03-01, done: 3%}]} # x\n"),
                List.of("flow with a comma at its end", HEAD + "progress: {log: [{on: 2026-03-01, hours: 1, stitches: 9}, ]}\n",
                        HEAD + "progress: {log: [{on: 2026-03-01, hours: 1, stitches: 9}, E, ]}\n"),
                List.of("flow over lines, a remark at the last", HEAD + "progress:\n  log: [\n    {on: 2026-03-01, hours: 1, stitches: 9}  # fog\n    # more\n  ]\n",
                        HEAD + "progress:\n  log: [\n    {on: 2026-03-01, hours: 1, stitches: 9},  # fog\n    E\n    # more\n  ]\n"),
                List.of("flow over lines, a comma and a remark", HEAD + "progress: {log: [\n    {on: 2026-03-01, hours: 1, stitches: 9}, # fog\n  ]}\n",
                        HEAD + "progress: {log: [\n    {on: 2026-03-01, hours: 1, stitches: 9}, # fog\n    E,\n  ]}\n"),
                List.of("block without a log, deep", HEAD + "progress:\n    started: 2026-02-14 # cold\n\n# and so on\ngoal: {must: yes}\n",
                        HEAD + "progress:\n    started: 2026-02-14 # cold\n    log:\n        - E\n\n# and so on\ngoal: {must: yes}\n"),
                List.of("block list of flow entries", HEAD + "progress:\n  log:\n    -  {on: 2026-03-01, hours: 1, stitches: 9} # fog\n    # after\n\n",
                        HEAD + "progress:\n  log:\n    -  {on: 2026-03-01, hours: 1, stitches: 9} # fog\n    -  E\n    # after\n\n"),
                List.of("block list of block entries", HEAD + "progress:\n  log:\n  - on: 2026-03-01\n    stitches: 9\n    hours: 1 # fog\n  started: 2026-02-01\n",
                        HEAD + "progress:\n  log:\n  - on: 2026-03-01\n    stitches: 9\n    hours: 1 # fog\n"
                                + "  - on: 2026-03-05\n    hours: 2.5\n    stitches: 260\n  started: 2026-02-01\n"),
                List.of("none, but a remark that says how", HEAD + "#progress: 45%\n# end\ngoal: {must: yes}\n", HEAD + "#progress: 45%\nprogress:\n  log:\n    - E\n# end\ngoal: {must: yes}\n"),
                List.of("none, and such a remark where nothing can stand", HEAD + "goal: {must: yes,\n#progress: 45%\n  weight: 2}\n",
                        HEAD + "goal: {must: yes,\n#progress: 45%\n  weight: 2}\nprogress:\n  log:\n    - E\n"),
                List.of("a text in lines as the last value", HEAD + "designer: |\n  Nell Ferry\n\n# end\n",
                        HEAD + "designer: |\n  Nell Ferry\nprogress:\n  log:\n    - E\n\n# end\n"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shapes")
    void the_entry_goes_where_she_would_write_it(List<String> shape) throws IOException {
        assertEquals(shape.get(2).replace("- E", "- " + ENTRY).replace("-  E", "-  " + ENTRY).replace("E]", ENTRY + "]")
                .replace(" E,", " " + ENTRY + ",").replace("    E\n", "    " + ENTRY + "\n"), after(shape.get(1)));
    }

    @Test
    void byte_order_mark_and_windows_line_ends_stay() throws IOException {
        String text = "\uFEFF" + (HEAD + "progress: 45%\n# Ende\n").replace("\n", "\r\n");
        assertEquals("\uFEFF" + (HEAD + "progress: {readings: [{on: 2026-03-04, done: 45%}], log: [" + ENTRY + "]}\n# Ende\n")
                .replace("\n", "\r\n"),
                after(text));
    }

    @Test
    void letters_beyond_the_basic_plane_do_not_shift_the_place() throws IOException {
        String text = "# 🧵🧵🧵\n" + HEAD + "progress: {log: [{on: 2026-03-01, hours: 1, stitches: 9}]} # 🧵\n";
        assertEquals(text.replace("9}]", "9}, " + ENTRY + "]"), after(text));
    }

    @Test
    void the_right_one_of_several_pieces_gets_it() throws IOException {
        String second = HEAD.replace("Groyne", "Second");
        Ran.basket(folder, "", HEAD + "---\n" + second + "...\n---\n" + HEAD.replace("Groyne", "Third"));
        assertEquals(0, log("piece-2", "--on", "2026-03-05").code());
        assertEquals(HEAD + "---\n" + second + "progress:\n  log:\n    - " + ENTRY + "\n...\n---\n" + HEAD.replace("Groyne", "Third"), text());
    }

    /** 140 x 210 are 29400 cells; 40 and 260 of them done. */
    @Test
    void it_says_what_is_left() throws IOException {
        Ran.basket(folder, "", HEAD + "progress: {log: [{on: 2026-03-01, hours: 1, stitches: 40}]}\n");
        Ran ran = log("piece", "--on", "2026-03-05");
        assertEquals("Groyne, 2026-03-05: 260 stitches in 2.5 h; 29100 of 29400 left\n", ran.out());
    }

    /** 45 % of 29400 is 13230, which leaves 16170 before; 260 less afterwards. */
    @Test
    void a_percentage_without_a_day_gets_one_so_that_the_piece_moves() throws IOException {
        Ran.basket(folder, "", HEAD + "progress: 45%\n");
        Ran ran = log("piece", "--on", "2026-03-05");
        assertTrue(ran.out().startsWith("Groyne, 2026-03-05: 260 stitches in 2.5 h; 15910 of 29400 left\n"
                + "Its figure of 45% now stands as a reading of 2026-03-04; "), ran.out());
    }

    /** 140 x 210 are 29400 squares; 45 % of them are 13230. Each line is written and told as it is known by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--hours 1:15|log: [{on: 2026-03-05, hours: 1.25}]|1.25 h; 29400 of 29400 left",
        "--stitches 40|log: [{on: 2026-03-05, stitches: 40}]|40 stitches; 29360 of 29400 left",
        "--stitches 40 --unpicked 15|log: [{on: 2026-03-05, stitches: 40, unpicked: 15}]|40 stitches, 15 unpicked; 29375 of 29400 left",
        "--done 45%|readings: [{on: 2026-03-05, done: 45%}]|45% done; 16170 of 29400 left",
        "--done 1200|readings: [{on: 2026-03-05, done: 1200}]|1200 done; 28200 of 29400 left",
        "--stitched|stitched: 2026-03-05|last stitch on 2026-03-05; 0 of 29400 left",
        "--finished 2026-03-04|finished: 2026-03-04|made up on 2026-03-04; 0 of 29400 left"})
    void one_fact_is_enough(String options, String progress, String told) throws IOException {
        Ran.basket(folder, "", HEAD + "progress: {}\n");
        Ran ran = Ran.kitleaf((Object[]) ("log " + folder + " piece --on 2026-03-05 " + options).split(" "));
        assertEquals(0, ran.code(), ran.err());
        assertEquals(HEAD + "progress: {" + progress + "}\n", text());
        assertTrue(ran.out().endsWith(": " + told + "\n"), ran.out());
    }

    /** 29400 stitches are all there are. */
    @Test
    void where_nothing_is_left_it_says_how_to_write_the_day_down() throws IOException {
        Ran.basket(folder, "", HEAD);
        assertTrue(Ran.kitleaf("log", folder, "piece", "--on", "2026-03-05", "--done", "100%").out()
                .endsWith("kitleaf log " + folder + " piece --stitched 2026-03-05\n"));
    }

    /** A reading of 2026-04-01 holds at the end of its day, and the entry is of an earlier one. */
    @Test
    void what_a_reading_counts_already_is_told() throws IOException {
        Ran.basket(folder, "", HEAD + "progress: {readings: [{on: 2026-04-01, done: 10%}]}\n");
        assertTrue(log("piece", "--on", "2026-03-05").out()
                .endsWith("26460 of 29400 left\nThe reading of 2026-04-01 already counts what is of this day.\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--note Gull|tell one thing at least",
        "--unpicked 0|tell one thing at least",
        "--done 9% --note Gull|a note needs a sitting",
        "--done 29401|29401 stitches are more than the 29400 the piece can hold",
        "--hours 25:00|write more than 0, up to 24"})
    void what_tells_nothing_or_cannot_be_is_refused(String options, String sentence) throws IOException {
        Ran.basket(folder, "", HEAD);
        Ran ran = Ran.kitleaf((Object[]) ("log " + folder + " piece --on 2026-03-05 " + options).split(" "));
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains(sentence), ran.err());
        assertEquals(HEAD, text());
    }

    @Test
    void without_a_day_it_is_today() throws IOException {
        Ran.basket(folder, "", HEAD);
        String before = LocalDate.now().toString();
        assertEquals(0, log("piece").code());
        assertTrue(text().contains("on: " + before) || text().contains("on: " + LocalDate.now()), text());
    }

    @Test
    void a_day_to_come_or_before_the_start_is_refused_and_nothing_written() throws IOException {
        Ran.basket(folder, "", HEAD + "progress: {started: 2026-03-06}\n");
        // A day may end between one line and the next: the day after tomorrow is still to come then, and either day is today.
        LocalDate before = LocalDate.now();
        String coming = before.plusDays(2).toString();
        Ran future = log("piece", "--on", coming);
        assertEquals(2, future.code());
        assertTrue(Stream.of(before, LocalDate.now()).map(today -> coming + " has not come yet; write a day up to today, " + today + "\n")
                .anyMatch(future.err()::equals), future.err());
        Ran early = log("piece", "--on", "2026-03-05");
        assertEquals(2, early.code());
        assertEquals("2026-03-05 is before the piece was started on 2026-03-06; give a later day with --on, or mend started\n", early.err());
        assertEquals(HEAD + "progress: {started: 2026-03-06}\n", text());
    }

    /** 140 x 210 are 29400 squares; half as many again, for what is unpicked, are 44100. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "started: 2026-02-14|--stitches 2501 --hours 2.5|2501 stitches in 2.5 h are more than 1000 an hour; mend --stitches or --hours",
        "finished: 2026-03-04|--stitches 1 --hours 1|2026-03-05 is after the last stitch, which the piece had by 2026-03-04; give an earlier day with --on, or "
            + "mend stitched or finished",
        "stitched: 2026-03-03|--stitches 1 --hours 1|2026-03-05 is after the last stitch, which the piece had by 2026-03-03; give an earlier day with --on, or "
            + "mend stitched or finished",
        "log: [{on: 2026-03-01, hours: 24, stitches: 24000}, {on: 2026-03-02, hours: 24, stitches: 20000}]|--stitches 101 --hours 1|with 101 stitches more the log has more "
            + "than the 29400 the piece can hold; mend --stitches, or write under coverage how many stitches the piece has"})
    void what_cannot_have_been_is_refused_and_nothing_written(String progress, String options, String sentence) throws IOException {
        String text = HEAD + "progress: {" + progress + "}\n";
        Ran.basket(folder, "", text);
        Ran ran = Ran.kitleaf((Object[]) ("log " + folder + " piece --on 2026-03-05 " + options).split(" "));
        assertEquals(2, ran.code());
        assertEquals(sentence + "\n", ran.err());
        assertEquals(text, text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "started: 2026-02-14|--stitches 2500 --hours 2.5",
        "finished: 2026-03-05|--stitches 1 --hours 1",
        "finished: 2026-03-04|--stitches 0 --hours 1",
        "log: [{on: 2026-03-01, hours: 24, stitches: 24000}, {on: 2026-03-02, hours: 24, stitches: 20000}]|--stitches 100 --hours 1"})
    void what_can_just_have_been_is_taken(String progress, String options) throws IOException {
        Ran.basket(folder, "", HEAD + "progress: {" + progress + "}\n");
        Ran ran = Ran.kitleaf((Object[]) ("log " + folder + " piece --on 2026-03-05 " + options).split(" "));
        assertEquals(0, ran.code(), ran.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--stitches 2,310 --hours 2|write digits only, as in 2310",
        "--stitches 5 --hours 25|write more than 0, up to 24",
        "--stitches 5 --hours 2,5|write a point, as in 2.5",
        "--stitches 5 --hours 2 --on 5.3.2026|write it like 2026-02-14"})
    void wrong_values_are_told_in_the_words_of_the_basket(String options, String sentence) throws IOException {
        Ran.basket(folder, "", HEAD);
        Ran ran = Ran.kitleaf((Object[]) ("log " + folder + " piece " + options).split(" "));
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains(sentence), ran.err());
        assertEquals(HEAD, text());
    }

    @Test
    void a_piece_with_problems_is_told_of_them_and_left() throws IOException {
        Ran.basket(folder, "", HEAD + "margin: 3\n");
        Ran ran = log("piece");
        assertEquals(1, ran.code());
        assertTrue(ran.err().contains("piece.yaml:4:9: \"3\" is a bare number"), ran.err());
        assertEquals(HEAD + "margin: 3\n", text());
    }

    @Test
    void another_piece_with_problems_is_not_in_the_way() throws IOException {
        Ran.basket(folder, "", HEAD);
        Files.writeString(folder.resolve("pieces/other.yaml"), "piece\n");
        assertEquals(0, log("piece").code());
    }

    @Test
    void where_no_place_is_seen_it_says_what_to_write() throws IOException {
        String odd = HEAD + "progress: |\n  45%\n";
        Ran.basket(folder, "", odd);
        Ran ran = log("piece", "--on", "2026-03-05");
        assertEquals(3, ran.code());
        assertTrue(ran.err().endsWith("write by hand, under progress, log: - " + ENTRY + "\n"), ran.err());
        assertEquals(1, ran.err().lines().count());
        assertEquals(odd, text());
    }

    @Test
    void unknown_pieces_are_told_with_those_there_are() throws IOException {
        Ran.basket(folder, "", HEAD + "---\n" + HEAD.replace("Groyne", "Two"));
        assertEquals("\"pieces\" is not a piece of " + folder + "; did you mean piece?\n", log("pieces").err());
        Ran ran = log("net");
        assertEquals(2, ran.code());
        assertEquals("there is no piece \"net\" in " + folder + "; its pieces are: piece, piece-2\n", ran.err());
        Ran file = Ran.kitleaf("log", file(), "--stitches", 1, "--hours", 1);
        assertEquals(2, file.code());
        assertEquals("there are 2 pieces in " + file() + "; name one of them instead: piece, piece-2\n", file.err());
        Ran basket = Ran.kitleaf("log", folder, "--stitches", 1, "--hours", 1);
        assertEquals(2, basket.code());
        assertTrue(basket.err().contains("is a basket; name the piece after it"), basket.err());
    }

    @Test
    void a_path_names_a_piece_in_every_way_she_may_write_it() throws IOException {
        for (String path : List.of("piece", "piece.yaml", "pieces/piece", "pieces/piece.yaml")) {
            Ran.basket(folder, "", HEAD);
            Ran ran = Ran.kitleaf("log", folder.resolve(path), "--stitches", 1, "--hours", 1);
            assertEquals(0, ran.code(), path + ": " + ran.err());
            assertTrue(text().contains("stitches: 1}"), path);
        }
    }

    @Test
    void inside_the_basket_folder_the_name_alone_is_enough() throws Exception {
        Ran.basket(folder, "", HEAD);
        assertEquals(0, Ran.inFolder(folder, "log", "piece", "--stitches", "7", "--hours", "1").code());
        assertTrue(text().contains("stitches: 7}"), text());
        Ran ran = Ran.inFolder(folder.resolve("pieces"), "log", "piece", "--stitches", "8", "--hours", "1");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(text().contains("stitches: 8}"), text());
    }

    @Test
    void the_file_keeps_its_permissions_and_a_link_stays_one() throws IOException {
        Ran.basket(folder, "", "");
        Path real = folder.resolve("kept.yaml");
        Files.writeString(real, HEAD);
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-r-----"));
        Files.delete(file());
        Files.createSymbolicLink(file(), real);
        Ran ran = log("piece");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(Files.isSymbolicLink(file()));
        assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(real)));
        assertTrue(Files.readString(real).contains("stitches: 260}"));
    }

    @Test
    void the_whole_example_basket_takes_an_entry_and_is_otherwise_the_same() throws IOException {
        try (var files = Files.walk(Path.of("examples/harbour"))) {
            for (Path from : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(Path.of("examples/harbour").relativize(from).toString());
                Files.createDirectories(to.getParent());
                Files.copy(from, to);
            }
        }
        for (String id : List.of("breakwater", "bosuns-knot", "weather-signals-2", "tide-table", "fog-bell")) {
            // One of them is finished, on this day.
            Ran ran = log(id, "--on", id.equals("weather-signals-2") ? "2026-10-18" : "2026-11-23");
            assertEquals(0, ran.code(), id + ": " + ran.err());
        }
        assertArrayEquals((Files.readString(Path.of("examples/harbour/pieces/breakwater.yaml"))
                .replace("stitches: 330}\n", "stitches: 330}\n    - {on: 2026-11-23, hours: 2.5, stitches: 260}\n")).getBytes(StandardCharsets.UTF_8),
                Files.readAllBytes(folder.resolve("pieces/breakwater.yaml")));
        assertEquals(0, Ran.kitleaf("check", folder).code());
    }
}
