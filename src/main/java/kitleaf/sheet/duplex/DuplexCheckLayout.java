package kitleaf.sheet.duplex;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.Masthead;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Passages;
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

    private static final double FROM_EDGE_MM = 45;
    /** From the middle of a cross to its end, and the word below a scale. */
    private static final double SCALE_MM = 12;
    private static final double WORD_MM = 4;

    private DuplexCheckLayout() { }

    /** The check for the way the basket's tags are printed, front and back; in large print with pages to read behind it. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        Words words = SheetWords.in(settings.language());
        Paper paper = settings.paper();
        Tags asked = reckoning.basket().tags();
        // Folded tags have no backs to shift; the check is then for the usual way of turning a sheet.
        Tags.Sides sides = asked.sides() == Tags.Sides.FOLDED ? Tags.Sides.LONG_EDGE : asked.sides();
        TagSheets sheets = TagSheets.of(paper, new Tags(Tags.Share.QUARTER, sides, asked.backLiesRightMm(), asked.backLiesBelowMm()));
        Frames frames = new Frames(reckoning.basket(), settings, words, words.say("duplex.name"));
        String note = words.say(sides == Tags.Sides.LONG_EDGE ? "duplex.long-edge" : "duplex.short-edge");
        boolean large = settings.type().large();
        Masthead head = frames.head(words.say("duplex.eyebrow"), words.say("duplex.title"), note, true);
        double fromEdgeMm = large ? fromEdge(head, frames.of(1, 3)) : FROM_EDGE_MM + 10;
        List<Box> fronts = new ArrayList<>();
        for (double x : new double[] {FROM_EDGE_MM, paper.widthMm() / 2, paper.widthMm() - FROM_EDGE_MM}) {
            for (double y : new double[] {fromEdgeMm, paper.heightMm() / 2, paper.heightMm() - fromEdgeMm}) {
                if ((x == paper.widthMm() / 2) == (y == paper.heightMm() / 2)) {
                    fronts.add(new Box(x, y, 0, 0));
                }
            }
        }
        List<Box> backs = fronts.stream().map(front -> new Box(sheets.backXMm(front.xMm(), 0), sheets.backYMm(front.yMm(), 0), 0, 0)).toList();
        List<LargePage> read = large ? LargePage.flow(frames, words.say("duplex.eyebrow"), words.say("duplex.title"), words.say("duplex.title"), "",
                new Passages(settings.type(), settings.ruler(), Frames.MARGIN_MM, paper.widthMm() - 2 * Frames.MARGIN_MM)
                        .paragraph(words.say("duplex.read-large"), new Passages.Voice(settings.type().text(), 400, "text", "ink"))) : List.of();
        int count = 2 + read.size();
        List<LargePage> pages = new ArrayList<>();
        read.forEach(page -> pages.add(page.in(frames.of(3 + pages.size(), count))));
        return new Sheet(SheetKind.DUPLEX_CHECK, count, Map.of(
                "title", reckoning.basket().title() + ": " + words.say("duplex.name"),
                "subject", words.say("duplex.subject"),
                "language", settings.language().toLanguageTag(),
                "front", frames.of(1, count),
                "back", frames.of(2, count),
                "head", head,
                "pages", pages,
                "fronts", fronts,
                "backs", backs,
                "note", note));
    }

    /** As far from the top as from the bottom, so that backs keep clear of head and foot whichever way the sheet turns. */
    private static double fromEdge(Masthead head, PageFrame frame) {
        return Math.max(head.bottomMm() + SCALE_MM, frame.heightMm() - frame.foot().topMm() + SCALE_MM + WORD_MM);
    }
}
