package kitleaf.press.type;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Type;

/**
 * Text as glyphs in one long row at full size, ready to be parted into lines. A text set smaller
 * parts like this one in a box that is wider by as much, so widths are reckoned once.
 */
public final class Galley {

    /** Sums of widths are trusted to a millionth of a point. */
    private static final double SLACK_PT = 1e-6;

    /** A line ends here, wherever it stands (The Unicode Standard, 23.2: line separator). */
    private static final String LINE_END = "\u2028";

    private static final char NO_BREAK = '\u00a0';
    private static final String DASHES = "-\u2010\u2011\u2012\u2013\u2014";

    private final List<Glyph> glyphs;
    private final List<Style> styles;
    private final double[] advancePt;
    private final double[] spacingPt;

    private Galley(List<Glyph> glyphs, List<Style> styles) {
        this.glyphs = glyphs;
        this.styles = styles;
        this.advancePt = new double[glyphs.size()];
        this.spacingPt = new double[glyphs.size()];
        for (int i = 0; i < glyphs.size(); i++) {
            Type type = styles.get(i).type();
            spacingPt[i] = type.spacingMm() * Plate.POINTS_PER_MM;
            advancePt[i] = glyphs.get(i).widthEm() * type.sizePt() + spacingPt[i];
        }
    }

    public static Galley of(List<Span> spans) {
        return of(spans, 1);
    }

    /** What is set smaller by a factor. */
    public static Galley of(List<Span> spans, double factor) {
        List<Glyph> glyphs = new ArrayList<>();
        List<Style> styles = new ArrayList<>();
        for (Span span : spans) {
            for (Glyph glyph : Glyphs.of(span.text(), span.style().type(), span.style().type().sizePt() * factor)) {
                glyphs.add(glyph);
                styles.add(span.style());
            }
        }
        return new Galley(glyphs, styles);
    }

    boolean hasFractions() {
        return glyphs.stream().anyMatch(Glyph::isFraction);
    }

    int size() {
        return glyphs.size();
    }

    Glyph glyph(int index) {
        return glyphs.get(index);
    }

    Style style(int index) {
        return styles.get(index);
    }

    /** From this glyph's left edge to the next one's, in points, letter spacing included. */
    double advancePt(int index) {
        return advancePt[index];
    }

    /** A line's width in points; the spacing after its last character is not counted. */
    public double widthPt(Line line) {
        double width = 0;
        for (int i = line.from(); i < line.to(); i++) {
            width += advancePt[i];
        }
        return line.to() > line.from() ? width - spacingPt[line.to() - 1] : 0;
    }

    /** The whole row as one line. */
    public Line whole() {
        return line(0, size());
    }

    /**
     * The lines in a box, each filled as far as it goes; nothing when that cannot be done.
     *
     * @param widthPt the box's width
     * @param splitWords whether a word wider than the box may be parted anywhere
     */
    public Optional<List<Line>> lines(double widthPt, boolean splitWords) {
        List<Line> lines = new ArrayList<>();
        int from = 0;
        while (from < size()) {
            int reach = reach(from, widthPt);
            int end = reach;
            if (reach < size()) {
                end = lastBreak(from, reach);
                if (end == from) {
                    if (!splitWords || reach == from) {
                        return Optional.empty();
                    }
                    end = partedAt(from, reach);
                }
            }
            lines.add(line(from, end));
            from = end;
            while (from < size() && glyphs.get(from).space()) {
                from++;
            }
        }
        return Optional.of(lines);
    }

    /**
     * This galley up to a place in its last line, with an ellipsis, so that the line from there fits
     * the width; nothing when not even the ellipsis does.
     */
    Optional<Galley> cut(int lineFrom, double widthPt) {
        for (int end = Math.min(reach(lineFrom, widthPt), size()); end >= lineFrom; end--) {
            if (end > lineFrom && glyphs.get(end - 1).space()) {
                continue;
            }
            Style style = styles.get(Math.max(end - 1, 0));
            Glyph ellipsis = Typefaces.chain(style.type().family(), style.type().weight()).glyph('\u2026');
            List<Glyph> kept = new ArrayList<>(glyphs.subList(0, end));
            List<Style> keptStyles = new ArrayList<>(styles.subList(0, end));
            kept.add(ellipsis);
            keptStyles.add(style);
            Galley cut = new Galley(kept, keptStyles);
            if (cut.widthPt(new Line(lineFrom, cut.size())) <= widthPt + SLACK_PT) {
                return Optional.of(cut);
            }
        }
        return Optional.empty();
    }

    /** The text from one glyph to another, as written. */
    String text(int from, int to) {
        StringBuilder text = new StringBuilder();
        for (Glyph glyph : glyphs.subList(from, to)) {
            text.append(glyph.text());
        }
        return text.toString();
    }

    /** How far a line from here reaches; spaces may hang over its end. */
    private int reach(int from, double widthPt) {
        double width = 0;
        int at = from;
        while (at < size()) {
            double next = width + advancePt[at];
            if (!glyphs.get(at).space() && next - spacingPt[at] > widthPt + SLACK_PT) {
                break;
            }
            width = next;
            at++;
            if (glyphs.get(at - 1).text().equals(LINE_END)) {
                break;
            }
        }
        return at;
    }

    /** The last place up to the reach where a line may end, or its start when there is none. */
    private int lastBreak(int from, int reach) {
        for (int end = reach; end > from; end--) {
            Glyph before = glyphs.get(end - 1);
            if (before.space() || before.joint() && end - 1 > from && !glyphs.get(end - 2).space() && !inRange(end)) {
                return end;
            }
        }
        return from;
    }

    /** Where a word wider than its line is parted: at a blank that else holds it together; beside no dash where there is another place. */
    private int partedAt(int from, int reach) {
        for (int end = reach; end > from + 1; end--) {
            if (glyphs.get(end - 1).text().charAt(0) == NO_BREAK) {
                return end;
            }
        }
        int end = reach;
        while (end > from && (isDash(end - 1) || isDash(end))) {
            end--;
        }
        return end > from ? end : reach;
    }

    private boolean isDash(int at) {
        return DASHES.indexOf(glyphs.get(at).text().charAt(0)) >= 0;
    }

    /** Whether a place is past the dash of a range of numbers. */
    private boolean inRange(int end) {
        return end < size() && glyphs.get(end - 1).text().equals("\u2013") && isDigit(end - 2) && isDigit(end);
    }

    private boolean isDigit(int at) {
        return Character.isDigit(glyphs.get(at).text().codePointAt(0));
    }

    /** Whether a line ends within a word. */
    boolean parted(List<Line> lines) {
        for (int i = 0; i + 1 < lines.size(); i++) {
            int end = lines.get(i).to();
            if (end == lines.get(i + 1).from() && end > 0 && !glyphs.get(end - 1).joint()) {
                return true;
            }
        }
        return false;
    }

    /** What stands from one glyph to another, in its styles. */
    public List<Span> spans(int from, int to) {
        List<Span> spans = new ArrayList<>();
        for (int at = from; at < to;) {
            int end = at;
            while (end < to && styles.get(end) == styles.get(at)) {
                end++;
            }
            spans.add(new Span(text(at, end), styles.get(at)));
            at = end;
        }
        return spans;
    }

    private Line line(int from, int end) {
        int to = end;
        while (to > from && glyphs.get(to - 1).space()) {
            to--;
        }
        return new Line(from, to);
    }
}
