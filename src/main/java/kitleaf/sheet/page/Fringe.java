package kitleaf.sheet.page;

import java.util.Set;
import kitleaf.basket.ClothSide;

/** The thread ends at the edges of a drawn cloth, as path data. */
public final class Fringe {

    /** The longest thread end. */
    static final double LONGEST_MM = 1.6;

    private static final double STEP_MM = 1.9;

    private Fringe() { }

    /**
     * The fringe of a cloth.
     *
     * @param bare sides without one: a selvedge, or where the drawing breaks off
     */
    public static String of(Box cloth, Set<ClothSide> bare) {
        PathText path = new PathText(3);
        int across = Math.max(2, (int) (cloth.widthMm() / STEP_MM));
        for (int i = 0; i <= across; i++) {
            double x = cloth.xMm() + cloth.widthMm() * i / across;
            if (!bare.contains(ClothSide.TOP)) {
                path.stroke(x + lean(i), cloth.yMm() - length(i), x, cloth.yMm());
            }
            if (!bare.contains(ClothSide.BOTTOM)) {
                path.stroke(x, cloth.bottomMm(), x + lean(i + 2), cloth.bottomMm() + length(i + 1));
            }
        }
        int down = Math.max(2, (int) (cloth.heightMm() / STEP_MM));
        for (int i = 0; i <= down; i++) {
            double y = cloth.yMm() + cloth.heightMm() * i / down;
            if (!bare.contains(ClothSide.LEFT)) {
                path.stroke(cloth.xMm() - length(i), y + lean(i), cloth.xMm(), y);
            }
            if (!bare.contains(ClothSide.RIGHT)) {
                path.stroke(cloth.rightMm(), y, cloth.rightMm() + length(i + 1), y + lean(i + 2));
            }
        }
        return path.toString();
    }

    /** Thread ends are not of one length; these three take turns. */
    private static double length(int i) {
        return LONGEST_MM * switch (i % 3) {
            case 0 -> 1;
            case 1 -> 0.65;
            default -> 0.85;
        };
    }

    /** Nor do they hang straight. */
    private static double lean(int i) {
        return switch (i % 5) {
            case 0 -> 0.5;
            case 1 -> -0.25;
            case 2 -> 0.1;
            case 3 -> -0.55;
            default -> 0.3;
        };
    }
}
