package kitleaf.press.type;

import java.util.ArrayList;
import java.util.List;
import kitleaf.press.markup.Lately;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Style;

/**
 * Sets text in type: fits it to its box and makes the runs of glyphs that draw it. Much of a sheet is said again on the next label, row
 * or page, so what was set lately is kept standing.
 */
public final class Compositor {

    /** So many texts are kept: what most labels share, and what is on a page of another sheet. */
    private static final int STANDING = 250;

    private static final byte[] NOTHING = {};
    private static final byte[] END_ACTUAL_TEXT = new ContentBytes(8).add("EMC\n").toBytes();

    private final GlyphCodes codes;
    private final Lately<Copy, SetText> standing = new Lately<>(STANDING);

    public Compositor(GlyphCodes codes) {
        this.codes = codes;
    }

    public SetText set(Copy copy) {
        SetText text = standing.get(copy);
        if (text == null) {
            text = compose(copy);
            standing.put(copy, text);
        }
        return text;
    }

    private SetText compose(Copy copy) {
        Galley galley = Galley.of(copy.spans());
        Fitting fitting = fit(copy, galley);
        if (fitting.factor() < 1 && galley.hasFractions()) {
            galley = Galley.of(copy.spans(), fitting.factor());
            fitting = fit(copy, galley);
        }
        Galley drawn = fitting.galley();
        int end = fitting.lines().isEmpty() ? 0 : fitting.lines().get(fitting.lines().size() - 1).to();
        List<Glyph> missing = new ArrayList<>();
        for (int i = 0; i < end; i++) {
            if (drawn.glyph(i).missing()) {
                missing.add(drawn.glyph(i));
            }
        }
        return new SetText(new Lines(fitting, copy.style()).runs(), fitting.cut(), fitting.cut() ? galley.text(0, galley.size()) : "",
                fitting.cut() ? drawn.text(0, end) : "", missing, fitting.lines().size(), fitting.factor(), drawn.parted(fitting.lines()));
    }

    private static Fitting fit(Copy copy, Galley galley) {
        return galley.size() > 0 && copy.widthPt() < Double.POSITIVE_INFINITY
                ? Fitting.boxed(galley, copy.widthPt(), copy.lines(), Math.min(1, copy.style().fitPt() / leastSizePt(galley)))
                : Fitting.free(galley);
    }

    private static double leastSizePt(Galley galley) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < galley.size(); i++) {
            least = Math.min(least, galley.style(i).type().sizePt());
        }
        return least;
    }

    /** Makes the runs of one fitted text, line below line, each placed about x by the anchor. */
    private final class Lines {

        private final Fitting text;
        private final Style style;
        private final List<SetRun> runs = new ArrayList<>();

        private Style runStyle;
        private double runRise;
        private Run run;
        private double lineX;
        private double lineY;
        private byte[] before = NOTHING;

        Lines(Fitting text, Style style) {
            this.text = text;
            this.style = style;
        }

        List<SetRun> runs() {
            Galley galley = text.galley();
            double leadMm = style.lineHeight() * style.type().sizePt() * text.factor() / Plate.POINTS_PER_MM;
            List<Line> lines = text.lines();
            for (int i = 0; i < lines.size(); i++) {
                double widthPt = galley.widthPt(lines.get(i)) * text.factor();
                lineX = -style.anchor().before * widthPt / Plate.POINTS_PER_MM;
                lineY = i * leadMm;
                line(galley, lines.get(i), text.factor());
            }
            return runs;
        }

        private void line(Galley galley, Line line, double factor) {
            double atPt = 0;
            int at = line.from();
            while (at < line.to()) {
                int end = togetherTo(galley, at, line.to());
                boolean together = end > at;
                if (together) {
                    finishRun(NOTHING);
                    before = actualText(galley.text(at, end));
                } else {
                    end = at + 1;
                }
                for (; at < end; at++) {
                    glyph(galley.glyph(at), galley.style(at), atPt, galley.style(at).type().sizePt() * factor);
                    atPt += galley.advancePt(at) * factor;
                }
                if (together) {
                    finishRun(END_ACTUAL_TEXT);
                    before = NOTHING;
                }
            }
            finishRun(NOTHING);
        }

        private void glyph(Glyph glyph, Style in, double atPt, double sizePt) {
            List<Piece> pieces = glyph.pieces();
            for (int i = 0; i < pieces.size(); i++) {
                piece(in, pieces.get(i), atPt + pieces.get(i).xEm() * sizePt, sizePt);
            }
        }

        private void piece(Style in, Piece piece, double atPt, double sizePt) {
            double size = sizePt * piece.scale();
            double rise = sizePt * piece.riseEm();
            if (run == null || run.face() != piece.face() || run.sizePt() != size || runRise != rise || runStyle != in) {
                finishRun(NOTHING);
                run = new Run(codes, piece.face(), size, atPt);
                runRise = rise;
                runStyle = in;
            }
            run.add(piece, atPt);
        }

        private void finishRun(byte[] after) {
            if (run != null) {
                runs.add(new SetRun(runStyle, run.face(), run.sizePt(), lineX + run.startPt() / Plate.POINTS_PER_MM,
                        lineY - runRise / Plate.POINTS_PER_MM, before, run.shown(), after));
                before = NOTHING;
                run = null;
            }
        }
    }

    /**
     * Where a stretch ends whose characters a reader of the PDF could not put together from their
     * places: a fraction, or tabular digits with their wide gaps; the same place when none begins here.
     */
    private static int togetherTo(Galley galley, int from, int most) {
        if (galley.glyph(from).isFraction()) {
            return from + 1;
        }
        int end = from;
        while (end < most && galley.glyph(end).tabularDigit()) {
            end++;
            if (end + 1 < most && isPoint(galley.glyph(end)) && galley.glyph(end + 1).tabularDigit()) {
                end++;
            }
        }
        return end;
    }

    private static boolean isPoint(Glyph glyph) {
        return glyph.text().equals(".") || glyph.text().equals(",");
    }

    /** What follows stands for this text, for readers that put words together by their heights. */
    private static byte[] actualText(String text) {
        ContentBytes out = new ContentBytes(64).add("/Span<</ActualText<FEFF");
        for (int i = 0; i < text.length(); i++) {
            for (int shift = 12; shift >= 0; shift -= 4) {
                out.add(Character.toUpperCase(Character.forDigit(text.charAt(i) >> shift & 15, 16)));
            }
        }
        return out.add(">>>BDC\n").toBytes();
    }
}
