package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kitleaf.ReadBack;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;

/** Outlines, read back with PDFBox; coordinates are worked by hand beside each check. */
class PressShapesTests {

    /** Half the least the design allows (0.02 mm): PDFBox reads coordinates as floats. */
    private static final double MM = 0.01;

    private static final String PEN = " fill=\"none\" stroke=\"#000\"";

    @Test
    void aPageIsAsLargeAsIso216Says() throws Exception {
        // ISO 216: A4 is 210 x 297 mm, 595.2756 x 841.8898 pt.
        Pressed pressed = Pressed.page("");
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            assertEquals(595.2756, document.getPage(0).getMediaBox().getWidth(), 0.005);
            assertEquals(841.8898, document.getPage(0).getMediaBox().getHeight(), 0.005);
        }
    }

    @Test
    void eachPageHasItsOwnSizeAndAnEmptyPageComesOut() throws Exception {
        Pressed pressed = Pressed.markup("<document><page width=\"215.9\" height=\"279.4\"/>"
                + "<page width=\"279.4\" height=\"431.8\"><rect width=\"1\" height=\"1\"/></page>"
                + "<page width=\"148\" height=\"210\"/></document>", PressSettings.plain());
        assertEquals(3, pressed.report.pages());
        try (PDDocument document = Loader.loadPDF(pressed.bytes)) {
            assertEquals(3, document.getNumberOfPages());
            // Letter 612 x 792, tabloid 792 x 1224 (ANSI Y14.1), A5 419.5276 x 595.2756 (ISO 216).
            double[][] sizes = {{612, 792}, {792, 1224}, {419.5276, 595.2756}};
            for (int i = 0; i < 3; i++) {
                PDPage page = document.getPage(i);
                assertEquals(sizes[i][0], page.getMediaBox().getWidth(), 0.005);
                assertEquals(sizes[i][1], page.getMediaBox().getHeight(), 0.005);
            }
        }
    }

    @Test
    void aHundredMillimetresAreAHundredMillimetres() throws Exception {
        ReadBack.Drawn line = Pressed.page("<line x1=\"20\" y1=\"30\" x2=\"120\" y2=\"30\"" + PEN + "/>").onlyDrawn();
        assertEquals("ML", line.operations());
        assertEquals(20, line.x(0), MM);
        assertEquals(30, line.y(0), MM);
        assertEquals(120, line.x(1), MM);
        assertEquals(30, line.y(1), MM);
    }

    @Test
    void nestedTransformsAreComposedOuterFirst() throws Exception {
        // (0,0)-(50,0): scaled 2 is (0,0)-(100,0); turned 90 degrees clockwise (0,0)-(0,100);
        // moved by (30,40): (30,40)-(30,140).
        ReadBack.Drawn line = Pressed.page("<g transform=\"translate(30,40)\"><g transform=\"rotate(90)\">"
                + "<line x2=\"50\" transform=\"scale(2)\"" + PEN + "/></g></g>").onlyDrawn();
        assertEquals(30, line.x(0), MM);
        assertEquals(40, line.y(0), MM);
        assertEquals(30, line.x(1), MM);
        assertEquals(140, line.y(1), MM);
        // Stroke width 1 grows with scale(2).
        assertEquals(2, line.lineWidthMm(), 0.001);
    }

    @Test
    void aTransformListTurnsAboutACentreAndTakesAMatrix() throws Exception {
        // Turning (20,10) by 180 degrees about (15,10) gives (10,10); matrix(1 0 .5 1 3 4) takes
        // (10,10) to (10 + 5 + 3, 10 + 4) = (18,14). (25,10) becomes (5,10), then (5 + 5 + 3, 14) = (13,14).
        ReadBack.Drawn line = Pressed.page("<line x1=\"20\" y1=\"10\" x2=\"25\" y2=\"10\" transform=\""
                + "matrix(1 0 .5 1 3 4),rotate(180 15,10)\"" + PEN + "/>").onlyDrawn();
        assertEquals(18, line.x(0), MM);
        assertEquals(14, line.y(0), MM);
        assertEquals(13, line.x(1), MM);
        assertEquals(14, line.y(1), MM);
    }

    @Test
    void thePrintersCorrectionStretchesAboutThePagesCentre() throws Exception {
        // Centre (105,148.5). x 55 and 155 lie 50 mm left and right: 50 x 1.007 = 50.35, so 54.65 and 155.35.
        // y 48.5 lies 100 mm above: 100 x 1.002 = 100.2, so 48.3.
        ReadBack.Drawn line = Pressed.page("<g transform=\"translate(50)\"><line x1=\"5\" y1=\"48.5\" x2=\"105\""
                + " y2=\"48.5\"" + PEN + "/></g>", Pressed.corrected(1.007, 1.002)).onlyDrawn();
        assertEquals(54.65, line.x(0), MM);
        assertEquals(155.35, line.x(1), MM);
        assertEquals(48.3, line.y(0), MM);
        assertEquals(100.7, line.x(1) - line.x(0), MM);
        assertEquals(1, line.lineWidthMm(), 0.001, "line widths are not corrected");
    }

    @Test
    void aCorrectedLineDownIsStretchedByTheOtherFactor() throws Exception {
        ReadBack.Drawn line = Pressed.page("<line x1=\"10\" y1=\"20\" x2=\"10\" y2=\"120\"" + PEN + "/>",
                Pressed.corrected(1.007, 1.002)).onlyDrawn();
        assertEquals(100.2, line.y(1) - line.y(0), MM);
    }

    @Test
    void aCircleIsRoundAndIsStretchedForThePrinter() throws Exception {
        // Of a quarter's Bezier with control points at 4/3 (sqrt 2 - 1) r the end points lie on the circle.
        ReadBack.Drawn plain = Pressed.page("<circle cx=\"105\" cy=\"148.5\" r=\"40\"/>").onlyDrawn();
        assertEquals("MCccCccCccCccZ", plain.operations());
        assertTrue(plain.filled());
        for (int end = 0; end < plain.points().size(); end += 3) {
            assertEquals(40, Math.hypot(plain.x(end) - 105, plain.y(end) - 148.5), MM);
        }
        // The curve's middle, (P0 + 3 P1 + 3 P2 + P3) / 8, lies on the circle too.
        double x = (plain.x(0) + 3 * plain.x(1) + 3 * plain.x(2) + plain.x(3)) / 8;
        double y = (plain.y(0) + 3 * plain.y(1) + 3 * plain.y(2) + plain.y(3)) / 8;
        assertEquals(40, Math.hypot(x - 105, y - 148.5), MM);

        ReadBack.Drawn printed = Pressed.page("<circle cx=\"105\" cy=\"148.5\" r=\"40\"/>",
                Pressed.corrected(1.007, 1.002)).onlyDrawn();
        assertEquals(2 * 40 * 1.007, printed.most(true) - printed.least(true), MM);
        assertEquals(2 * 40 * 1.002, printed.most(false) - printed.least(false), MM);
    }

    @Test
    void aRectangleHasItsCorners() throws Exception {
        ReadBack.Drawn plain = Pressed.page("<rect x=\"10\" y=\"20\" width=\"30\" height=\"40\"/>").onlyDrawn();
        assertEquals("MLLLZ", plain.operations());
        assertEquals(10, plain.least(true), MM);
        assertEquals(40, plain.most(true), MM);
        assertEquals(20, plain.least(false), MM);
        assertEquals(60, plain.most(false), MM);
    }

    @Test
    void aRoundedRectanglesRadiusStandsForBothAndIsAtMostHalfASide() throws Exception {
        // SVG 1.1, 9.2: rx alone stands for ry; ry is cut to half of 8 mm.
        ReadBack.Drawn rounded = Pressed.page("<rect x=\"10\" y=\"20\" width=\"30\" height=\"8\" rx=\"6\"/>").onlyDrawn();
        assertEquals("MLCccLCccLCccLCccZ", rounded.operations());
        assertEquals(16, rounded.x(0), MM);
        assertEquals(20, rounded.y(0), MM);
        assertEquals(34, rounded.x(1), MM);
        // The first corner ends on the right side, 4 mm down.
        assertEquals(40, rounded.x(4), MM);
        assertEquals(24, rounded.y(4), MM);
    }

    @Test
    void pathCommandsFollowTheSvgGrammar() throws Exception {
        // M10 10 h20 v10 l-5-5 (25,15) 1.5.5 (26.5,15.5) H40 V30 z back to (10,10); l5 5 from there (15,15).
        ReadBack.Drawn path = Pressed.page("<path d=\"M10,10h20v10l-5-5 1.5.5H40V30zl5 5\"" + PEN + "/>").onlyDrawn();
        assertEquals("MLLLLLLZML", path.operations());
        double[][] points = {{10, 10}, {30, 10}, {30, 20}, {25, 15}, {26.5, 15.5}, {40, 15.5}, {40, 30},
            {10, 10}, {15, 15}};
        for (int i = 0; i < points.length; i++) {
            assertEquals(points[i][0], path.x(i), MM, "x of point " + i);
            assertEquals(points[i][1], path.y(i), MM, "y of point " + i);
        }
    }

    @Test
    void pairsAfterAMoveAreLines() throws Exception {
        ReadBack.Drawn path = Pressed.page("<path d=\"m10 10 5 0 0 5M 1e1 2E+1 30 20\"" + PEN + "/>").onlyDrawn();
        assertEquals("MLLML", path.operations());
        assertEquals(15, path.x(2), MM);
        assertEquals(15, path.y(2), MM);
        assertEquals(10, path.x(3), MM);
        assertEquals(20, path.y(3), MM);
    }

    @Test
    void curvesKeepTheirControlPoints() throws Exception {
        // q from (10,10): control (16,22), end (28,10). As a cubic the controls are
        // 10 + 2/3 (6) = 14, 10 + 2/3 (12) = 18 and 28 + 2/3 (-12) = 20, 10 + 2/3 (12) = 18.
        ReadBack.Drawn path = Pressed.page("<path d=\"M10 10q6 12 18 0C30 31 32 33 34 35c1 1 2 2 3 0Q40 40 43 35\""
                + PEN + "/>").onlyDrawn();
        assertEquals("MCccCccCccCcc", path.operations());
        double[][] points = {{10, 10}, {14, 18}, {20, 18}, {28, 10}, {30, 31}, {32, 33}, {34, 35},
            {35, 36}, {36, 37}, {37, 35}, {39, 38.33333}, {41, 38.33333}, {43, 35}};
        for (int i = 0; i < points.length; i++) {
            assertEquals(points[i][0], path.x(i), MM, "x of point " + i);
            assertEquals(points[i][1], path.y(i), MM, "y of point " + i);
        }
    }

    @Test
    void aGroupHandsDownItsAttributesAndAChildOverridesThem() throws Exception {
        List<ReadBack.Drawn> drawn = Pressed.page("<g fill=\"#9a2f2d\" stroke=\"#20262B\" stroke-width=\"0.35\""
                + " stroke-linecap=\"round\"><g stroke-dasharray=\"2.4,1.2\" stroke-linejoin=\"bevel\">"
                + "<rect width=\"5\" height=\"5\"/><rect width=\"5\" height=\"5\" fill=\"#0f0\" stroke=\"none\"/></g>"
                + "<rect width=\"5\" height=\"5\" fill=\"none\"/></g><rect width=\"5\" height=\"5\"/>").drawn();
        assertEquals(4, drawn.size());
        ReadBack.Drawn first = drawn.get(0);
        assertTrue(first.filled() && first.stroked());
        assertEquals(0x9a2f2d, first.fill());
        assertEquals(0x20262b, first.stroke());
        assertEquals(0.35, first.lineWidthMm(), 0.0001);
        assertEquals(1, first.cap());
        assertEquals(2, first.join());
        assertTrue(drawn.get(1).filled() && !drawn.get(1).stroked());
        assertEquals(0x00ff00, drawn.get(1).fill());
        assertTrue(!drawn.get(2).filled() && drawn.get(2).stroked());
        assertEquals(List.of(), drawn.get(2).dashMm());
        assertEquals(0, drawn.get(2).join());
        // SVG's initial values: black fill, no stroke.
        assertTrue(drawn.get(3).filled());
        assertFalse(drawn.get(3).stroked());
        assertEquals(0, drawn.get(3).fill());
    }

    @Test
    void aDashDoesNotDriftAlongItsLine() throws Exception {
        // 2.4 + 1.2 mm: two decimals of points would give 3.6 mm +- 0.0035, 0.2 mm over 60 dashes.
        ReadBack.Drawn line = Pressed.page("<line x2=\"200\" stroke-dasharray=\"2.4 1.2\"" + PEN + "/>").onlyDrawn();
        assertEquals(2.4, line.dashMm().get(0), 0.00001);
        assertEquals(1.2, line.dashMm().get(1), 0.00001);
        assertEquals(200, 200 / 3.6 * (line.dashMm().get(0) + line.dashMm().get(1)), MM);
    }

    @Test
    void dashesGrowWithTheTransform() throws Exception {
        List<ReadBack.Drawn> lines = Pressed.page("<g stroke-dasharray=\"2 1\"" + PEN + "><line x2=\"9\"/>"
                + "<line x2=\"9\" transform=\"scale(3)\"/></g>").drawn();
        assertEquals(2, lines.get(0).dashMm().get(0), 0.0001);
        assertEquals(6, lines.get(1).dashMm().get(0), 0.0001);
    }

    @Test
    void aShapeWithoutSizeOrPaintIsNotDrawn() throws Exception {
        assertEquals(List.of(), Pressed.page("<rect width=\"0\" height=\"5\"/><circle r=\"0\"/>"
                + "<rect width=\"5\" height=\"5\" fill=\"none\"/><line x2=\"5\"/>"
                + "<line x2=\"5\" stroke=\"#000\" stroke-width=\"0\"/><path d=\"\"/>").drawn());
    }
}
