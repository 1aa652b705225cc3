package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.SheetProof;
import kitleaf.SheetProof.Fault;
import kitleaf.SheetProof.Kind;
import kitleaf.SheetProof.Proof;
import kitleaf.sheet.page.SheetKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sheet of three baskets, read back by its ink: no text on another, none struck, no dimension arrow without a figure, no page that is
 * hardly used, no fraction too small. In {@code mvn verify} a selection; on all papers, in all languages and both prints where the system
 * property {@code proof} is {@code all} ({@code mvn -Pbaskets verify}).
 */
class ProofOfSheetsTests {

    private static final boolean ALL = "all".equals(System.getProperty("proof"));
    /** All but the look back, of which a basket without a log has none. */
    private static final String SHEETS = Stream.of(SheetKind.values()).filter(kind -> kind != SheetKind.LOOK_BACK).map(SheetKind::id)
            .collect(Collectors.joining(","));

    @TempDir
    private Path folder;

    static Stream<String> prints() {
        if (!ALL) {
            return Stream.of("long,A4,en,usual", "long,A5,de,usual", "long,A4,de,large", "long,A5,en,large",
                    "single,A4,de,usual", "single,A5,en,usual", "single,A4,en,large", "single,A5,de,large");
        }
        return Stream.of("harbour", "long", "single").flatMap(basket -> Stream.of("A4", "letter", "A5", "A4 landscape")
                .flatMap(paper -> Stream.of("en", "de", "en-US").flatMap(language -> Stream.of("usual", "large")
                        .map(print -> String.join(",", basket, paper, language, print)))));
    }

    @ParameterizedTest
    @MethodSource("prints")
    void every_page_can_be_read(String print, TestReporter reporter) throws IOException {
        String[] of = print.split(",");
        Path out = folder.resolve("out");
        Ran ran = Ran.kitleaf("print", basket(of[0]), "--all", "--only", SHEETS, "--paper", of[1], "--language", of[2], "--as-of", "2027-01-01",
                "--out", out, of[3].equals("large") ? "--large" : "--most-pages=20000");
        assertEquals(0, ran.code(), ran.err());
        List<String> faults = new ArrayList<>();
        int pages = 0;
        int letters = 0;
        for (String file : Ran.files(out).stream().filter(it -> it.endsWith(".pdf")).toList()) {
            Proof proof = SheetProof.of(Files.readAllBytes(out.resolve(file)));
            proof.faults().forEach(it -> faults.add(file + ", page " + it.page() + ": " + it.kind() + " " + it.where()));
            pages += proof.pages();
            letters += proof.letters();
        }
        reporter.publishEntry(print, pages + " pages, " + letters + " letters, " + faults.size() + " faults");
        assertEquals("", String.join("\n", faults), print);
        assertTrue(pages >= SheetKind.values().length - 1 && letters > 1000, pages + " pages, " + letters + " letters");
    }

    private Path basket(String name) throws IOException {
        return switch (name) {
            case "harbour" -> Path.of("examples/harbour");
            case "single" -> Ran.basket(folder.resolve("b"), 
                    "pace: {stitches-per-hour: 100, hours-per-week: 5}\ngoals: {year: 2027, choose: 1}\n",
                    "piece: Groyne\nstitches: 140 x 90\ncloth: {kind: linen, count: 36, over: 2}\n"
                    + "threads: [{code: K12, name: Kelp, colour: \"#4c5b3a\", symbol: \"●\", stitches: {cross: 900}}]\n");
            default -> longNames();
        };
    }

    /** Titles of two lines and more, eighty threads with names as long, a piece of a thumbnail and one of a table's width; uneven cloth. */
    private Path longNames() throws IOException {
        StringBuilder threads = new StringBuilder("threads:\n");
        for (int i = 0; i < 80; i++) {
            threads.append(String.format("  - {code: Sondergarn-%d, name: Nordseewellenkammdunkelblaugrau the %dth of its kind, "
                    + "colour: \"#%06x\", symbol: \"%c\", skein: %s, stitches: {cross: %d, back: %d}}%n", 2047 + i, i + 1,
                    i * 207_341 & 0xffffff, 'A' + i % 26, i % 3 == 0 ? "silk" : "cotton", 100 + 7 * i, 3 * i));
        }
        String title = "Donaudampfschifffahrtsgesellschaftskapitänsstammbaum and the winding band of the keeper of the light";
        Path basket = Ran.basket(folder.resolve("b"), """
                title: The evening table of the second and fourth Thursday in the old net loft
                prices: {cotton: 1.20 GBP}
                skeins: {silk: {length: 6 m, plies: 7, lot-matters: yes}}
                cloth-on-hand:
                  - {name: Meerdunstblaugrau handgefärbt vom Sommermarkt, kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm},
                     size: 70 cm x 140 cm, selvedge: left, flaws: [{from-top: 125 cm, wide: 2 cm}]}
                  - {name: Spray, kind: linen, count: 28, size: 62 cm x 18 cm, turning: yes}
                cloth-cuts: [{name: a good half of a fat quarter from the draper, size: 27 in x 18 in, price: 14.00 GBP}]
                pace: {stitches-per-hour: 100, hours-per-week: 12}
                goals: {year: 2027, choose: 4}
                """, "piece: " + title + "\ndesigner: Friederike von Kleinschmidt-Oberlengenfeldt\nstitches: 220 x 160\n"
                + "cloth: {name: Meerdunstblaugrau handgefärbt vom Sommermarkt, kind: linen, "
                + "count: {warp: 71 in 2 in, weft: 145 in 10 cm}, over: 2, shrink: {warp: 3%, weft: 2%}, over-dyed: yes}\n"
                + "margin: 3 in\nfinish: framed\n" + threads
                + "progress: {started: 2026-01-06, log: [{on: 2026-01-06, hours: 3, stitches: 310}]}\n"
                + "goal: {must: yes, by: 2028-01-31, weight: 2}\n");
        Files.writeString(basket.resolve("pieces/tiny.yaml"), "piece: A limpet for the lid of the smallest of all her boxes\n"
                + "stitches: 5 x 3\ncloth: {name: Spray, kind: linen, count: 28, over: 2}\nmargin: 5 mm\ncoverage: 100%\n");
        Files.writeString(basket.resolve("pieces/bookmark.yaml"), "piece: Lead line\nstitches: 30 x 320\n"
                + "cloth: {name: Spray, kind: linen, count: 28, over: 2}\nfinish: bookmark\n"
                + "threads: [{code: K1, stitches: {cross: 400}}]\n");
        Files.writeString(basket.resolve("pieces/huge.yaml"), "piece: The whole coast from the northern light to the southern\n"
                + "stitches: 900 x 600\n"
                + "cloth: {kind: block, count: 14}\nmargin: {top: 30 cm, right: 4 in, bottom: 30 cm, left: 25 cm}\n"
                + "coverage: 40%\nprogress: 4%\n");
        return basket;
    }

    /** Each breaks one rule by hand, or comes near to it and breaks none. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', value = {
        // Two lines of 16 pt want 4 mm and more.
        "OVERLAP; <text x='20' y='20' font-size='16pt'>Tide</text><text x='20' y='22' font-size='16pt'>Rope</text>",
        "-; <text x='20' y='20' font-size='16pt'>Tide</text><text x='20' y='30' font-size='16pt'>Rope</text>",
        "OVERLAP; <text x='20' y='20' font-size='10pt'>12</text><text x='22' y='20' font-size='10pt'>13</text>",
        // Small letters of 16 pt are some 2.8 mm high: their middle is 1.4 above the line.
        "STRUCK; <oar/><strike/>",
        "STRUCK; <line x1='10' y1='18.6' x2='50' y2='18.6' stroke='#9a2f2d' stroke-width='0.2'/><oar/>",
        "STRUCK; <g transform='translate(20 40) rotate(-90)'><text x='0' y='0' font-size='16pt'>oar</text></g>"
            + "<line x1='18.6' y1='20' x2='18.6' y2='60' stroke='#20262b' stroke-width='0.2'/>",
        // Between two letters; a circle's edge; the end of a thread.
        "STRUCK; <text x='20' y='20' font-size='16pt'>o o</text>"
            + "<line x1='23.8' y1='10' x2='23.8' y2='30' stroke='#20262b' stroke-width='0.2'/>",
        "STRUCK; <oar/><circle cx='21.4' cy='14.6' r='4' fill='none' stroke='#20262b' stroke-width='0.2'/>",
        // An underline, a tint, a quiet rule, and a line blanked out before the text is set, or set in a dashed line's gap.
        "-; <oar/><line x1='10' y1='20.4' x2='50' y2='20.4' stroke='#20262b' stroke-width='0.2'/>",
        "-; <oar/><line x1='10' y1='18.6' x2='50' y2='18.6' stroke='#c3c8c4' stroke-width='0.2'/>",
        "-; <strike/><rect x='19' y='14' width='20' height='8' fill='#ffffff'/>"
            + "<oar/>",
        "-; <line x1='10' y1='18.6' x2='50' y2='18.6' stroke='#20262b' stroke-width='0.2' stroke-dasharray='9 20'/>"
            + "<oar/>",
        // A blank that lies behind the line, or above the text.
        "STRUCK; <rect x='19' y='14' width='20' height='8' fill='#ffffff'/><strike/>"
            + "<oar/>",
        "STRUCK; <oar/><rect x='19' y='14' width='20' height='8' fill='#ffffff'/>",
        // A dimension without a figure, with one that is words, with one too far away; two that share one.
        "ARROW; <dim y='40'/>",
        "ARROW; <dim y='40'/><text x='30' y='38' font-size='10pt'>wide</text>",
        "ARROW; <dim y='40'/><text x='30' y='20' font-size='10pt'>12 in</text>",
        "ARROW; <dim y='40'/><dim y='42'/><text x='30' y='38' font-size='10pt'>12 in</text>",
        "-; <dim y='40'/><dim y='44'/><text x='30' y='38' font-size='10pt'>12 in</text><text x='30' y='50' font-size='10pt'>7 in</text>",
        "ARROW; <path d='M20 40l2.2 -0.7v1.4z'/>",
        // Figures are three quarters of the type: 8.5 pt gives 6.4; such type is set in line, so three sizes are laid by hand.
        "FRACTION; <text x='20' y='20' font-size='10pt'><tspan font-size='6pt'>1</tspan>⁄<tspan font-size='6pt'>16</tspan></text>",
        "-; <text x='20' y='20' font-size='10pt'>2 1⁄16 in</text>",
        // A page of which a line is used, and the last like it.
        "WHITE; <text x='20' y='20' font-size='10pt'>Tide</text></page>"
            + "<page width='100' height='100'><text x='20' y='20' font-size='10pt'>Rope</text>",
        "-; <text x='20' y='20' font-size='10pt'>Tide</text><text x='20' y='45' font-size='10pt'>Tide</text></page>"
            + "<page width='100' height='100'><text x='20' y='20' font-size='10pt'>Rope</text>"})
    void each_rule_can_be_broken(String kind, String drawn) throws IOException {
        Path templates = Files.createDirectories(folder.resolve("templates"));
        String heads = "<g fill='#20262b'><line x1='20' y1='$1' x2='60' y2='$1' stroke='#20262b' stroke-width='0.2'/>"
                + "<path d='M20 $1l2.2 -0.7v1.4z'/><path d='M60 $1l-2.2 -0.7v1.4z'/></g>";
        Files.writeString(templates.resolve("kit-lists.ftlx"), "<document title='t' lang='en'><page width='100' height='100'>"
                + drawn.replaceAll("<dim y='(\\d+)'/>", heads).replace("<oar/>", "<text x='20' y='20' font-size='16pt'>oar</text>")
                .replace("<strike/>", "<line x1='10' y1='18.6' x2='50' y2='18.6' stroke='#20262b' stroke-width='0.2'/>")
                + "</page></document>");
        Ran ran = Ran.kitleaf("print", "examples/harbour", "--out", folder.resolve("out"), "--only", "kit-lists", "--templates", templates);
        assertEquals(0, ran.code(), ran.err());
        Proof proof = SheetProof.of(Files.readAllBytes(folder.resolve("out/kit-lists.pdf")));
        assertEquals(kind.equals("-") ? List.of() : List.of(Kind.valueOf(kind)),
                proof.faults().stream().map(Fault::kind).distinct().toList(), proof.faults().toString());
    }

    /** The last page of what has a bookmark of its own may be short, though others follow. */
    @Test
    void the_last_page_of_each_piece_may_be_short() throws IOException {
        Path templates = Files.createDirectories(folder.resolve("templates"));
        String page = "<page width='100' height='100'>%s<text x='20' y='20' font-size='10pt'>Tide</text></page>";
        Files.writeString(templates.resolve("kit-lists.ftlx"), "<document title='t' lang='en'>"
                + page.formatted("<bookmark title='One' level='1'/>")
                + page.formatted("<bookmark title='Two' level='1'/>") + page.formatted("") + "</document>");
        Ran ran = Ran.kitleaf("print", "examples/harbour", "--out", folder.resolve("out"), "--only", "kit-lists", "--templates", templates);
        assertEquals(0, ran.code(), ran.err());
        Proof proof = SheetProof.of(Files.readAllBytes(folder.resolve("out/kit-lists.pdf")));
        assertEquals(List.of(2), proof.faults().stream().map(Fault::page).toList(), proof.faults().toString());
    }
}
