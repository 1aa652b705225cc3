package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitleaf.ReadBack;
import kitleaf.press.type.TextMeasure;
import kitleaf.press.type.Typefaces;
import org.junit.jupiter.api.Test;

/** Text, read back with PDFBox: what it says, in which face, how large and where. */
class PressTextTests {

    private static final double MM = 0.01;

    private static double right(ReadBack.Letter letter) {
        return letter.x() + letter.width();
    }

    private static String joined(List<ReadBack.Letter> letters) {
        return letters.stream().map(ReadBack.Letter::text).collect(Collectors.joining());
    }

    /** The letters by line, top line first. */
    private static Map<Double, List<ReadBack.Letter>> lines(List<ReadBack.Letter> letters) {
        return letters.stream().collect(Collectors.groupingBy(l -> Math.round(l.y() * 100) / 100.0, TreeMap::new,
                Collectors.toList()));
    }

    private static List<String> lineTexts(Pressed pressed) throws Exception {
        return lines(pressed.letters()).values().stream().map(PressTextTests::joined).map(String::strip).toList();
    }

    @Test
    void aTextStartsAtItsBaseline() throws Exception {
        List<ReadBack.Letter> letters = Pressed.page("<text x=\"20\" y=\"30\" font-size=\"12pt\">Tide</text>").letters();
        assertEquals("Tide", joined(letters));
        assertEquals(20, letters.get(0).x(), MM);
        assertEquals(30, letters.get(0).y(), MM);
        assertEquals(12, letters.get(0).sizePt(), 0.001);
        assertTrue(letters.get(0).font().endsWith("+AtkinsonHyperlegibleNext-Regular"), letters.get(0).font());
    }

    @Test
    void aBareFontSizeIsMillimetres() throws Exception {
        // 5 mm is 5 x 72 / 25.4 = 14.1732 pt.
        assertEquals(14.1732, Pressed.page("<text y=\"9\" font-size=\"5\">T</text>").letters().get(0).sizePt(), 0.001);
    }

    @Test
    void anchorsPlaceTheTextByItsWidth() throws Exception {
        List<ReadBack.Letter> end = Pressed.page("<text x=\"100\" y=\"30\" text-anchor=\"end\">Harbour</text>").letters();
        assertEquals(100, right(end.get(6)), MM);
        List<ReadBack.Letter> middle = Pressed.page("<g text-anchor=\"middle\"><text x=\"100\" y=\"30\">Harbour</text></g>")
                .letters();
        assertEquals(100, (middle.get(0).x() + right(middle.get(6))) / 2, MM);
    }

    @Test
    void inABoxTheAnchorSaysWhichEdgeXIs() throws Exception {
        String box = "<text x=\"100\" y=\"30\" width=\"30\" lines=\"2\" text-anchor=\"end\">Lamp and rope and knot</text>";
        for (List<ReadBack.Letter> line : lines(Pressed.page(box).letters()).values()) {
            assertEquals(100, right(line.get(line.size() - 1)), MM);
            assertTrue(line.get(0).x() >= 70 - MM);
        }
    }

    @Test
    void theMeasureIsWhatIsDrawn() throws Exception {
        String text = "Breakwater 2 \u00BD in, \u03C8 \u0416 \u2702";
        List<ReadBack.Letter> letters = Pressed.page("<text x=\"10\" y=\"30\" font-family=\"heading\" font-weight=\"bold\""
                + " font-size=\"14pt\">" + text + "</text>").letters();
        ReadBack.Letter last = letters.get(letters.size() - 1);
        assertEquals(right(last) - 10, new TextMeasure().widthMm(text, "heading", 700, 14), MM);
    }

    @Test
    void aBoxWrapsAtSpacesAndAfterJoints() throws Exception {
        double fits = new TextMeasure().widthMm("breakwater", "text", 400, 9.5);
        Pressed pressed = Pressed.page("<text y=\"9\" width=\"" + fits + "\" lines=\"9\">breakwater sampler"
                + " harbour-lights either/otherwise tide\u2013timetables</text>");
        assertEquals(List.of("breakwater", "sampler", "harbour-", "lights", "either/", "otherwise",
                "tide\u2013", "timetables"), splitLines(pressed));
        assertEquals(List.of(), pressed.warnings());
    }

    private static List<String> splitLines(Pressed pressed) throws Exception {
        return lineTexts(pressed).stream().filter(line -> !line.isEmpty()).toList();
    }

    @Test
    void noBreakSpacesHold() throws Exception {
        double fits = new TextMeasure().widthMm("at nine thirty", "text", 400, 9.5);
        Pressed pressed = Pressed.page("<text y=\"9\" width=\"" + fits + "\" lines=\"3\">tide at\u00A0nine\u00A0thirty</text>");
        assertEquals(List.of("tide", "at nine thirty"), lineTexts(pressed));
    }

    @Test
    void aWordIsPartedOnlyWhenItAloneIsTooWide() throws Exception {
        double fits = new TextMeasure().widthMm("breakw", "text", 400, 9.5) + 0.05;
        Pressed pressed = Pressed.page("<text y=\"9\" width=\"" + fits + "\" lines=\"5\">a breakwater</text>");
        assertEquals(List.of("a", "breakw", "ater"), lineTexts(pressed));
    }

    @Test
    void linesStandALineHeightApart() throws Exception {
        // 10 pt x 1.5 = 15 pt = 5.2917 mm; the default 1.3 gives 13 pt = 4.5861 mm.
        String text = "font-size=\"10pt\" width=\"1\" lines=\"2\" y=\"20\">i i</text>";
        assertEquals(List.of(20.0, 25.29), List.copyOf(lines(Pressed.page("<text line-height=\"1.5\" " + text)
                .letters()).keySet()));
        assertEquals(List.of(20.0, 24.59), List.copyOf(lines(Pressed.page("<text " + text).letters()).keySet()));
    }

    @Test
    void aTextShrinksJustAsFarAsItMust() throws Exception {
        String text = "Breakwater band sampler";
        double full = new TextMeasure().widthMm(text, "text", 400, 12);
        Pressed pressed = Pressed.page("<text y=\"20\" x=\"10\" font-size=\"12pt\" fit=\"6pt\" width=\"" + full * 0.71
                + "\">" + text + "</text>");
        List<ReadBack.Letter> letters = pressed.letters();
        // 71 % of the width: 71 % of the size, 8.52 pt.
        assertEquals(8.52, letters.get(0).sizePt(), 0.001);
        assertEquals(text, joined(letters));
        assertEquals(List.of(), pressed.warnings());
    }

    @Test
    void withoutAFloorNothingShrinks() throws Exception {
        Pressed pressed = Pressed.page("<text y=\"20\" font-size=\"12pt\" width=\"20\">Breakwater band sampler</text>");
        assertEquals(12, pressed.letters().get(0).sizePt(), 0.001);
        assertEquals(1, pressed.warnings().size());
    }

    @Test
    void aTextThatFitsIsNotShrunk() throws Exception {
        assertEquals(12, Pressed.page("<text y=\"20\" font-size=\"12pt\" fit=\"6pt\" width=\"90\">Tide</text>")
                .letters().get(0).sizePt(), 0.001);
    }

    /** Of its beginning alone, before and after would read the same. */
    @Test
    void aTextThatIsCutIsToldOfAsItWasTyped() throws Exception {
        Pressed cut = Pressed.page("<text x=\"5\" y=\"20\" width=\"22\" fit=\"9pt\" font-size=\"9pt\">"
                + "The \"Gull\" N\u201112 of Nell's sisters</text>");
        assertTrue(cut.text().startsWith("The “Gull”"), cut.text());
        assertTrue(cut.warnings().toString().startsWith("[page 1: \"The \"Gull\" N-12 of Nell's sisters\" was cut short"),
                cut.warnings().toString());
    }

    @Test
    void aLongTextThatIsCutIsQuotedWithBothItsEnds() throws Exception {
        String text = "Cut along the solid lines, fold at the broken one, punch both layers at the ring, tie on. Blades slip: cut away from your hand.";
        Pressed cut = Pressed.page("<text x=\"5\" y=\"20\" width=\"120\" fit=\"9pt\" font-size=\"9pt\">" + text + "</text>");
        assertEquals(1, cut.warnings().size(), cut.warnings().toString());
        String warning = cut.warnings().get(0);
        assertTrue(warning.matches("page 1: \"Cut along the solid lines, fold at the.* \\.\\.\\. .*cut away from your hand\\.\" was cut short to \"Cut along the solid lines, .*…\""), warning);
        assertFalse(warning.endsWith("cut away from your hand.\""), warning);
    }

    @Test
    void belowTheFloorATextIsCutAndSaidSo() throws Exception {
        Pressed pressed = Pressed.markup("<document><page width=\"50\" height=\"50\"/><page width=\"50\" height=\"50\">"
                + "<text y=\"20\" x=\"5\" font-size=\"12pt\" fit=\"10pt\" width=\"22\">Breakwater band sampler</text>"
                + "</page></document>", PressSettings.plain());
        List<ReadBack.Letter> letters = pressed.letters();
        assertEquals(10, letters.get(0).sizePt(), 0.001);
        String drawn = joined(letters);
        assertTrue(drawn.matches("Break.*\u2026"), drawn);
        assertEquals(List.of("page 2: \"Breakwater band sampler\" was cut short to \"" + drawn + "\""),
                pressed.warnings());
        assertTrue(right(letters.get(letters.size() - 1)) <= 27 + MM);
        // One more letter would not have fitted; a space is never left before the ellipsis.
        int kept = drawn.length() - 1;
        int next = "Breakwater band sampler".charAt(kept) == ' ' ? kept + 2 : kept + 1;
        String more = "Breakwater band sampler".substring(0, next) + "\u2026";
        assertTrue(new TextMeasure().widthMm(more, "text", 400, 10) > 22);
    }

    @Test
    void theLastOfSeveralLinesIsCut() throws Exception {
        Pressed pressed = Pressed.page("<text y=\"20\" width=\"20\" lines=\"2\">breakwater harbour lights</text>");
        List<String> lines = lineTexts(pressed);
        assertEquals(2, lines.size());
        assertEquals("breakwater", lines.get(0));
        assertTrue(lines.get(1).startsWith("harbour") && lines.get(1).endsWith("\u2026"), lines.get(1));
    }

    @Test
    void aBoxNarrowerThanACharacterStaysEmpty() throws Exception {
        Pressed pressed = Pressed.page("<text y=\"20\" width=\"0.5\" lines=\"2\">Tide</text>");
        assertEquals(List.of(), pressed.letters());
        assertEquals(List.of("page 1: no room for \"Tide\""), pressed.warnings());
    }

    @Test
    void whiteSpaceCollapsesAcrossSpans() throws Exception {
        Pressed pressed = Pressed.page("<text y=\"20\">\n  Rope <tspan> and\t</tspan>\n  knot  </text>");
        assertEquals("Rope and knot", joined(pressed.letters()));
    }

    @Test
    void spansChangeFaceSizeWeightAndSpacingInsideALine() throws Exception {
        List<ReadBack.Letter> letters = Pressed.page("<text y=\"20\">a<tspan font-weight=\"600\" font-size=\"12pt\">b"
                + "</tspan><tspan font-family=\"heading\" letter-spacing=\"2\">cd</tspan></text>").letters();
        assertTrue(letters.get(0).font().endsWith("AtkinsonHyperlegibleNext-Regular"));
        assertTrue(letters.get(1).font().endsWith("AtkinsonHyperlegibleNext-SemiBold"));
        assertEquals(12, letters.get(1).sizePt(), 0.001);
        assertTrue(letters.get(2).font().endsWith("Alegreya-Medium"));
        assertEquals(right(letters.get(0)), letters.get(1).x(), MM);
        assertEquals(right(letters.get(2)) + 2, letters.get(3).x(), MM);
        // All on one baseline.
        assertEquals(1, lines(letters).size());
    }

    @Test
    void weightsTakeTheNearestFace() throws Exception {
        String[][] cases = {{"text", "500", "AtkinsonHyperlegibleNext-Regular"},
            {"text", "600", "AtkinsonHyperlegibleNext-SemiBold"}, {"text", "bold", "AtkinsonHyperlegibleNext-SemiBold"},
            {"heading", "normal", "Alegreya-Medium"}, {"heading", "600", "Alegreya-Medium"},
            {"heading", "700", "Alegreya-Bold"}};
        for (String[] c : cases) {
            String font = Pressed.page("<text y=\"20\" font-family=\"" + c[0] + "\" font-weight=\"" + c[1]
                    + "\">T</text>").letters().get(0).font();
            assertTrue(font.endsWith("+" + c[2]), String.join(" ", c) + " gave " + font);
        }
    }

    @Test
    void textTurnsWithItsElementAndKeepsItsShapeUnderCorrection() throws Exception {
        ReadBack.Letter turned = Pressed.page("<text transform=\"translate(50 60) rotate(90) scale(2)\" x=\"5\""
                + " font-size=\"10pt\">T</text>").letters().get(0);
        // (5,0) scaled is (10,0), turned clockwise (0,10), moved (50,70); a clockwise turn is -90 in PDF's axes.
        assertEquals(50, turned.x(), MM);
        assertEquals(70, turned.y(), MM);
        assertEquals(-90, turned.turned(), 0.001);

        String text = "<text x=\"155\" y=\"48.5\" text-anchor=\"middle\">Harbour</text>";
        List<ReadBack.Letter> plain = Pressed.page(text).letters();
        List<ReadBack.Letter> printed = Pressed.page(text, Pressed.corrected(1.007, 1.002)).letters();
        // 50 mm right and 100 mm above the centre: moved by 0.35 and -0.2 mm, all letters alike.
        for (int i = 0; i < plain.size(); i++) {
            assertEquals(plain.get(i).x() + 0.35, printed.get(i).x(), MM);
            assertEquals(plain.get(i).y() - 0.2, printed.get(i).y(), MM);
        }
    }

    @Test
    void fractionsAreBuiltFromSmallFiguresAndReadAsFractions() throws Exception {
        for (String family : List.of("text", "heading")) {
            for (String written : List.of("\u00BD", "1\u20442")) {
                Pressed pressed = Pressed.page("<text x=\"10\" y=\"20\" font-size=\"20pt\" font-family=\"" + family
                        + "\">" + written + "</text>");
                assertEquals("1\u20442", pressed.text());
                List<ReadBack.Letter> letters = pressed.letters();
                assertEquals(3, letters.size());
                assertEquals(20 * 0.75, letters.get(0).sizePt(), 0.01);
                assertEquals(20, letters.get(1).sizePt(), 0.01);
                assertEquals(20 * 0.75, letters.get(2).sizePt(), 0.01);
                assertTrue(letters.get(0).y() < 20 - 1, "the numerator is raised");
                assertEquals(20, letters.get(2).y(), MM);
                assertTrue(letters.get(2).x() > right(letters.get(0)) - 2);
            }
        }
    }

    @Test
    void aNumeratorHangsFromCapHeight() throws Exception {
        // Atkinson Hyperlegible Next: capitals and figure 1 are 668/1000 em high, so at 20 pt the top of H is
        // 13.36 pt up; a 75 % figure is 10.02 pt high and must be raised 3.34 pt = 1.17828 mm.
        ReadBack.Letter numerator = Pressed.page("<text y=\"20\" font-size=\"20pt\">\u00BC</text>").letters().get(0);
        assertEquals(20 - 1.17828, numerator.y(), MM);
    }

    /** Three quarters of 8.6 pt are 6.45 pt, of 8.7 pt 6.525 pt: none may be under 6.5 pt. */
    @Test
    void fractionsOfSmallTypeStandInLineAtFullSize() throws Exception {
        for (String written : List.of("1\u20442", "\u00BD")) {
            for (String size : List.of("font-size=\"8.6pt\"", "font-size=\"12pt\" width=\"2.6\" fit=\"3pt\"")) {
                Pressed pressed = Pressed.page("<text x=\"10\" y=\"20\" " + size + ">" + written + "</text>");
                assertEquals("1\u20442", pressed.text());
                assertEquals(1, pressed.letters().stream().map(it -> Math.round(it.sizePt() * 1000)).distinct().count());
                pressed.letters().forEach(letter -> assertEquals(20, letter.y(), MM));
            }
        }
        assertEquals(8.7 * 0.75, Pressed.page("<text y=\"20\" font-size=\"8.7pt\">\u00BD</text>").letters().get(0).sizePt(), 0.01);
    }

    @Test
    void everyVulgarFractionIsSet() throws Exception {
        Map<String, String> fractions = Map.of("\u00BC", "1\u20444", "\u00BE", "3\u20444", "\u215B", "1\u20448",
                "\u215C", "3\u20448", "\u215D", "5\u20448", "\u215E", "7\u20448", "\u2153", "1\u20443",
                "\u2152", "1\u204410", "\u2189", "0\u20443", "13\u204416", "13\u204416");
        for (Map.Entry<String, String> fraction : fractions.entrySet()) {
            assertEquals(fraction.getValue(), Pressed.page("<text x=\"9\" y=\"20\">" + fraction.getKey() + "</text>")
                    .text());
        }
        assertEquals("2 1\u20442 in", Pressed.page("<text x=\"9\" y=\"20\">2 \u00BD in</text>").text());
    }

    @Test
    void tabularDigitsStandUnderOneAnother() throws Exception {
        // The widest digit of the regular text face is 0, 648/1000 em: at 10 pt 6.48 pt = 2.286 mm.
        String row = "<text x=\"30\" y=\"%d\" font-size=\"10pt\" font-variant-numeric=\"tabular-nums\">%s</text>";
        Pressed pressed = Pressed.page(String.format(java.util.Locale.ROOT, row, 20, "1478")
                + String.format(java.util.Locale.ROOT, row, 30, "0000"));
        Map<Double, List<ReadBack.Letter>> lines = lines(pressed.letters());
        for (List<ReadBack.Letter> line : lines.values()) {
            for (int i = 0; i < 4; i++) {
                double centre = (line.get(i).x() + right(line.get(i))) / 2;
                assertEquals(30 + 2.286 * (i + 0.5), centre, MM, line.get(i).text());
            }
        }
    }

    @Test
    void missingCharactersFallBackFaceByFace() throws Exception {
        String[][] cases = {{"A", "AtkinsonHyperlegibleNext-Regular"}, {"\u03A8", "NotoSans-Regular"},
            {"\u0416", "NotoSans-Regular"}, {"\u2702", "NotoSansSymbols2-Regular"},
            {Character.toString(0x1D434), "NotoSansMath-Regular"}, {Character.toString(0x1F784), "NotoSansSymbols2-Regular"}};
        for (String[] c : cases) {
            Pressed pressed = Pressed.page("<text x=\"9\" y=\"20\">" + c[0] + "</text>");
            ReadBack.Letter letter = pressed.letters().get(0);
            assertTrue(letter.font().endsWith("+" + c[1]), c[0] + " in " + letter.font());
            assertEquals(c[0], letter.text());
            assertEquals(List.of(), pressed.warnings());
        }
        Pressed heavy = Pressed.page("<text x=\"9\" y=\"20\" font-weight=\"bold\">\u0416</text>");
        assertTrue(heavy.letters().get(0).font().endsWith("+NotoSans-SemiBold"));
    }

    @Test
    void theSymbolFamilyAsksTheSymbolFacesFirst() throws Exception {
        ReadBack.Letter arrow = Pressed.page("<text y=\"20\" font-family=\"symbol\">\u25CF</text>").letters().get(0);
        assertTrue(arrow.font().endsWith("+NotoSansSymbols2-Regular"), arrow.font());
        ReadBack.Letter letter = Pressed.page("<text y=\"20\" font-family=\"symbol\">\u1F00</text>").letters().get(0);
        assertTrue(letter.font().endsWith("+NotoSans-Regular"), letter.font());
    }

    @Test
    void aCharacterNobodyHasIsABoxAndIsNamedOnce() throws Exception {
        // U+6F22 is a Han character; none of the bundled faces covers Han.
        Pressed pressed = Pressed.markup("<document><page width=\"50\" height=\"50\"><text y=\"9\">\u6F22 \u6F22</text>"
                + "</page><page width=\"50\" height=\"50\"><text y=\"9\">\u6F22</text></page></document>",
                PressSettings.plain());
        assertEquals(List.of("page 1: no bundled face has \"\u6F22\" (U+6F22 CJK UNIFIED IDEOGRAPHS 6F22);"
                + " a box was drawn for it"), pressed.warnings());
        assertEquals("\u25A1", pressed.letters().get(0).text());
        assertFalse(Typefaces.canDraw(0x6F22));
        assertTrue(Typefaces.canDraw(0x416));
    }

    @Test
    void decomposedLettersAreComposedAndOtherMarksSitOnTheirBase() throws Exception {
        assertEquals("\u00E9", Pressed.page("<text y=\"20\">e\u0301</text>").letters().get(0).text());
        // No ready-made q with tilde exists: two glyphs, the mark taking no room.
        List<ReadBack.Letter> letters = Pressed.page("<text x=\"10\" y=\"20\" font-size=\"20pt\">q\u0303x</text>").letters();
        double alone = new TextMeasure().widthMm("q", "text", 400, 20);
        ReadBack.Letter last = letters.get(letters.size() - 1);
        assertEquals("x", last.text());
        assertEquals(10 + alone, last.x(), MM);
    }

    @Test
    void textTakesStrokeAndNoneAsSvgDoes() throws Exception {
        assertEquals(List.of(), Pressed.page("<text y=\"9\" fill=\"none\">T</text>").letters());
        assertEquals(1, Pressed.page("<text y=\"9\" fill=\"none\" stroke=\"#000\">T</text>").letters().size());
    }

    @Test
    void linesCountsAsTheBoxDoes() {
        TextMeasure measure = new TextMeasure();
        double width = measure.widthMm("breakwater", "text", 400, 9.5);
        assertEquals(1, measure.lines("breakwater", "text", 400, 9.5, width));
        assertEquals(2, measure.lines("breakwater tide", "text", 400, 9.5, width));
        assertEquals(2, measure.lines("breakwater", "text", 400, 9.5, width - 0.1));
        assertEquals(0, measure.lines(" ", "text", 400, 9.5, width));
    }
}
