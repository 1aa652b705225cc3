package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kitleaf.ReadBack.Drawn;
import kitleaf.press.drawing.QrSize;
import kitleaf.press.markup.MarkupException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a code's modules lie, read back with PDFBox, and what is said of codes that cannot do. */
class PressCodeTests {

    /** What the design allows for every to-scale distance. */
    private static final double MM = 0.02;

    /** 38 characters of the alphanumeric set: just what version 2 holds at level M (ISO/IEC 18004). */
    private static final String THIRTY_EIGHT = "TIDE 12 ROPE 34 KNOT 56 LAMP 78 WIND 9";

    /** One dark run of a row. */
    private record Bar(double left, double top, double right, double bottom) {

        /** A run's four corners stand in the order drawn, whichever way the code is turned. */
        static Bar of(Drawn code, int first) {
            return new Bar(Math.min(code.x(first), code.x(first + 2)), Math.min(code.y(first), code.y(first + 2)),
                    Math.max(code.x(first), code.x(first + 2)), Math.max(code.y(first), code.y(first + 2)));
        }

        /** Whether this run is 7 modules of 1 mm from here: the edge of a finder pattern. */
        boolean isFinderEdge(double x, double y) {
            return Math.abs(left - x) < MM && Math.abs(top - y) < MM && Math.abs(right - x - 7) < MM
                    && Math.abs(bottom - y - 1) < MM;
        }
    }

    private static List<Bar> bars(Drawn code) {
        assertTrue(code.operations().matches("(MLLLZ)+"), "only rectangles");
        List<Bar> bars = new ArrayList<>();
        for (int i = 0; i < code.points().size(); i += 4) {
            bars.add(Bar.of(code, i));
        }
        return bars;
    }

    private static boolean finderAt(List<Bar> bars, double x, double y) {
        return bars.stream().anyMatch(bar -> bar.isFinderEdge(x, y));
    }

    /** Versions by the capacities of ISO/IEC 18004: 2-M 38 alphanumeric; 40-L 7089 digits, 4296, 2953 bytes. */
    @ParameterizedTest
    @CsvSource({"TIDE 12 ROPE 34 KNOT 56 LAMP 78 WIND 9, 1, M, 2", "TIDE 12 ROPE 34 KNOT 56 LAMP 78 WIND 90, 1, M, 3",
        "7, 7089, L, 40", "A, 4296, L, 40", "a, 2953, L, 40", "A, 1, H, 1"})
    void aCodeHasSeventeenAndFourTimesItsVersionModulesAndAQuietZoneOfFour(String word, int times, String level,
            int version) throws Exception {
        String text = word.repeat(times);
        int modules = 17 + 4 * version;
        assertEquals(OptionalInt.of(modules), QrSize.modules(text, level.charAt(0)));
        // As many millimetres as modules and quiet zone: every module is 1 mm.
        Drawn code = Pressed.page("<code x=\"10\" y=\"20\" size=\"" + (modules + 8) + "\" level=\"" + level + "\">"
                + text + "</code>").onlyDrawn();
        assertTrue(code.filled() && !code.stroked());
        assertEquals(14, code.least(true), MM);
        assertEquals(24, code.least(false), MM);
        assertEquals(14 + modules, code.most(true), MM);
        assertEquals(24 + modules, code.most(false), MM);
        List<Bar> bars = bars(code);
        for (Bar bar : bars) {
            assertEquals(Math.rint(bar.left()), bar.left(), MM);
            assertEquals(Math.rint(bar.right()), bar.right(), MM);
            assertEquals(Math.rint(bar.top()), bar.top(), MM);
            assertEquals(1, bar.bottom() - bar.top(), MM);
        }
        // Three finder patterns, 7 modules wide, in all corners but the lower right (ISO/IEC 18004).
        double far = modules - 7;
        assertTrue(finderAt(bars, 14, 24) && finderAt(bars, 14 + far, 24) && finderAt(bars, 14, 24 + far));
        assertFalse(finderAt(bars, 14 + far, 24 + far));
    }

    @Test
    void rowsMeetInTheSameCoordinatesAndRunsNeverTouchOrOverlap() throws Exception {
        // 37 modules in 23.7 mm: no edge falls on a round number.
        Drawn code = Pressed.page("<code x=\"7.3\" y=\"11.9\" size=\"23.7\">" + THIRTY_EIGHT + "0</code>").onlyDrawn();
        List<Bar> bars = bars(code);
        Set<Double> edges = new TreeSet<>();
        bars.forEach(bar -> edges.addAll(List.of(bar.top(), bar.bottom())));
        // 29 rows have 30 edges; any gap or overlap between rows would make more.
        assertEquals(30, edges.size());
        for (Bar bar : bars) {
            List<Bar> right = bars.stream().filter(it -> it.top() == bar.top() && it.left() > bar.left())
                    .collect(Collectors.toList());
            // Runs are whole: a light module of 23.7 / 37 = 0.6405 mm at least lies before the next.
            assertTrue(right.stream().allMatch(it -> it.left() - bar.right() > 0.6405 - MM), bar.toString());
        }
    }

    @Test
    void aTurnedCodeStandsInItsTurnedSquare() throws Exception {
        // Turned 180 degrees about (60,80), the square (10,20)-(43,53) becomes (77,107)-(110,140).
        Drawn code = Pressed.page("<g transform=\"rotate(180 60 80)\"><code x=\"10\" y=\"20\" size=\"33\">"
                + THIRTY_EIGHT + "</code></g>").onlyDrawn();
        assertEquals(81, code.least(true), MM);
        assertEquals(111, code.least(false), MM);
        assertEquals(106, code.most(true), MM);
        assertEquals(136, code.most(false), MM);
        List<Bar> bars = bars(code);
        // The corner without a finder pattern is now the upper left.
        assertFalse(finderAt(bars, 81, 111));
        assertTrue(finderAt(bars, 99, 135) && finderAt(bars, 81, 135) && finderAt(bars, 99, 111));
    }

    @Test
    void aCodesOwnTransformAndThePrintersCorrectionArePartOfEveryPoint() throws Exception {
        // scale(2) and 16.5 mm: 33 mm, modules of 1 mm, from (20,40): modules from (24,44) to (49,69).
        // Corrected about (105,148.5): x 24 is 81 left, 105 - 81 x 1.007 = 23.433; 49 is 56 left, 48.608;
        // y 44 is 104.5 above, 148.5 - 104.5 x 0.995 = 44.5225; 69 is 79.5 above, 69.3975.
        Drawn code = Pressed.page("<code x=\"10\" y=\"20\" size=\"16.5\" transform=\"scale(2)\">" + THIRTY_EIGHT
                + "</code>", Pressed.corrected(1.007, 0.995)).onlyDrawn();
        assertEquals(23.433, code.least(true), MM);
        assertEquals(48.608, code.most(true), MM);
        assertEquals(44.5225, code.least(false), MM);
        assertEquals(69.3975, code.most(false), MM);
    }

    @Test
    void theFillIsInheritedAndAStrokeIsNot() throws Exception {
        List<Drawn> codes = Pressed.page("<code size=\"12\">a</code><g fill=\"#20262b\" stroke=\"#000\">"
                + "<code size=\"12\">a</code><code size=\"12\" fill=\"#9a2f2d\">a</code></g>").drawn();
        assertEquals(List.of(0, 0x20262b, 0x9a2f2d), codes.stream().map(Drawn::fill).collect(Collectors.toList()));
        assertTrue(codes.stream().noneMatch(Drawn::stroked));
    }

    @Test
    void modulesBelowAThirdOfAMillimetreAreWarnedOf() throws Exception {
        // 29 modules with the quiet zone (version 1): 9.57 / 29 = 0.33 mm, 9.56 / 29 = 0.3297 mm.
        assertEquals(List.of(), Pressed.page("<code size=\"9.57\">ROPE</code>").warnings());
        assertEquals(List.of("page 1: the code of \"ROPE\" has modules of 0.32 mm, and below 0.33 mm it may not be"
                + " readable when printed; shorten the text or enlarge the code"),
                Pressed.page("<code size=\"9.56\">ROPE</code>").warnings());
    }

    @Test
    void theWarningNamesThePageAndReckonsWithTheNarrowerSideOfAScaledModule() throws Exception {
        // 29 mm / 29 = 1 mm, narrowed to 0.2 mm across only; lines are told apart by a space in the quotation.
        assertEquals(List.of("page 2: the code of \"Tide 3\" has modules of 0.20 mm, and below 0.33 mm it may not be"
                + " readable when printed; shorten the text or enlarge the code"),
                Pressed.markup("<document><page width=\"90\" height=\"90\"><code size=\"29\">ROPE</code></page>"
                        + "<page width=\"90\" height=\"90\"><g transform=\"scale(0.2 1)\"><code size=\"29\">Tide\n 3"
                        + "</code></g></page></document>", PressSettings.plain()).warnings());
    }

    @Test
    void aTextTooLongForVersionFortyIsRefused() throws Exception {
        String said = "\"code\": a text of 2954 characters is too long for the largest QR code of level ";
        for (String level : List.of("L", "H")) {
            MarkupException fault = assertThrows(MarkupException.class,
                    () -> Pressed.page("<code size=\"185\" level=\"" + level + "\">" + "a".repeat(2954) + "</code>"));
            assertEquals(said + level + "; shorten it" + (level.equals("L") ? "" : " or write a lower level"),
                    fault.getMessage());
            assertEquals("<document title=\"t\"><page width=\"210\" height=\"297\">".length(), fault.characterOffset());
        }
        // One Greek letter is two bytes in UTF-8: 1477 are 2954 bytes.
        assertThrows(MarkupException.class,
                () -> Pressed.page("<code size=\"185\" level=\"L\">" + "\u03C8".repeat(1477) + "</code>"));
    }

    @Test
    void theSizeOfACodeIsKnownBeforehandAndFollowsItsTextAsWritten() {
        // The indentation does not count: still the 38 characters of version 2.
        assertEquals(OptionalInt.of(17 + 4 * 2), QrSize.modules("\n      " + THIRTY_EIGHT + "  \r\n", 'M'));
        assertEquals(OptionalInt.empty(), QrSize.modules("7".repeat(7090), 'L'));
        assertEquals("\"m\" is not a level of a QR code; write L, M, Q or H",
                assertThrows(IllegalArgumentException.class, () -> QrSize.modules("a", 'm')).getMessage());
        assertEquals("there is no text to encode",
                assertThrows(IllegalArgumentException.class, () -> QrSize.modules("\n ", 'M')).getMessage());
    }

    @Test
    void equalMarkupGivesEqualBytes() throws Exception {
        String code = "<code x=\"9\" y=\"9\" size=\"40\">Tide \u03C8 \u0416 3</code>";
        assertArrayEquals(Pressed.page(code).bytes, Pressed.page(code).bytes);
    }
}
