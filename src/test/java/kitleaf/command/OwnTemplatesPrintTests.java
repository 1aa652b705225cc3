package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The templates in {@code examples/own-templates}, printed and read back: what a template of hers can do without a line of Java. */
class OwnTemplatesPrintTests {

    private static final String HARBOUR = "examples/harbour";
    private static final String OWN = "examples/own-templates";

    @TempDir
    private Path out;

    private byte[] print(String sheet, String... more) throws IOException {
        Ran ran = Ran.kitleaf(Stream.concat(Stream.of("print", HARBOUR, "--out", out, "--only", sheet), Arrays.stream(more)).toArray());
        assertEquals("", ran.err(), "nothing is cut short");
        byte[] pdf = Files.readAllBytes(out.resolve(sheet + ".pdf"));
        for (List<Letter> page : ReadBack.lettersByPage(pdf)) {
            assertEquals(List.of(), TextBoxes.overlaps(page));
        }
        return pdf;
    }

    private static String text(byte[] pdf) throws IOException {
        StringBuilder all = new StringBuilder();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            all.append(ReadBack.text(pdf, page)).append('\n');
        }
        return all.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--units=in", "--large", "--paper=A5"})
    void a_block_of_the_cut_sheet_moves_and_the_table_of_other_cloths_goes(String print) throws IOException {
        String usual = text(print("cut-sheets", "--piece=breakwater", print));
        String own = text(print("cut-sheets", "--piece=breakwater", print, "--templates", OWN));
        assertTrue(usual.contains("The same chart on other cloth")
                && usual.indexOf("In this order") > usual.indexOf("first stitch"), usual);
        assertFalse(own.contains("The same chart on other cloth"), own);
        assertTrue(own.indexOf("In this order") < Math.min(own.indexOf("Count in"), own.indexOf("first stitch")), own);
        assertTrue(own.contains("✂"), "the corner guide's cut edge");
    }

    /** Swatches side by side have their tops at one height. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "A5"})
    void the_kit_list_has_two_columns_where_they_have_room(String paper) throws IOException {
        List<Drawn> swatches = ReadBack.drawn(print("kit-lists", "--piece=breakwater", "--paper", paper, "--templates", OWN), 1).stream()
                .filter(it -> it.filled() && it.stroked()).toList();
        assertTrue(swatches.size() > 2, swatches.size() + " swatches");
        long columns = swatches.stream().map(it -> Math.round(it.least(true))).distinct().count();
        long rows = swatches.stream().map(it -> Math.round(it.least(false))).distinct().count();
        assertEquals(paper.equals("A4") ? 2 : 1, columns);
        assertEquals((swatches.size() + columns - 1) / columns, rows);
    }
}
