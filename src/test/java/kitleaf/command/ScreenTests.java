package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import kitleaf.command.speech.Screen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What strangers wrote into names, folders and templates does not steer the terminal it is told on. */
class ScreenTests {

    /** A clear screen, a red one, its C1 twin, each kind of sign for directions and lines, a bell, and a line of its own. */
    private static final String HOSTILE = "a\u001b[2Jb\u009b31mc\u200e\u200f\u061c\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\u2028\u2029\u0085\u0007\u007f\rd\nFORGED";

    /** By Unicode's own properties, as Java's patterns know them: general categories and Bidi_Control; tab and line's end are ours. */
    private static final Pattern STEERS = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069&&[^\\t\\n]]");

    private static final String PIECE = "piece: \"Bell \u200f\u200e rope\"\nstitches: 40 x 40\ncloth: {kind: linen, count: 36, over: 2}\n"
            + "threads: [{code: \"K\u200f1\", name: \"x\u200ey\", stitches: {cross: 12}}]\n";

    @TempDir
    private Path folder;

    private static Ran clean(Ran ran) {
        for (String said : List.of(ran.out(), ran.err())) {
            assertFalse(STEERS.matcher(said).find(), said);
            assertTrue(said.lines().noneMatch(line -> line.equals("FORGED") || line.startsWith("FORGED")), said);
            assertTrue(said.lines().allMatch(line -> line.length() < 20_000), "a line of a megabyte");
        }
        return ran;
    }

    private Path hostileFolder() throws IOException {
        // What a file system takes: no nought, no slash.
        return Ran.basket(Files.createDirectories(folder.resolve(HOSTILE)), "title: \"T\u200f\"\ngoals: {year: 2027, choose: 1}\n", PIECE);
    }

    @Test
    void every_command_is_clean_of_hostile_names_and_folders() throws IOException {
        Path basket = hostileFolder();
        Path nowhere = folder.resolve(HOSTILE + HOSTILE);
        List<Ran> all = new ArrayList<>();
        for (String command : List.of("print", "reckon", "check", "threads", "schema", "watch", "completion", "help", HOSTILE)) {
            all.add(clean(Ran.kitleaf(command, nowhere)));
            all.add(clean(Ran.kitleaf(command, basket, "--" + HOSTILE)));
        }
        assertTrue(all.stream().allMatch(ran -> ran.code() != 0));
        assertEquals(0, clean(Ran.kitleaf("print", basket, "--out", basket.resolve("out"))).code());
        assertEquals(0, clean(Ran.kitleaf("reckon", basket)).code());
        assertEquals(0, clean(Ran.kitleaf("check", basket)).code());
        assertEquals(0, clean(Ran.kitleaf("schema", basket)).code());
        assertEquals(0, clean(Ran.kitleaf("log", basket, "piece", "--stitches", "5", "--hours", "1")).code());
        assertEquals(0, clean(Ran.kitleaf("new", basket, "--piece", "Other")).code());
        assertEquals(2, clean(Ran.kitleaf("new", basket, "--piece", HOSTILE)).code());
        assertEquals(2, clean(Ran.kitleaf("print", basket, "--piece", HOSTILE)).code());
        assertEquals(2, clean(Ran.kitleaf("print", basket, "--paper", HOSTILE)).code());
        assertEquals(2, clean(Ran.kitleaf("print", basket, "--templates", HOSTILE)).code());
        assertEquals(2, clean(Ran.kitleaf("log", basket, HOSTILE, "--stitches", "5", "--hours", "1")).code());
        assertEquals(3, clean(Ran.kitleaf("new", basket)).code());
        assertEquals(0, clean(Ran.kitleaf("new", folder.resolve(HOSTILE + "2"))).code());
    }

    @Test
    void problems_of_hostile_files_are_clean() throws IOException {
        Path basket = hostileFolder();
        Files.writeString(basket.resolve("pieces/" + HOSTILE + ".yaml"), PIECE.replace("linen", "\"" + HOSTILE.replace("\n", " ") + "\""));
        Files.writeString(basket.resolve("pieces/long.yaml"), PIECE.replace("linen", "x".repeat(900_000)));
        for (String command : List.of("print", "reckon", "check", "threads")) {
            assertEquals(1, clean(Ran.kitleaf(command, basket)).code());
        }
    }

    @Test
    void json_is_exact_and_clean() throws IOException {
        Ran ran = clean(Ran.kitleaf("reckon", hostileFolder(), "--json"));
        assertEquals("Bell  rope", new ObjectMapper().readTree(ran.out()).path("pieces").path(0).path("title").asText());
    }

    /** What is read in again says what the basket says: signs nobody sees are in neither. */
    @Test
    void a_table_of_threads_is_exact() throws IOException {
        assertTrue(Ran.kitleaf("threads", hostileFolder()).out().contains("\"K1\",\"xy\""));
    }

    @Test
    void messages_of_hostile_templates_are_clean_and_short() throws IOException {
        Path basket = hostileFolder();
        Path templates = Files.createDirectories(folder.resolve("templates"));
        String quoted = HOSTILE.replace("\n", "\\n");
        String huge = "<#assign s = \"x\"><#list 1..20 as i><#assign s = s + s></#list>";
        for (String template : List.of("<#stop \"" + quoted + "\">", huge + "<#stop s>", "${say(\"" + quoted + "\")}", huge + "${say(s)}", "<" + HOSTILE + "/>",
                "<document title=\"t\">" + HOSTILE, "<document title=\"t\"><page width=\"" + quoted + "\" height=\"9\"></page></document>",
                huge + "<document title=\"t\"><page width=\"${s}\" height=\"9\"></page></document>", huge + "<${s}/>", "<#include \"" + quoted + "\">",
                huge + "<#include s>", "${" + HOSTILE + "}")) {
            Files.writeString(templates.resolve("cut-sheets.ftlx"), template);
            Ran ran = clean(Ran.kitleaf("print", basket, "--only", "cut-sheets", "--templates", templates, "--out", folder.resolve("out")));
            assertEquals(1, ran.code(), ran.err());
            assertTrue(ran.err().length() < 8_000, ran.err().length() + " characters: " + template);
        }
    }

    @Test
    void line_ends_and_tabs_are_kept_and_the_rest_is_shown_by_its_number() {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        Screen screen = new Screen(said);
        screen.print("a\r");
        screen.print("\nb\n\tc\rd\u202e");
        screen.flush();
        assertEquals("a\r\nb\n\tc\\u000Dd\\u202E", said.toString(StandardCharsets.UTF_8));
    }
}
