package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;

/**
 * Places figures in a drawing so that none lies on another: what has no room is made smaller, then turned, and in the end stands beside
 * the drawing at the end of a line.
 */
final class PlanLabels {

    /** The least size of what is needed at the table, in points, and what figures may be of it, the largest first. */
    private static final double LEAST_PT = 10;
    private static final List<Double> TIMES = List.of(2.0, 1.6, 1.3, 1.0);
    /** Capitals and figures, in parts of the size. */
    private static final double HIGH = 0.74;
    /** Kept free around whatever is placed. */
    private static final double CLEAR_MM = 0.3;
    /** What the disc of a cut's number reaches beyond it. */
    private static final double DISC_MM = 0.9;
    /** Shares of its room a figure may take, but for the least size. */
    private static final double MOST_HIGH = 0.42;
    private static final double MOST_WIDE = 0.6;
    /** From the corner of a rectangle to its figure: a share of it, within bounds. */
    private static final double INSET = 0.14;
    private static final double LEAST_INSET_MM = 0.5;
    private static final double MOST_INSET_MM = 2.6;

    private final TextRuler ruler;
    private final double leastPt;
    private final List<PlanFigure> figures = new ArrayList<>();
    private final TakenPlaces taken = new TakenPlaces(CLEAR_MM);
    private final List<Leader> waiting = new ArrayList<>();
    private final List<PlanLine> leaders = new ArrayList<>();

    private record Leader(double xMm, double yMm, String words, String ground) { }

    PlanLabels(TextRuler ruler, TypeScale type) {
        this.ruler = ruler;
        this.leastPt = type.floor(LEAST_PT);
    }

    List<PlanFigure> figures() {
        return figures;
    }

    /** Lines to figures beside the drawing. */
    List<PlanLine> leaders() {
        return leaders;
    }

    /** How many figures found no room in the drawing. */
    int waiting() {
        return waiting.size();
    }

    /**
     * Lets no more figures stand beside the drawing than have room there; the first are kept.
     *
     * @return whether some had to go
     */
    boolean keepWaiting(int most) {
        boolean tooMany = waiting.size() > most;
        if (tooMany) {
            waiting.subList(most, waiting.size()).clear();
        }
        return tooMany;
    }

    /** The disc of a cut's number, from its own top left corner. */
    PlanFigure disc(String number) {
        return new PlanFigure(new Box(0, 0, discMm(number), discMm()), number, leastPt, "disc", false);
    }

    /** How high the disc of a cut's number is. */
    double discMm() {
        return HIGH * TypeScale.mm(leastPt) + 2 * DISC_MM;
    }

    /** How wide the disc of a number is, at least round. */
    double discMm(String number) {
        return Math.max(discMm(), ruler.widthMm(number, "text", 600, leastPt) + 2 * DISC_MM);
    }

    /**
     * A figure in the top left corner of a box.
     *
     * @param largest the place of its largest size among {@link #TIMES}
     * @param mustStand whether it stands beside the drawing where it has no room, or nowhere
     * @return what is free below it; empty where it does not stand there or is turned
     */
    Optional<Box> inside(Box box, String figure, int largest, String ground, boolean mustStand) {
        double insetMm = Math.max(LEAST_INSET_MM, Math.min(MOST_INSET_MM, INSET * Math.min(box.widthMm(), box.heightMm())));
        double innerMm = box.widthMm() - 2 * insetMm;
        double highMm = box.heightMm() - 2 * insetMm;
        for (boolean upright : new boolean[] {false, true}) {
            for (double times : TIMES.subList(largest, TIMES.size())) {
                double share = times == 1 ? 1 : 0;
                double alongMm = ruler.widthMm(figure, "text", 600, times * leastPt);
                double capMm = HIGH * TypeScale.mm(times * leastPt);
                if (alongMm <= Math.max(share, MOST_WIDE) * (upright ? highMm : innerMm)
                        && capMm <= Math.max(share, MOST_HIGH) * (upright ? innerMm : highMm)) {
                    Box place = upright ? new Box(box.xMm() + insetMm, box.bottomMm() - insetMm - alongMm, capMm, alongMm)
                            : new Box(box.xMm() + insetMm, box.yMm() + insetMm, alongMm, capMm);
                    put(place, figure, times * leastPt, ground, upright);
                    return upright ? Optional.empty() : Optional.of(below(box, place));
                }
            }
        }
        if (mustStand) {
            beside(box.midXMm(), box.midYMm(), figure, ground);
        }
        return Optional.empty();
    }

    /** What words below a figure have, clear of discs on the edges of its box. */
    private Box below(Box box, Box figure) {
        double edgeMm = discMm("88") / 2 + CLEAR_MM;
        double topMm = figure.bottomMm() + 1;
        return new Box(figure.xMm(), topMm, Math.max(0, box.rightMm() - edgeMm - figure.xMm()),
                Math.max(0, box.bottomMm() - edgeMm - topMm));
    }

    private void put(Box box, String words, double sizePt, String ground, boolean upright) {
        figures.add(new PlanFigure(box, words, sizePt, ground, upright));
        taken.add(box);
    }

    /** Puts the disc of a cut's number at the first of some places that is free; whether one was. */
    boolean on(List<Box> boxes, String number) {
        Optional<Box> free = boxes.stream().filter(taken::free).findFirst();
        free.ifPresent(box -> put(box, number, leastPt, "disc", false));
        return free.isPresent();
    }

    /** A figure that stands beside the drawing, at the end of a line from a point in it. */
    void beside(double xMm, double yMm, String words, String ground) {
        waiting.add(new Leader(xMm, yMm, words, ground));
    }

    /** From one figure beside the drawing to the next. */
    double stepMm() {
        return discMm() + 2 * CLEAR_MM;
    }

    /**
     * Puts the figures that found no room into a column, in the order of their points.
     *
     * @return the column, as high as it became
     */
    Box leadOut(double columnMm, double topMm, double bottomMm) {
        waiting.sort(Comparator.comparingDouble(Leader::yMm));
        double yMm = topMm;
        double widestMm = 0;
        for (int i = 0; i < waiting.size(); i++) {
            Leader leader = waiting.get(i);
            double last = bottomMm - (waiting.size() - 1 - i) * stepMm();
            yMm = Math.max(yMm, Math.min(leader.yMm(), last));
            leaders.add(new PlanLine(leader.xMm(), leader.yMm(), columnMm, yMm));
            double wideMm = discMm(leader.words());
            put(new Box(columnMm, yMm - discMm() / 2, wideMm, discMm()), leader.words(), leastPt, leader.ground(), false);
            widestMm = Math.max(widestMm, wideMm);
            yMm += stepMm();
        }
        return new Box(columnMm, topMm, widestMm, yMm - topMm);
    }
}
