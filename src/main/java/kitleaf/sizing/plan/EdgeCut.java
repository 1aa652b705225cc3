package kitleaf.sizing.plan;

import java.util.List;
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
 * @param frees the numbers of the pieces that come off by it, none to two
 */
public record EdgeCut(int number, Run run, double fromMm, double x1Mm, double y1Mm, double x2Mm, double y2Mm,
                      List<Integer> frees) {

    /** Which way a cut runs on the cloth as it is drawn. */
    public enum Run {
        /** From top to bottom. */
        DOWN,
        /** From left to right. */
        ACROSS
    }

    /** Copies the list. */
    public EdgeCut {
        Objects.requireNonNull(run);
        frees = List.copyOf(frees);
    }
}
