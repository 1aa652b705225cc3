package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.client.result.ParsedResultType;
import com.google.zxing.client.result.ResultParser;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bag tags printed by the whole program, measured with PDFBox and decoded with ZXing, neither of which made them. */
class TagPrintTests {

    private static final double TRUE_MM = 0.02;
    private static final Path HARBOUR = Path.of("examples/harbour");

    private static final String PIECE = """
            piece: Groyne
            designer: Nell Ferry
            stitches: 140 x 210
            cloth: {name: Spray, kind: linen, count: 28, over: 2}
            margin: 3 in
            progress: {started: 2026-02-14, log: [{on: 2026-03-01, hours: 2.5, stitches: 260}]}
            goal: {by: 2027-06-30}
            threads:
            """;

    @TempDir
    private Path folder;

    private static String threads(int number) {
        return IntStream.range(0, number).mapToObj(i -> "  - {code: N" + (100 + i) + ", colour: \"#6b7f8c\", symbol: \"●\", stitches: {cross: 50}}\n")
                .collect(Collectors.joining());
    }

    private byte[] print(Path basket, String sheet, Object... more) throws IOException {
        Object[] fixed = {"print", basket, "--only", sheet, "--out", folder.resolve("out")};
        Object[] arguments = Arrays.copyOf(fixed, fixed.length + more.length);
        System.arraycopy(more, 0, arguments, fixed.length, more.length);
        Ran ran = Ran.kitleaf(arguments);
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        return Files.readAllBytes(folder.resolve("out/" + sheet + ".pdf"));
    }

    /** Corner marks: crosses of two strokes, in the middle of which is the corner. */
    private static List<double[]> corners(byte[] pdf, int page) throws IOException {
        return ReadBack.drawn(pdf, page).stream()
                .filter(it -> it.stroked() && it.operations().equals("MLML") && it.stroke() == 0x20262b && Math.abs(it.lineWidthMm() - 0.25) < 0.005)
                .map(it -> new double[] {(it.least(true) + it.most(true)) / 2, (it.least(false) + it.most(false)) / 2}).toList();
    }

    private static boolean has(List<double[]> places, double x, double y) {
        return places.stream().anyMatch(place -> Math.abs(place[0] - x) <= TRUE_MM && Math.abs(place[1] - y) <= TRUE_MM);
    }

    /**
     * The page of the backs laid over that of the fronts as the sheet turns: mirrored left to right over an upright edge, top to
     * bottom over a level one.
     */
    @ParameterizedTest
    @CsvSource({"A4, long-edge, 100", "A4, short-edge, 100", "letter, long-edge, 99.3", "letter, short-edge, 99.3", "A4 landscape, long-edge, 100",
        "A4 landscape, short-edge, 100", "A5, long-edge, 100"})
    void backs_land_on_their_fronts(String paper, String sides, double measured) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "tags: {sides: " + sides + "}\nprinter: {measured-across: " + measured + " mm}\n", PIECE + threads(3));
        byte[] pdf = print(basket, "bag-tags", "--paper", paper);
        double width;
        double height;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(2, document.getNumberOfPages());
            width = document.getPage(0).getMediaBox().getWidth() * 25.4 / 72;
            height = document.getPage(0).getMediaBox().getHeight() * 25.4 / 72;
        }
        for (int page = 1; page <= 2; page++) {
            double top = corners(pdf, page).stream().mapToDouble(corner -> corner[1]).min().orElseThrow();
            double bottom = corners(pdf, page).stream().mapToDouble(corner -> corner[1]).max().orElseThrow();
            List<Drawn> bars = ReadBack.drawn(pdf, page).stream().filter(it -> it.stroked() && Math.abs(it.lineWidthMm() - 0.3) < 0.005).toList();
            assertFalse(bars.isEmpty());
            for (Drawn bar : bars) {
                assertTrue(bar.most(false) < top || bar.least(false) > bottom, "check bars among the tags of page " + page);
            }
        }
        boolean upright = (height > width) == sides.equals("long-edge");
        List<double[]> fronts = corners(pdf, 1);
        List<double[]> backs = corners(pdf, 2);
        assertEquals(fronts.size(), backs.size());
        assertTrue(fronts.size() >= 4);
        for (double[] back : backs) {
            assertTrue(has(fronts, upright ? width - back[0] : back[0], upright ? back[1] : height - back[1]), Arrays.toString(back));
        }
    }

    /** A printer that puts backs 0.8 mm too far right and 0.5 mm too far down needs them as much further left and up, seen from the front. */
    @Test
    void a_shift_is_taken_back() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "tags: {sides: long-edge, back-lies: {right: 0.8 mm, below: 0.5 mm}}\n", PIECE + threads(3));
        byte[] pdf = print(basket, "bag-tags");
        List<double[]> fronts = corners(pdf, 1);
        List<double[]> backs = corners(pdf, 2);
        assertTrue(fronts.size() >= 4, "four corners a tag");
        assertEquals(fronts.size(), backs.size());
        for (double[] back : backs) {
            assertTrue(has(fronts, 210 - back[0] + 0.8, back[1] + 0.5), Arrays.toString(back));
        }
    }

    /** The faces of a folded tag share the fold; the punch marks of both lie on each other when it is folded. */
    @Test
    void the_punch_marks_of_a_folded_tag_meet() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", PIECE + threads(3)), "bag-tags");
        List<Drawn> holes = ReadBack.drawn(pdf, 1).stream().filter(it -> it.operations().startsWith("MCcc") && Math.abs(it.most(true) - it.least(true) - 5) < 0.01).toList();
        assertEquals(2, holes.size());
        // By hand: on A4 the fold of the first tag is 10 + 65.75 mm down; a 5 mm hole 6 mm from it has its middle 8.5 mm from it.
        double[] middles = holes.stream().mapToDouble(it -> (it.least(false) + it.most(false)) / 2).sorted().toArray();
        assertEquals(75.75 - 8.5, middles[0], TRUE_MM);
        assertEquals(75.75 + 8.5, middles[1], TRUE_MM);
        for (Drawn hole : holes) {
            assertEquals(10 + 95 / 2.0, (hole.least(true) + hole.most(true)) / 2, TRUE_MM);
        }
    }

    static List<String> decoded(byte[] pdf, int page) throws IOException {
        return results(pdf, page).stream().map(Result::getText).sorted().toList();
    }

    private static List<Result> results(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page - 1, 300, ImageType.GRAY);
            Result[] results = new QRCodeMultiReader().decodeMultiple(new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image))),
                    Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE, DecodeHintType.CHARACTER_SET, "UTF-8"));
            return List.of(results);
        } catch (com.google.zxing.NotFoundException e) {
            return List.of();
        }
    }

    /**
     * By hand: 140 x 210 over 2 on 28 are 10 x 15 in, 25.4 x 38.1 cm; with 3 in all round 16 x 21 in, 40.64 x 53.34 cm,
     * up to the millimetre.
     */
    @Test
    void a_telephone_reads_the_facts_from_the_code() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", PIECE + threads(2)), "bag-tags");
        assertEquals(List.of("""
                In this bag
                Groyne
                chart Nell Ferry, 140 x 210 stitches
                cloth Spray linen, 28 count over two
                design 10 x 15 in (25.4 x 38.1 cm)
                cut 16 x 21 in (40.7 x 53.4 cm)
                needle 24, 2 strands
                started 2026-02-14, wanted by 2027-06-30
                threads N100, N101"""), decoded(pdf, 1));
    }

    /** What a telephone would run, were it the first thing in the code; ZXing's parser is the one many of them have. */
    @ParameterizedTest
    @ValueSource(strings = {"WIFI:T:nopass;S:Harbour;;", "SMSTO:+4912345:Ahoy", "tel:+4912345", "mailto:nell@harbour.example",
            "http://harbour.example", "geo:54.1,8.9",
        "MECARD:N:Ferry;;", "BEGIN:VCARD", "BEGIN:VEVENT", "matmsg:to:nell@harbour.example;;", "harbour.example"})
    void no_title_becomes_a_command_in_a_telephone(String title) throws IOException {
        for (String language : List.of("en", "de")) {
            byte[] pdf = print(Ran.basket(folder.resolve("b"), "", PIECE.replace("piece: Groyne", "piece: \"" + title + "\"")
                    + threads(2)), "bag-tags", "--language", language);
            List<Result> codes = results(pdf, 1);
            assertEquals(1, codes.size());
            assertEquals(ParsedResultType.TEXT, ResultParser.parseResult(codes.get(0)).getType(), codes.get(0).getText());
            assertEquals(title, codes.get(0).getText().lines().toList().get(1));
        }
    }

    /** More threads than any code carries, on one tag or another in large print, leave their codes away, as on ordinary tags. */
    @ParameterizedTest
    @CsvSource({"400, N", "60, Nachtblaudunkelgraugrünlichviolettschimmernd-"})
    void a_code_carries_as_many_threads_as_it_can(int number, String code) throws IOException {
        for (String paper : List.of("A4", "A5")) {
            byte[] pdf = print(Ran.basket(folder.resolve("b"), "", PIECE + threads(number).replace("code: N", "code: " + code)),
                    "bag-tags", "--large", "--paper", paper);
            List<String> codes = new ArrayList<>();
            for (int page = 1; page <= ReadBack.pages(pdf); page++) {
                codes.addAll(decoded(pdf, page));
            }
            assertEquals(1, codes.size());
            assertTrue(codes.get(0).startsWith("In this bag\nGroyne\nchart Nell Ferry, 140 x 210 stitches\n"), codes.get(0));
            assertTrue(codes.get(0).endsWith(", ..."), codes.get(0));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{sides: folded}", "{sides: long-edge, size: eighth}", "{sides: short-edge, size: sixth}", "{size: 62 mm x 58 mm}"})
    void every_code_of_the_example_basket_can_be_read(String tags) throws IOException {
        Path basket = folder.resolve("b");
        copy(HARBOUR, basket);
        Files.writeString(basket.resolve("basket.yaml"), Files.readString(basket.resolve("basket.yaml")) + "\ntags: " + tags + "\n");
        byte[] pdf = print(basket, "bag-tags");
        int read = 0;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                read += decoded(pdf, page).size();
            }
        }
        // Twelve unfinished pieces, some on more than one tag.
        String text = ReadBack.text(pdf, 0);
        int expected = text.split("How I begin", -1).length - 1;
        assertTrue(expected >= 12, expected + " backs");
        assertEquals(expected, read);
    }

    /** Names stand beside the codes of all threads, or, where that would make another tag, of none. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"{size: quarter, sides: long-edge}; 12; true", "{size: sixth, sides: long-edge}; 12; true", "{size: quarter}; 6; true",
        "{size: quarter}; 7; false", "{size: sixth, sides: long-edge}; 15; false"})
    void names_stand_on_tags_that_have_room_for_all_of_them(String tags, int threads, boolean named) throws IOException {
        String coloured = threads(threads).replace("colour:", "name: Wet shingle, colour:");
        byte[] plain = print(Ran.basket(folder.resolve("p"), "tags: " + tags + "\n", PIECE + threads(threads)), "bag-tags");
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "tags: " + tags + "\n", PIECE + coloured), "bag-tags");
        assertEquals(ReadBack.text(plain, 0).split("ribbon", -1).length, ReadBack.text(pdf, 0).split("ribbon", -1).length, "faces");
        assertEquals(named ? threads : 0, ReadBack.text(pdf, 0).split("Wet shingle", -1).length - 1);
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            assertEquals(List.of(), TextBoxes.overlaps(ReadBack.letters(pdf, page)));
        }
    }

    /** The eye finds the piece first: nothing on either face is as large as its title, and on the front all is smaller by far. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"A4; ; Groyne; 2", "letter; --large; Groyne; 1.4", "A5; ; Groyne; 2",
        "A4; ; The very long and winding band of the keeper of the light; 1.4"})
    void the_title_is_the_largest_thing_on_a_tag(String paper, String large, String title, double far) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", PIECE.replace("Groyne", title) + threads(3)), "bag-tags", "--paper", paper,
                large == null ? "--most-pages=100" : large);
        Map<Boolean, List<Double>> sizes = ReadBack.letters(pdf, 1).stream().collect(Collectors.partitioningBy(
                it -> it.font().contains("Alegreya"), Collectors.mapping(Letter::sizePt, Collectors.toList())));
        double others = sizes.get(false).stream().mapToDouble(it -> it).max().orElseThrow();
        assertTrue(sizes.get(true).stream().allMatch(size -> size > others) && Collections.max(sizes.get(true)) > far * others, sizes.toString());
    }

    /** By hand: A5 has 128 x 176 mm for tags; no way to divide it by four leaves both faces of a folded tag 60 x 55. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"en | 3:14: quarter of A5 gives a tag faces smaller than 60 mm x 55 mm, too small for what it carries; "
            + "leave size out, which makes them as large as they have to be, or name larger paper",
        "de | 3:14: quarter von A5 ergibt Anhänger mit Seiten unter 60 mm x 55 mm, zu klein für das, was darauf steht; "
            + "lassen Sie size weg, dann werden sie so groß wie nötig, oder nennen Sie größeres Papier"})
    void a_share_too_small_for_a_tag_is_refused(String language, String told) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "language: " + language + "\npaper: A5\ntags: {size: quarter}\n", PIECE + threads(3));
        for (Ran ran : List.of(Ran.kitleaf("check", basket), Ran.kitleaf("print", basket, "--out", folder.resolve("none")))) {
            assertEquals(1, ran.code());
            assertTrue(ran.err().lines().anyMatch(line -> line.endsWith("basket.yaml:" + told)), ran.err());
        }
        assertFalse(Files.exists(folder.resolve("none")));
    }

    /** For other paper than the basket's a share is judged as it is printed. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"--paper=A5; quarter of A5 (--paper A5) gives a tag faces smaller than 60 mm x 55 mm; --paper A5",
        "--large; quarter of A4 in large print (--large) gives a tag faces smaller than 90 mm x 100 mm; --large"})
    void a_share_too_small_for_a_tag_is_not_printed_larger(String option, String told, String without) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "tags: {size: quarter}\n", PIECE + threads(3));
        Ran ran = Ran.kitleaf("print", basket, "--only", "bag-tags", option, "--out", folder.resolve("none"));
        assertEquals(1, ran.code());
        assertTrue(ran.err().contains("basket.yaml:1:14: " + told + ", too small for what it carries; leave size out, which makes them as "
                + "large as they have to be, or name larger paper, or leave out " + without), ran.err());
        assertTrue(ran.err().contains("   1 | tags: {size: quarter}\n     |              ^^^^^^^\n"), ran.err());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    /** What the file alone says is found by check, and told alike by a print; sheets that have no tags are printed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"en| 3:14: quarter of A4 in large print gives a tag faces smaller than 90 mm x 100 mm, too "
            + "small for what it carries; leave size out, which makes them as large as they have to be, or name larger paper",
        "de| 3:14: quarter von A4 im Großdruck ergibt Anhänger mit Seiten unter 90 mm x 100 mm, zu klein für das, was darauf steht; "
            + "lassen Sie size weg, dann werden sie so groß wie nötig, oder nennen Sie größeres Papier"})
    void check_finds_a_share_too_small_for_large_print(String language, String told) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "language: " + language + "\nlarge-print: yes\ntags: {size: quarter}\n",
                PIECE + threads(3));
        for (Ran ran : List.of(Ran.kitleaf("check", basket), Ran.kitleaf("print", basket, "--out", folder.resolve("none")),
                Ran.kitleaf("print", basket, "--large", "--out", folder.resolve("none")))) {
            assertEquals(1, ran.code());
            assertTrue(ran.err().lines().anyMatch(line -> line.endsWith("basket.yaml:" + told)), ran.err());
        }
        assertFalse(Files.exists(folder.resolve("none")));
        assertEquals(0, Ran.kitleaf("print", basket, "--only", "kit-lists", "--out", folder.resolve("lists")).code());
    }

    /** What has to be searched stands as codes only, below each other, although names would have room. */
    @ParameterizedTest
    @CsvSource({"19, true", "20, false", "60, false"})
    void twenty_threads_and_more_are_a_grid_of_codes(int threads, boolean named) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "tags: {size: quarter, sides: long-edge}\n",
                PIECE + threads(threads).replace("colour:", "name: Reed, colour:")), "bag-tags", "--paper", "A3");
        assertEquals(named ? threads : 0, ReadBack.text(pdf, 0).split("Reed", -1).length - 1);
        for (int i = 0; i < threads; i++) {
            assertEquals(1, ReadBack.text(pdf, 0).split("\\bN" + (100 + i) + "\\b", -1).length - 1, "N" + (100 + i));
        }
    }

    /** The facts leave room for a few threads on the first tag of large print: one more may not stand alone on the second. */
    @ParameterizedTest
    @ValueSource(ints = {5, 7, 9, 10, 17})
    void no_large_tag_is_for_a_single_thread(int threads) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "", PIECE + threads(threads)), "bag-tags", "--large");
        List<Integer> tags = new ArrayList<>();
        for (String face : ReadBack.text(pdf, 0).split("ribbon")) {
            int held = face.split("\\bN1\\d\\d\\b", -1).length - 1;
            if (held > 0) {
                tags.add(held);
            }
        }
        assertEquals(threads, tags.stream().mapToInt(Integer::intValue).sum());
        assertTrue(ReadBack.text(pdf, 0).contains("tag 2 of ") && tags.stream().allMatch(held -> held > 1), tags.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{sides: folded}", "{sides: long-edge}", "{sides: long-edge, size: eighth}", "{size: 62 mm x 58 mm}"})
    void eighty_threads_go_on_further_tags_and_none_is_lost(String tags) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "tags: " + tags + "\n", PIECE + threads(80)), "bag-tags");
        String text = ReadBack.text(pdf, 0);
        assertTrue(text.contains("tag 2 of "), text);
        for (int i = 0; i < 80; i++) {
            assertEquals(1, text.split("\\bN" + (100 + i) + "\\b", -1).length - 1, "N" + (100 + i));
        }
    }

    /** Twelve threads in 16 pt have room on no tag beside the facts; the sitting of the log and the code are needed once. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"A4; {sides: folded}", "letter; {sides: long-edge}", "A5; {sides: folded}", "A4; {size: 80 mm x 90 mm}"})
    void further_large_tags_repeat_neither_log_nor_code(String paper, String tags) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "tags: " + tags + "\n", PIECE + threads(12)), "bag-tags", "--large", "--paper", paper);
        String text = ReadBack.text(pdf, 0).replace('\u00a0', ' ');
        int tagCount = Integer.parseInt(text.replaceAll("(?s).*?\\b1 of ([0-9]+).*", "$1"));
        assertTrue(tagCount > 1, text);
        // Once on every front and every back.
        assertEquals(2 * tagCount, text.split("Groyne\n", -1).length - 1, text);
        assertEquals(1, text.split("1 Mar 2026", -1).length - 1, text);
        List<String> codes = new ArrayList<>();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            codes.addAll(decoded(pdf, page));
        }
        assertEquals(1, codes.size(), codes.toString());
        // Nor is any thread lost from it because it stands on another tag.
        assertTrue(codes.get(0).endsWith("N110, N111"), codes.get(0));
    }

    /** A figure of what is done, or a sitting in the log, makes a piece begun, whether or not the day it began is written down. */
    @ParameterizedTest
    @CsvSource({"'progress: 450', begun, ''", "'progress: {log: [{on: 2026-03-01, hours: 1, stitches: 0}]}', begun, ''", "'progress: 450', begonnen, de",
        "'progress: 0', not started, ''", "'', not started, ''", "'', nicht begonnen, de"})
    void a_piece_with_stitches_in_it_is_begun(String progress, String said, String language) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), language.isEmpty() ? "" : "language: " + language + "\n",
                "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 28, over: 2}\nmargin: 3 in\n" + progress + "\n");
        String text = ReadBack.text(print(basket, "bag-tags"), 1);
        assertTrue(text.lines().anyMatch(((language.isEmpty() ? "progress " : "Stand ") + said)::equals), text);
    }

    /** Written with a stroke, one and two strands would be half a strand. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"; needle 24 and 28 · 1 and 2 strands; 1 and 2 strands", "de; Nadel 24 und 28 · 1- und 2-fädig; 1- und 2-fädig"})
    void strands_and_needles_that_differ_are_joined_by_a_word(String language, String tag, String label) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), language == null ? "" : "language: " + language + "\n", PIECE
                + "  - {code: N1, stitches: {cross: 50}}\nparts:\n  - {part: Verse, over: 1, threads: [{code: N1, strands: 1, stitches: {cross: 50}}]}\n");
        String text = ReadBack.text(print(basket, "bag-tags"), 1).replace('\u00a0', ' ');
        assertTrue(text.contains(tag), text);
        String labels = ReadBack.text(print(basket, "bobbin-labels"), 1).replace('\u00a0', ' ');
        assertTrue(labels.contains(label), labels);
    }

    /** Only where no kind has another number elsewhere in the piece can the tag tell them by kind. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"en; 2; needle 24 · 2 strands, back stitch 1", "de; 2; Nadel 24 · 2-fädig, Rückstich 1", "en; 3; needle 24 · 1 and 2 and 3 strands"})
    void strands_of_each_kind_are_told(String language, int others, String tag) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "language: " + language + "\n", PIECE + "  - {code: N1, strands: {cross: 2, back: 1}, stitches: {cross: 50, back: 9}}\n"
                + "  - {code: N2, strands: " + others + ", stitches: {cross: 50}}\n");
        String text = ReadBack.text(print(basket, "bag-tags"), 1).replace('\u00a0', ' ');
        assertTrue(text.contains(tag), text);
    }

    /** Twenty sittings have room on no tag: those that are left out are counted, so that with the days written it comes to twenty. */
    @ParameterizedTest
    @CsvSource({"false, en, earlier", "true, en, earlier", "false, de, frühere"})
    void sittings_without_room_are_counted(boolean large, String language, String earlier) throws IOException {
        String log = IntStream.rangeClosed(1, 20).mapToObj(day -> "{on: 2026-03-" + (day < 10 ? "0" : "") + day + ", hours: 1, stitches: 10}").collect(Collectors.joining(", "));
        Path basket = Ran.basket(folder.resolve("b"), "language: " + language + "\n" + (large ? "large-print: yes\n" : ""),
                PIECE.replaceAll("progress: .*", "progress: {log: [" + log + "]}") + threads(2));
        // The foot names the last of these days, too.
        String text = ReadBack.line(print(basket, "bag-tags"), 1).split("50 mm")[0];
        Matcher said = Pattern.compile("([0-9]+) " + earlier).matcher(text);
        assertTrue(said.find(), text);
        long days = Pattern.compile("[0-9]+\\.? (Mar|März|Mär)\\.? 2026").matcher(text).results().count();
        assertEquals(20, Integer.parseInt(said.group(1)) + days, text);
    }

    @Test
    void a_front_says_what_the_piece_is_and_a_back_where_she_was() throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "tags: {sides: long-edge}\n", PIECE + threads(3)), "bag-tags");
        String front = ReadBack.text(pdf, 1).replace('\u00a0', ' ').replaceAll("\\s+", " ");
        for (String words : List.of("Groyne", "chart Nell Ferry · 140 × 210 stitches", "cloth Spray linen, 28 count over two", "design 10 × 15 in (25.4 × 38.1 cm)",
                "cut 16 × 21 in (40.7 × 53.4 cm)", "needle 24 · 2 strands", "started 14 February 2026 wanted by 30 June 2027", "N100",
                        "N102")) {
            assertTrue(front.contains(words), () -> words + " is not in " + front);
        }
        String back = ReadBack.text(pdf, 2).replace('\u00a0', ' ').replaceAll("\\s+", " ");
        assertTrue(back.contains("1 Mar 2026") && back.contains("260") && back.contains("How I begin and end threads"), back);
    }

    @Test
    void finished_pieces_get_no_tag() throws IOException {
        String text = ReadBack.text(print(HARBOUR, "bag-tags"), 0);
        assertTrue(text.contains("North cone"));
        assertFalse(text.contains("South cone"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A5", "A4", "A3", "letter", "A4 landscape", "A5 landscape", "legal", "tabloid", "A2", "A1 landscape"})
    void tags_keep_clear_of_the_edges_on_any_paper(String paper) throws IOException {
        byte[] pdf = print(HARBOUR, "bag-tags", "--paper", paper);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                double width = document.getPage(page - 1).getMediaBox().getWidth() * 25.4 / 72;
                double height = document.getPage(page - 1).getMediaBox().getHeight() * 25.4 / 72;
                for (Drawn drawn : ReadBack.drawn(pdf, page)) {
                    assertTrue(drawn.least(true) >= 7.99 && drawn.most(true) <= width - 7.99 && drawn.least(false) >= 7.99
                            && drawn.most(false) <= height - 7.99, paper + ", page " + page + ": " + drawn);
                }
            }
        }
    }

    /** Each cross of the back has to fall on nought of its scale when the printer does not shift. */
    @ParameterizedTest
    @CsvSource({"long-edge, true", "short-edge, false"})
    void the_duplex_check_has_crosses_behind_its_scales(String sides, boolean upright) throws IOException {
        byte[] pdf = print(Ran.basket(folder.resolve("b"), "tags: {sides: " + sides + "}\n", PIECE + threads(1)), "duplex-check");
        List<double[]> scales = ReadBack.drawn(pdf, 1).stream().filter(it -> it.operations().equals("ML") && Math.abs(it.most(true) - it.least(true) - 16) < 0.01)
                .map(it -> new double[] {(it.least(true) + it.most(true)) / 2, it.y(0)}).toList();
        List<double[]> crosses = ReadBack.drawn(pdf, 2).stream().filter(it -> it.operations().equals("MLML") && it.most(true) - it.least(true) > 20)
                .map(it -> new double[] {(it.least(true) + it.most(true)) / 2, (it.least(false) + it.most(false)) / 2}).toList();
        assertEquals(5, scales.size());
        assertEquals(5, crosses.size());
        for (double[] cross : crosses) {
            assertTrue(has(scales, upright ? 210 - cross[0] : cross[0], upright ? cross[1] : 297 - cross[1]), Arrays.toString(cross));
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
