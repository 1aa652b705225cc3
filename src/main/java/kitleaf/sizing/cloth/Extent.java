package kitleaf.sizing.cloth;

import java.util.ArrayList;
import java.util.List;

/**
 * Everything reckoned along one direction of a piece, across its width or down its height: the design,
 * the cloth cut for it, and the threads to count from the cut edges. The <em>near</em> edge is the left
 * one across and the top one down; the <em>far</em> edge faces it.
 *
 * @param stitches stitches of the chart in this direction, 1 or more
 * @param over threads a stitch spans, 1 or more
 * @param pitchMm from thread to thread at the hoop, above 0
 * @param shrink the part of its length the cloth loses between table and hoop, 0 or more, under 1
 * @param nearMarginMm cloth wanted before the design, at the hoop, 0 or more
 * @param farMarginMm cloth wanted after the design, at the hoop, 0 or more
 * @param stepMm what the cut is rounded up to, above 0
 */
public record Extent(int stitches, int over, double pitchMm, double shrink, double nearMarginMm,
                     double farMarginMm, double stepMm) {

    /**
     * How far above a whole number of steps a length may lie and still count as that number: a billionth
     * of a step. It only forgives the last bits of double arithmetic, so that 10 in + 6 in is not
     * rounded up to 16 1/4 in.
     */
    static final double STEP_SLACK = 1e-9;

    /** Refuses what cannot be stitched or cut. */
    public Extent {
        if (stitches < 1 || over < 1 || !(pitchMm > 0) || !(shrink >= 0 && shrink < 1)
                || !(nearMarginMm >= 0) || !(farMarginMm >= 0) || !(stepMm > 0)) {
            throw new IllegalArgumentException("no such extent: " + stitches + ", " + over + ", " + pitchMm + ", " + shrink
                    + ", " + nearMarginMm + ", " + farMarginMm + ", " + stepMm);
        }
    }

    /** The same with the margins round a circle about the design, so far across in millimetres. */
    Extent within(double circleMm) {
        double besideMm = (circleMm - finishedMm()) / 2;
        return new Extent(stitches, over, pitchMm, shrink, nearMarginMm + besideMm, farMarginMm + besideMm, stepMm);
    }

    /** One stitch at the hoop: 25.4 x over / count, in millimetres. */
    public double cellMm() {
        return over * pitchMm;
    }

    /** The design at the hoop: stitches x cell, in millimetres. */
    public double finishedMm() {
        return stitches * cellMm();
    }

    /** From thread to thread at the cutting table, in millimetres. */
    public double tablePitchMm() {
        return pitchMm / (1 - shrink);
    }

    /** What the design takes up at the cutting table, before shrinking, in millimetres. */
    public double designAtTableMm() {
        return finishedMm() / (1 - shrink);
    }

    /**
     * The cut before rounding: (finished + margins) / (1 - shrink), in millimetres. Dividing, not adding the
     * percentage back, is what ISO 5077's dimensional change asks: it is a change relative to the length before.
     */
    public double exactCutMm() {
        return (finishedMm() + nearMarginMm + farMarginMm) / (1 - shrink);
    }

    /** The length to cut at the table: the exact cut rounded up to the step, in millimetres. */
    public double cutMm() {
        return Math.ceil(exactCutMm() / stepMm - STEP_SLACK) * stepMm;
    }

    /** What rounding up added, in millimetres, 0 or more: the slack in rounding must not leave a trace below nothing. */
    private double spareMm() {
        return Math.max(0, cutMm() - exactCutMm());
    }

    /** Whether the cut is more than the design with its margins. */
    public boolean isRounded() {
        return cutMm() - exactCutMm() > stepMm * STEP_SLACK;
    }

    /**
     * From the near cut edge to the design, at the table, in millimetres. What rounding added is shared evenly
     * between both edges.
     */
    public double nearEdgeToDesignMm() {
        return nearMarginMm / (1 - shrink) + spareMm() / 2;
    }

    /** From the far cut edge to the design, at the table, in millimetres. */
    public double farEdgeToDesignMm() {
        return farMarginMm / (1 - shrink) + spareMm() / 2;
    }

    /** Threads to count in from the near cut edge to the first stitch, to the nearest whole thread. */
    public long nearThreads() {
        return Math.round(nearEdgeToDesignMm() / tablePitchMm());
    }

    /** Threads to count in from the far cut edge to the last stitch: all threads of the cut not counted otherwise. */
    public long farThreads() {
        return Math.round(farEdgeToDesignMm() / tablePitchMm());
    }

    /** Threads the design spans. */
    public long designThreads() {
        return (long) stitches * over;
    }

    /**
     * Threads to count in from the near cut edge to the centre of the design. Where the centre falls in the
     * middle of a thread (an odd number of stitches over an odd number of threads), that thread is counted too.
     */
    public long centreThreads() {
        return nearThreads() + (designThreads() + 1) / 2;
    }

    /** The stitch at the centre, from 1; with an even number of stitches, the one just before the centre. */
    public int centreStitch() {
        return (stitches + 1) / 2;
    }

    /** Whether the centre lies between {@link #centreStitch()} and the next one, not in the middle of it. */
    public boolean centreBetween() {
        return stitches % 2 == 0;
    }

    /**
     * The threads of every tenth tick within a stretch, with the distance of each from the cut edge. Each is reckoned
     * from the edge, never from the tick before, so that no error adds up.
     */
    public List<Tick> ticks(double fromMm, double toMm) {
        List<Tick> ticks = new ArrayList<>();
        for (long thread = 10; thread * tablePitchMm() <= toMm; thread += 10) {
            if (thread * tablePitchMm() >= fromMm) {
                ticks.add(new Tick(thread, thread * tablePitchMm()));
            }
        }
        return ticks;
    }

    /**
     * One tick.
     *
     * @param thread how many threads from the cut edge
     * @param atMm how far from the cut edge
     */
    public record Tick(long thread, double atMm) { }
}
