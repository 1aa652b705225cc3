package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kitleaf.sheet.goal.WallAxis.Part;
import kitleaf.sheet.page.Box;

/**
 * What stands on a wall, as joins see it: cut between cards they do no harm, through a card's blank they do some, through its words, its
 * boxes or its band the most. The harm is counted in tiles for each tile along the join, so that a row of tiles more, which costs one
 * for each, is worth a join that does more harm than one.
 */
final class WallParts {

    private static final double BLANK = 1.5;
    private static final double OUTLINE = 2;
    /** Upright joins run through the words of a card anyway; between two boxes of its band is the best that is left. */
    private static final double BESIDE_BOXES = 3.5;
    private static final double WORDS = 4;

    /** Kept clear of joins on paper. */
    private static final double CLEAR_MM = 1;

    private WallParts() { }

    /**
     * A wall across.
     *
     * @param cards before scaling, on all walls that are printed alike
     * @param insetMm from its sides to what is drawn, before scaling
     */
    static WallAxis across(double lengthMm, double scale, double insetMm, List<GoalCard> cards) {
        List<Part> parts = new ArrayList<>();
        for (GoalCard card : cards) {
            parts.add(part(card.box().xMm(), card.box().rightMm(), BESIDE_BOXES, scale));
            card.band().cells().forEach(cell -> parts.add(new Part((card.bandBox().xMm() + cell.xMm()) * scale,
                    (card.bandBox().xMm() + cell.rightMm()) * scale, WORDS)));
        }
        return new WallAxis(lengthMm, insetMm * scale, lengthMm - insetMm * scale, parts.stream().distinct().toList());
    }

    /**
     * A wall from its top down.
     *
     * @param headFromMm where its title begins, before scaling
     * @param headToMm where the line below its title is
     */
    static WallAxis down(double lengthMm, double scale, double insetMm, double headFromMm, double headToMm, List<GoalCard> cards) {
        List<Part> parts = new ArrayList<>();
        parts.add(part(headFromMm, headToMm, WORDS, scale));
        for (GoalCard card : cards) {
            parts.add(part(card.box().yMm(), card.box().bottomMm(), BLANK, scale));
            parts.add(part(card.outline().yMm(), card.outline().bottomMm(), OUTLINE, scale));
            Stream<Box> boxes = card.says().finished() ? Stream.of(card.bandBox()) : Stream.of(card.date(), card.bandBox());
            Stream.concat(boxes, card.words().stream()).forEach(box -> parts.add(part(box.yMm(), box.bottomMm(), WORDS, scale)));
        }
        return new WallAxis(lengthMm, headFromMm * scale, lengthMm - insetMm * scale, parts.stream().distinct().toList());
    }

    private static Part part(double fromMm, double toMm, double harm, double scale) {
        return new Part(fromMm * scale - CLEAR_MM, toMm * scale + CLEAR_MM, harm);
    }
}
