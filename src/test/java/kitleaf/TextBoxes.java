package kitleaf;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;

/**
 * Where the characters of a page stand, to tell texts that overlap or stand too near the edge; for any sheet. Boxes are the
 * advance wide and from the baseline to the height of capitals high, below it only for letters that descend.
 */
public final class TextBoxes {

    /** Cap height and descender of the text face in parts of its size, read from its tables (rounded down). */
    private static final double CAP = 0.66;
    private static final double DESCENT = 0.2;
    private static final String DESCENDING = "gjpqyQ,;()[]{}|ßçğşµβγζημξρφχψςруфцщд";
    /** What two boxes may share: neighbours touch, and advances hold some white at both sides. */
    private static final double FORGIVEN_MM = 0.12;
    private static final double MM_PER_POINT = 25.4 / 72;

    private TextBoxes() { }

    /** A character and its outline on the page. */
    private record Boxed(Letter letter, int index, Path2D outline, Rectangle2D bounds) { }

    private static List<Boxed> boxes(List<Letter> letters) {
        List<Boxed> boxes = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            Letter letter = letters.get(i);
            if (!letter.text().isBlank()) {
                Path2D outline = outline(letter);
                boxes.add(new Boxed(letter, i, outline, outline.getBounds2D()));
            }
        }
        return boxes;
    }

    private static Path2D outline(Letter letter) {
        double sizeMm = letter.sizePt() * MM_PER_POINT;
        double downMm = (DESCENDING.contains(letter.text()) ? DESCENT : 0) * sizeMm - FORGIVEN_MM;
        double upMm = CAP * sizeMm - FORGIVEN_MM;
        double turned = Math.toRadians(letter.turned());
        double alongX = Math.cos(turned);
        double alongY = -Math.sin(turned);
        double upX = -Math.sin(turned);
        double upY = -Math.cos(turned);
        double[][] corners = {{FORGIVEN_MM, -downMm}, {letter.width() - FORGIVEN_MM, -downMm}, {letter.width() - FORGIVEN_MM, upMm}, {FORGIVEN_MM, upMm}};
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners.length; i++) {
            double x = letter.x() + corners[i][0] * alongX + corners[i][1] * upX;
            double y = letter.y() + corners[i][0] * alongY + corners[i][1] * upY;
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
        return path;
    }

    /** Pairs of characters of a page that lie on each other, told in words; the parts of one set fraction may. */
    public static List<String> overlaps(List<Letter> letters) {
        List<Boxed> boxes = boxes(letters);
        List<String> overlaps = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                Boxed one = boxes.get(i);
                Boxed other = boxes.get(j);
                if (one.bounds().intersects(other.bounds()) && !ofOneFraction(one, other) && meet(one, other)) {
                    overlaps.add(one.letter() + " and " + other.letter());
                }
            }
        }
        return overlaps;
    }

    /** Characters of a page that a straight line is drawn through, told in words. */
    public static List<String> struck(List<Letter> letters, List<Drawn> drawn) {
        List<Line2D> lines = new ArrayList<>();
        for (Drawn path : drawn) {
            for (int i = 1; path.stroked() && path.operations().matches("[MLZ]+") && i < path.points().size(); i++) {
                if (path.operations().charAt(i) == 'L') {
                    lines.add(new Line2D.Double(path.points().get(i - 1), path.points().get(i)));
                }
            }
        }
        return boxes(letters).stream().filter(box -> lines.stream().anyMatch(line -> line.intersects(box.bounds())))
                .map(box -> box.letter().toString()).toList();
    }

    /** Characters that are smaller than so many points; the figures of a fraction may be three quarters of that. */
    public static List<Letter> smaller(List<Letter> letters, double leastPt) {
        List<Letter> smaller = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            boolean figure = letters.get(i).text().matches("\\d") && letters.subList(Math.max(0, i - 3), Math.min(letters.size(), i + 4)).stream()
                    .anyMatch(it -> it.text().equals("\u2044"));
            if (!letters.get(i).text().isBlank() && letters.get(i).sizePt() < leastPt * (figure ? 0.75 : 1) - 1e-3) {
                smaller.add(letters.get(i));
            }
        }
        return smaller;
    }

    private static boolean ofOneFraction(Boxed one, Boxed other) {
        return other.index() - one.index() <= 3 && (one.letter().text().equals("\u2044") || other.letter().text().equals("\u2044"));
    }

    private static boolean meet(Boxed one, Boxed other) {
        Area both = new Area(one.outline());
        both.intersect(new Area(other.outline()));
        return !both.isEmpty();
    }

    /** Characters of a page of which a part is nearer to its edge than so much, told in words. */
    public static List<String> nearEdge(List<Letter> letters, double widthMm, double heightMm, double clearMm) {
        Rectangle2D inside = new Rectangle2D.Double(clearMm, clearMm, widthMm - 2 * clearMm, heightMm - 2 * clearMm);
        return boxes(letters).stream().filter(box -> !inside.contains(box.bounds())).map(box -> box.letter().toString()).toList();
    }
}
