package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
        assertEquals(NAME + ": nothing has come from this template for 20 seconds; look for a loop without end in it",
                said("<#list 1.. as x></#list>"));
    }

    @Test
    void a_page_without_end_ends_wherever_its_end_is_missing() throws IOException {
        String page = "<document title=\"t\"><page width=\"100\" height=\"100\">";
        for (String endless : List.of(page + "<#list 1.. as x><rect width=\"1\" height=\"1\"/></#list>",
                page + "<text><#list 1.. as x>more and more</#list>", "<document title=\"<#list 1.. as x>more and more</#list>",
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
            ${pages[0].getClass().forName("x")}  | getClass
            ${pages[0].class.classLoader}        | class
            ${pages[0]?api.hashCode()}           | api_builtin_enabled
            ${pages[0].wait()}                   | wait
            ${pages[0].rows.class}               | Expected a hash
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
}
