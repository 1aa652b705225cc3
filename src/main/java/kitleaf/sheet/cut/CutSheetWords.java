package kitleaf.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import kitleaf.basket.Margins;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Shrink;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.PartSize;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.words.Words;

/** Puts a reckoned piece into the words and figures of its cut sheet. */
final class CutSheetWords {

    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;

    CutSheetWords(Words words, Figures figures) {
        this.words = words;
        this.figures = figures;
        this.clothWords = new ClothWords(words, figures);
    }

    CutSheetPiece of(PieceReckoning reckoned) {
        Piece piece = reckoned.piece();
        PieceSize size = reckoned.cloth().size();
        Extent across = size.across();
        Extent down = size.down();
        boolean shrinks = shrinks(piece.cloth());
        return new CutSheetPiece(piece.title(), clothWords.subtitle(piece),
                words.say(shrinks ? "cut-sheet.cut-before" : "cut-sheet.cut"),
                cutSize(size, true),
                words.say("cut-sheet.across-down", cutSize(size, false)),
                marginNote(piece, size),
                words.say(shrinks ? "cut-sheet.finished-after" : "cut-sheet.finished"),
                figures.size(across.finishedMm(), down.finishedMm()),
                figures.otherSize(across.finishedMm(), down.finishedMm()),
                finishedNote(piece, size, reckoned.cloth().parts()),
                List.of(count("from-left", across.nearThreads(), piece),
                        count("from-top", down.nearThreads(), piece),
                        count("from-right", across.farThreads(), piece),
                        count("from-bottom", down.farThreads(), piece),
                        count("centre-across", across.centreThreads(), piece),
                        count("centre-down", down.centreThreads(), piece)),
                words.say("cut-sheet.centre", centre(across), centre(down)),
                steps(reckoned), cautions(reckoned),
                reckoned.cloth().others().stream().map(clothWords::other).toList(),
                words.say(shrinks ? "others.note-shrink" : "others.note"));
    }

    ClothDrawing drawing(PieceReckoning reckoned) {
        PieceSize size = reckoned.cloth().size();
        return new ClothDrawing(size, reckoned.piece().cloth().warp() == Cloth.WarpRun.DOWN, figures.cutLength(size.across().cutMm()),
                figures.cutLength(size.down().cutMm()), figures.brief(size.across().nearEdgeToDesignMm()),
                figures.brief(size.down().nearEdgeToDesignMm()), figures.length(size.cutDiagonalMm()));
    }

    GuideWords ofGuide(PieceReckoning reckoned) {
        Cloth cloth = reckoned.piece().cloth();
        Extent across = reckoned.cloth().size().across();
        Extent down = reckoned.cloth().size().down();
        boolean warpDown = cloth.warp() == Cloth.WarpRun.DOWN;
        // Counting across meets the threads that run down.
        String ticks = words.say(shrinks(cloth) ? "guide.ticks-before" : "guide.ticks",
                words.say(cloth.kind() == Cloth.Kind.BLOCK ? "guide.blocks" : "guide.threads"),
                words.say(warpDown ? "guide.warp" : "guide.weft"), words.say(warpDown ? "guide.weft" : "guide.warp"));
        return new GuideWords(clothWords.worked(cloth.kind(), cloth.count(), cloth.over()),
                both(across.nearEdgeToDesignMm()), figures.brief(across.nearEdgeToDesignMm()),
                both(down.nearEdgeToDesignMm()), figures.brief(down.nearEdgeToDesignMm()),
                words.say("guide.prick", clothWords.threads(across.nearThreads(), cloth.kind()),
                        clothWords.threads(down.nearThreads(), cloth.kind())),
                ticks, words.say(shrinks(cloth) ? "guide.sample-after" : "guide.sample"));
    }

    private static boolean shrinks(Cloth cloth) {
        return shrinks(cloth.shrinkBeforeStitching());
    }

    private static boolean shrinks(Shrink shrink) {
        return shrink.warp() > 0 || shrink.weft() > 0;
    }

    private String cutSize(PieceSize size, boolean own) {
        Figures cut = own ? figures : figures.swapped();
        return cut.cut(size.across().cutMm(), size.down().cutMm());
    }

    private String marginNote(Piece piece, PieceSize size) {
        Margins margins = piece.margins();
        boolean all = margins.even();
        String around = all
                ? words.say(piece.followsHoop() ? "cut-sheet.margin-hoop" : "cut-sheet.margin-all", figures.length(margins.topMm()))
                : words.say("cut-sheet.margin-sides", figures.length(margins.topMm()), figures.length(margins.rightMm()),
                        figures.length(margins.bottomMm()), figures.length(margins.leftMm()));
        boolean rounded = size.across().isRounded() || size.down().isRounded();
        String finish = piece.finish().map(it -> ", " + words.say("finish." + Words.word(it))).orElse("");
        String usual = piece.marginsGiven() || piece.finish().isPresent() ? "" : ", " + words.say("cut-sheet.margin-usual");
        String note = around + finish + usual;
        return rounded ? words.say("cut-sheet.margin-rounded", note) : note;
    }

    private String finishedNote(Piece piece, PieceSize size, List<PartSize> parts) {
        StringJoiner notes = new StringJoiner("; ");
        if (piece.hooped()) {
            notes.add(words.say("cut-sheet.hoop", figures.length(size.diagonalMm())));
        }
        for (PartSize part : parts) {
            notes.add(words.say("cut-sheet.part", part.part().title(), words.say("over." + part.part().over()),
                    figures.size(part.widthMm(), part.heightMm()), figures.otherSize(part.widthMm(), part.heightMm())));
        }
        return notes.toString();
    }

    private CutSheetPiece.CountIn count(String to, long threads, Piece piece) {
        return new CutSheetPiece.CountIn(words.say("cut-sheet." + to), clothWords.threads(threads, piece.cloth().kind()));
    }

    private String centre(Extent extent) {
        int stitch = extent.centreStitch();
        return extent.centreBetween() ? words.say("cut-sheet.centre-between", stitch, stitch + 1)
                : words.say("cut-sheet.centre-on", stitch);
    }

    private List<CutSheetPiece.Step> steps(PieceReckoning reckoned) {
        Cloth cloth = reckoned.piece().cloth();
        PieceSize size = reckoned.cloth().size();
        boolean block = cloth.kind() == Cloth.Kind.BLOCK;
        boolean shrinks = shrinks(cloth);
        String cut = figures.cut(size.across().cutMm(), size.down().cutMm());
        List<CutSheetPiece.Step> steps = new ArrayList<>();
        steps.add(step("steps.bars", ""));
        steps.add(step(shrinks || cloth.dyeing() != Cloth.Dyeing.NONE ? "steps.keep" : "steps.press", ""));
        steps.add(step(cloth.warp() == Cloth.WarpRun.DOWN ? "steps.grain-down" : "steps.grain-across", ""));
        steps.add(step(block ? "steps.follow" : "steps.draw", cut));
        steps.add(step(block ? "steps.cut-block" : "steps.cut", both(size.cutDiagonalMm())));
        // Before the hem: the counts and the guide are from the edge as it was cut.
        steps.add(step("steps.tack", ""));
        steps.add(step("steps.edge", ""));
        if (cloth.dyeing() == Cloth.Dyeing.AFTER) {
            steps.add(dyedLast(cloth, size));
        } else if (reckoned.begun()) {
            // It is washed or dyed, or it never will be: there are stitches on it.
            return steps;
        } else if (shrinks) {
            String key = cloth.dyeing() == Cloth.Dyeing.BEFORE ? "steps.dye" : "steps.wash";
            steps.add(new CutSheetPiece.Step(words.say(key, loss(cloth.shrink())), ""));
        } else if (cloth.dyeing() == Cloth.Dyeing.BEFORE) {
            steps.add(step("steps.dye-only", ""));
        }
        return steps;
    }

    /** What comes when all is stitched; the design shrinks with its cloth. */
    private CutSheetPiece.Step dyedLast(Cloth cloth, PieceSize size) {
        Shrink shrink = cloth.shrink();
        if (!shrinks(shrink)) {
            return step("steps.dye-last-unknown", "");
        }
        boolean down = cloth.warp() == Cloth.WarpRun.DOWN;
        String dyed = figures.size(size.across().finishedMm() * (1 - (down ? shrink.weft() : shrink.warp())),
                size.down().finishedMm() * (1 - (down ? shrink.warp() : shrink.weft())));
        return new CutSheetPiece.Step(words.say("steps.dye-last", loss(shrink), dyed), "");
    }

    /** A length in both units. */
    private String both(double mm) {
        return figures.length(mm) + " (" + figures.other(mm) + ")";
    }

    private CutSheetPiece.Step step(String key, String figure) {
        return new CutSheetPiece.Step(words.say(key, figure), figure);
    }

    private String loss(Shrink shrink) {
        String warp = figures.percent(figures.decimal(shrink.warp() * 100, 1));
        String weft = figures.percent(figures.decimal(shrink.weft() * 100, 1));
        return shrink.warp() == shrink.weft() ? words.say("steps.shrink-both", warp) : words.say("steps.shrink-apart", warp, weft);
    }

    private List<String> cautions(PieceReckoning reckoned) {
        Cloth.Dyeing dyeing = reckoned.piece().cloth().dyeing();
        List<String> cautions = new ArrayList<>(List.of(words.say("caution.blade"), words.say("caution.iron")));
        if (dyeing == Cloth.Dyeing.AFTER || dyeing == Cloth.Dyeing.BEFORE && !reckoned.begun()) {
            cautions.add(words.say("caution.dye"));
        }
        if (dyeing == Cloth.Dyeing.AFTER) {
            cautions.add(words.say("caution.dye-last"));
        }
        return cautions;
    }
}
