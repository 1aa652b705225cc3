package kitleaf.sheet.cut;

import java.util.List;
import java.util.Map;
import kitleaf.basket.Units;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.words.Words;

/** Lays out the cut sheets: for each piece sizes, drawing, counts, steps and the what-if table, then its corner guide. */
public final class CutSheetLayout {

    private final SheetSettings settings;
    private final Figures figures;
    private final CutSheetWords phrases;
    private final Frames frames;
    private final CornerGuideLayout guides;

    private CutSheetLayout(Reckoning reckoning, SheetSettings settings, Words words) {
        this.settings = settings;
        this.figures = new Figures(settings.units(), words);
        this.phrases = new CutSheetWords(words, figures);
        this.frames = new Frames(reckoning.basket(), settings, words, words.say("cut-sheet.name"));
        this.guides = new CornerGuideLayout(words, settings, frames);
    }

    /** The cut sheets of all pieces, each with its corner guide behind it. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Words words = SheetWords.in(settings.language());
        CutSheetLayout layout = new CutSheetLayout(reckoning, settings, words);
        List<CutSheet> cuts = reckoning.pieces().stream().map(layout::cut).toList();
        int parts = cuts.stream().mapToInt(cut -> 1 + cut.guides().size()).sum();
        return layout.frames.flowing(SheetKind.CUT_SHEETS, parts, words.say("cut-sheet.subject"),
                Map.of("cuts", cuts, "units", settings.units() == Units.IN ? List.of("in", "cm") : List.of("cm", "in")));
    }

    private CutSheet cut(PieceReckoning reckoned) {
        GuideWords words = phrases.ofGuide(reckoned);
        return new CutSheet(phrases.of(reckoned), ClothDrawing.sizes(reckoned, figures, settings), words, guides.pages(reckoned, words));
    }
}
