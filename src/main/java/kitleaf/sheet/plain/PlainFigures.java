package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.OtherClothWords;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.OtherCloth;
import kitleaf.sizing.cloth.PartSize;
import kitleaf.sizing.cloth.PieceSize;

/** The figures of a cut sheet as plain lines of text, at most 80 columns wide where names allow. */
public final class PlainFigures {

    private static final int WIDTH = 27;

    private final Figures figures;
    private final ClothWords clothWords;
    private final Units units;
    private final PlainWords words;

    /** Figures with these units first, in words of this language. */
    public PlainFigures(Units units, Locale language) {
        this.units = units;
        this.figures = new Figures(units, SheetWords.in(language));
        this.clothWords = new ClothWords(SheetWords.in(language), figures);
        this.words = new PlainWords(language, WIDTH);
    }

    /** One piece. */
    public List<String> piece(PieceReckoning reckoned) {
        PieceSize size = reckoned.cloth().size();
        Extent across = size.across();
        Extent down = size.down();
        Cloth.Kind kind = reckoned.piece().cloth().kind();
        List<String> lines = new ArrayList<>();
        lines.add(reckoned.piece().title() + "  [" + reckoned.piece().id() + "]");
        lines.add(words.row(words.say("row.cloth"), clothWords.cloth(reckoned.piece().cloth()), ""));
        lines.add(words.row(words.say("row.chart"), words.say("chart.size", reckoned.piece().stitches().wide(), reckoned.piece().stitches()
                .high()), words.say("chart.left", reckoned.tally().left(), reckoned.tally().total())));
        lines.add(words.row(words.say("row.design"), figures.size(across.finishedMm(), down.finishedMm()),
                figures.otherSize(across.finishedMm(), down.finishedMm())));
        for (PartSize part : reckoned.cloth().parts()) {
            lines.add(words.row(words.say("row.part"), figures.size(part.widthMm(), part.heightMm()), part.part().title()));
        }
        lines.add(words.row(words.say("row.cut"), figures.cut(across.cutMm(), down.cutMm()), figures.swapped()
                .cut(across.cutMm(), down.cutMm())));
        lines.add(words.row(words.say("row.diagonals"), figures.length(size.cutDiagonalMm()), figures.other(size.cutDiagonalMm())));
        lines.add(words.row(words.say("row.count-in"), words.say("from-left", clothWords.threads(across.nearThreads(), kind)),
                words.say("from-top", clothWords.threads(down.nearThreads(), kind))));
        lines.add(words.row(words.say("row.to-centre"), words.say("from-left", clothWords.threads(across.centreThreads(), kind)),
                words.say("from-top", clothWords.threads(down.centreThreads(), kind))));
        return lines;
    }

    /** The what-if table of one piece. */
    public List<String> others(PieceReckoning reckoned) {
        String unit = Figures.plain(figures.unit(units == Units.IN ? "in" : "cm")).strip();
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "  %-28s%-10s%-20s%s", words.say("others.cloth"), words.say("others.per-inch"),
                words.say("others.design", unit), words.say("others.cut", unit)));
        for (OtherCloth other : reckoned.cloth().others()) {
            OtherClothWords row = clothWords.other(other);
            lines.add(Figures.plain(String.format(Locale.ROOT, "%s %-28s%-10s%-20s%s", row.own() ? ">" : " ", row.cloth(), row.perInch(),
                    units == Units.IN ? row.finishedIn() : row.finishedCm(), units == Units.IN ? row.cutIn() : row.cutCm())));
        }
        return lines;
    }
}
