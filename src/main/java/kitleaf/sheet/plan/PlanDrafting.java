package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothSide;
import kitleaf.basket.cloth.Flaw;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.PathText;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sizing.plan.EdgeCut;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Remnant;

/** Draws one planned cloth to round scales. */
final class PlanDrafting {

    /** From the edge to cut numbers, past the fringe; and what stands free around the drawing. */
    private static final double BESIDE_EDGE_MM = 1.9;
    private static final double CLEAR_MM = 0.6;
    /** Right of the cloth, for its fringe or its selvedge, and below. */
    private static final double FRINGE_MM = 3;
    private static final double HATCH_MM = 1.8;
    /** More lines to cut numbers than these nobody can follow. */
    private static final int MOST_LEADERS = 4;
    /** The same of all lines, where many pieces have no room for their numbers. */
    private static final int MOST_IN_ALL = 24;
    /** Cloth beyond the last cut that is worth breaking off: at least so much, and at least so large a part. */
    private static final double LONG_REST_MM = 500;
    private static final double LONG_REST_PART = 0.35;
    /** What is drawn of it all the same. */
    private static final double SHOWN_REST_MM = 60;
    private static final double SHOWN_REST_PART = 0.12;

    private static final double WORTH_BREAKING = 2;
    private static final int DECIMALS = 3;
    /** So much of a page the largest drawing is high, and so much of that the smallest. */
    private static final double LARGEST = 0.7;
    private static final double SMALLEST = 0.3;
    /** Of a cloth with many cuts there are fewer sizes, since each is written out: so many cuts are drawn in all, but three sizes. */
    private static final int MOST_DRAWN = 200;
    private static final int FEWEST_SIZES = 3;

    private final PlannedCloth planned;
    private final PlanWords phrases;
    private final PlanLabels labels;
    private final int mostLeaders;
    private final PlanScale scale;
    private final Box cloth;
    private final boolean brokenRight;
    private final boolean brokenBelow;

    private PlanDrafting(PlannedCloth planned, PlanScale scale, double acrossMm, double downMm, SheetSettings settings, PlanWords phrases) {
        this.planned = planned;
        this.phrases = phrases;
        this.labels = new PlanLabels(settings.ruler(), settings.type());
        this.mostLeaders = Math.min(MOST_IN_ALL, (int) (settings.paper().heightMm() / 3 / labels.stepMm()));
        this.scale = scale;
        this.brokenRight = acrossMm < planned.widthMm();
        this.brokenBelow = downMm < planned.heightMm();
        this.cloth = new Box(leftMm(planned, labels), labels.discMm() + BESIDE_EDGE_MM + CLEAR_MM, scale.onPaper(acrossMm),
                scale.onPaper(downMm));
    }

    private static double leftMm(PlannedCloth planned, PlanLabels labels) {
        return labels.discMm(Integer.toString(planned.edgeCuts().size())) + BESIDE_EDGE_MM + CLEAR_MM;
    }

    /** The drawing of a cloth in several sizes, the largest as wide or nearly as high as the page. */
    static List<PlanDrawing> sizes(PlannedCloth planned, double innerMm, SheetSettings settings, PlanWords phrases) {
        double roomWidthMm = innerMm - leftMm(planned, new PlanLabels(settings.ruler(), settings.type())) - FRINGE_MM;
        double roomHeightMm = settings.paper().heightMm() * LARGEST;
        double acrossMm = shown(planned.widthMm(), reach(planned, EdgeCut.Run.DOWN));
        double downMm = shown(planned.heightMm(), reach(planned, EdgeCut.Run.ACROSS));
        PlanScale whole = PlanScale.fitting(planned.widthMm(), planned.heightMm(), roomWidthMm, roomHeightMm);
        PlanScale broken = PlanScale.fitting(acrossMm, downMm, roomWidthMm, roomHeightMm);
        // A break is only worth its words where it makes the drawing much larger.
        boolean worth = whole.one() >= WORTH_BREAKING * broken.one();
        double wideMm = worth && broken.onPaper(planned.widthMm()) > roomWidthMm ? acrossMm : planned.widthMm();
        double highMm = worth && broken.onPaper(planned.heightMm()) > roomHeightMm ? downMm : planned.heightMm();
        return (worth ? broken : whole).downTo(SMALLEST).stream()
                .limit(Math.max(FEWEST_SIZES, MOST_DRAWN / Math.max(1, planned.edgeCuts().size())))
                .map(scale -> new PlanDrafting(planned, scale, wideMm, highMm, settings, phrases).draw()).toList();
    }

    /** How far from the left or top edge anything happens. */
    private static double reach(PlannedCloth planned, EdgeCut.Run run) {
        boolean down = run == EdgeCut.Run.DOWN;
        Stream<Double> pieces = planned.cuts().stream().map(cut -> down ? cut.xMm() + cut.widthMm() : cut.yMm() + cut.heightMm());
        Stream<Double> cuts = planned.edgeCuts().stream().filter(cut -> cut.run() == run).map(cut -> down ? cut.x1Mm() : cut.y1Mm());
        Stream<Double> flaws = planned.flaws().stream().filter(flaw -> (flaw.run() == Flaw.Run.DOWN) == down).map(Flaw::toMm);
        return Stream.of(pieces, cuts, flaws).flatMap(it -> it).mapToDouble(Double::doubleValue).max().orElse(0);
    }

    private static double shown(double lengthMm, double reachMm) {
        double rest = lengthMm - reachMm;
        return rest < LONG_REST_MM || rest < LONG_REST_PART * lengthMm ? lengthMm
                : Math.min(lengthMm, reachMm + SHOWN_REST_MM + SHOWN_REST_PART * reachMm);
    }

    private PlanDrawing draw() {
        List<Box> pieces = planned.cuts().stream().map(cut -> box(cut.xMm(), cut.yMm(), cut.widthMm(), cut.heightMm())).toList();
        List<Box> remnants = planned.remnants().stream().map(left -> box(left.xMm(), left.yMm(), left.widthMm(), left.heightMm())).toList();
        List<Box> flaws = planned.flaws().stream().map(this::flaw).toList();
        List<PlanNote> notes = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            PlannedCut cut = planned.cuts().get(i);
            labels.inside(pieces.get(i), Integer.toString(cut.number()), 0, "piece", true)
                    .ifPresent(box -> notes.add(phrases.inRectangle(box, cut)));
        }
        boolean piecesMissing = labels.keepWaiting(mostLeaders);
        for (int i = 0; i < remnants.size(); i++) {
            Remnant left = planned.remnants().get(i);
            if (remnants.get(i).widthMm() > 0 && remnants.get(i).heightMm() > 0) {
                labels.inside(remnants.get(i), PlanWords.letter(i), 2, "cloth", left.usable() && labels.waiting() < mostLeaders)
                        .ifPresent(box -> notes.add(phrases.inRemnant(box, left)));
            }
        }
        boolean numbersMissing = false;
        for (EdgeCut cut : planned.edgeCuts()) {
            numbersMissing |= !numbered(cut);
        }
        Box column = labels.leadOut(cloth.rightMm() + FRINGE_MM + 2, cloth.yMm(), cloth.bottomMm());
        boolean alone = labels.leaders().isEmpty();
        // A line to a figure may cross words.
        return new PlanDrawing(cloth, alone ? cloth.rightMm() + FRINGE_MM : column.rightMm(), Math.max(column.bottomMm(), cloth.bottomMm())
                + FRINGE_MM, phrases.scale(scale), outline(), bare().stream().map(Enum::name).toList(), selvedge(), zigzag(),
                planned.warp() == Cloth.WarpRun.DOWN, pieces, remnants, flaws, hatch(flaws), planned.edgeCuts().stream().map(this::line)
                .toList(), numbersMissing, piecesMissing, labels.leaders(), labels.figures(), alone ? notes : List.of());
    }

    private double x(double mm) {
        return Math.min(cloth.xMm() + scale.onPaper(mm), cloth.rightMm());
    }

    private double y(double mm) {
        return Math.min(cloth.yMm() + scale.onPaper(mm), cloth.bottomMm());
    }

    private Box box(double xMm, double yMm, double widthMm, double heightMm) {
        return new Box(x(xMm), y(yMm), x(xMm + widthMm) - x(xMm), y(yMm + heightMm) - y(yMm));
    }

    private PlanLine line(EdgeCut cut) {
        return new PlanLine(x(cut.x1Mm()), y(cut.y1Mm()), x(cut.x2Mm()), y(cut.y2Mm()));
    }

    private Box flaw(Flaw flaw) {
        return flaw.run() == Flaw.Run.DOWN ? box(flaw.fromMm(), 0, flaw.wideMm(), planned.heightMm())
                : box(0, flaw.fromMm(), planned.widthMm(), flaw.wideMm());
    }

    private Set<ClothSide> bare() {
        Set<ClothSide> bare = EnumSet.noneOf(ClothSide.class);
        planned.selvedge().ifPresent(bare::add);
        if (brokenRight) {
            bare.add(ClothSide.RIGHT);
        }
        if (brokenBelow) {
            bare.add(ClothSide.BOTTOM);
        }
        return bare;
    }

    /** Whether the selvedge is beyond the break. */
    private boolean selvedgeHidden() {
        return planned.selvedge().map(side -> side == ClothSide.RIGHT && brokenRight || side == ClothSide.BOTTOM && brokenBelow)
                .orElse(true);
    }

    private String selvedge() {
        PathText path = new PathText(DECIMALS);
        double out = 0.9;
        if (!selvedgeHidden()) {
            switch (planned.selvedge().orElseThrow()) {
                case LEFT -> path.stroke(cloth.xMm() - out, cloth.yMm(), cloth.xMm() - out, cloth.bottomMm());
                case RIGHT -> path.stroke(cloth.rightMm() + out, cloth.yMm(), cloth.rightMm() + out, cloth.bottomMm());
                case TOP -> path.stroke(cloth.xMm(), cloth.yMm() - out, cloth.rightMm(), cloth.yMm() - out);
                case BOTTOM -> path.stroke(cloth.xMm(), cloth.bottomMm() + out, cloth.rightMm(), cloth.bottomMm() + out);
            }
        }
        return path.toString();
    }

    /** Before the cut's beginning if that is at the cloth's edge, else on the line where nothing else stands; whether it has room. */
    private boolean numbered(EdgeCut cut) {
        String number = Integer.toString(cut.number());
        PlanLine line = line(cut);
        boolean down = cut.run() == EdgeCut.Run.DOWN;
        double high = labels.discMm();
        double wide = labels.discMm(number);
        List<Box> boxes = new ArrayList<>();
        for (double shift : new double[] {0, -0.5, 0.5, -1, 1}) {
            if (down && line.y1Mm() - cloth.yMm() < 0.01) {
                boxes.add(new Box(line.x1Mm() - wide / 2 + shift * wide / 2, cloth.yMm() - BESIDE_EDGE_MM - high, wide, high));
            } else if (!down && line.x1Mm() - cloth.xMm() < 0.01) {
                boxes.add(new Box(cloth.xMm() - BESIDE_EDGE_MM - wide, line.y1Mm() - high / 2 + shift * high / 2, wide, high));
            }
        }
        boxes.addAll(along(line, down, wide, high));
        boolean room = labels.on(boxes, number);
        boolean led = !room && labels.waiting() < Math.min(MOST_LEADERS, mostLeaders);
        if (led) {
            labels.beside((line.x1Mm() + line.x2Mm()) / 2, (line.y1Mm() + line.y2Mm()) / 2, number, "disc");
        }
        return room || led;
    }

    private static List<Box> along(PlanLine line, boolean down, double wide, double high) {
        double length = down ? line.y2Mm() - line.y1Mm() : line.x2Mm() - line.x1Mm();
        double half = (down ? high : wide) / 2;
        List<Box> boxes = new ArrayList<>();
        for (double at = half + 1; at <= length - half; at += Math.max(1, length / 60)) {
            double x = down ? line.x1Mm() : line.x1Mm() + at;
            double y = down ? line.y1Mm() + at : line.y1Mm();
            boxes.add(new Box(x - wide / 2, y - high / 2, wide, high));
        }
        return boxes;
    }

    /** The cloth's edges, but for those where the drawing breaks off. */
    private String outline() {
        PathText path = new PathText(DECIMALS);
        path.stroke(cloth.xMm(), cloth.yMm(), cloth.rightMm(), cloth.yMm());
        path.stroke(cloth.xMm(), cloth.yMm(), cloth.xMm(), cloth.bottomMm());
        if (!brokenRight) {
            path.stroke(cloth.rightMm(), cloth.yMm(), cloth.rightMm(), cloth.bottomMm());
        }
        if (!brokenBelow) {
            path.stroke(cloth.xMm(), cloth.bottomMm(), cloth.rightMm(), cloth.bottomMm());
        }
        return path.toString();
    }

    private String zigzag() {
        PathText path = new PathText(DECIMALS);
        if (brokenRight) {
            zigzag(path, cloth.rightMm(), cloth.yMm(), cloth.heightMm(), false);
        }
        if (brokenBelow) {
            zigzag(path, cloth.bottomMm(), cloth.xMm(), cloth.widthMm(), true);
        }
        return path.toString();
    }

    private static void zigzag(PathText path, double at, double from, double length, boolean level) {
        int teeth = Math.max(1, (int) (length / 8));
        for (int i = 0; i < teeth; i++) {
            double begin = from + length * i / teeth;
            double tip = begin + length / teeth / 2;
            double end = from + length * (i + 1) / teeth;
            double out = at + 1.6;
            path.stroke(level ? begin : at, level ? at : begin, level ? tip : out, level ? out : tip);
            path.stroke(level ? tip : out, level ? out : tip, level ? end : at, level ? at : end);
        }
    }

    /** Strokes that rise to the right, clipped to each flaw by reckoning. */
    private static String hatch(List<Box> flaws) {
        PathText path = new PathText(DECIMALS);
        for (Box flaw : flaws) {
            for (double sum = flaw.xMm() + flaw.yMm() + HATCH_MM; sum < flaw.rightMm() + flaw.bottomMm(); sum += HATCH_MM) {
                double left = Math.max(flaw.xMm(), sum - flaw.bottomMm());
                double right = Math.min(flaw.rightMm(), sum - flaw.yMm());
                if (right - left > 0.1) {
                    path.stroke(left, sum - left, right, sum - right);
                }
            }
        }
        return path.toString();
    }
}
