package kitleaf.sizing.plan;

import java.util.Objects;

/**
 * One cut from edge to edge of the part that is being divided: draw the thread there, and cut along it.
 *
 * @param number its place in the order of cutting, from 1 on each cloth
 * @param run which way it runs
 * @param fromMm where it lies: from the left edge of the part if it runs down, from its top edge if it runs across
 * @param x1Mm its beginning, from the cloth's left edge
 * @param y1Mm its beginning, from the cloth's top edge
 * @param x2Mm its end
 * @param y2Mm its end
 */
public record EdgeCut(int number, Run run, double fromMm, double x1Mm, double y1Mm, double x2Mm, double y2Mm) {

    /** Which way a cut runs on the cloth as it is drawn. */
    public enum Run {
        /** From top to bottom. */
        DOWN,
        /** From left to right. */
        ACROSS;

        /** Of what is so wide and so high, the side a cut parts that runs this way. */
        double side(double widthMm, double heightMm) {
            return this == DOWN ? widthMm : heightMm;
        }

        Run other() {
            return this == DOWN ? ACROSS : DOWN;
        }
    }

    /** Refuses a missing part. */
    public EdgeCut {
        Objects.requireNonNull(run);
    }
}
