package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/**
 * A text in a flow: wrapped to its width, shrunk to its least size, and last cut.
 *
 * @param most lines it may take
 * @param together so many lines stay together at the end and at the beginning of a page
 */
record FlowText(Stance stance, List<Span> spans, Style style, int most, int together) implements Block {

    /** How far the text face's ascenders reach above a baseline, and its capitals, in parts of the size (its font file: 0.78 and 0.668). */
    static final double ASCENT = 0.78;
    private static final double CAPITALS = 0.668;
    /** A text as wide as its room fits, whatever is lost in reckoning. */
    private static final double HAIR_MM = 1e-3;

    @Override
    public boolean isEmpty() {
        return spans.isEmpty();
    }

    @Override
    public String firstWords() {
        return spans.isEmpty() ? "" : spans.get(0).text();
    }

    @Override
    public boolean takesRest() {
        return false;
    }

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        Style set = setter.scaled(style);
        boolean counts = Counters.in(spans);
        List<Span> scaled = setter.scaled(spans);
        Copy copy = new Copy(counts ? Counters.WIDE.fill(scaled) : scaled, set, widthMm * Plate.POINTS_PER_MM, most);
        SetText text = setter.compositor().set(copy);
        double leadMm = set.lineHeight() * set.type().sizePt() / Plate.POINTS_PER_MM;
        double largestMm = largestPt(scaled) / Plate.POINTS_PER_MM;
        double baselineMm = largestMm * ASCENT + Math.max(0, leadMm - largestMm) / 2;
        double xMm = set.anchor().before * widthMm;
        double heightMm = Math.max(leadMm, largestMm) + (text.lines() - 1) * leadMm * text.factor();
        boolean fits = heightMm <= roomMm + ColumnWidth.SLACK_MM;
        return new Laid(heightMm, baselineMm, largestMm * CAPITALS, fits && !text.cut() && !text.parted(), counts
                ? (x, y, artist) -> artist.counted(scaled, set, copy.widthPt(), most, x + xMm, y + baselineMm)
                : (x, y, artist) -> artist.set(text, x + xMm, y + baselineMm));
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
        List<Span> scaled = setter.scaled(spans);
        Galley galley = Galley.of(Counters.in(scaled) ? Counters.WIDE.fill(scaled) : scaled);
        return galley.widthPt(galley.whole()) / Plate.POINTS_PER_MM + HAIR_MM;
    }

    @Override
    public List<FlowPart> flow(double widthMm, double roomMm, Setter setter) {
        List<FlowPart> parts = new ArrayList<>();
        if (together > 0 && !Counters.in(spans)) {
            Galley galley = Galley.of(setter.scaled(spans));
            List<Line> lines = galley.lines(widthMm * Plate.POINTS_PER_MM, true).orElse(List.of());
            for (int from = 0; lines.size() >= 2 * together && lines.size() <= most && from < lines.size();) {
                boolean end = from == 0 || lines.size() - from <= together;
                int to = Math.min(lines.size(), from + (end ? together : 1));
                List<Span> part = galley.spans(lines.get(from).from(), lines.get(to - 1).to());
                parts.add(FlowPart.of(new FlowText(stance, part, setter.scaled(style), to - from, 0)
                        .lay(widthMm, roomMm, setter.scaled(1))));
                from = to;
            }
        }
        return parts.isEmpty() ? List.of(FlowPart.of(lay(widthMm, roomMm, setter))) : parts;
    }
}
