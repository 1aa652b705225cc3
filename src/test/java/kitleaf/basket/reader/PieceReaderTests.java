package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Amount;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Finish;
import kitleaf.basket.Goal;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Margins;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.thread.Used;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceReaderTests {

    static final String FULL = """
            piece: Breakwater band sampler
            designer: Ottoline Marsh
            stitches: 140 x 210
            cloth: {name: Sea-mist, kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm}, over: 2,
                    shrink: {warp: 1%, weft: 3%}, counted: before, warp: across, over-dyed: yes}
            margin: {top: 2 in, right: 3 in, bottom: 10 cm, left: 50 mm}
            finish: bell-pull
            threads:
              - {code: K12, name: Ebb grey, colour: "#6B7F8C", symbol: "●", skein: cotton, strands: 1, lot: 7 B, over: 1,
                 share: 12%, used: {skeins: 1.5, stitches: 3000},
                 stitches: {cross: {count: 2310, worked: singly}, back: 120, satin: {count: 80, span: 5},
                            other: {count: 12, each: 3 cm}, three-quarter: 4}}
              - {code: 0010, colour: "#abc"}
            parts:
              - {part: Verse, over: 1, stitches: 60x24, threads: [{code: K12, stitches: {tent: 900}}]}
            coverage: 45%
            progress: {started: 2026-02-14, finished: 2026-05-01, done: 1200,
                       log: [{on: 2026-03-08, hours: 1, stitches: 90}, {on: 2026-03-01, hours: 2.5, stitches: 260}]}
            goal: {must: yes, by: 2027-06-30, weight: 3}
            """;

    @TempDir
    Path folder;

    private Piece read(String text) {
        return new Written(folder).piece(text);
    }

    @Test
    void everyKeyIsReadIntoItsField() {
        Piece piece = read(FULL);
        assertEquals("p", piece.id());
        assertEquals("Breakwater band sampler", piece.title());
        assertEquals(Optional.of("Ottoline Marsh"), piece.designer());
        assertEquals(new ChartSize(140, 210), piece.stitches());
        assertEquals(Optional.of(Finish.BELL_PULL), piece.finish());
        assertEquals(50.8, piece.margins().topMm(), 1e-9);
        assertEquals(76.2, piece.margins().rightMm(), 1e-9);
        assertEquals(100, piece.margins().bottomMm(), 1e-9);
        assertEquals(50, piece.margins().leftMm(), 1e-9);
        assertTrue(piece.marginsGiven());
        assertEquals(Optional.of(new Amount.Share(0.45)), piece.coverage());
        assertEquals(new Goal(true, Optional.of(LocalDate.of(2027, 6, 30)), 3), piece.goal());
    }

    /** 71 threads in 2 in are 35.5 to the inch; 145 in 10 cm are 14.5 to the centimetre, 14.5 x 2.54 = 36.83 to the inch. */
    @Test
    void everyKeyOfClothIsRead() {
        Cloth cloth = read(FULL).cloth();
        assertEquals(35.5, cloth.count().warpPerInch(), 1e-9);
        assertEquals(36.83, cloth.count().weftPerInch(), 1e-9);
        assertEquals(new Cloth(Optional.of("Sea-mist"), Cloth.Kind.LINEN, cloth.count(), 2, new Shrink(0.01, 0.03),
                Cloth.Counted.BEFORE, Cloth.WarpRun.ACROSS, Cloth.Dyeing.BEFORE, false), cloth);
    }

    @Test
    void everyKeyOfAThreadIsRead() {
        List<CalledThread> threads = read(FULL).threads();
        assertEquals(new CalledThread("K12", Optional.of("Ebb grey"), Optional.of(new Colour("#6b7f8c")), Optional.of("●"),
                "cotton", Strands.of(1), List.of(
                        new StitchCount(StitchKind.CROSS, 2310, Optional.of(StitchCount.Worked.SINGLY), OptionalInt.empty(), OptionalDouble.empty()),
                        StitchCount.of(StitchKind.BACK, 120),
                        new StitchCount(StitchKind.SATIN, 80, Optional.empty(), OptionalInt.of(5), OptionalDouble.empty()),
                        new StitchCount(StitchKind.OTHER, 12, Optional.empty(), OptionalInt.empty(), OptionalDouble.of(30)),
                        StitchCount.of(StitchKind.THREE_QUARTER, 4)),
                OptionalDouble.of(0.12), Optional.of(new Used(1.5, 3000)), OptionalInt.of(1), Optional.of("7 B"), false), threads.get(0));
        assertEquals(new CalledThread("0010", Optional.empty(), Optional.of(new Colour("#aabbcc")), Optional.empty(), "cotton", Strands.of(2),
                List.of(), OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), false), threads.get(1));
    }

    /** The usual number is what most stitches are worked with: 2310 crosses with two against 120 and 14 with one and three. */
    @Test
    void strandsMayBeToldByKind() {
        String stitches = "stitches: {cross: 2310, back: 120, knot: 14, half: 0}}]\n";
        Strands each = new Strands(2, Map.of(StitchKind.BACK, 1, StitchKind.KNOT, 3));
        for (String written : List.of("{cross: 2, back: 1, knot: 3}", "{cross: 2, back: 1, else: 3}", "{else: 2, knot: 3, back: 1}", "{cross: 2, back: 1, knot: 3, half: 4}")) {
            assertEquals(each, read(Written.PIECE + "threads: [{code: a, strands: " + written + ", " + stitches).threads().get(0).strands(), written);
        }
        assertEquals(1, each.in(StitchKind.BACK));
        assertEquals(2, each.in(StitchKind.CROSS));
        for (String written : List.of("1", "{else: 1}", "{cross: 1, back: 1, knot: 1}")) {
            assertEquals(Strands.of(1), read(Written.PIECE + "threads: [{code: a, strands: " + written + ", " + stitches).threads().get(0).strands(), written);
        }
        assertEquals(Strands.of(3), read(Written.PIECE + "threads: [{code: a, share: 9%, strands: {cross: 3}}]\n").threads().get(0).strands());
        assertEquals(Strands.of(2), read(Written.PIECE + "threads: [{code: a}]\n").threads().get(0).strands());
    }

    @Test
    void aThreadMayMixLots() {
        assertTrue(read(Written.PIECE + "threads: [{code: a, lot: 12, mix-lots: yes}]\n").threads().get(0).mixLots());
        assertFalse(read(Written.PIECE + "threads: [{code: a, lot: 12}]\n").threads().get(0).mixLots());
    }

    @Test
    void partsAndProgressAreRead() {
        Piece piece = read(FULL);
        Part part = piece.parts().get(0);
        assertEquals("Verse", part.title());
        assertEquals(1, part.over());
        assertEquals(Optional.of(new ChartSize(60, 24)), part.stitches());
        assertEquals(List.of(StitchCount.of(StitchKind.TENT, 900)), part.threads().get(0).stitches());
        assertEquals(new Progress(Optional.of(LocalDate.of(2026, 2, 14)), Optional.of(LocalDate.of(2026, 5, 1)),
                Optional.of(new Amount.Stitches(1200)), List.of(new LogEntry(LocalDate.of(2026, 3, 1), 2.5, 260),
                        new LogEntry(LocalDate.of(2026, 3, 8), 1, 90))), piece.progress());
    }

    @Test
    void whatIsNotSaidIsUsual() {
        Piece piece = read("piece: Knot\nstitches: 20X30\ncloth: {kind: block, count: 14}\n");
        assertEquals(new Cloth(Optional.empty(), Cloth.Kind.BLOCK, new Count(14, 14), 1, Shrink.NONE, Cloth.Counted.AFTER,
                Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false), piece.cloth());
        assertEquals(76.2, piece.margins().topMm(), 1e-9);
        assertEquals(Margins.all(piece.margins().topMm()), piece.margins());
        assertFalse(piece.marginsGiven());
        assertEquals(Progress.NONE, piece.progress());
        assertEquals(Goal.NONE, piece.goal());
        assertEquals(Optional.empty(), piece.coverage());
    }

    @Test
    void missingMarginsComeFromTheFinish() {
        Piece piece = read(Written.PIECE + "finish: bookmark\nmargin: {top: 2 in}\n");
        assertEquals(50.8, piece.margins().topMm(), 1e-9);
        assertEquals(25.4, piece.margins().leftMm(), 1e-9);
        assertTrue(piece.marginsGiven());
        assertFalse(read(Written.PIECE + "finish: bookmark\n").marginsGiven());
        assertTrue(read(Written.PIECE + "margin: 2 in\n").marginsGiven());
        assertEquals(Finish.PILLOW.usualMargins(), read(Written.PIECE + "finish: pillow\n").margins());
    }

    @Test
    void progressMayBeOneFigure() {
        assertEquals(Optional.of(new Amount.Share(0.3)), read(Written.PIECE + "progress: 30%\n").progress().done());
        assertEquals(Optional.of(new Amount.Stitches(300)), read(Written.PIECE + "progress: 300\n").progress().done());
    }

    @ParameterizedTest
    @ValueSource(strings = {"140 x 210", "140x210", "140 × 210", "140X210", "140×210", "\"140 x 210\"", "140 by 210"})
    void chartSizesAreTakenAsPeopleWriteThem(String size) {
        assertEquals(new ChartSize(140, 210), read(Written.PIECE.replace("140 x 210", size)).stitches());
    }

    /** YAML 1.1 would make a number in base 8 or 60, a boolean, a date or nothing of these. */
    @ParameterizedTest
    @ValueSource(strings = {"010", "1_000", "1:30", "yes", "NO", "2026-02-14", "1e3", "0x1F", "Null", ".inf"})
    void wordsStayAsTheyWereTyped(String word) {
        assertEquals(Optional.of(word), read(Written.PIECE + "designer: " + word + "\n").designer());
    }

    @Test
    void sameLettersAreTheSameText() {
        assertEquals(Optional.of("Ren\u00e9e"), read(Written.PIECE + "designer: \" Rene\u0301e \"\n").designer());
    }

    @Test
    void otherCountriesReadTheSame() {
        Locale before = Locale.getDefault();
        try {
            Piece here = read(FULL);
            for (String tag : List.of("tr-TR", "de-DE", "ar-EG")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                // Turkish makes a dotless i of a capital I.
                assertEquals(here, read(FULL.replace("3 in", "3 IN")), tag);
                assertEquals(List.of("2:11: 0 is out of range; write 1 to 5000"),
                        new Written(folder).problems(Written.PIECE.replace("140 x 210", "0 x 210")), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
