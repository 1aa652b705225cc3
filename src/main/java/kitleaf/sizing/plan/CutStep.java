package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One cut as it is made: what is divided by it, and what comes off.
 *
 * @param cut the cut
 * @param madeBy the number of the cut that made the part it divides, 0 for the whole cloth
 * @param side where that part lies beside the cut that made it; {@code WHOLE} for the whole cloth
 * @param widthMm the part's width
 * @param heightMm its height
 * @param pieces what comes off by it and is a piece
 * @param remnants what comes off by it and is left over, by place in {@link PlannedCloth#remnants}, from 0
 */
public record CutStep(EdgeCut cut, int madeBy, Side side, double widthMm, double heightMm, List<PlannedCut> pieces,
                      List<Integer> remnants) {

    /** Where a part lies beside the cut that made it. */
    public enum Side {
        /** No cut made it. */
        WHOLE,
        /** To its left. */
        LEFT,
        /** To its right. */
        RIGHT,
        /** Above it. */
        ABOVE,
        /** Below it. */
        BELOW
    }

    /** Copies the lists. */
    public CutStep {
        Objects.requireNonNull(cut);
        Objects.requireNonNull(side);
        pieces = List.copyOf(pieces);
        remnants = List.copyOf(remnants);
    }

    /**
     * A part of a cloth between cuts. What the cuts lose is in it, to the right of a cut or below it, so that parts cover
     * the whole cloth and every point lies in one.
     */
    private record Part(double xMm, double yMm, double rightMm, double bottomMm, int madeBy, Side side) {

        boolean holds(double x, double y) {
            return x >= xMm && x <= rightMm && y >= yMm && y <= bottomMm;
        }
    }

    /** A part, and the two it was cut into, if it was. */
    private static final class Place {

        private final Part part;
        private Place one;
        private Place other;

        Place(Part part) {
            this.part = part;
        }

        /** The last part cut that holds a point of this one. */
        Place at(double x, double y) {
            Place place = this;
            while (place.one != null) {
                place = place.one.part.holds(x, y) ? place.one : place.other;
            }
            return place;
        }
    }

    /**
     * The steps of a cloth, in the order of cutting.
     *
     * @throws IllegalArgumentException when a cut lies on no part, so that it cannot be made from edge to edge
     */
    static List<CutStep> of(PlannedCloth cloth) {
        Place whole = new Place(new Part(0, 0, cloth.widthMm(), cloth.heightMm(), 0, Side.WHOLE));
        List<Part> divided = new ArrayList<>();
        for (EdgeCut cut : cloth.edgeCuts()) {
            double x = (cut.x1Mm() + cut.x2Mm()) / 2;
            double y = (cut.y1Mm() + cut.y2Mm()) / 2;
            Place place = whole.at(x, y);
            Part part = place.part;
            if (!part.holds(x, y)) {
                throw new IllegalArgumentException("no part to cut: " + cut);
            }
            boolean down = cut.run() == EdgeCut.Run.DOWN;
            divided.add(part);
            place.one = new Place(down ? new Part(part.xMm(), part.yMm(), x, part.bottomMm(), cut.number(), Side.LEFT)
                    : new Part(part.xMm(), part.yMm(), part.rightMm(), y, cut.number(), Side.ABOVE));
            place.other = new Place(down ? new Part(x, part.yMm(), part.rightMm(), part.bottomMm(), cut.number(), Side.RIGHT)
                    : new Part(part.xMm(), y, part.rightMm(), part.bottomMm(), cut.number(), Side.BELOW));
        }
        Map<Integer, List<PlannedCut>> pieces = cloth.cuts().stream().collect(Collectors.groupingBy(
                piece -> whole.at(piece.xMm() + piece.widthMm() / 2, piece.yMm() + piece.heightMm() / 2).part.madeBy()));
        Map<Integer, List<Integer>> remnants = IntStream.range(0, cloth.remnants().size()).boxed().collect(Collectors.groupingBy(at -> {
            Remnant left = cloth.remnants().get(at);
            return whole.at(left.xMm() + left.widthMm() / 2, left.yMm() + left.heightMm() / 2).part.madeBy();
        }));
        List<CutStep> steps = new ArrayList<>();
        for (int i = 0; i < divided.size(); i++) {
            EdgeCut cut = cloth.edgeCuts().get(i);
            steps.add(step(cut, divided.get(i), pieces.getOrDefault(cut.number(), List.of()),
                    remnants.getOrDefault(cut.number(), List.of())));
        }
        return List.copyOf(steps);
    }

    private static CutStep step(EdgeCut cut, Part part, List<PlannedCut> pieces, List<Integer> remnants) {
        boolean down = cut.run() == EdgeCut.Run.DOWN;
        // A cut begins and ends at the part's own edges, with what earlier cuts lost already gone.
        double left = down ? cut.x1Mm() - cut.fromMm() : cut.x1Mm();
        double top = down ? cut.y1Mm() : cut.y1Mm() - cut.fromMm();
        double right = down ? part.rightMm() : cut.x2Mm();
        double bottom = down ? cut.y2Mm() : part.bottomMm();
        return new CutStep(cut, part.madeBy(), part.side(), right - left, bottom - top, pieces, remnants);
    }
}
