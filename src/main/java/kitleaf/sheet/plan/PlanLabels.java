package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.TextRuler;

/**
 * Places words in a drawing so that none lies on another: what has no room is made smaller, then shorter, then turned, and
 * in the end stands beside the drawing at the end of a line.
 */
final class PlanLabels {

    private static final double POINT_MM = 25.4 / 72;
    /** Of the type size: what stands above the baseline, what hangs below it, and from line to line. */
    private static final double ASCENT = 0.74;
    private static final double DESCENT = 0.22;
    private static final double LEADING = 1.25;
    /** Kept free around whatever is placed. */
    private static final double CLEAR_MM = 0.3;
    /** Between a number and the words beside it. */
    private static final double BESIDE_MM = 2;
    /** Shares of its room a number may take: alone, and with words below it. */
    private static final double MOST_ALONE = 0.42;
    private static final double MOST_WIDE_ALONE = 0.6;
    private static final double MOST_ABOVE_WORDS = 0.45;
    /** Measuring and setting may differ by rounding. */
    private static final double SLACK_MM = 0.05;

    private final TextRuler ruler;
    private final PlanMarks marks;
    private final List<PlanText> texts = new ArrayList<>();
    private final TakenPlaces taken = new TakenPlaces(CLEAR_MM);
    private final List<Box> blanks = new ArrayList<>();
    private final List<Leader> waiting = new ArrayList<>();
    private final List<PlanLine> leaders = new ArrayList<>();

    /**
     * One of the words below a number.
     *
     * @param words what it says
     * @param sizePt its size
     * @param weight its weight
     * @param fill its colour
     * @param most how many lines it may take
     */
    record Line(String words, double sizePt, int weight, String fill, int most) { }

    private record Leader(double xMm, double yMm, String words) { }

    /** A number with its words, set around its own top left corner. */
    private record Label(List<PlanText> texts, double widthMm, double heightMm) { }

    PlanLabels(TextRuler ruler, PlanMarks marks) {
        this.ruler = ruler;
        this.marks = marks;
    }

    List<PlanText> texts() {
        return texts;
    }

    /** What is to be left white, or dark in large print, below words that stand on a line or a hatching. */
    List<Box> blanks() {
        return blanks;
    }

    /** Lines to words beside the drawing. */
    List<PlanLine> leaders() {
        return leaders;
    }

    /** Whether some words found no room in the drawing. */
    boolean anyWaiting() {
        return !waiting.isEmpty();
    }

    /** How many did not. */
    int waiting() {
        return waiting.size();
    }

    /**
     * Lets no more words stand beside the drawing than have room there; the first are kept.
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

    double widthMm(String words, double sizePt, int weight) {
        return ruler.widthMm(words, "text", weight, sizePt);
    }

    static double ascentMm(double sizePt) {
        return ASCENT * sizePt * POINT_MM;
    }

    static double heightMm(double sizePt) {
        return (ASCENT + DESCENT) * sizePt * POINT_MM;
    }

    /** Keeps a place free of words placed later. */
    void keepFree(Box box) {
        taken.add(box);
    }

    /**
     * A number and its words in the top left corner of a box, as much of them as there is room for.
     *
     * @param sizes of the number, the largest first
     * @param choices of words, the fullest first; with the last, empty, the number stands alone
     * @param mustStand whether it stands beside the drawing where it has no room, or nowhere
     */
    void inside(Box box, String number, List<Double> sizes, List<List<Line>> choices, boolean mustStand) {
        double insetMm = Math.max(0.5, Math.min(2.6, 0.14 * Math.min(box.widthMm(), box.heightMm())));
        double innerMm = box.widthMm() - 2 * insetMm;
        double highMm = box.heightMm() - 2 * insetMm;
        for (List<Line> choice : choices) {
            for (boolean upright : new boolean[] {false, true}) {
                Optional<Label> label = upright ? label(number, sizes, choice, highMm, innerMm)
                        : label(number, sizes, choice, innerMm, highMm);
                if (label.isPresent()) {
                    put(label.get(), box.xMm() + insetMm, upright ? box.bottomMm() - insetMm : box.yMm() + insetMm, upright);
                    return;
                }
            }
        }
        if (mustStand) {
            waiting.add(new Leader(box.midXMm(), box.midYMm(), number));
        }
    }

    private Optional<Label> label(String number, List<Double> sizes, List<Line> lines, double widthMm, double heightMm) {
        // Alone, a number leaves room for those of the cuts beside it, where it can.
        if (lines.isEmpty()) {
            for (double size : sizes) {
                if (ascentMm(size) <= MOST_ALONE * heightMm && widthMm(number, size, 600) <= MOST_WIDE_ALONE * widthMm) {
                    return alone(number, size, widthMm, heightMm);
                }
            }
            return alone(number, sizes.get(sizes.size() - 1), widthMm, heightMm);
        }
        for (double size : sizes) {
            // Words are worth more than a large number, but the number must still lead.
            if (size < lines.get(0).sizePt() + 0.5) {
                break;
            }
            double numberMm = widthMm(number, size, 600);
            double capMm = ascentMm(size);
            if (numberMm > widthMm || capMm > MOST_ABOVE_WORDS * heightMm) {
                continue;
            }
            PlanText figure = new PlanText(0, capMm, number, "text", size, 600, "ink", numberMm + SLACK_MM, 1, false);
            Optional<Label> below = stack(figure, numberMm, lines, 0, capMm + 0.8, widthMm, heightMm);
            if (below.isPresent()) {
                return below;
            }
        }
        for (double size : sizes) {
            double numberMm = widthMm(number, size, 600);
            double capMm = ascentMm(size);
            if (size >= lines.get(0).sizePt() && capMm <= heightMm) {
                PlanText figure = new PlanText(0, capMm, number, "text", size, 600, "ink", numberMm + SLACK_MM, 1, false);
                Optional<Label> beside = stack(figure, numberMm, lines, numberMm + BESIDE_MM, 0, widthMm, heightMm);
                if (beside.isPresent()) {
                    return beside;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Label> alone(String number, double size, double widthMm, double heightMm) {
        double numberMm = widthMm(number, size, 600);
        double capMm = ascentMm(size);
        return numberMm > widthMm || capMm > heightMm ? Optional.empty()
                : Optional.of(new Label(List.of(new PlanText(0, capMm, number, "text", size, 600, "ink", numberMm + SLACK_MM, 1, false)),
                        numberMm, capMm));
    }

    private Optional<Label> stack(PlanText figure, double figureMm, List<Line> lines, double xMm, double fromMm, double widthMm,
            double heightMm) {
        List<PlanText> set = new ArrayList<>(List.of(figure));
        double roomMm = widthMm - xMm;
        double yMm = fromMm;
        double widest = figureMm;
        for (Line line : lines) {
            for (String word : line.words().split(" ")) {
                if (widthMm(word, line.sizePt(), line.weight()) > roomMm - SLACK_MM) {
                    return Optional.empty();
                }
            }
            int count = ruler.lines(line.words(), "text", line.weight(), line.sizePt(), roomMm);
            double leadingMm = line.sizePt() * POINT_MM * LEADING;
            if (count > line.most() || yMm + (count - 1) * leadingMm + heightMm(line.sizePt()) > heightMm) {
                return Optional.empty();
            }
            set.add(new PlanText(xMm, yMm + ascentMm(line.sizePt()), line.words(), "text", line.sizePt(), line.weight(), line.fill(),
                    roomMm, count, false));
            widest = Math.max(widest, xMm + Math.min(roomMm, widthMm(line.words(), line.sizePt(), line.weight())));
            yMm += count * leadingMm;
        }
        return Optional.of(new Label(set, widest, Math.max(yMm, figure.yMm())));
    }

    /** Sets a label with its top left corner at a place; upright ones run up from there. */
    private void put(Label label, double xMm, double yMm, boolean upright) {
        for (PlanText text : label.texts()) {
            texts.add(new PlanText(upright ? xMm + text.yMm() : xMm + text.xMm(), upright ? yMm - text.xMm() : yMm + text.yMm(),
                    text.words(), text.family(), text.sizePt(), text.weight(), text.fill(), text.widthMm(), text.lines(), upright));
        }
        taken.add(upright ? new Box(xMm, yMm - label.widthMm(), label.heightMm(), label.widthMm())
                : new Box(xMm, yMm, label.widthMm(), label.heightMm()));
    }

    /** Puts words at a place whatever lies there. */
    void at(double xMm, double baselineMm, String words, double sizePt, int weight, String fill, boolean upright) {
        double widthMm = widthMm(words, sizePt, weight);
        texts.add(new PlanText(xMm, baselineMm, words, "text", sizePt, weight, fill, widthMm + SLACK_MM, 1, upright));
        taken.add(upright ? new Box(xMm - ascentMm(sizePt), baselineMm - widthMm, heightMm(sizePt), widthMm)
                : new Box(xMm, baselineMm - ascentMm(sizePt), widthMm, heightMm(sizePt)));
    }

    /**
     * The first of some boxes that is free; the words are put in its middle and what is below them is left white.
     *
     * @param scissors whether a pair of scissors goes before them, along a cut that runs down or across
     * @return whether one was free
     */
    boolean on(List<Box> boxes, String words, double sizePt, boolean scissors, boolean blank) {
        for (Box box : boxes) {
            if (taken.free(box)) {
                double baselineMm = box.midYMm() + ascentMm(sizePt) / 2;
                double scissorsMm = scissors ? SCISSORS_MM : 0;
                double widthMm = widthMm(words, sizePt, 600);
                double xMm = box.midXMm() - (widthMm + scissorsMm) / 2;
                if (scissors) {
                    texts.add(new PlanText(xMm, baselineMm + 0.15, "✂", "symbol", sizePt + 1, 400, "ink", scissorsMm, 1, false));
                }
                texts.add(new PlanText(xMm + scissorsMm, baselineMm, words, "text", sizePt, 600, marks.words() ? "ink" : "paper", widthMm
                        + SLACK_MM, 1, false));
                taken.add(box);
                if (blank) {
                    blanks.add(box);
                }
                return true;
            }
        }
        return false;
    }

    /** Room for the scissors before a cut's number. */
    static final double SCISSORS_MM = 3.6;

    /** Words that stand beside the drawing, at the end of a line from a point in it. */
    void beside(double xMm, double yMm, String words) {
        waiting.add(new Leader(xMm, yMm, words));
    }

    /**
     * Puts the words that found no room into a column, in the order of their points.
     *
     * @return where it ends
     */
    double leadOut(double columnMm, double topMm, double bottomMm) {
        waiting.sort((one, other) -> Double.compare(one.yMm(), other.yMm()));
        double yMm = topMm;
        for (int i = 0; i < waiting.size(); i++) {
            Leader leader = waiting.get(i);
            double last = bottomMm - (waiting.size() - 1 - i) * marks.leaderStepMm();
            yMm = Math.max(yMm, Math.min(leader.yMm(), last));
            leaders.add(new PlanLine(leader.xMm(), leader.yMm(), columnMm - 0.8, yMm));
            at(columnMm, yMm + ascentMm(marks.leaderPt()) / 2, leader.words(), marks.leaderPt(), 600, "ink", false);
            yMm += marks.leaderStepMm();
        }
        return yMm;
    }
}
