package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import kitleaf.command.speech.Exit;
import kitleaf.sheet.template.Templates;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates made to do harm, as they may come from a stranger: each costs a sentence and no sheet. */
@Timeout(300)
class HostileTemplateTests {

    private static final String NAME = "buy-list.ftlx";
    private static final String OLD = "the old sheet";

    @TempDir
    private Path folder;

    private Path templates() throws IOException {
        return Files.createDirectories(folder.resolve("templates"));
    }

    /** Prints with the template in place; whatever it is, the old sheet stays and nothing is left beside it. */
    private String said() throws IOException {
        return saidOf("");
    }

    private String saidOf(String settings) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), settings, """
                piece: Groyne
                stitches: 80 x 80
                cloth: {kind: linen, count: 28, over: 2}
                threads: [{code: A, stitches: {cross: 100}}]
                """);
        Path out = Files.createDirectories(folder.resolve("out"));
        Files.writeString(out.resolve("buy-list.pdf"), OLD);
        Ran ran = Ran.kitleaf("print", basket, "--only", "buy-list", "--out", out, "--templates", templates());
        assertEquals(Exit.BASKET_HAS_PROBLEMS, ran.code(), ran.err());
        assertEquals(List.of("buy-list.pdf"), Ran.files(out));
        assertEquals(OLD, Files.readString(out.resolve("buy-list.pdf")));
        assertFalse(ran.err().contains("\tat ") || ran.err().contains("itself has failed"), ran.err());
        return ran.err().strip();
    }

    private String said(String template) throws IOException {
        Files.writeString(templates().resolve(NAME), template);
        return said();
    }

    private static final String ENDLESS_PAGE = NAME + ":1: one page has more than 5 million characters of markup; look for a loop without end in its template";
    private static final String DEEP = NAME + ": this template calls itself without end, or nests too deep; look at what it calls and includes";

    @Test
    void a_loop_that_writes_nothing_ends() throws IOException {
        assertEquals(MUCH, said("<#list 1.. as x></#list>"), "each turn asks for a little memory");
    }

    @Test
    void a_page_without_end_ends_wherever_its_end_is_missing() throws IOException {
        String page = "<document title=\"t\"><page width=\"100\" height=\"100\">";
        assertEquals(NAME + ":1: one page has more than 8 MB of marks; look for a loop without end in its template",
                said(page + "<#list 1.. as x><rect width=\"1\" height=\"1\"/></#list>"));
        for (String endless : List.of(page + "<text><#list 1.. as x>more and more</#list>", "<document title=\"<#list 1.. as x>more and more</#list>",
                "<document><!-- <#list 1.. as x>more and more</#list>")) {
            assertEquals(ENDLESS_PAGE, said(endless));
        }
    }

    @Test
    void pages_without_end_end() throws IOException {
        assertEquals("buy-list: the template makes more than 200 pages where 1 was laid out; look for a loop without end in it",
                said("<document title=\"t\"><#list 1.. as x><page width=\"100\" height=\"100\"></page></#list></document>"));
    }

    @Test
    void what_calls_or_includes_itself_or_nests_too_deep_is_told() throws IOException {
        for (String deep : List.of("<#macro m><@m/></#macro><@m/>", "<#function f x><#return f(x)></#function>${f(1)}",
                "<#include \"" + NAME + "\">", "<#if true>".repeat(5000), "${" + "(".repeat(50_000) + "1")) {
            assertEquals(DEEP, said(deep));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <#include "/etc/passwd">             | Template not found for name "etc/passwd"
            <#include "../../../etc/passwd">     | Template not found for name "../../../etc/passwd"
            <#import "/../x" as x>               | Backing out from the template root directory is not allowed
            <#include "file:///etc/passwd">      | Template not found for name "file:///etc/passwd"
            <#include "http://localhost/x">      | Template not found for name "http://localhost/x"
            ${"java.io.File"?new("x")}           | is not allowed in the template for security reasons
            ${rows[0].getClass().forName("x")}  | getClass
            ${rows[0].class.classLoader}        | class
            ${rows[0]?api.hashCode()}           | api_builtin_enabled
            ${rows[0].wait()}                   | wait
            ${rows.class}                        | Expected a hash
            """)
    void nothing_outside_the_templates_and_no_class_is_reached(String reach, String why) throws IOException {
        String said = said("<document title=\"t\">" + reach + "</document>");
        assertTrue(said.startsWith(NAME + ":1:") && said.contains(why) && !said.contains(folder.toString()), said);
    }

    @Test
    void a_link_out_of_the_folder_a_folder_or_a_huge_file_in_a_templates_place_is_told() throws IOException {
        Path place = templates().resolve(NAME);
        Path outside = Files.writeString(folder.resolve("outside.ftlx"), "<document title=\"secret\"/>");
        Files.createSymbolicLink(place, outside);
        assertEquals(NAME + ": this is a link that leads out of the templates folder; put the file itself inside it", said());
        Files.delete(place);
        Files.createDirectory(place);
        assertEquals(NAME + ": this is not a file with text in it; put a template in its place", said());
        Files.delete(place);
        Files.createSymbolicLink(templates().resolve("link.ftlx"), outside);
        Files.writeString(place, "<#include \"link.ftlx\">");
        assertEquals("link.ftlx: this is a link that leads out of the templates folder; put the file itself inside it", said());
        Files.writeString(place, "<#-- " + "a".repeat(1_000_000));
        assertEquals(NAME + ": this file is larger than 1 MB; split it with include", said());
        Files.write(place, "<document title=\"\u00e9\"/>".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(NAME + ": this is not in UTF-8; save the file as UTF-8", said());
    }

    @Test
    void a_german_basket_is_told_of_them_in_german() throws IOException {
        Files.writeString(templates().resolve(NAME), "<document title=\"t\">\n  ${say(\"buy.till\")}</document>");
        assertEquals(NAME + ":2:3: unter den Wörtern gibt es „buy.till“ nicht", saidOf("language: de\n"));
        Files.writeString(templates().resolve(NAME), "${nobody}");
        String theirs = saidOf("language: de\n");
        assertTrue(theirs.startsWith(NAME + ":1:3: die Vorlage ist gescheitert; FreeMarker sagt dazu: The following has evaluated to null or missing"), theirs);
    }

    @Test
    void a_template_may_begin_with_a_byte_order_mark() throws IOException {
        assertEquals(NAME + ":1: the document has no pages", said("\uFEFF<document title=\"t\"></document>"));
    }

    @Test
    void document_types_and_entities_are_refused() throws IOException {
        assertEquals(NAME + ":1: page markup has no document type; leave <!DOCTYPE out",
                said("<!DOCTYPE d [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><document title=\"&a;\"/>"));
    }

    @Test
    void what_a_template_tries_and_recovers_from_is_not_logged() throws IOException {
        assertEquals(NAME + ":1: the document has no pages", said("<document title=\"t\"><#attempt>${nobody}<#recover></#attempt></document>"));
    }

    private static final String MUCH = NAME + ": this template takes 256 MB of memory for a piece of its page; look for a loop, a text or a list without end";

    /** What a run that may have 2 GB says, how long it takes and that it ends: a process of its own, since what goes too far goes on in it. */
    private String saidBounded(String template) throws Exception {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: 80 x 80\ncloth: {kind: linen, count: 28, over: 2}\nthreads: [{code: A}]\n");
        Files.writeString(templates().resolve(NAME), template);
        Process process = Ran.start(folder, List.of("JDK_JAVA_OPTIONS", "-Xmx2g"), "print", basket.toString(), "--only", "buy-list", "--templates", templates().toString());
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), template);
        Ran ran = Ran.ended(process);
        assertEquals(1, ran.code(), ran.err());
        assertFalse(ran.err().contains("\tat ") || ran.err().contains("java.lang"), ran.err());
        return ran.err().lines().filter(line -> !line.startsWith("NOTE: Picked up")).findFirst().orElse("");
    }

    @ParameterizedTest
    @ValueSource(strings = {"${(0..2000000000)?join('x')}", "<#assign s = 'xxxxxxxx'><#list 1..40 as i><#assign s = s + s></#list>",
        "<#assign s = 'xxxxxxxx'><#list 1..5 as i><#assign s = s?replace('x', s)></#list>",
        "<#assign s><#list 1..2000000000 as i>more and more</#list></#assign>", "<#assign s = [1]><#list 1..2000000000 as i><#assign s = s + [i]></#list>",
        "<#assign s = [1]><#list 1..31 as i><#assign s = s + s></#list>${s?join('x')}"})
    void a_text_or_list_that_grows_ends_with_a_sentence_long_before_the_memory(String template) throws Exception {
        assertEquals(MUCH, saidBounded(template));
    }

    /** One step that asks for all there is at once: told by whoever is first, the watch or the end of the memory. */
    @ParameterizedTest
    @ValueSource(strings = {"${(0..2000000000)?sort?size}", "${(0..2000000000)?map(x -> x)?join('')}"})
    void a_step_that_takes_all_memory_at_once_ends_with_a_sentence(String template) throws Exception {
        String said = saidBounded(template);
        assertTrue(said.equals(MUCH) || said.equals(NAME + ": this template takes more memory than Java may use; look for a text or list that grows without end"), said);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"${'x'?left_pad(2000000000)}|left_pad", "${'x'? <#-- -- > --> rightPad(2000000000)}|rightPad",
        "<@'<#list 1.. as x></#list>'?interpret/>|interpret", "${'1'?eval}|eval", "${'1'?\t[#-- --]eval_json}|eval_json"})
    void what_runs_a_text_or_pads_one_to_any_length_is_refused(String template, String name) throws IOException {
        assertEquals(NAME + ":2: ?" + name + " is not for templates; write what it would make into the template, or place it with x and width", said("\n" + template));
    }

    @Test
    void what_is_included_can_be_stopped_too() throws Exception {
        Files.writeString(templates().resolve("endless.ftlx"), "<#list 1.. as x></#list>");
        Files.writeString(templates().resolve(NAME), "<#include 'endless.ftlx'>");
        said();
        assertTrue(Templates.allEnded());
    }

    @Test
    void codes_marks_and_lines_without_end_on_a_page_end() throws IOException {
        String page = "<document title=\"t\"><page width=\"100\" height=\"100\">";
        assertEquals(NAME + ":1: one page has more than 1000 codes; look for a loop without end in its template",
                said(page + "<#list 1..60000 as x><code x=\"1\" y=\"1\" size=\"1\">a</code></#list></page></document>"));
        assertEquals(NAME + ":1: one page has more than 8 MB of marks; look for a loop without end in its template",
                said(page + "<#list 1..170000 as x><rect width=\"1\" height=\"1\"/></#list></page></document>"));
        assertEquals(NAME + ":1: one page has more than 8 MB of marks; look for a loop without end in its template",
                said(page + "<path d=\"M0 0<#list 1..800000 as x>h1v1</#list>\" stroke=\"#000\"/></page></document>"));
    }

    /** 5000 mm at 150 dots to the inch would be 29528 dots a side, 3.5 GB; 36 million dots are 6000 a side, 138 MB. */
    @Test
    void the_picture_of_a_huge_page_has_fewer_dots() throws Exception {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: 80 x 80\ncloth: {kind: linen, count: 28, over: 2}\nthreads: [{code: A}]\n");
        Files.writeString(templates().resolve(NAME), "<document title=\"t\"><page width=\"5000\" height=\"5000\"></page></document>");
        Path out = folder.resolve("out");
        Ran ran = Ran.ended(Ran.start(folder, List.of("JDK_JAVA_OPTIONS", "-Xmx512m"), "print", basket.toString(), "--only", "buy-list", "--png", "--templates", templates().toString(),
                "--out", out.toString()));
        assertEquals(0, ran.code(), ran.err());
        ByteBuffer header = ByteBuffer.wrap(Files.readAllBytes(out.resolve("buy-list-01.png")));
        assertEquals(6000, header.getInt(16), 2, "PNG, 11.2.2: width in the header chunk");
    }

    /** Whatever thread has no memory left, it is a sentence. */
    @ParameterizedTest
    @ValueSource(strings = {"-Xmx8m", "-Xmx10m", "-Xmx12m"})
    void too_little_memory_is_a_sentence(String most) throws Exception {
        StringBuilder threads = new StringBuilder("piece: Groyne\nstitches: 800 x 800\ncloth: {kind: linen, count: 28, over: 2}\nthreads:\n");
        for (int i = 0; i < 4000; i++) {
            threads.append("  - {code: K").append(i).append(", name: \"name ").append(i).append("\", stitches: {cross: 10}}\n");
        }
        Ran.basket(folder.resolve("b"), "", threads.toString());
        Process process = Ran.start(folder, List.of("JDK_JAVA_OPTIONS", most), "print", "b");
        assertTrue(process.waitFor(120, TimeUnit.SECONDS), most);
        Ran ran = Ran.ended(process);
        assertFalse(ran.err().contains("\tat ") || ran.err().contains("Exception"), ran.err());
        assertTrue(ran.code() == 0 || ran.err().contains("the basket is too large for the memory Java may use"), ran.code() + ran.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"${pages[0].rows.class}", "${pages + 1}", "${pages?upper_case}", "${pages[0](1)}", "<#list 5 as x></#list>", "${pages[0].rightMm('x')}", "${1 / 0}",
        "${'2026'?date}", "<@pages/>", "${'x'?number}", "${say()}", "${lines(1)}", "${ruler.widthMm(1)}", "${pages}", "${'a'?matches('[')}", "${1?string('0..0..0')}"})
    void no_message_names_a_class_of_java(String wrong) throws IOException {
        String said = said(wrong);
        assertFalse(said.matches("(?s).*\\b(java|freemarker|kitleaf|f\\.t|f\\.c|f\\.e)\\.[a-zA-Z.]*\\b.*") || said.contains("wrapper"), said);
    }
}
