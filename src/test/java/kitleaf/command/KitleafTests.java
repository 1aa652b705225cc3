package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class KitleafTests {

    @TempDir
    private Path folder;

    /** The commands by the program's own account of them, so that none is forgotten. */
    static List<String> commands() {
        String help = Ran.kitleaf("help").out();
        List<String> commands = help.substring(help.indexOf("Commands:")).lines().skip(1).takeWhile(line -> line.startsWith("  "))
                .filter(line -> line.matches("  [a-z].*")).map(line -> line.strip().split(" ")[0]).toList();
        assertTrue(commands.containsAll(List.of("print", "reckon", "check", "new", "log", "tonight", "choose", "watch", "schema", "threads", "completion", "help")), help);
        return commands.stream().filter(command -> !command.equals("help")).toList();
    }

    @Test
    void the_help_of_help_and_of_the_program_fit_80_columns() {
        for (Ran ran : List.of(Ran.kitleaf("help"), Ran.kitleaf("help", "help"), Ran.kitleaf())) {
            ran.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        }
    }

    /** Each example of each help is a line the program understands: what it lacks is at most the basket. */
    @ParameterizedTest
    @MethodSource("commands")
    void examples_are_understood(String command) {
        List<String> examples = Ran.kitleaf("help", command).out().lines().filter(line -> line.startsWith("  kitleaf ")).toList();
        assertTrue(examples.size() >= 1, command);
        for (String example : examples) {
            String line = example.strip().replaceAll(" {3,}\\(.*| > .*", "").substring("kitleaf ".length());
            if (line.startsWith("new my-basket") || line.equals("completion")) {
                continue;
            }
            Ran ran = Ran.kitleaf((Object[]) line.replace("\"Tide table\"", "Tide-table").split(" "));
            assertFalse(ran.code() == 2 && ran.err().contains("\nTry: "), line + ": " + ran.err());
            assertTrue(ran.err().contains("no such file") || ran.err().contains("there are no pieces in") || ran.err().contains("there is no basket in")
                    || ran.err().contains("there is no folder my-basket"),
                    line + ": " + ran.err());
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void help_fits_80_columns_and_shows_examples(String command) {
        Ran ran = Ran.kitleaf("help", command);
        assertEquals(0, ran.code());
        assertTrue(ran.out().contains("Examples:"), ran.out());
        ran.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void help_names_the_commands_and_exit_codes() {
        Ran ran = Ran.kitleaf("help");
        for (String words : List.of("print ", "reckon ", "check ", "Exit codes:", "kitleaf print examples/harbour --out out")) {
            assertTrue(ran.out().contains(words), ran.out());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "print|say which: BASKET is missing after the command",
        "check|say which: BASKET is missing",
        "schema|say which: DIR is missing",
        "log x --hours some|--hours: ",
        "log --stitches 3 --hours 1|say which: [BASKET] PIECE is missing",
        "pint x|there is no command",
        "print x --paper A9|--paper: \"A9\" is not a paper known here; write one of: A5, A4",
        "print x --paper leter|--paper: \"leter\" is not a paper known here; did you mean letter?",
        "print x --units inches|--units: \"inches\" is not a unit to think in; write one of: in, cm",
        "print x --unit cm|there is no option --unit",
        "print x --unit=cm|there is no option --unit cm",
        "print x --most-pages -1|--most-pages: '-1' is too few; write a whole number from 1 up",
        "print x --most-labels 0|--most-labels: '0' is too few; write a whole number from 1 up",
        "print x --only cutsheets|'cutsheets' is not a sheet; write cut-sheets",
        "print x --skip some|'some' is not a whole number; write a whole number such as 12",
        "print x --as-of tomorrow|--as-of: \"tomorrow\" is not a date in the form year-month-day; write it like 2026-02-14",
        "reckon x --as-of 2027-02-30|--as-of: \"2027-02-30\" is a day the calendar does not have; write 2027-02-01 to 2027-02-28",
        "print x --templates nowhere|there is no templates folder nowhere"})
    void wrong_usage_is_a_sentence_and_exit_2(String arguments, String sentence) {
        Ran ran = Ran.kitleaf((Object[]) arguments.split(" "));
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains(sentence), ran.err());
        assertFalse(ran.err().contains("\tat ") || ran.err().contains("java.") || ran.err().contains("Exception"), ran.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"print", "reckon", "check"})
    void a_missing_folder_is_a_sentence_and_exit_1(String command) {
        Ran ran = Ran.kitleaf(command, folder.resolve("nowhere"));
        assertEquals(1, ran.code());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith(folder.resolve("nowhere") + ": "), ran.err());
    }

    @Test
    void an_empty_basket_is_a_sentence_and_exit_1() throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        Ran ran = Ran.kitleaf("check", folder);
        assertEquals(1, ran.code());
        assertTrue(ran.err().contains("1 problem"), ran.err());
    }

    @Test
    void all_problems_of_all_files_are_told_at_once_in_order() throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        Files.writeString(folder.resolve("pieces/b.yaml"), "piece: B\nstitches: 10 x 10\ncloth: {kind: linen, count: 500, over: 2}\nmargin: 3\n");
        Files.writeString(folder.resolve("pieces/a.yaml"), "piece: A\nstiches: 10 x 10\ncloth: {kind: linnen, count: 28, over: 2}\n");
        Ran ran = Ran.kitleaf("check", folder);
        assertEquals(1, ran.code());
        List<String> places = ran.err().lines().filter(line -> line.contains(".yaml:"))
                .map(line -> line.substring(line.indexOf("pieces/"))).map(line -> line.replaceAll(": .*", "")).toList();
        assertEquals(List.of("pieces/a.yaml:2:1", "pieces/a.yaml:3:15", "pieces/b.yaml:3:29", "pieces/b.yaml:4:9"), places, ran.err());
        assertTrue(ran.err().endsWith("4 problems; nothing was written\n"), ran.err());
    }

    @Test
    void problems_of_very_many_files_are_told_in_order_too() throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        List<String> expected = new ArrayList<>();
        for (int i = 100; i < 190; i++) {
            // Every other file takes longer to read than its neighbours.
            String remark = "# a remark\n".repeat(i % 2 * 2000);
            Files.writeString(folder.resolve("pieces/p" + i + ".yaml"), "piece: P" + i + "\nstitches: 10 x 10\ncloth: {kind: linen, count: 28, over: 2}\nmargin: 3\n" + remark);
            expected.add("pieces/p" + i + ".yaml:4:9");
        }
        Ran ran = Ran.kitleaf("check", folder);
        assertEquals(1, ran.code());
        assertEquals(expected, ran.err().lines().filter(line -> line.contains(".yaml:"))
                .map(line -> line.substring(line.indexOf("pieces/"))).map(line -> line.replaceAll(": .*", "")).toList());
    }

    @Test
    void the_version_is_that_of_the_pom() throws IOException {
        Matcher version = Pattern.compile("<artifactId>kitleaf</artifactId>\\s*<version>([^<]+)</version>").matcher(Files.readString(Path.of("pom.xml")));
        assertTrue(version.find());
        Ran ran = Ran.kitleaf("--version");
        assertEquals(0, ran.code());
        assertEquals("kitleaf " + version.group(1) + "\n", ran.out());
    }
}
