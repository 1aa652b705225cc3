package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.Cloth;
import kitleaf.basket.ClothSide;
import kitleaf.basket.Flaw;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.NumberText;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.plan.EdgeCut;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Remnant;
import kitleaf.words.Words;

/** Draws one planned cloth to a round scale, as large as its room on the page lets it be. */
final class PlanDrafting {

    /** More room there where numbers stand at the ends of lines. */
    private static final double LEADERS_MM = 12;
    /** From the edge to the words of a selvedge, and to cut numbers. */
    private static final double BESIDE_EDGE_MM = 2.2;
    private static final double HATCH_MM = 1.8;
    private static final double FLAW_WORD_HIGH_MM = 2.9;
    /** A cut's number as wide as one may become. */
    private static final String WIDEST = "88";
    /** More lines to cut numbers than these nobody can follow. */
    private static final int MOST_LEADERS = 4;
    /** The same of all lines, where many pieces have no room for their numbers; and in large print. */
    private static final int MOST_IN_ALL = 24;
    private static final int MOST_LARGE_LEADERS = 6;
    /** Flaws narrower than this on paper have their word beside the cloth. */
    private static final double FLAW_WORD_MM = 3;
    /** Cloth beyond the last cut that is worth breaking off: at least so much, and at least so large a part. */
    private static final double LONG_REST_MM = 500;
    private static final double LONG_REST_PART = 0.35;
    /** What is drawn of it all the same. */
    private static final double SHOWN_REST_MM = 60;
    private static final double SHOWN_REST_PART = 0.12;

    private static final double WORTH_BREAKING = 2;
    private static final List<List<PlanLabels.Line>> NO_WORDS = List.of(List.of());

    private final PlannedCloth planned;
    private final PlanMarks marks;
    private final double roomBottomMm;
    private final double rightMm;
    private final Words words;
    private final Figures figures;
    private final PlanWords phrases;
    private final PlanLabels labels;
    private final PlanScale scale;
    private final Box cloth;
    private final boolean brokenRight;
    private final boolean brokenBelow;
    private boolean numbersMissing;
    private boolean piecesMissing;
    private boolean flawsMissing;

    private PlanDrafting(PlannedCloth planned, Box room, double rightMm, SheetSettings settings, Words words, PlanWords phrases) {
        this.planned = planned;
        this.marks = PlanMarks.of(settings.type());
        this.roomBottomMm = room.bottomMm();
        this.rightMm = rightMm;
        this.words = words;
        this.figures = new Figures(settings.units(), words);
        this.phrases = phrases;
        this.labels = new PlanLabels(settings.ruler(), marks);
        double roomWidthMm = room.widthMm() - marks.leftMm() - rightMm;
        double roomHeightMm = room.heightMm() - marks.topMm() - belowMm();
        double acrossMm = shown(planned.widthMm(), reach(planned, EdgeCut.Run.DOWN));
        double downMm = shown(planned.heightMm(), reach(planned, EdgeCut.Run.ACROSS));
        PlanScale whole = PlanScale.fitting(planned.widthMm(), planned.heightMm(), roomWidthMm, roomHeightMm);
        PlanScale broken = PlanScale.fitting(acrossMm, downMm, roomWidthMm, roomHeightMm);
        // A break is only worth its words where it makes the drawing much larger.
        boolean worth = whole.one() >= WORTH_BREAKING * broken.one();
        this.scale = worth ? broken : whole;
        this.brokenRight = worth && acrossMm < planned.widthMm() && scale.onPaper(planned.widthMm()) > roomWidthMm;
        this.brokenBelow = worth && downMm < planned.heightMm() && scale.onPaper(planned.heightMm()) > roomHeightMm;
        this.cloth = new Box(room.xMm() + marks.leftMm(), room.yMm() + marks.topMm(),
                scale.onPaper(brokenRight ? acrossMm : planned.widthMm()), scale.onPaper(brokenBelow ? downMm : planned.heightMm()));
    }

    /**
     * The drawing of a cloth.
     *
     * @param room where it may stand, with all its dimension lines
     */
    static PlanDrawing of(PlannedCloth planned, Box room, SheetSettings settings, Words words, PlanWords phrases) {
        PlanDrafting narrow = new PlanDrafting(planned, room, PlanMarks.of(settings.type()).rightMm(), settings, words, phrases);
        PlanDrawing drawing = narrow.draw();
        if (!narrow.labels.anyWaiting()) {
            return drawing;
        }
        return new PlanDrafting(planned, room, narrow.marks.rightMm() + narrow.leadersMm(), settings, words, phrases).draw();
    }

    /** What the words at the ends of lines take up. */
    private double leadersMm() {
        return marks.words() ? LEADERS_MM : 4 + labels.widthMm(words.say("plan.cut-beside", WIDEST), marks.leaderPt(), 600);
    }

    /** How many lines to words beside the drawing there can be. */
    private int mostLeaders() {
        return Math.min(marks.words() ? MOST_IN_ALL : MOST_LARGE_LEADERS, (int) ((roomBottomMm - cloth.yMm()) / marks.leaderStepMm()));
    }

    private double belowMm() {
        return marks.belowMm() + (planned.warp() == Cloth.WarpRun.DOWN ? 0 : marks.arrowBelowMm());
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
        String width = both(planned.widthMm());
        String height = both(planned.heightMm());
        List<Box> pieces = planned.cuts().stream().map(cut -> box(cut.xMm(), cut.yMm(), cut.widthMm(), cut.heightMm())).toList();
        List<Box> remnants = planned.remnants().stream().map(left -> box(left.xMm(), left.yMm(), left.widthMm(), left.heightMm())).toList();
        List<Box> flaws = planned.flaws().stream().map(this::flaw).toList();
        labels.keepFree(new Box(cloth.xMm(), cloth.bottomMm() + 4.4, cloth.widthMm(), 6));
        for (int i = 0; i < pieces.size(); i++) {
            PlannedCut cut = planned.cuts().get(i);
            labels.inside(pieces.get(i), Integer.toString(cut.number()), marks.numbers(), marks.words() ? phrases.inRectangle(cut)
                    : NO_WORDS, true);
        }
        piecesMissing = labels.keepWaiting(mostLeaders());
        if (marks.words()) {
            selvedgeWord();
            flaws.forEach(this::flawWord);
        }
        for (int i = 0; i < remnants.size(); i++) {
            Remnant left = planned.remnants().get(i);
            if (remnants.get(i).widthMm() > 0 && remnants.get(i).heightMm() > 0) {
                labels.inside(remnants.get(i), PlanWords.letter(i), marks.letters(), marks.words() ? phrases.inRemnant(left) : NO_WORDS,
                        left.usable() && labels.waiting() < mostLeaders());
            }
        }
        planned.edgeCuts().forEach(this::cutNumber);
        double leadersMm = labels.anyWaiting() ? labels.leadOut(cloth.rightMm() + marks.rightMm() + 2, cloth.yMm(), cloth.bottomMm())
                : cloth.bottomMm();
        double bottomMm = Math.max(leadersMm, cloth.bottomMm() + belowMm());
        return new PlanDrawing(cloth, phrases.scale(scale), outline(), bare().stream().map(Enum::name).toList(), selvedge(), zigzag(),
                planned.warp() == Cloth.WarpRun.DOWN, width, height, bottomMm - cloth.yMm() + marks.topMm(),
                pieces, remnants, flaws, hatch(flaws), planned.edgeCuts().stream().map(this::line).toList(), marks.words(), numbersMissing,
                piecesMissing, flawsMissing, labels.leaders(), labels.blanks(), labels.texts());
    }

    private String both(double mm) {
        return planned.bought() ? words.say("plan.both", figures.cutLength(mm), figures.swapped().cutLength(mm))
                : words.say("plan.both", figures.length(mm), figures.other(mm));
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
        if (selvedgeHidden()) {
            return "";
        }
        double out = 0.9;
        return switch (planned.selvedge().orElseThrow()) {
            case LEFT -> path(cloth.xMm() - out, cloth.yMm(), cloth.xMm() - out, cloth.bottomMm());
            case RIGHT -> path(cloth.rightMm() + out, cloth.yMm(), cloth.rightMm() + out, cloth.bottomMm());
            case TOP -> path(cloth.xMm(), cloth.yMm() - out, cloth.rightMm(), cloth.yMm() - out);
            case BOTTOM -> path(cloth.xMm(), cloth.bottomMm() + out, cloth.rightMm(), cloth.bottomMm() + out);
        };
    }

    private void selvedgeWord() {
        if (selvedgeHidden()) {
            return;
        }
        String word = words.say("plan.selvedge");
        double ascent = PlanLabels.ascentMm(PlanType.MARK);
        double length = labels.widthMm(word, PlanType.MARK, 600);
        switch (planned.selvedge().orElseThrow()) {
            case LEFT -> labels.at(cloth.xMm() - BESIDE_EDGE_MM, cloth.bottomMm(), word, PlanType.MARK, 600, "ink", true);
            case RIGHT -> labels.at(cloth.rightMm() + BESIDE_EDGE_MM + ascent, cloth.bottomMm(), word, PlanType.MARK, 600, "ink", true);
            case TOP -> labels.at(Math.max(cloth.xMm(), cloth.rightMm() - length), cloth.yMm() - BESIDE_EDGE_MM, word, PlanType.MARK, 600,
                    "ink", false);
            case BOTTOM -> labels.at(Math.max(cloth.xMm(), cloth.rightMm() - length), cloth.bottomMm() + 1.4 + ascent, word, PlanType.MARK,
                    600, "ink", false);
        }
    }

    private void flawWord(Box flaw) {
        String word = words.say("plan.flaw");
        double wide = labels.widthMm(word, PlanType.MARK, 600) + 1;
        double high = FLAW_WORD_HIGH_MM;
        boolean down = flaw.heightMm() > flaw.widthMm();
        List<Box> boxes = new ArrayList<>();
        if (down && flaw.widthMm() >= wide || !down && flaw.heightMm() >= FLAW_WORD_MM) {
            for (double part : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
                boxes.add(down ? new Box(flaw.midXMm() - wide / 2, flaw.yMm() + flaw.heightMm() * part - high / 2, wide, high)
                        : new Box(flaw.xMm() + flaw.widthMm() * part - wide / 2, flaw.midYMm() - high / 2, wide, high));
            }
        }
        if (down) {
            boxes.add(new Box(flaw.midXMm() - wide / 2, cloth.yMm() - BESIDE_EDGE_MM - high, wide, high));
            boxes.add(new Box(flaw.midXMm() - wide / 2, cloth.bottomMm() + 1.5, wide, high));
        } else {
            boxes.add(new Box(cloth.xMm() - BESIDE_EDGE_MM - wide, flaw.midYMm() - high / 2, wide, high));
            boxes.add(new Box(cloth.rightMm() + BESIDE_EDGE_MM - 0.6, flaw.midYMm() - high / 2, wide, high));
        }
        if (labels.on(boxes, word, PlanType.MARK, false, true)) {
            return;
        }
        if (labels.waiting() < mostLeaders()) {
            labels.beside(flaw.midXMm(), flaw.midYMm(), word);
        } else {
            flawsMissing = true;
        }
    }

    /** Before the cut's beginning if that is at the cloth's edge, else on the line where nothing else stands. */
    private void cutNumber(EdgeCut cut) {
        String number = Integer.toString(cut.number());
        PlanLine line = line(cut);
        boolean down = cut.run() == EdgeCut.Run.DOWN;
        for (PlanMarks.Cut attempt : marks.cuts()) {
            double size = attempt.sizePt();
            double high = attempt.highMm();
            double all = labels.widthMm(number, size, 600) + attempt.clearMm() + (attempt.scissors() ? PlanLabels.SCISSORS_MM : 0);
            List<Box> boxes = new ArrayList<>();
            if (down && line.y1Mm() - cloth.yMm() < 0.01) {
                for (double shift : new double[] {0, -1.5, 1.5, -3, 3}) {
                    boxes.add(new Box(line.x1Mm() - all / 2 + shift, cloth.yMm() - BESIDE_EDGE_MM + 0.3 - high, all, high));
                }
            } else if (!down && line.x1Mm() - cloth.xMm() < 0.01) {
                for (double shift : new double[] {0, -1.2, 1.2, -2, 2}) {
                    boxes.add(new Box(cloth.xMm() - BESIDE_EDGE_MM + 0.3 - all, line.y1Mm() - high / 2 + shift, all, high));
                }
            }
            boxes.addAll(along(line, down, all, high));
            if (labels.on(boxes, number, size, attempt.scissors(), true)) {
                return;
            }
        }
        if (labels.waiting() < Math.min(MOST_LEADERS, mostLeaders())) {
            labels.beside((line.x1Mm() + line.x2Mm()) / 2, (line.y1Mm() + line.y2Mm()) / 2, words.say("plan.cut-beside", number));
        } else {
            numbersMissing = true;
        }
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
        return path(cloth.xMm(), cloth.yMm(), cloth.rightMm(), cloth.yMm()) + path(cloth.xMm(), cloth.yMm(), cloth.xMm(), cloth.bottomMm())
                + (brokenRight ? "" : path(cloth.rightMm(), cloth.yMm(), cloth.rightMm(), cloth.bottomMm()))
                + (brokenBelow ? "" : path(cloth.xMm(), cloth.bottomMm(), cloth.rightMm(), cloth.bottomMm()));
    }

    private String zigzag() {
        StringBuilder path = new StringBuilder();
        if (brokenRight) {
            path.append(zigzag(cloth.rightMm(), cloth.yMm(), cloth.heightMm(), false));
        }
        if (brokenBelow) {
            path.append(zigzag(cloth.bottomMm(), cloth.xMm(), cloth.widthMm(), true));
        }
        return path.toString();
    }

    private static String zigzag(double at, double from, double length, boolean level) {
        int teeth = Math.max(2, 2 * (int) (length / 8));
        StringBuilder path = new StringBuilder();
        for (int i = 0; i <= teeth; i++) {
            double along = from + length * i / teeth;
            double out = at + (i % 2 == 0 ? 0 : 1.6);
            path.append(i == 0 ? 'M' : 'L').append(point(level ? along : out, level ? out : along));
        }
        return path.toString();
    }

    /** Strokes that rise to the right, clipped to each flaw by reckoning. */
    private static String hatch(List<Box> flaws) {
        StringBuilder path = new StringBuilder();
        for (Box flaw : flaws) {
            for (double sum = flaw.xMm() + flaw.yMm() + HATCH_MM; sum < flaw.rightMm() + flaw.bottomMm(); sum += HATCH_MM) {
                double left = Math.max(flaw.xMm(), sum - flaw.bottomMm());
                double right = Math.min(flaw.rightMm(), sum - flaw.yMm());
                if (right - left > 0.1) {
                    path.append('M').append(point(left, sum - left)).append('L').append(point(right, sum - right));
                }
            }
        }
        return path.toString();
    }

    private static String path(double x1, double y1, double x2, double y2) {
        return "M" + point(x1, y1) + "L" + point(x2, y2);
    }

    private static String point(double x, double y) {
        return NumberText.of(x, 3) + " " + NumberText.of(y, 3);
    }
}
