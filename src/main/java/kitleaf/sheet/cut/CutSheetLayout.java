package kitleaf.sheet.cut;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitleaf.basket.Units;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.CornerGuide;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.words.Words;

/** Lays out the cut sheets: for each piece sizes, drawing, counts, steps and the what-if table, then its corner guide at true size. */
public final class CutSheetLayout {

    /** A number as wide as that of a page may become. */
    private static final int MOST_PAGES = 88;

    private final SheetSettings settings;
    private final Words words;
    private final CutSheetWords phrases;
    private final Frames frames;

    private CutSheetLayout(Reckoning reckoning, SheetSettings settings, Words words) {
        this.settings = settings;
        this.words = words;
        this.phrases = new CutSheetWords(words, new Figures(settings.units(), words));
        this.frames = new Frames(reckoning.basket(), settings, words, words.say("cut-sheet.name"));
    }

    /** The cut sheets of the pieces whose cloth is still to be cut, or of all, each with its corner guide behind it. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Words words = SheetWords.in(settings.language());
        CutSheetLayout layout = new CutSheetLayout(reckoning, settings, words);
        List<CutSheet> cuts = reckoning.pieces().stream()
                .filter(piece -> settings.all() || piece.wantsCutSheet()).map(layout::cut).toList();
        int parts = cuts.stream().mapToInt(cut -> 1 + cut.joins().size()).sum();
        return layout.frames.flowing(SheetKind.CUT_SHEETS, parts, words.say("cut-sheet.subject"),
                Map.of("cuts", cuts, "units", settings.units() == Units.IN ? List.of("in", "cm") : List.of("cm", "in")));
    }

    private CutSheet cut(PieceReckoning reckoned) {
        GuideWords said = phrases.ofGuide(reckoned);
        String title = reckoned.piece().title();
        PieceSize size = reckoned.cloth().size();
        GuideRoom room = GuideRoom.of(title, said, "", frames, settings);
        CornerGuide guide = CornerGuide.of(size, room.widthMm(), room.heightMm(), room.stripMm());
        if (guide.windows().size() > 1) {
            String tile = Stream.of("guide.piece-of", "guide.patch")
                    .map(it -> words.say(it, MOST_PAGES, MOST_PAGES, MOST_PAGES, MOST_PAGES))
                    .max(Comparator.comparingInt(String::length)).orElseThrow();
            room = GuideRoom.of(title, said, tile, frames, settings);
            guide = CornerGuide.of(size, room.widthMm(), room.heightMm(), room.stripMm());
        }
        return new CutSheet(phrases.of(reckoned), phrases.drawing(reckoned), said, room, guide, joins(guide));
    }

    private List<List<Join>> joins(CornerGuide guide) {
        return guide.windows().stream()
                .map(it -> Join.of(it.column(), it.row(), guide.columns(), guide.rows(), guide.stripMm() > 0, words)).toList();
    }
}
