package kitleaf.press.flow;

/**
 * A round that blocks stand in, one below the other, each as wide as the round lets it be at its height.
 *
 * @param acrossMm its diameter
 * @param topMm how far below its top the blocks begin
 */
record Round(double acrossMm, double topMm) {

    /** How often a block is laid anew because it came out higher, and so has to be narrower. */
    private static final int TRIES = 6;

    Round below(double mm) {
        return new Round(acrossMm, topMm + mm);
    }

    /** How wide it is all the way down so many millimetres; 0 outside of it. */
    double widthMm(double downMm) {
        double far = Math.max(Math.abs(topMm - acrossMm / 2), Math.abs(topMm + downMm - acrossMm / 2));
        return 2 * Math.sqrt(Math.max(0, acrossMm * acrossMm / 4 - far * far));
    }

    /** A block that begins at its top, in the middle of its width; of what is cut as much as has room in more or fewer lines. */
    Laid lay(Block block, double roomMm, Setter setter) {
        Laid best = laid(block, roomMm, setter);
        for (int i = 1; i < TRIES && best.lost() > 0; i++) {
            Laid lower = laid(block, roomMm * i / TRIES, setter);
            best = lower.whole() && lower.lost() < best.lost() ? lower : best;
        }
        return best;
    }

    private Laid laid(Block block, double roomMm, Setter setter) {
        Setter straight = setter.in(null);
        double highMm = 0;
        Laid laid = Laid.NOTHING;
        for (int i = 0; i < TRIES; i++) {
            double inMm = block.widthIn(widthMm(highMm));
            laid = block.lay(inMm, roomMm, straight).at((acrossMm - inMm) / 2);
            if (laid.heightMm() <= highMm + ColumnWidth.SLACK_MM) {
                return laid;
            }
            highMm = laid.heightMm();
        }
        return laid.notWhole();
    }
}
