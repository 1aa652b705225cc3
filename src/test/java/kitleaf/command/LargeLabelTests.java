package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.function.Predicate;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import kitleaf.press.type.TextMeasure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bobbin labels in large print: as large as their stock allows, found again here by measuring. */
class LargeLabelTests {

    private static final double MM_PER_POINT = 25.4 / 72;
    private static final double STEP_PT = 0.5;
    /** Sizes of type are found by halving, to a 128th of themselves, each from where its print begins. */
    private static final double FOUND = 1 / 128.0;
    /** What the layout leaves: 1.8 mm at the edges, 1.6 mm after the swatch, 1 mm below it; lines of 1.13 times the size. */
    private static final double PAD_MM = 1.8;
    private static final double GAP_MM = 1;
    private static final double LEADING = 1.13;
    private static final TextMeasure MEASURE = new TextMeasure();

    private static final String PIECE = """
            piece: Groyne at slack water
            stitches: 140 x 210
            cloth: {kind: linen, count: 36, over: 2}
            threads:
              - {code: A101, name: Kelp, colour: "#6b7f8c", symbol: "●", strands: 1, stitches: {cross: 500}}
              - {code: "Oyster 1204-b", name: Wet sand by the long groyne, colour: "#6b7f8c", symbol: "●", strands: 1, stitches: {cross: 500}}
              - {code: B2, colour: "#6b7f8c", symbol: "●", strands: 1, stitches: {cross: 500}}
            """;

    @TempDir
    private Path folder;

    private byte[] labels(String settings, Object... more) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), settings, PIECE);
        Object[] arguments = new Object[6 + more.length];
        System.arraycopy(new Object[] {"print", basket, "--only", "bobbin-labels", "--out", folder.resolve("out")}, 0, arguments, 0, 6);
        System.arraycopy(more, 0, arguments, 6, more.length);
        Ran ran = Ran.kitleaf(arguments);
        assertEquals(0, ran.code(), ran.err());
        return Files.readAllBytes(folder.resolve("out/bobbin-labels.pdf"));
    }

    /** A front face as it was printed: the sizes of its code and of the rest, and what it says. */
    private record Front(double codePt, double textPt, String code, String name, String piece) { }

    private static Front front(byte[] pdf, double leftMm, double topMm, double widthMm, double heightMm) throws IOException {
        List<Letter> letters = ReadBack.letters(pdf, 1).stream().filter(it -> it.x() > leftMm && it.x() < leftMm + widthMm
                && it.y() > topMm && it.y() < topMm + heightMm && it.font().contains("Atkinson")).toList();
        double firstMm = letters.stream().filter(it -> it.font().endsWith("SemiBold")).mapToDouble(Letter::y).min().orElseThrow();
        Predicate<Letter> first = it -> Math.abs(it.y() - firstMm) < 0.01;
        double codePt = letters.stream().filter(first).mapToDouble(Letter::sizePt).max().orElseThrow();
        double textPt = letters.stream().filter(first.negate()).mapToDouble(Letter::sizePt).min().orElseThrow();
        return new Front(codePt, textPt, text(letters, first), text(letters, first.negate().and(it -> it.font().endsWith("Regular"))),
                text(letters, first.negate().and(it -> it.font().endsWith("SemiBold"))));
    }

    /** Lines from the top, joined by spaces but after a hyphen. */
    private static String text(List<Letter> letters, Predicate<Letter> which) {
        TreeMap<Long, StringBuilder> lines = new TreeMap<>();
        letters.stream().filter(which).forEach(it -> lines.computeIfAbsent(Math.round(it.y() * 10), y -> new StringBuilder()).append(it.text()));
        return String.join(" ", lines.values()).replace("- ", "-").strip();
    }

    private static boolean whole(String text, int weight, double sizePt, double roomMm) {
        return Arrays.stream(text.split(" |(?<=[^ ]-)")).allMatch(word -> MEASURE.widthMm(word, "text", weight, sizePt) <= roomMm);
    }

    private static boolean fits(Front front, double codePt, double textPt, double widthMm, double heightMm) {
        double swatchMm = Math.min(11, Math.max(4, (heightMm - 2 * PAD_MM) * 0.3));
        double codeRoomMm = widthMm - 2 * PAD_MM - swatchMm - 1.6;
        if (MEASURE.widthMm(front.code(), "text", 600, codePt) > codeRoomMm + 1e-6) {
            return false;
        }
        double innerMm = widthMm - 2 * PAD_MM;
        double headMm = headMm(codePt * MM_PER_POINT, swatchMm);
        int lines = MEASURE.lines(front.name(), "text", 400, textPt, innerMm) + MEASURE.lines(front.piece(), "text", 600, textPt, innerMm);
        return whole(front.name(), 400, textPt, innerMm) && whole(front.piece(), 600, textPt, innerMm)
                && lines * textPt * MM_PER_POINT * LEADING <= heightMm - 2 * PAD_MM - headMm - GAP_MM;
    }

    /**
     * The swatch stands at the middle of the capitals of the code's first line (ascenders 0.78, capitals 0.668 of the size: the text face's
     * font file), of which one line is as high as its type.
     */
    private static double headMm(double codeMm, double swatchMm) {
        double middleMm = codeMm * (0.78 - 0.668 / 2);
        return Math.max(swatchMm / 2, middleMm) + Math.max(swatchMm / 2, codeMm - middleMm);
    }

    /** Fronts of the usual stock and of three cuts: at the sizes printed they fit, and one step larger they do not. */
    @ParameterizedTest
    @CsvSource({"'', 95, 61", "'label-stock: {cut: 95 mm x 61 mm}', 95, 61", "'label-stock: {cut: 63 mm x 25 mm}', 63, 25",
        "'label-stock: {cut: 80 mm x 40 mm}', 80, 40", "'label-stock: {cut: 60 mm x 30 mm}', 60, 30"})
    void no_label_could_be_set_one_step_larger(String settings, double widthMm, double heightMm) throws IOException {
        byte[] pdf = labels(settings, "--large");
        int columns = (int) Math.floor(190 / widthMm);
        double leftMm = (210 - columns * widthMm) / 2;
        for (int label = 0; label < 3; label++) {
            Front front = front(pdf, leftMm + label % columns * widthMm, 10 + label / columns * heightMm, widthMm / 2, heightMm);
            String told = settings + " " + front;
            assertTrue(front.code().equals(List.of("A101", "Oyster 1204-b", "B2").get(label)) && front.piece().equals("Groyne at slack water"), told);
            assertTrue(fits(front, front.codePt(), front.textPt(), widthMm / 2, heightMm), told);
            double nextPt = front.textPt() + STEP_PT;
            double swatchMm = Math.min(11, Math.max(4, (heightMm - 2 * PAD_MM) * 0.3));
            double ordinaryPt = Math.max(12, Math.min(22, swatchMm / MM_PER_POINT * 0.9));
            // A code is a quarter larger than the rest and 12 pt, or as large as one line holds.
            double widestPt = (widthMm / 2 - 2 * PAD_MM - swatchMm - 1.6) / MEASURE.widthMm(front.code(), "text", 600, 1);
            assertTrue(front.codePt() >= Math.min(widestPt, Math.max(12, front.textPt() * 1.25)) - 1e-3, told);
            double nextCodePt = Math.min(widestPt, Math.max(nextPt * 1.25, ordinaryPt));
            assertTrue(front.textPt() >= 24 || !fits(front, nextCodePt, nextPt, widthMm / 2, heightMm), told + " could be larger");
            assertTrue(front.codePt() >= 47.5 || !fits(front, front.codePt() + STEP_PT, front.textPt(), widthMm / 2, heightMm), told + ": the code could be larger");
        }
    }

    @ParameterizedTest
    @CsvSource({"''", "'label-stock: {cut: 60 mm x 30 mm}'", "'label-stock: {columns: 4, rows: 6, label: 40 mm, first: 16 mm x 15 mm, pitch: 46 mm x 45 mm, shape: round}'",
        "'label-stock: {cut: 70 mm x 50 mm, style: face}'", "'label-stock: {cut: 40 mm x 24 mm}'"})
    void labels_of_any_stock_are_no_smaller_than_ordinary_ones_and_nothing_overlaps(String settings) throws IOException {
        byte[] ordinary = labels(settings);
        byte[] large = labels(settings, "--large");
        assertTrue(smallest(large) >= smallest(ordinary) * (1 - FOUND), smallest(large) + " under " + smallest(ordinary));
        assertEquals(List.of(), TextBoxes.overlaps(ReadBack.letters(large, 1)));
    }

    /** Of the text face, what belongs to the foot and to folds left out. */
    private static double smallest(byte[] pdf) throws IOException {
        return ReadBack.letters(pdf, 1).stream().filter(it -> it.y() < 230 && it.turned() == 0 && it.font().contains("Atkinson") && !it.text().isBlank())
                .mapToDouble(Letter::sizePt).min().orElseThrow();
    }

    @Test
    void round_labels_grow_too() throws IOException {
        String stock = "label-stock: {columns: 3, rows: 4, label: 60 mm, first: 10 mm x 15 mm, pitch: 64 mm x 64 mm, shape: round}";
        TreeSet<Double> usual = new TreeSet<>(ReadBack.letters(labels(stock), 1).stream().map(Letter::sizePt).toList());
        byte[] pdf = labels(stock, "--large");
        TreeSet<Double> large = new TreeSet<>(ReadBack.letters(pdf, 1).stream().filter(it -> it.font().contains("Atkinson")).map(Letter::sizePt).toList());
        assertTrue(large.first() > 1.2 * usual.first(), usual + " and " + large);
        for (Letter letter : ReadBack.letters(pdf, 1)) {
            assertTrue(Math.min(Math.hypot(letter.x() - 40, letter.y() - 45), Math.min(Math.hypot(letter.x() - 104, letter.y() - 45),
                    Math.hypot(letter.x() - 168, letter.y() - 45))) < 30, letter.toString());
        }
    }

    /** Of the 210 mm of A5 the top margin takes 10 and the foot of large print some 45: 170 mm high ones fit the ordinary sheet only. */
    @Test
    void labels_too_high_for_the_foot_are_a_problem_at_their_size() throws IOException {
        String settings = "paper: A5\nlabel-stock: {cut: 60 mm x %s mm, style: face}";
        labels(String.format(settings, 170));
        Ran ran = Ran.kitleaf("print", Ran.basket(folder.resolve("b"), String.format(settings, 170), PIECE), "--large", "--out", folder.resolve("new"));
        assertEquals(1, ran.code());
        Matcher told = Pattern.compile("basket\\.yaml:2:20: a label 170\\.0 mm high has no room on A5 in large print \\(--large\\), which has "
                + "(1\\d\\d\\.\\d) mm above its foot; write a smaller label, or name larger paper, or leave out --large\n.*\n *\\| +\\^+\n").matcher(ran.err());
        assertTrue(told.find(), ran.err());
        assertTrue(Files.notExists(folder.resolve("new")));
        labels(String.format(settings, told.group(1)), "--large");
        Ran check = Ran.kitleaf("check", Ran.basket(folder.resolve("c"), String.format(settings, 170) + "\nlarge-print: yes", PIECE));
        assertEquals(1, check.code());
        assertTrue(check.err().contains(":20: a label 170.0 mm high has no room on A5 in large print, which has "), check.err());
    }
}
