package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.Cloth;
import kitleaf.basket.Units;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.PartSize;
import kitleaf.sizing.cloth.PieceSize;

/** The figures of a cut sheet as plain lines of text, at most 80 columns wide where names allow. */
public final class PlainFigures {

    private static final String ROW = "  %-11s%-27s %s";

    private final Figures figures;
    private final CutSheetWords phrases;
    private final Units units;

    /** Figures with these units first. */
    public PlainFigures(Units units) {
        this.units = units;
        this.figures = new Figures(units);
        this.phrases = new CutSheetWords(SheetWords.in(Locale.ENGLISH), figures);
    }

    /** One piece. */
    public List<String> piece(PieceReckoning reckoned) {
        PieceSize size = reckoned.cloth().size();
        Extent across = size.across();
        Extent down = size.down();
        Cloth.Kind kind = reckoned.piece().cloth().kind();
        List<String> lines = new ArrayList<>();
        lines.add(reckoned.piece().title() + "  [" + reckoned.piece().id() + "]");
        lines.add(row("cloth", phrases.cloth(reckoned.piece().cloth()), ""));
        lines.add(row("chart", reckoned.piece().stitches().wide() + " x " + reckoned.piece().stitches().high() + " stitches",
                reckoned.tally().left() + " of " + reckoned.tally().total() + " left"));
        lines.add(row("design", figures.size(across.finishedMm(), down.finishedMm()), figures.otherSize(across.finishedMm(), down.finishedMm())));
        for (PartSize part : reckoned.cloth().parts()) {
            lines.add(row("  part", figures.size(part.widthMm(), part.heightMm()), part.part().title()));
        }
        lines.add(row("cut", figures.cut(across.cutMm(), down.cutMm()), figures.swapped().cut(across.cutMm(), down.cutMm())));
        lines.add(row("diagonals", figures.length(size.cutDiagonalMm()), figures.other(size.cutDiagonalMm())));
        lines.add(row("count in", phrases.threads(across.nearThreads(), kind) + " from the left",
                phrases.threads(down.nearThreads(), kind) + " from the top"));
        lines.add(row("to centre", phrases.threads(across.centreThreads(), kind) + " from the left",
                phrases.threads(down.centreThreads(), kind) + " from the top"));
        return lines;
    }

    /** The what-if table of one piece. */
    public List<String> others(PieceReckoning reckoned) {
        CutSheetPiece words = phrases.of(reckoned);
        String unit = units == Units.IN ? "in" : "cm";
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "  %-28s%-10s%-20s%s", "on other cloth", "st / in", "design, " + unit, "cut, " + unit));
        for (CutSheetPiece.OtherRow row : words.others()) {
            lines.add(plain(String.format(Locale.ROOT, "%s %-28s%-10s%-20s%s", row.own() ? ">" : " ", row.cloth(), row.perInch(),
                    units == Units.IN ? row.finishedIn() : row.finishedCm(), units == Units.IN ? row.cutIn() : row.cutCm())));
        }
        return lines;
    }

    private static String row(String name, String first, String second) {
        return plain(String.format(Locale.ROOT, ROW, name, first, second).stripTrailing());
    }

    /** Signs a plain terminal may not have, written with those it has. */
    static String plain(String text) {
        return text.replace(Figures.NO_BREAK, ' ').replace('\u2044', '/').replace('×', 'x');
    }
}
