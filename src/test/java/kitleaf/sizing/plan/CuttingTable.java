package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.cloth.Flaw;

/**
 * Cuts a planned cloth up as a stitcher would, knowing nothing of how the plan was found: each cut in turn must run from
 * edge to edge of one part that is still whole and must take its kerf out of it; in the end every piece must be a part.
 */
final class CuttingTable {

    private static final double SLACK = 1e-5;

    private final double downKerf;
    private final double acrossKerf;

    /** A rectangle: x, y, width, height. */
    private record Part(double x, double y, double width, double height) {
        boolean covers(double atX, double atY) {
            return atX > x - SLACK && atX < x + width + SLACK && atY > y - SLACK && atY < y + height + SLACK;
        }
    }

    /**
     * @param downKerf what a cut from top to bottom takes away
     * @param acrossKerf what a cut from left to right takes away
     */
    CuttingTable(double downKerf, double acrossKerf) {
        this.downKerf = downKerf;
        this.acrossKerf = acrossKerf;
    }

    void cutsUp(PlannedCloth cloth) {
        List<Part> parts = new ArrayList<>(List.of(new Part(0, 0, cloth.widthMm(), cloth.heightMm())));
        for (EdgeCut cut : cloth.edgeCuts()) {
            cut(parts, cut);
        }
        for (PlannedCut piece : cloth.cuts()) {
            assertTrue(parts.removeIf(part -> near(part.x, piece.xMm()) && near(part.y, piece.yMm())
                    && near(part.width, piece.widthMm()) && near(part.height, piece.heightMm())), () -> "no part is " + piece);
            for (Flaw flaw : cloth.flaws()) {
                boolean down = flaw.run() == Flaw.Run.DOWN;
                double from = down ? piece.xMm() : piece.yMm();
                double to = from + (down ? piece.widthMm() : piece.heightMm());
                assertTrue(to <= flaw.fromMm() + SLACK || from >= flaw.toMm() - SLACK, () -> piece + " lies on " + flaw);
            }
        }
        for (Remnant remnant : cloth.remnants()) {
            assertTrue(parts.stream().anyMatch(part -> part.covers(remnant.xMm(), remnant.yMm())
                    && part.covers(remnant.xMm() + remnant.widthMm(), remnant.yMm() + remnant.heightMm())), () -> "nothing is left at " + remnant);
        }
    }

    private void cut(List<Part> parts, EdgeCut cut) {
        boolean down = cut.run() == EdgeCut.Run.DOWN;
        Part part = parts.stream().filter(p -> down
                ? near(p.y, cut.y1Mm()) && near(p.y + p.height, cut.y2Mm()) && near(p.x + cut.fromMm(), cut.x1Mm()) && near(cut.x1Mm(), cut.x2Mm())
                        && cut.x1Mm() > p.x && cut.x1Mm() < p.x + p.width
                : near(p.x, cut.x1Mm()) && near(p.x + p.width, cut.x2Mm()) && near(p.y + cut.fromMm(), cut.y1Mm()) && near(cut.y1Mm(), cut.y2Mm())
                        && cut.y1Mm() > p.y && cut.y1Mm() < p.y + p.height)
                .findFirst().orElseThrow(() -> new AssertionError("no part is cut from edge to edge by " + cut + " of " + parts));
        parts.remove(part);
        if (down) {
            parts.add(new Part(part.x, part.y, cut.fromMm(), part.height));
            double beyond = part.width - cut.fromMm() - downKerf;
            // A strip narrower than a kerf frays away.
            parts.add(new Part(part.x + cut.fromMm() + downKerf, part.y, Math.max(0, beyond), part.height));
        } else {
            parts.add(new Part(part.x, part.y, part.width, cut.fromMm()));
            double beyond = part.height - cut.fromMm() - acrossKerf;
            parts.add(new Part(part.x, part.y + cut.fromMm() + acrossKerf, part.width, Math.max(0, beyond)));
        }
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < SLACK;
    }

    /** Every piece comes off exactly once, and by the cut that says so. */
    static void numbersRun(PlannedCloth cloth) {
        for (int at = 0; at < cloth.cuts().size(); at++) {
            assertEquals(at + 1, cloth.cuts().get(at).number());
        }
        for (int at = 0; at < cloth.edgeCuts().size(); at++) {
            assertEquals(at + 1, cloth.edgeCuts().get(at).number());
        }
        List<Integer> freed = cloth.steps().stream().flatMap(step -> step.pieces().stream()).map(PlannedCut::number).toList();
        if (cloth.edgeCuts().isEmpty()) {
            assertEquals(1, cloth.cuts().size());
        } else {
            assertEquals(cloth.cuts().stream().map(PlannedCut::number).toList(), freed.stream().sorted().toList());
        }
    }
}
