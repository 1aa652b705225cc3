package kitleaf.sheet.duplex;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.tag.TagSheets;
import kitleaf.words.Words;

/**
 * Lays out the sheet that shows how far a printer puts backs beside their fronts: scales on the front, and behind each of
 * them a cross on the back, read against the light.
 */
public final class DuplexCheckLayout {

    private static final double FROM_SIDE_MM = 45;
    /**
     * As far from the top as from the bottom, so that backs keep clear of head and foot whichever way the sheet turns: what large
     * print needs on A5.
     */
    private static final double FROM_EDGE = 0.34;
    private static final double LEAST_FROM_EDGE_MM = 55;

    private DuplexCheckLayout() { }

    /** The check for the way the basket's tags are printed, front and back. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Words words = SheetWords.in(settings.language());
        Paper paper = settings.paper();
        Tags asked = reckoning.basket().tags();
        // Folded tags have no backs to shift; the check is then for the usual way of turning a sheet.
        Tags.Sides sides = asked.sides() == Tags.Sides.FOLDED ? Tags.Sides.LONG_EDGE : asked.sides();
        TagSheets sheets = TagSheets.of(paper, new Tags(Tags.USUAL.size(), sides, asked.backLiesRightMm(), asked.backLiesBelowMm()),
                Tags.LEAST_WIDTH_MM, Tags.LEAST_HEIGHT_MM, Tags.FOOT_MM);
        double fromEdgeMm = Math.max(LEAST_FROM_EDGE_MM, FROM_EDGE * paper.heightMm());
        List<Box> fronts = new ArrayList<>();
        for (double x : new double[] {FROM_SIDE_MM, paper.widthMm() / 2, paper.widthMm() - FROM_SIDE_MM}) {
            for (double y : new double[] {fromEdgeMm, paper.heightMm() / 2, paper.heightMm() - fromEdgeMm}) {
                if ((x == paper.widthMm() / 2) == (y == paper.heightMm() / 2)) {
                    fronts.add(new Box(x, y, 0, 0));
                }
            }
        }
        List<Box> backs = fronts.stream().map(front -> new Box(sheets.backXMm(front.xMm(), 0), sheets.backYMm(front.yMm(), 0), 0, 0))
                .toList();
        return new Frames(reckoning.basket(), settings, words, words.say("duplex.name"))
                .flowing(SheetKind.DUPLEX_CHECK, 1, words.say("duplex.subject"),
                Map.of("fronts", fronts, "backs", backs, "below", words.say(sides == Tags.Sides.LONG_EDGE ? "duplex.long-edge"
                        : "duplex.short-edge")));
    }
}
