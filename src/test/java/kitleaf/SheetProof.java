package kitleaf;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Inked;
import kitleaf.ReadBack.Letter;
import kitleaf.ReadBack.Mark;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * Reads the pages of a sheet as the eye does and tells what nobody can read on them: by the ink of each character (its outline in the
 * embedded typeface), each line as thick and as dashed as it is stroked, and what is laid over what. Lengths are millimetres.
 */
public final class SheetProof {

    /** What is wrong. */
    public enum Kind {
        /** The ink of two texts shares a place. */
        OVERLAP,
        /** A dark line runs through the middle of a character or of a line of text, or something hides it. */
        STRUCK,
        /** A dimension arrow without a figure of its own, or another without words. */
        ARROW,
        /** A page that is hardly used and is not the last. */
        WHITE,
        /** A fraction's figures are too small. */
        FRACTION
    }

    /** A fault, its page from 1, and where it is. */
    public record Fault(Kind kind, int page, String where) { }

    /** What was read, and what is wrong with it. */
    public record Proof(int pages, int letters, int arrows, List<Fault> faults) { }

    /** WCAG 2.2, success criterion 1.4.11: what has to be told from its ground has a contrast of 3 : 1; less is a tint or a quiet rule. */
    private static final double DARK = 3;
    /** Ink boxes may share so much: the numbers of a PDF are rounded, and boxes are larger than the ink in them. */
    private static final double FORGIVEN_MM = 0.1;
    /** A figure belongs to an arrow if it is so near its middle or an end; by eye. */
    private static final double NEAR_MM = 12;
    private static final double LEAST_FRACTION_PT = 6.5;
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final String FRACTION_SLASHES = "\u2044\u2215";

    private final int page;
    private final double paperMm;
    private final List<Mark> marks;
    private final List<Word> letters = new ArrayList<>();
    private final List<Word> texts = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private int arrows;

    /** A character or a line of them: where its ink is, what came before it on the page, and what may be told of it. */
    private record Word(String said, int mark, Letter first, Rectangle2D box, Path2D ink, Path2D middle) {
        boolean level() {
            return Math.abs(first.turned() / 90 - Math.rint(first.turned() / 90)) < 1e-3;
        }
    }

    private SheetProof(int page, double paperMm, List<Mark> marks) {
        this.page = page;
        this.paperMm = paperMm;
        this.marks = marks;
    }

    /** Reads all pages of a sheet. */
    public static Proof of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<List<Mark>> pages = ReadBack.marksByPage(document);
            Set<Integer> firsts = firsts(document);
            List<Fault> faults = new ArrayList<>();
            int letters = 0;
            int arrows = 0;
            for (int i = 0; i < pages.size(); i++) {
                var box = document.getPage(i).getMediaBox();
                SheetProof proof = new SheetProof(i + 1, box.getHeight() * MM_PER_POINT, pages.get(i));
                proof.read();
                proof.overlaps();
                proof.struck();
                proof.arrows();
                proof.fractions();
                if (i + 1 < pages.size() && !firsts.contains(i + 1)) {
                    proof.white();
                }
                letters += proof.letters.size();
                arrows += proof.arrows;
                faults.addAll(proof.faults);
            }
            return new Proof(pages.size(), letters, arrows, faults);
        }
    }

    /** The pages, from 0, that something with a bookmark begins on: those before them are last ones. */
    private static Set<Integer> firsts(PDDocument document) throws IOException {
        Set<Integer> firsts = new HashSet<>();
        var outline = document.getDocumentCatalog().getDocumentOutline();
        if (outline != null) {
            for (PDOutlineItem item : outline.children()) {
                firsts.add(document.getPages().indexOf(item.findDestinationPage(document)));
            }
        }
        return firsts;
    }

    private void tell(Kind kind, String where) {
        faults.add(new Fault(kind, page, where));
    }

    private static String at(Word word) {
        return String.format(Locale.ROOT, "\"%s\" (%.1f pt) at %.0f, %.0f", word.said, word.first.sizePt(), word.box.getX(),
                word.box.getY());
    }

    private static String at(Drawn path) {
        return String.format(Locale.ROOT, "%.1f, %.1f", path.x(0), path.y(0));
    }

    private void read() {
        List<Inked> line = new ArrayList<>();
        Inked before = null;
        int last = 0;
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Inked inked) {
                if (before != null && !(last == i - 1 && goesOn(before.letter(), inked.letter()))) {
                    addText(line, last);
                }
                line.add(inked);
                if (!inked.corners().isEmpty()) {
                    letters.add(word(List.of(inked), i));
                }
                before = inked;
                last = i;
            }
        }
        addText(line, last);
    }

    private void addText(List<Inked> line, int mark) {
        if (line.stream().anyMatch(it -> !it.corners().isEmpty())) {
            texts.add(word(line, mark));
        }
        line.clear();
    }

    /** Whether a character is of the same text: near, in the same face, and nearer yet where its size is another, as in a fraction. */
    private static boolean goesOn(Letter one, Letter next) {
        return one.font().equals(next.font()) && follows(one, next, 0.4, one.sizePt() == next.sizePt() ? 0.9 : 0.15);
    }

    /** Whether a character goes on where one ended, no more than so many ems before or after that. */
    private static boolean follows(Letter one, Letter next, double back, double ahead) {
        double turned = Math.toRadians(one.turned());
        double dx = next.x() - one.x();
        double dy = one.y() - next.y();
        double along = dx * Math.cos(turned) + dy * Math.sin(turned) - one.width();
        double up = dy * Math.cos(turned) - dx * Math.sin(turned);
        double em = Math.max(one.sizePt(), next.sizePt()) * MM_PER_POINT;
        return Math.abs(one.turned() - next.turned()) < 1 && Math.abs(up) < 0.6 * em && along > -back * em && along < ahead * em;
    }

    /** The box around the ink of a line, turned with it, and the half of it in its middle, which no underline or line at its side meets. */
    private static Word word(List<Inked> line, int mark) {
        Letter first = line.get(0).letter();
        double turned = Math.toRadians(first.turned());
        double cos = Math.cos(turned);
        double sin = Math.sin(turned);
        double left = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        StringBuilder said = new StringBuilder();
        for (Inked inked : line) {
            said.append(inked.letter().text());
            for (Point2D.Double corner : inked.corners()) {
                double along = corner.x * cos - corner.y * sin;
                double up = -corner.x * sin - corner.y * cos;
                left = Math.min(left, along);
                right = Math.max(right, along);
                low = Math.min(low, up);
                high = Math.max(high, up);
            }
        }
        double off = FORGIVEN_MM / 2;
        double side = Math.min(0.25 * (right - left), line.size() == 1 ? 99 : 0.3);
        double quarter = 0.25 * (high - low);
        Path2D ink = quad(left + off, low + off, right - off, high - off, cos, sin);
        return new Word(said.toString(), mark, first, ink.getBounds2D(), ink,
                quad(left + side, low + quarter, right - side, high - quarter, cos, sin));
    }

    private static Path2D quad(double left, double low, double right, double high, double cos, double sin) {
        Path2D path = new Path2D.Double();
        double[][] corners = {{left, low}, {right, low}, {right, high}, {left, high}};
        for (int i = 0; i < corners.length; i++) {
            double x = corners[i][0] * cos - corners[i][1] * sin;
            double y = -corners[i][0] * sin - corners[i][1] * cos;
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
        return path;
    }

    private void overlaps() {
        List<Word> sorted = letters.stream().sorted(Comparator.comparingDouble(it -> it.box.getMinX())).toList();
        for (int i = 0; i < sorted.size(); i++) {
            Word one = sorted.get(i);
            for (int j = i + 1; j < sorted.size() && sorted.get(j).box.getMinX() < one.box.getMaxX(); j++) {
                Word other = sorted.get(j);
                if (one.box.intersects(other.box) && !ofOneText(one, other) && meet(one.ink, other.ink, one.level() && other.level())) {
                    tell(Kind.OVERLAP, at(textOf(one)) + " and " + at(textOf(other)) + ": " + one.said + other.said);
                }
            }
        }
    }

    /** Neighbours in a text, or figures of one fraction. */
    private boolean ofOneText(Word one, Word other) {
        Word first = one.mark < other.mark ? one : other;
        Word second = first == one ? other : one;
        if (second.mark - first.mark <= 3) {
            for (int i = first.mark; i <= second.mark; i++) {
                if (marks.get(i) instanceof Inked inked && FRACTION_SLASHES.contains(inked.letter().text())) {
                    return true;
                }
            }
        }
        double apart = Math.abs(first.first.y() - second.first.y()) + Math.abs(first.first.x() - second.first.x());
        return second.mark - first.mark == 1 && apart > 0.2 && second.first.sizePt() == first.first.sizePt()
                && follows(first.first, second.first, 0.12, 0.15);
    }

    private static boolean meet(Path2D one, Path2D other, boolean level) {
        if (level) {
            return one.getBounds2D().intersects(other.getBounds2D());
        }
        Area both = new Area(one);
        both.intersect(new Area(other));
        return !both.isEmpty();
    }

    private Word textOf(Word letter) {
        return texts.stream().filter(it -> it.mark >= letter.mark).findFirst().orElse(letter);
    }

    private void struck() {
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Drawn path) {
                struck(path, i);
            }
        }
    }

    private void struck(Drawn path, int mark) {
        Path2D outline = outline(path);
        boolean line = path.stroked() && isDark(path.stroke());
        Rectangle2D bounds = outline.getBounds2D();
        double wide = path.lineWidthMm() / 2;
        Rectangle2D reach = new Rectangle2D.Double(bounds.getX() - wide, bounds.getY() - wide, bounds.getWidth() + 2 * wide + 1e-6,
                bounds.getHeight() + 2 * wide + 1e-6);
        Shape ink = null;
        for (List<Word> words : List.of(letters, texts)) {
            for (Word word : words) {
                Rectangle2D middle = word.middle.getBounds2D();
                if (!reach.intersects(middle)) {
                    continue;
                }
                if (line) {
                    ink = ink == null ? stroked(path, outline) : ink;
                    if (crosses(ink, word) && !blanked(middle, mark, word.mark)) {
                        tell(Kind.STRUCK, at(word) + " by a line at " + at(path));
                        continue;
                    }
                }
                if (path.filled() && (isDark(path.fill()) && !outline.contains(middle) && crosses(outline, word)
                        && !blanked(middle, mark, word.mark) || mark > word.mark && outline.contains(middle))) {
                    tell(Kind.STRUCK, at(word) + " by a filled shape at " + at(path));
                }
            }
        }
    }

    private static boolean crosses(Shape ink, Word word) {
        return ink.intersects(word.middle.getBounds2D()) && (word.level() || meetAreas(ink, word.middle));
    }

    private static boolean meetAreas(Shape one, Shape other) {
        Area both = new Area(one);
        both.intersect(new Area(other));
        return !both.isEmpty();
    }

    /** Whether something filled lies between a mark and a text and hides the one behind the other. */
    private boolean blanked(Rectangle2D middle, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (marks.get(i) instanceof Drawn path && path.filled() && outline(path).contains(middle)) {
                return true;
            }
        }
        return false;
    }

    private static Shape stroked(Drawn path, Path2D outline) {
        float[] dash = new float[path.dashMm().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = path.dashMm().get(i).floatValue();
        }
        // The caps and joins of a PDF have the numbers they have here.
        return new BasicStroke((float) path.lineWidthMm(), path.cap(), path.join(), 10, dash.length == 0 ? null : dash, 0)
                .createStrokedShape(outline);
    }

    private static Path2D outline(Drawn path) {
        Path2D outline = new Path2D.Double();
        int point = 0;
        for (char operation : path.operations().toCharArray()) {
            switch (operation) {
                case 'M' -> outline.moveTo(path.x(point), path.y(point++));
                case 'L' -> outline.lineTo(path.x(point), path.y(point++));
                case 'C' -> {
                    outline.curveTo(path.x(point), path.y(point), path.x(point + 1), path.y(point + 1), path.x(point + 2),
                            path.y(point + 2));
                    point += 3;
                }
                case 'Z' -> outline.closePath();
                default -> { }
            }
        }
        return outline;
    }

    /** WCAG 2.2, relative luminance and contrast ratio against white paper, written anew here. */
    private static boolean isDark(int colour) {
        double luminance = 0.2126 * channel(colour >> 16) + 0.7152 * channel(colour >> 8) + 0.0722 * channel(colour);
        return 1.05 / (luminance + 0.05) >= DARK;
    }

    private static double channel(int colour) {
        double c = (colour & 255) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** A line with the arrowheads at its ends. */
    private static final class Arrow {
        private final Line2D line;
        private int heads = 1;

        private Arrow(Line2D line) {
            this.line = line;
        }

        private boolean isBeside(Word word) {
            Rectangle2D b = word.box;
            double[][] places = {{line.getX1(), line.getY1()}, {line.getX2(), line.getY2()},
                {(line.getX1() + line.getX2()) / 2, (line.getY1() + line.getY2()) / 2}};
            for (double[] it : places) {
                if (Math.hypot(Math.max(0, Math.max(b.getMinX() - it[0], it[0] - b.getMaxX())),
                        Math.max(0, Math.max(b.getMinY() - it[1], it[1] - b.getMaxY()))) <= NEAR_MM) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Every line with heads at both ends has a figure that no other has; one with a single head points out a way, and has words. */
    private void arrows() {
        List<Arrow> found = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Drawn path && isHead(path)) {
                Line2D line = lineOf(path);
                if (line == null) {
                    tell(Kind.ARROW, "an arrowhead without a line at " + at(path));
                    continue;
                }
                found.stream().filter(it -> it.line.getP1().equals(line.getP1()) && it.line.getP2().equals(line.getP2())).findFirst()
                        .ifPresentOrElse(it -> it.heads++, () -> found.add(new Arrow(line)));
            }
        }
        arrows = found.size();
        List<Word> figures = texts.stream().filter(it -> it.said.matches(".*\\d.*")).toList();
        Arrow[] owner = new Arrow[figures.size()];
        for (Arrow arrow : found) {
            boolean said = arrow.heads > 1 ? takes(arrow, figures, owner, new HashSet<>()) : texts.stream().anyMatch(arrow::isBeside);
            if (!said) {
                tell(Kind.ARROW, String.format(Locale.ROOT, "%d heads, from %.0f, %.0f to %.0f, %.0f", arrow.heads, arrow.line.getX1(),
                        arrow.line.getY1(), arrow.line.getX2(), arrow.line.getY2()));
            }
        }
    }

    /** Gives an arrow a figure beside it, and the one that had it another. */
    private static boolean takes(Arrow arrow, List<Word> figures, Arrow[] owner, Set<Integer> asked) {
        for (int i = 0; i < figures.size(); i++) {
            if (arrow.isBeside(figures.get(i)) && asked.add(i) && (owner[i] == null || takes(owner[i], figures, owner, asked))) {
                owner[i] = arrow;
                return true;
            }
        }
        return false;
    }

    /** The shape of the arrowheads of parts.ftlx: 2.2 long and 1.4 wide, the tip first. */
    private static boolean isHead(Drawn path) {
        if (!path.filled() || path.stroked() || !path.operations().equals("MLLZ")) {
            return false;
        }
        double one = path.points().get(0).distance(path.points().get(1));
        double other = path.points().get(0).distance(path.points().get(2));
        return Math.abs(one - Math.hypot(2.2, 0.7)) < 0.05 && Math.abs(other - one) < 0.05
                && Math.abs(path.points().get(1).distance(path.points().get(2)) - 1.4) < 0.05;
    }

    /** The line that ends in an arrowhead: at its tip, or behind it. */
    private Line2D lineOf(Drawn head) {
        Point2D tip = head.points().get(0);
        Line2D nearest = null;
        double least = 1.6;
        for (Mark mark : marks) {
            if (mark instanceof Drawn path && path.stroked() && path.operations().equals("ML")) {
                Line2D line = new Line2D.Double(path.points().get(0), path.points().get(1));
                double away = Math.min(tip.distance(line.getP1()), tip.distance(line.getP2()));
                Point2D base = new Point2D.Double((head.x(1) + head.x(2)) / 2, (head.y(1) + head.y(2)) / 2);
                if (away < least && line.ptLineDist(tip) < 0.05 && line.ptLineDist(base) < 0.05) {
                    nearest = line;
                    least = away;
                }
            }
        }
        return nearest;
    }

    private void fractions() {
        for (int i = 0; i < letters.size(); i++) {
            Word word = letters.get(i);
            boolean figure = word.said.matches("[½¼¾⅓⅔⅛⅜⅝⅞]") || word.said.matches("\\d")
                    && letters.subList(Math.max(0, i - 2), Math.min(letters.size(), i + 3)).stream()
                            .anyMatch(it -> FRACTION_SLASHES.contains(it.said));
            if (figure && word.first.sizePt() < LEAST_FRACTION_PT - 0.01) {
                tell(Kind.FRACTION, at(textOf(word)) + ": " + at(word));
            }
        }
    }

    /** What stands above the largest white band: where that takes more than half of the page, there is only the foot below it. */
    private void white() {
        List<double[]> spans = new ArrayList<>();
        letters.forEach(it -> spans.add(new double[] {it.box.getMinY(), it.box.getMaxY()}));
        for (Mark mark : marks) {
            if (mark instanceof Drawn path && !(path.filled() && path.fill() == 0xffffff)) {
                spans.add(new double[] {path.least(false), path.most(false)});
            }
        }
        spans.add(new double[] {paperMm, paperMm});
        spans.sort(Comparator.comparingDouble(it -> it[0]));
        double top = spans.get(0)[0];
        double reached = top;
        double used = 0;
        double largest = 0;
        for (double[] span : spans) {
            if (span[0] - reached > largest) {
                largest = span[0] - reached;
                used = reached - top;
            }
            reached = Math.max(reached, span[1]);
        }
        if (largest > paperMm / 2 && used < paperMm / 5) {
            tell(Kind.WHITE, String.format(Locale.ROOT, "%.0f mm of %.0f used", used, paperMm));
        }
    }
}
