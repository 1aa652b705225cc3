package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kitleaf.press.drawing.PageArtist;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Style;
import kitleaf.press.type.Copy;
import kitleaf.press.type.Counters;
import kitleaf.press.type.Galley;
import kitleaf.press.type.Line;
import kitleaf.press.type.SetText;
import kitleaf.press.type.Span;

/**
 * A text in a flow: wrapped to its width, shrunk to its least size, and last cut.
 *
 * @param most lines it may take
 * @param together so many lines stay together at the end and at the beginning of a page
 * @param leastPt what it is set in at least, and as large as has room up to its own size; 0 where its size goes with all others
 * @param narrowPt what it may be set in where it is else wider than its room, whatever all other type is set in; 0 for no smaller than that
 * @param may what is whole for it although it lacks something
 */
record FlowText(Stance stance, List<Span> spans, Style style, int most, int together, double leastPt, double narrowPt, May may)
        implements Block {

    /** What may befall a text: nothing, that words of it are parted, that it is cut too. */
    enum May { NOTHING, PART, CUT }

    /** How far the text face's ascenders reach above a baseline, and its capitals, in parts of the size (its font file: 0.78 and 0.668). */
    static final double ASCENT = 0.78;
    private static final double CAPITALS = 0.668;
    /** A text as wide as its room fits, whatever is lost in reckoning. */
    private static final double HAIR_MM = 1e-3;

    private static final double NARROWEST = 0.7;

    /** Parts ways to say a text, the best first; in the markup a character that no text has, as those of {@link Counters} are. */
    private static final char OR = '\uFDD4';

    @Override
    public boolean isEmpty() {
        return spans.isEmpty();
    }

    @Override
    public String firstWords() {
        return spans.isEmpty() ? "" : spans.get(0).text();
    }

    /** A text drawn where it is put. */
    private record Words(SetText text, double rightMm, double downMm) implements Laid.Drawing {
        @Override
        public void at(double xMm, double yMm, PageArtist artist) {
            artist.set(text, xMm + rightMm, yMm + downMm);
        }
    }

    /** The first of its ways that fits; else the last. */
    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        String all = spans.size() == 1 ? spans.get(0).text() : "";
        int end = all.indexOf(OR);
        if (end < 0) {
            return set(spans, widthMm, roomMm, setter);
        }
        Laid laid = Laid.NOTHING;
        int lost = 0;
        for (int from = 0; from <= all.length() && (from == 0 || !laid.whole()); from = end + 1) {
            end = all.indexOf(OR, from);
            end = end < 0 ? all.length() : end;
            laid = (end == from ? Laid.NOTHING : set(List.of(new Span(all.substring(from, end), spans.get(0).style())), widthMm, roomMm,
                    setter)).losing(lost);
            lost = laid.lost() + Either.STEP;
        }
        return laid;
    }

    private Laid set(List<Span> words, double widthMm, double roomMm, Setter setter) {
        double factor = setter.factor(style, leastPt);
        double fitPt = leastPt > 0 ? setter.grown(0).factor(style, leastPt) * style.type().sizePt() : style.fitPt() * factor;
        Style set = Setter.scaled(style, factor, narrowPt > 0 ? Math.min(fitPt, narrowPt) : fitPt);
        boolean counts = Counters.in(words);
        List<Span> scaled = Setter.scaled(words, factor);
        double leadMm = set.lineHeight() * set.type().sizePt() / Plate.POINTS_PER_MM;
        double largestMm = largestPt(scaled) / Plate.POINTS_PER_MM;
        double firstMm = Math.max(leadMm, largestMm);
        if (may == May.CUT && firstMm > roomMm + ColumnWidth.SLACK_MM) {
            String all = words.stream().map(Span::text).collect(Collectors.joining());
            return new Laid(0, Double.NaN, 0, false, all.length(), (x, y, artist) -> artist.overfull(all));
        }
        int lines = lines(roomMm - firstMm, leadMm);
        Copy copy = new Copy(counts ? Counters.WIDE.fill(scaled) : scaled, set, widthMm * Plate.POINTS_PER_MM, lines);
        SetText text = setter.compositor().set(copy);
        // What is as large as there is room for stands by the size it came to.
        double first = leastPt > 0 ? text.factor() : 1;
        double baselineMm = first * (largestMm * ASCENT + Math.max(0, leadMm - largestMm) / 2);
        double xMm = set.anchor().before * widthMm;
        double heightMm = first * firstMm + (text.lines() - 1) * leadMm * text.factor();
        boolean fits = heightMm <= roomMm + ColumnWidth.SLACK_MM && (!text.cut() || may == May.CUT && keeps(words, text))
                && (may != May.NOTHING || !text.parted());
        return new Laid(heightMm, baselineMm, first * largestMm * CAPITALS, fits, text.whole().length() - text.kept().length(), counts
                ? (x, y, artist) -> artist.counted(new Copy(scaled, giving(set), copy.widthPt(), most), x + xMm, y + baselineMm)
                : new Words(text, xMm, baselineMm));
    }

    /** With numbers that came out wider than any thought of, a text is smaller before it is cut. */
    private static Style giving(Style set) {
        return Setter.scaled(set, 1, Math.min(set.fitPt(), NARROWEST * set.type().sizePt()));
    }

    /** Of a text in several styles that may be cut the first stays. */
    private static boolean keeps(List<Span> words, SetText text) {
        return words.size() == 1 || text.kept().length() > words.get(0).text().length();
    }

    /** How many lines it may take where there is so much room below the first; a room that has not even that one holds back nothing. */
    private int lines(double belowMm, double leadMm) {
        double more = (belowMm + ColumnWidth.SLACK_MM) / leadMm;
        return more < 0 || more >= most ? most : 1 + (int) more;
    }

    private static double largestPt(List<Span> spans) {
        double most = 0;
        for (int i = 0; i < spans.size(); i++) {
            most = Math.max(most, spans.get(i).style().type().sizePt());
        }
        return most;
    }

    @Override
    public double naturalMm(Setter setter) {
        if (spans.isEmpty()) {
            return 0;
        }
        double factor = setter.factor(style, leastPt);
        Galley galley = Galley.of(Counters.in(spans) ? Counters.WIDE.fill(spans) : spans, factor);
        return galley.widthPt(galley.whole()) * factor / Plate.POINTS_PER_MM + HAIR_MM;
    }

    @Override
    public List<FlowPart> flow(double widthMm, double roomMm, Setter setter) {
        List<FlowPart> parts = new ArrayList<>();
        if (together > 0 && !Counters.in(spans)) {
            Galley galley = Galley.of(Setter.scaled(spans, setter.scale()));
            List<Line> lines = galley.lines(widthMm * Plate.POINTS_PER_MM, true).orElse(List.of());
            for (int from = 0; lines.size() >= 2 * together && lines.size() <= most && from < lines.size();) {
                boolean end = from == 0 || lines.size() - from <= together;
                int to = Math.min(lines.size(), from + (end ? together : 1));
                List<Span> part = galley.spans(lines.get(from).from(), lines.get(to - 1).to());
                parts.add(FlowPart.of(new FlowText(stance, part, Setter.scaled(style, setter.scale(), style.fitPt() * setter.scale()),
                        to - from, 0, 0, 0, may).lay(widthMm, roomMm, setter.scaled(1))));
                from = to;
            }
        }
        return parts.isEmpty() ? List.of(FlowPart.of(lay(widthMm, roomMm, setter))) : parts;
    }
}
