package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.press.type.TextMeasure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes of threads on labels, tags and lists: a hyphen at a line's end would read as one that parts a word. */
class CodePrintTests {

    /** The least size of the scale at which a code is kept in one line. */
    private static final double NARROW_PT = 6.5;
    private static final TextMeasure MEASURE = new TextMeasure();
    private static final List<String> CODES = List.of("HARBOUR-1000", "Oyster 1204-b", "MOORING-1000-LANTERN", "K-12", "WWWWW",
            "Breakwater-lantern-keepers-long-1000");
    private static final String TITLE = "Groyne at slack water by the old lantern";

    @TempDir
    private Path folder;

    private byte[] print(String settings, String threads, String kind, Object... more) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), settings, "piece: " + TITLE
                + "\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nthreads:\n" + threads);
        List<Object> arguments = new ArrayList<>(List.of("print", basket, "--only", kind, "--out", folder.resolve("out")));
        arguments.addAll(List.of(more));
        Ran ran = Ran.kitleaf(arguments.toArray());
        assertEquals(0, ran.code(), ran.err());
        return Files.readAllBytes(folder.resolve("out/" + kind + ".pdf"));
    }

    private static String threads(List<String> codes) {
        return codes.stream().map(code -> "  - {code: \"" + code + "\", name: Kelp, colour: \"#6b7f8c\", strands: 2, "
                + "stitches: {cross: 500}}\n").collect(Collectors.joining());
    }

    private static Object[] large(boolean large, String language) {
        return large ? new Object[] {"--large", "--language", language} : new Object[] {"--language", language};
    }

    /** What is set in the weight of codes, line by line, blanks left out. */
    private static List<List<Letter>> lines(byte[] pdf) throws IOException {
        List<List<Letter>> lines = new ArrayList<>();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            Map<Long, List<Letter>> byHeight = new TreeMap<>();
            ReadBack.letters(pdf, page).stream().filter(it -> it.font().endsWith("SemiBold") && !it.text().isBlank())
                    .forEach(it -> byHeight.computeIfAbsent(Math.round(it.y() * 50) * 2 + (it.turned() == 0 ? 0 : 1),
                            y -> new ArrayList<>()).add(it));
            byHeight.values().forEach(line -> line.sort(Comparator.comparingDouble(it -> it.turned() == 0 ? it.x() : -it.x())));
            lines.addAll(byHeight.values());
        }
        return lines;
    }

    private static String text(List<Letter> line) {
        return line.stream().map(Letter::text).collect(Collectors.joining());
    }

    /** No title, name or phrase of these pages in that weight has a hyphen, so that each is one of a code. */
    private static void noHyphenStandsAtALinesEnd(byte[] pdf, String told) throws IOException {
        int hyphens = 0;
        for (List<Letter> line : lines(pdf)) {
            for (int i = 0; i < line.size(); i++) {
                if (line.get(i).text().equals("-")) {
                    hyphens++;
                    assertTrue(i > 0 && i + 1 < line.size() && beside(line.get(i - 1), line.get(i))
                            && beside(line.get(i), line.get(i + 1)), told + ": a hyphen at an end in " + text(line));
                }
            }
        }
        assertTrue(hyphens >= 5, told + ": " + hyphens);
    }

    private static boolean beside(Letter left, Letter right) {
        return Math.abs(right.x() - left.x() - (left.turned() == 0 ? left.width() : -left.width())) < 0.6;
    }

    /**
     * The room beside a swatch is by hand the face less 1.8 mm at both sides, the swatch (three tenths of what is inside, 4 to 11 mm) and
     * 1.6 mm; a round of 26 mm holds 17 mm below its swatch.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2| 19.88| {cut: 63 mm x 25 mm}", "1| 24.88| {cut: 35 mm x 20 mm, style: face}",
        "1| 10.8| {cut: 20 mm x 12 mm, style: face}", "2| 19.88| {cut: 30 mm x 40 mm}", "2| 10.8| {cut: 40 mm x 12 mm}",
        "1| 54.9| {paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, first: 3/16 in x 1/2 in, pitch: 2 3/4 in x 1 in, "
                + "style: face}",
        "1| 17| {columns: 6, rows: 8, label: 26 mm, first: 16 mm x 15 mm, pitch: 30 mm x 32 mm, shape: round}",
        "1| 30| {columns: 4, rows: 6, label: 40 mm, first: 16 mm x 15 mm, pitch: 46 mm x 45 mm, shape: round}"})
    void a_code_stands_in_one_line_of_its_label_however_small(int faces, double roomMm, String stock) throws IOException {
        for (String language : List.of("en", "de")) {
            for (boolean large : new boolean[] {false, true}) {
                byte[] pdf = print("label-stock: " + stock + "\n", threads(CODES), "bobbin-labels", large(large, language));
                String told = stock + " " + language + (large ? " large" : "");
                String all = lines(pdf).stream().map(CodePrintTests::text).collect(Collectors.joining("\n"));
                for (String code : CODES) {
                    if (MEASURE.widthMm(code, "text", 600, NARROW_PT) <= roomMm) {
                        assertEquals(faces, all.split(Pattern.quote(code.replace(" ", "")), -1).length - 1,
                                told + ": " + code + " in\n" + all);
                    }
                }
                noHyphenStandsAtALinesEnd(pdf, told);
                assertTrue(lines(pdf).stream().flatMap(List::stream).filter(it -> it.text().equals("-"))
                        .allMatch(it -> it.sizePt() >= NARROW_PT - 1e-3), told + ": a code under " + NARROW_PT + " pt");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"bag-tags, A5", "bag-tags, A4", "kit-lists, A5", "buy-list, A5", "kit-lists, A4", "buy-list, A4"})
    void tags_and_lists_keep_codes_whole(String kind, String paper) throws IOException {
        List<String> codes = List.of("HARBOUR-1000", "Lantern-keepers-grey-1000", "Breakwater-lantern-keepers-1000"
                + (kind.equals("bag-tags") ? "" : "-long-grey-winter-evening"));
        for (String language : List.of("en", "de")) {
            for (boolean large : new boolean[] {false, true}) {
                byte[] pdf = print("paper: " + paper + "\n", threads(codes), kind, large(large, language));
                String all = lines(pdf).stream().map(CodePrintTests::text).collect(Collectors.joining("\n"));
                for (String code : codes) {
                    assertTrue(all.contains(code), kind + " " + language + large + ": " + code + " in\n" + all);
                }
                noHyphenStandsAtALinesEnd(pdf, kind + " " + language + large);
            }
        }
    }

    /** On the narrowest face, 10.8 mm beside the swatch: where it has to be parted it is between letters. */
    @Test
    void what_has_no_room_in_a_line_is_parted_beside_no_hyphen_and_at_a_blank_or_slash_first() throws IOException {
        byte[] pdf = print("label-stock: {cut: 20 mm x 20 mm, style: face}\n", threads(List.of("MOORING-1000-LANTERN",
                "AB-CD-EF-GH-IJ-KL-MN", "North/Sea-10", "Winter sea-10")), "bobbin-labels");
        noHyphenStandsAtALinesEnd(pdf, "small face");
        String all = lines(pdf).stream().map(CodePrintTests::text).collect(Collectors.joining("\n"));
        for (String part : List.of("North/", "Sea-10", "Winter", "sea-10")) {
            assertTrue(all.contains(part), part + " in\n" + all);
        }
    }

    /** What is drawn is the plain hyphen, so that a code is found and copied as she typed it; the long dash stays one. */
    @Test
    void a_reader_of_the_pdf_finds_the_code_as_typed() throws IOException {
        for (String kind : List.of("bobbin-labels", "bag-tags", "kit-lists", "buy-list")) {
            String text = ReadBack.text(print("", threads(List.of("HARBOUR-1000", "K–12")), kind), 0);
            assertTrue(text.contains("HARBOUR-1000") && text.contains("K–12"), kind + ": " + text);
        }
    }

    /** The front of a folded label has the title, its back the rest; on a single face what is cut is the title. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"{cut: 20 mm x 12 mm, style: face}", "{cut: 25 mm x 13 mm, style: face}", "{cut: 40 mm x 12 mm}",
        "{cut: 35 mm x 20 mm, style: face}", "{cut: 63 mm x 25 mm}",
        "{columns: 6, rows: 8, label: 26 mm, first: 16 mm x 15 mm, pitch: 30 mm x 32 mm, shape: round}"})
    void a_title_never_pushes_out_strands_or_needle(String stock) throws IOException {
        for (String language : List.of("en", "de")) {
            for (boolean large : new boolean[] {false, true}) {
                byte[] pdf = print("label-stock: " + stock + "\n", threads(List.of("K12", "K13", "K14")), "bobbin-labels",
                        large(large, language));
                String text = ReadBack.text(pdf, 1).replaceAll("[\\s\u00a0]+", "");
                String facts = language.equals("en") ? "2str(ands)?,(nd|needle)2\\d" : "2-fäd(ig|\\.)[,·](Nd\\.|Nadel)2\\d";
                assertEquals(3, text.split(facts, -1).length - 1, stock + " " + language + large + ": " + text);
            }
        }
    }

    /** Half a millimetre out of the middle is not seen; words that wrap otherwise higher up may leave so much. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"26| 30| 32", "40| 46| 45"})
    void what_is_on_a_round_label_stands_in_its_middle(double across, double pitchX, double pitchY) throws IOException {
        String stock = "label-stock: {columns: 4, rows: 6, label: " + across + " mm, first: 16 mm x 15 mm, pitch: " + pitchX + " mm x "
                + pitchY + " mm, shape: round}\n";
        for (boolean large : new boolean[] {false, true}) {
            byte[] pdf = print(stock, threads(List.of("K12", "HARBOUR-1000", "MOORING-1000-LANTERN", "Oyster 1204-b")), "bobbin-labels",
                    large(large, "en"));
            List<Drawn> swatches = ReadBack.drawn(pdf, 1).stream().filter(it -> it.filled() && it.fill() == 0x6b7f8c).toList();
            assertEquals(4, swatches.size());
            for (int label = 0; label < 4; label++) {
                double middle = 16 + label * pitchX + across / 2;
                Map<Long, List<Letter>> lines = new TreeMap<>();
                ReadBack.letters(pdf, 1).stream().filter(it -> Math.abs(it.x() - middle) < across / 2 && !it.text().isBlank())
                        .forEach(it -> lines.computeIfAbsent(Math.round(it.y() * 20), y -> new ArrayList<>()).add(it));
                assertTrue(lines.size() >= 3, "label " + label);
                for (List<Letter> line : lines.values()) {
                    double from = line.stream().mapToDouble(Letter::x).min().orElseThrow();
                    double to = line.stream().mapToDouble(it -> it.x() + it.width()).max().orElseThrow();
                    assertEquals(middle, (from + to) / 2, 0.05, text(line));
                }
                double swatchX = middle;
                Drawn swatch = swatches.stream().filter(it -> Math.abs((it.least(true) + it.most(true)) / 2 - swatchX) < 0.05).findFirst()
                        .orElseThrow();
                List<Letter> last = new ArrayList<>(lines.values()).get(lines.size() - 1);
                // Of a line of 1.13 times the size 0.285 are below the baseline: half of 0.13, and 0.22 for descenders.
                double below = 15 + across - last.get(0).y() - 0.285 * last.get(0).sizePt() * 25.4 / 72;
                assertEquals(swatch.least(false) - 15, below, 1, across + ", label " + label + (large ? " large" : ""));
            }
        }
    }
}
