package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.tag.TagSheets;

/**
 * Lays out the sheet that shows how far a printer puts backs beside their fronts: scales on the front, and behind each of
 * them a cross on the back, read against the light.
 */
final class DuplexCheckLayout {

    private static final double FROM_EDGE_MM = 45;

    private DuplexCheckLayout() { }

    static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Words words = new Words(settings.language());
        Paper paper = settings.paper();
        Tags asked = reckoning.basket().tags();
        // Folded tags have no backs to shift; the check is then for the usual way of turning a sheet.
        Tags.Sides sides = asked.sides() == Tags.Sides.FOLDED ? Tags.Sides.LONG_EDGE : asked.sides();
        TagSheets sheets = TagSheets.of(paper, new Tags(Tags.Share.QUARTER, sides, asked.backLiesRightMm(), asked.backLiesBelowMm()));
        List<Box> fronts = new ArrayList<>();
        for (double x : new double[] {FROM_EDGE_MM, paper.widthMm() / 2, paper.widthMm() - FROM_EDGE_MM}) {
            for (double y : new double[] {FROM_EDGE_MM + 10, paper.heightMm() / 2, paper.heightMm() - FROM_EDGE_MM - 10}) {
                if ((x == paper.widthMm() / 2) == (y == paper.heightMm() / 2)) {
                    fronts.add(new Box(x, y, 0, 0));
                }
            }
        }
        List<Box> backs = fronts.stream().map(front -> new Box(sheets.backXMm(front.xMm(), 0), sheets.backYMm(front.yMm(), 0), 0, 0)).toList();
        Frames frames = new Frames(reckoning.basket(), settings, words, words.say("duplex.name"));
        return new Sheet(SheetKind.DUPLEX_CHECK, 2, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("duplex.name"),
                "subject", words.say("duplex.subject"),
                "language", settings.language().toLanguageTag(),
                "front", frames.of(1, 2),
                "back", frames.of(2, 2),
                "fronts", fronts,
                "backs", backs,
                "note", words.say(sides == Tags.Sides.LONG_EDGE ? "duplex.long-edge" : "duplex.short-edge")));
    }
}
