package kitleaf;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Reads a PDF back with PDFBox, which is not the library that wrote it: what was drawn, in millimetres from
 * the page's top left corner. Pages are numbered from 1.
 */
public final class ReadBack {

    private static final double POINTS_PER_MM = 72 / 25.4;

    private ReadBack() { }

    /** What is laid on a page. */
    public sealed interface Mark { }

    /** One painted path: the operations and points as drawn, and how it was painted. */
    public record Drawn(String operations, List<Point2D.Double> points, boolean filled, boolean stroked, int fill,
            int stroke, double lineWidthMm, List<Double> dashMm, int cap, int join) implements Mark {

        public double x(int i) {
            return points.get(i).x;
        }

        public double y(int i) {
            return points.get(i).y;
        }

        public double least(boolean across) {
            return points.stream().mapToDouble(p -> across ? p.x : p.y).min().orElseThrow();
        }

        public double most(boolean across) {
            return points.stream().mapToDouble(p -> across ? p.x : p.y).max().orElseThrow();
        }
    }

    /** One character as PDFBox places it; x is its left edge, y its baseline. */
    public record Letter(String text, double x, double y, double width, double sizePt, String font, double turned) {
    }

    /** A character with the corners of the box its ink takes, turned as it is; none for white space. */
    public record Inked(Letter letter, List<Point2D.Double> corners) implements Mark {
    }

    /** What is laid on each page, paths and characters, in the order it was laid. */
    public static List<List<Mark>> marksByPage(PDDocument document) throws IOException {
        List<List<Mark>> pages = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            List<Mark> marks = new ArrayList<>();
            PathReader reader = new PathReader(page) {
                @Override
                void painted(Drawn path) {
                    marks.add(path);
                }

                @Override
                protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement) throws IOException {
                    marks.add(inked(at, font, code, displacement));
                }
            };
            reader.processPage(page);
            pages.add(marks);
        }
        return pages;
    }

    /** Everything drawn on a page that is not text. */
    public static List<Drawn> drawn(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PathReader reader = new PathReader(document.getPage(page - 1));
            reader.processPage(document.getPage(page - 1));
            return reader.drawn;
        }
    }

    /** Every character on a page, or on all pages for page 0. */
    public static List<Letter> letters(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return letters(document, page);
        }
    }

    private static List<Letter> letters(PDDocument document, int page) throws IOException {
        List<Letter> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition t) {
                var m = t.getTextMatrix();
                letters.add(new Letter(t.getUnicode(), m.getTranslateX() / POINTS_PER_MM,
                        (t.getPageHeight() - m.getTranslateY()) / POINTS_PER_MM,
                        t.getWidthDirAdj() / POINTS_PER_MM, Math.hypot(m.getScaleX(), m.getShearY()), t.getFont().getName(),
                        Math.toDegrees(Math.atan2(m.getShearY(), m.getScaleX()))));
            }
        };
        if (page > 0) {
            stripper.setStartPage(page);
            stripper.setEndPage(page);
        }
        stripper.getText(document);
        return letters;
    }

    /** The characters of each page, as {@link #letters} gives them one at a time. */
    public static List<List<Letter>> lettersByPage(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<Letter>> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                pages.add(letters(document, page));
            }
            return pages;
        }
    }

    /** What is drawn on each page, as {@link #drawn} gives it one at a time. */
    public static List<List<Drawn>> drawnByPage(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<Drawn>> pages = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                PathReader reader = new PathReader(page);
                reader.processPage(page);
                pages.add(reader.drawn);
            }
            return pages;
        }
    }

    /** The characters of a page in the order they were drawn, turned ones too, without white space. */
    public static String drawnText(byte[] pdf, int page) throws IOException {
        StringBuilder text = new StringBuilder();
        letters(pdf, page).forEach(letter -> text.append(letter.text()));
        return text.toString().replaceAll("\\s", "");
    }

    /** The text of a page in one line, every kind of space a plain one; of all pages for page 0. */
    public static String line(byte[] pdf, int page) throws IOException {
        return text(pdf, page).replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    /** How many pages there are. */
    public static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    /** The text of a page, or of all pages for page 0. */
    public static String text(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setLineSeparator("\n");
            if (page > 0) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
            }
            return stripper.getText(document).strip();
        }
    }

    private static class PathReader extends PDFGraphicsStreamEngine {

        private final List<Drawn> drawn = new ArrayList<>();
        private final StringBuilder operations = new StringBuilder();
        private final List<Point2D.Double> points = new ArrayList<>();
        private final double height;
        private Point2D current = new Point2D.Double();

        PathReader(PDPage page) {
            super(page);
            height = page.getMediaBox().getHeight();
        }

        private void add(char operation, double x, double y) {
            operations.append(operation);
            points.add(new Point2D.Double(x / POINTS_PER_MM, (height - y) / POINTS_PER_MM));
            current = new Point2D.Double(x, y);
        }

        void painted(Drawn path) {
            drawn.add(path);
        }

        final Inked inked(Matrix at, PDFont font, int code, Vector displacement) throws IOException {
            String text = font.toUnicode(code);
            Letter letter = new Letter(text == null ? "?" : text, at.getTranslateX() / POINTS_PER_MM,
                    (height - at.getTranslateY()) / POINTS_PER_MM,
                    displacement.getX() * Math.hypot(at.getScaleX(), at.getShearY()) / POINTS_PER_MM,
                    Math.hypot(at.getScaleX(), at.getShearY()), font.getName(), Math.toDegrees(Math.atan2(at.getShearY(), at.getScaleX())));
            Rectangle2D ink = ((PDVectorFont) font).getNormalizedPath(code).getBounds2D();
            List<Point2D.Double> corners = new ArrayList<>();
            for (double[] corner : new double[][] {{ink.getMinX(), ink.getMinY()}, {ink.getMaxX(), ink.getMinY()},
                {ink.getMaxX(), ink.getMaxY()}, {ink.getMinX(), ink.getMaxY()}}) {
                Point2D.Float point = at.transformPoint((float) corner[0] / 1000, (float) corner[1] / 1000);
                corners.add(new Point2D.Double(point.x / POINTS_PER_MM, (height - point.y) / POINTS_PER_MM));
            }
            return new Inked(letter, ink.isEmpty() ? List.of() : corners);
        }

        private void paint(boolean filled, boolean stroked) throws IOException {
            var state = getGraphicsState();
            List<Double> dash = new ArrayList<>();
            for (float length : state.getLineDashPattern().getDashArray()) {
                dash.add(length / POINTS_PER_MM);
            }
            painted(new Drawn(operations.toString(), List.copyOf(points), filled, stroked,
                    state.getNonStrokingColor().toRGB(), state.getStrokingColor().toRGB(),
                    state.getLineWidth() / POINTS_PER_MM, dash, state.getLineCap(), state.getLineJoin()));
            endPath();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            add('M', p0.getX(), p0.getY());
            add('L', p1.getX(), p1.getY());
            add('L', p2.getX(), p2.getY());
            add('L', p3.getX(), p3.getY());
            operations.append('Z');
        }

        @Override
        public void drawImage(PDImage image) {
            throw new AssertionError("no images are drawn");
        }

        @Override
        public void clip(int rule) {
            throw new AssertionError("nothing is clipped");
        }

        @Override
        public void moveTo(float x, float y) {
            add('M', x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            add('L', x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            add('C', x1, y1);
            add('c', x2, y2);
            add('c', x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return current;
        }

        @Override
        public void closePath() {
            operations.append('Z');
        }

        @Override
        public void endPath() {
            operations.setLength(0);
            points.clear();
        }

        @Override
        public void strokePath() throws IOException {
            paint(false, true);
        }

        @Override
        public void fillPath(int rule) throws IOException {
            paint(true, false);
        }

        @Override
        public void fillAndStrokePath(int rule) throws IOException {
            paint(true, true);
        }

        @Override
        public void shadingFill(COSName name) {
            throw new AssertionError("no shadings are drawn");
        }
    }
}
