package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every PDF of the example basket, opened by programs that share no code with each other: none warns, and they see the
 * same letters on pages of the same size. A program that is not installed is left out, and {@code .ci/check-pdfs} says so;
 * with {@code KITLEAF_VIEWERS=all} in the environment that is a failure.
 */
class OtherViewersTests {

    /** Viewers print sizes with three decimals at least. */
    private static final double PRINTED_PT = 0.01;

    private static final Pattern POPPLER_SIZE = Pattern.compile("Page +[0-9]+ size: +([0-9.]+) x ([0-9.]+) pts.*");
    private static final Pattern MUPDF_SIZE = Pattern.compile(".*<MediaBox l=\"([0-9.-]+)\" b=\"([0-9.-]+)\" r=\"([0-9.-]+)\" t=\"([0-9.-]+)\" */>.*");

    /** Says something of how that program was built, not of the file. */
    private static final String BUILT_WITHOUT_ICC = "warning: ICC support is not available";

    @TempDir
    private static Path out;

    @BeforeAll
    static void printTheExample() {
        for (String paper : List.of("A4", "letter")) {
            assertEquals(0, Ran.kitleaf("print", "examples/harbour", "--paper", paper, "--out", out.resolve(paper)).code());
        }
    }

    private static List<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.walk(out)) {
            List<Path> sheets = files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
            assertTrue(sheets.size() >= 12, sheets.toString());
            return sheets;
        }
    }

    /** What a program said, both streams in one; the test is left out when it is not installed. */
    private static List<String> run(int mostCode, String... command) throws IOException, InterruptedException {
        boolean installed = Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, command[0])));
        String missing = command[0] + " is not installed";
        if ("all".equals(System.getenv("KITLEAF_VIEWERS"))) {
            assertTrue(installed, missing);
        }
        assumeTrue(installed, missing);
        Path said = Files.createTempFile(out, "said", ".txt");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS), command[0] + " hangs");
        String text = Files.readString(said, StandardCharsets.UTF_8);
        assertTrue(process.exitValue() <= mostCode, String.join(" ", command) + ": " + text);
        return text.lines().filter(line -> !line.equals(BUILT_WITHOUT_ICC)).toList();
    }

    private static void noWarning(Path sheet, List<String> said) {
        for (String line : said) {
            assertFalse(line.matches("(?i).*\\b(warning|error|syntax|repair|corrupt|damaged)\\b.*") && !line.startsWith("No syntax"), sheet + ": " + line);
        }
    }

    /** How often each letter stands in a text; order and spaces are each reader's own affair. */
    private static Map<String, Integer> letters(List<String> lines) {
        Map<String, Integer> letters = new TreeMap<>();
        Normalizer.normalize(String.join("", lines), Normalizer.Form.NFKC).codePoints()
                .filter(c -> !Character.isWhitespace(c) && !Character.isISOControl(c) && !Character.isSpaceChar(c))
                .forEach(c -> letters.merge(Character.toString(c), 1, Integer::sum));
        return letters;
    }

    private static int sum(Map<String, Integer> letters) {
        return letters.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static Map<String, Integer> lettersInPdfBox(Path sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
            return letters(List.of(new PDFTextStripper().getText(document)));
        }
    }

    private static List<List<Double>> sizesInPdfBox(Path sheet) throws IOException {
        List<List<Double>> sizes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
            for (PDPage page : document.getPages()) {
                sizes.add(List.of((double) page.getMediaBox().getWidth(), (double) page.getMediaBox().getHeight()));
            }
        }
        return sizes;
    }

    private static void sameSizes(Path sheet, List<List<Double>> seen) throws IOException {
        List<List<Double>> sizes = sizesInPdfBox(sheet);
        assertEquals(sizes.size(), seen.size(), sheet + " pages");
        for (int i = 0; i < sizes.size(); i++) {
            assertEquals(sizes.get(i).get(0), seen.get(i).get(0), PRINTED_PT, sheet + " page " + (i + 1));
            assertEquals(sizes.get(i).get(1), seen.get(i).get(1), PRINTED_PT, sheet + " page " + (i + 1));
        }
    }

    @Test
    void qpdf_finds_the_structure_sound() throws Exception {
        for (Path sheet : sheets()) {
            noWarning(sheet, run(0, "qpdf", "--check", sheet.toString()));
        }
    }

    @Test
    void poppler_reads_the_same_without_a_warning() throws Exception {
        for (Path sheet : sheets()) {
            // In reading order poppler puts words that end their line with a hyphen together; as laid out it leaves them alone.
            List<String> text = run(0, "pdftotext", "-layout", "-enc", "UTF-8", sheet.toString(), "-");
            assertEquals(lettersInPdfBox(sheet), letters(text), sheet.toString());
            List<String> info = run(0, "pdfinfo", "-f", "1", "-l", "9999", sheet.toString());
            noWarning(sheet, info);
            sameSizes(sheet, info.stream().map(POPPLER_SIZE::matcher).filter(Matcher::matches)
                    .map(size -> List.of(Double.valueOf(size.group(1)), Double.valueOf(size.group(2)))).toList());
            noWarning(sheet, run(0, "pdftoppm", "-r", "30", sheet.toString(), out.resolve("picture").toString()));
        }
    }

    @Test
    void mupdf_reads_the_same_without_a_warning() throws Exception {
        for (Path sheet : sheets()) {
            // It does not look at what a fraction in line stands for, only at the slash that is drawn.
            List<String> text = run(0, "mutool", "draw", "-q", "-F", "txt", sheet.toString()).stream()
                    .map(line -> line.replace('\u2215', '\u2044')).toList();
            assertEquals(lettersInPdfBox(sheet), letters(text), sheet.toString());
            List<String> pages = run(0, "mutool", "pages", sheet.toString());
            noWarning(sheet, pages);
            sameSizes(sheet, pages.stream().map(MUPDF_SIZE::matcher).filter(Matcher::matches)
                    .map(box -> List.of(Double.parseDouble(box.group(3)) - Double.parseDouble(box.group(1)),
                            Double.parseDouble(box.group(4)) - Double.parseDouble(box.group(2)))).toList());
            noWarning(sheet, run(0, "mutool", "draw", "-q", "-r", "30", "-o", out.resolve("picture%d.png").toString(), sheet.toString()));
        }
    }

    @Test
    void ghostscript_reads_the_same_and_stops_at_no_warning() throws Exception {
        for (Path sheet : sheets()) {
            Path text = out.resolve("text.txt");
            noWarning(sheet, run(0, "gs", "-q", "-dNOPAUSE", "-dBATCH", "-dPDFSTOPONERROR", "-dPDFSTOPONWARNING", "-sDEVICE=txtwrite",
                    "-sOutputFile=" + text, sheet.toString()));
            // Ghostscript 10.00 looks a two-byte code up by its last byte where a font has both, so that 1/4 comes out as d4: only the
            // number of letters can be held to. What it draws is right, and poppler and MuPDF read the right letters.
            assertEquals(sum(lettersInPdfBox(sheet)), sum(letters(Files.readAllLines(text))), sheet.toString());
            noWarning(sheet, run(0, "gs", "-q", "-dNOPAUSE", "-dBATCH", "-dPDFSTOPONERROR", "-dPDFSTOPONWARNING", "-sDEVICE=nullpage", sheet.toString()));
        }
    }
}
