package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The wall of the example, printed in tiles, read back with PDFBox: what its joins run through. */
class WallPrintTests {

    private static final Path HARBOUR = Path.of("examples/harbour");
    private static final int RULE = 0xc3c8c4;

    @TempDir
    private Path folder;

    /** What the joins of a wall run through, each told in words. */
    private record Cuts(Set<String> joins, Set<String> cards, Set<String> boxes, Set<String> words) { }

    private byte[] print(String wall, String paper, String language, String... more) throws IOException {
        Path basket = folder.resolve("b");
        try (var files = Files.walk(HARBOUR)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = basket.resolve(HARBOUR.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path settings = basket.resolve("basket.yaml");
        Files.writeString(settings, Files.readString(settings).replaceAll("(?m)^goals:.*$", "goals: {year: 2027, choose: 9, cards: 3 x 3, wall: " + wall + "}"));
        List<Object> arguments = new ArrayList<>(List.of("print", basket, "--only", "goal-grid", "--paper", paper, "--language", language,
                "--out", folder.resolve("out")));
        arguments.addAll(List.of(more));
        Ran ran = Ran.kitleaf(arguments.toArray());
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        return Files.readAllBytes(folder.resolve("out/goal-grid.pdf"));
    }

    private static Cuts cuts(byte[] pdf) throws IOException {
        Cuts cuts = new Cuts(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
        for (int page = 1; page < ReadBack.pages(pdf); page++) {
            List<Drawn> drawn = ReadBack.drawn(pdf, page);
            List<Letter> letters = ReadBack.letters(pdf, page);
            List<Drawn> closed = drawn.stream().filter(it -> it.stroked() && it.operations().endsWith("Z")).toList();
            for (Drawn join : drawn.stream().filter(it -> it.operations().equals("ML") && it.stroke() == 0x20262b
                    && Math.abs(it.lineWidthMm() - 0.25) < 0.005).toList()) {
                boolean upright = Math.abs(join.x(0) - join.x(1)) < 0.01;
                double at = upright ? join.x(0) : join.y(0);
                String name = "page " + page + (upright ? ", upright at " : ", level at ") + Math.round(at);
                cuts.joins().add(name);
                for (Drawn shape : closed) {
                    boolean crossed = shape.least(upright) < at - 0.5 && shape.most(upright) > at + 0.5;
                    boolean card = shape.stroke() == RULE && shape.most(false) - shape.least(false) > 40;
                    // The only closed shapes so low are boxes to write in or to colour; a cross in a ring is not closed.
                    double highMm = shape.most(false) - shape.least(false);
                    if (crossed && card) {
                        cuts.cards().add(name);
                    } else if (crossed && highMm > 4.5 && highMm < 24 && shape.fill() != 0xeef0ec) {
                        cuts.boxes().add(name);
                    }
                }
                List<Letter> struck = new ArrayList<>();
                letters.stream().filter(letter -> !TextBoxes.struck(List.of(letter), List.of(join)).isEmpty()).forEach(struck::add);
                if (!struck.isEmpty()) {
                    StringBuilder text = new StringBuilder();
                    struck.forEach(letter -> text.append(letter.text()));
                    cuts.words().add(name + ": " + text);
                }
            }
        }
        return cuts;
    }

    /** A card and what is to be kept clear of it has room on a sheet of these, so that no join need run through any. */
    @ParameterizedTest
    @CsvSource({"A3, A4, en", "A3, A5, en", "A3, letter, en", "A3 landscape, A4, de", "A3 landscape, A5, de", "A3 landscape, letter, en", "A2, A4, en", "A2, letter, de",
        "A2 landscape, A4, en", "A2 landscape, A4, de", "A2 landscape, letter, de", "A1, A4, en", "A1 landscape, A4, de"})
    void joins_run_between_cards_where_a_card_has_room_on_a_sheet(String wall, String paper, String language) throws IOException {
        Cuts cuts = cuts(print(wall, paper, language));
        assertEquals(List.of(), List.of(cuts.cards(), cuts.boxes(), cuts.words()).stream().flatMap(Set::stream).toList());
        assertTrue(cuts.joins().size() > 1, cuts.joins() + " joins");
    }

    /** Cards of an A2 wall are up to 177 mm wide, of an A1 wall 258: too large for a sheet of these, of which each then shows one that fills it. */
    @ParameterizedTest
    @CsvSource({"A2, A5, en", "A2 landscape, A5, en", "A1, A5, en", "A1, letter, de"})
    void cards_larger_than_a_sheet_are_as_large_as_one_has_room_for(String wall, String paper, String language) throws IOException {
        byte[] pdf = print(wall, paper, language);
        Cuts cuts = cuts(pdf);
        assertEquals(List.of(), Stream.of(cuts.cards(), cuts.boxes(), cuts.words()).flatMap(Set::stream).toList());
        assertTrue(cuts.joins().size() > 1, cuts.joins() + " joins");
        double paperMm = paper.equals("A5") ? 148 * 210 : 216 * 279;
        for (int page = 1; page <= 9; page++) {
            Drawn card = ReadBack.drawn(pdf, page).stream().filter(it -> it.stroked() && it.stroke() == RULE && it.operations().endsWith("Z")).findFirst().orElseThrow();
            assertTrue((card.most(true) - card.least(true)) * (card.most(false) - card.least(false)) > 0.4 * paperMm, "page " + page + ": " + card);
        }
    }

    /**
     * By hand: 570 mm less two strips of 8 are three cards of 184.7 with a strip. A sheet upright shows 184.6 mm of its 210 between two margins of 8 mm
     * and what a join says, and less than three rows of some 120; so each has one column, the lower ones two rows. That is three by two sheets.
     */
    @ParameterizedTest
    @CsvSource({"en", "de"})
    void a_wall_of_three_by_three_cards_on_a2_takes_six_sheets_of_a4(String language) throws IOException {
        byte[] pdf = print("A2 landscape", "A4", language);
        assertEquals(7, ReadBack.pages(pdf), "pages with that of the weeks");
        assertTrue(ReadBack.line(pdf, 6).matches(language.equals("en") ? ".*page 6 of 6: row 2, column 3.*" : ".*Seite 6 von 6: Reihe 2, Spalte 3.*"), ReadBack.line(pdf, 6));
    }

    /** What is enlarged is large print on paper: 16 pt or more (UKAAF G003, 2019), less a thousandth for the numbers in the PDF. */
    @ParameterizedTest
    @CsvSource({"A2, A2, en", "A2 landscape, A2 landscape, de", "A1, A1, en", "A2, A4, de", "A2 landscape, A4, en"})
    void an_enlarged_wall_is_large_print_on_its_paper(String wall, String paper, String language) throws IOException {
        byte[] pdf = print(wall, paper, language, "--large");
        boolean whole = wall.equals(paper);
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Letter> letters = ReadBack.letters(pdf, page).stream().filter(it -> !it.text().isBlank()).toList();
            assertTrue(letters.size() > 20, letters.size() + " letters");
            assertEquals(List.of(), TextBoxes.smaller(letters, 16), "page " + page);
            assertEquals(List.of(), TextBoxes.overlaps(letters), "page " + page);
        }
        if (!whole) {
            assertEquals(Set.of(), cuts(pdf).boxes());
        }
    }
}
