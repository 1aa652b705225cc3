package kitleaf.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.Units;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Passage;
import kitleaf.sheet.page.Passages;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.OtherClothWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.words.Words;

/**
 * The pages of a piece's cut sheet in large print: one column, what she cuts by first, then the drawing, the counts, the steps and
 * the words of the corner guide, so that the guide's own pages are left to the drawing.
 */
final class LargeCutSheet {

    private static final double LEAST_DRAWING_MM = 80;
    private static final double DRAWING_SHARE = 0.7;

    private final Words words;
    private final Figures figures;
    private final SheetSettings settings;
    private final Frames frames;
    private final double innerMm;

    LargeCutSheet(Words words, Figures figures, SheetSettings settings, Frames frames) {
        this.words = words;
        this.figures = figures;
        this.settings = settings;
        this.frames = frames;
        this.innerMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
    }

    List<CutSheetPage> pages(PieceReckoning reckoned, CutSheetPiece piece, GuidePage guide) {
        Passages set = new Passages(settings.type(), settings.ruler(), Frames.MARGIN_MM, innerMm);
        PageFrame frame = frames.of(0, 0);
        String continued = words.say("kit.continued", piece.title());
        List<CutSheetPage> pages = new ArrayList<>();
        String eyebrow = words.say("cut-sheet.eyebrow");
        double firstMm = frame.foot().topMm() - frames.head(eyebrow, piece.title(), piece.subtitle(), true).bottomMm();
        double pageMm = frame.foot().topMm() - frames.head(eyebrow, continued, "", false).bottomMm();
        for (LargePage page : LargePage.flow(frames, eyebrow, piece.title(), continued, piece.subtitle(),
                passages(set, reckoned, piece, guide, firstMm, pageMm))) {
            ClothDrawing drawing = page.passages().stream().filter(Passage::drawing).findFirst()
                    .map(room -> ClothDrawing.of(reckoned.cloth().size(), CutSheetLayout.warpDown(reckoned),
                            new Block("drawing", Frames.MARGIN_MM, room.yMm(), innerMm, room.heightMm() - 4), figures, settings))
                    .orElse(null);
            pages.add(new CutSheetPage(frame, piece, pages.isEmpty(), List.of(), drawing, page, null));
        }
        return pages;
    }

    private List<Passage> passages(Passages set, PieceReckoning reckoned, CutSheetPiece piece, GuidePage guide, double firstMm, double pageMm) {
        List<Passage> passages = new ArrayList<>();
        passages.add(set.together(List.of(piece.cutLabel(), piece.cut(), piece.cutOther(), piece.cutNote()),
                List.of(set.quiet(), set.display(), set.text(), set.quiet())));
        passages.add(set.together(List.of(piece.finishedLabel(), piece.finished(), piece.finishedOther()), List.of(set.quiet(), set.figure(), set.text())));
        passages.addAll(set.paragraph(piece.finishedNote(), set.quiet()));
        double wholeMm = ClothDrawing.heightMm(reckoned.cloth().size(), CutSheetLayout.warpDown(reckoned), innerMm, figures, settings) + 4;
        double leftMm = firstMm - passages.stream().mapToDouble(Passage::heightMm).sum();
        // Below the sizes where that is no small drawing, else on the next page, with room for the counts below it.
        double roomMm = leftMm >= LEAST_DRAWING_MM ? leftMm : pageMm * DRAWING_SHARE;
        passages.add(Passage.room(Math.min(roomMm, wholeMm)));
        passages.add(set.section(words.say("cut-sheet.count-in")));
        piece.counts().forEach(row -> passages.add(set.pair(row.to(), row.threads())));
        passages.addAll(set.paragraph(piece.centre(), set.text()));
        passages.add(set.section(words.say("cut-sheet.square")));
        passages.addAll(set.paragraph(piece.square(), set.text()));
        passages.add(set.section(words.say("steps.title")));
        for (int i = 0; i < piece.steps().size(); i++) {
            passages.add(set.numbered(i + 1, piece.steps().get(i)));
        }
        piece.cautions().forEach(caution -> passages.addAll(set.paragraph(caution, set.small())));
        passages.add(set.section(words.say("others.title")));
        passages.addAll(set.paragraph(piece.othersNote(), set.quiet()));
        piece.others().forEach(row -> passages.add(other(set, row)));
        passages.add(set.section(words.say("guide.title-large")));
        List.of(guide.heading(), words.say("guide.edge"), guide.distances(), guide.prick(), guide.ticksNote(), words.say("guide.measure-large"))
                .forEach(sentence -> passages.addAll(set.paragraph(sentence, set.text())));
        return passages;
    }

    private Passage other(Passages set, OtherClothWords row) {
        boolean inches = settings.units() == Units.IN;
        return set.row(List.of(words.say("others.large", row.cloth(), row.perInch()),
                words.say("others.sizes-large", inches ? row.finishedIn() : row.finishedCm(), inches ? row.cutIn() : row.cutCm(),
                        words.say(inches ? "guide.in" : "guide.cm"))),
                List.of(row.own() ? set.bold() : set.text(), set.quiet()));
    }
}
