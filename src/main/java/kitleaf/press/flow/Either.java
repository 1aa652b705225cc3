package kitleaf.press.flow;

import java.util.List;

/**
 * The first of several ways to say something that fits, of which nothing is cut or parted; else the last.
 *
 * @param saves what a later way is taken for though an earlier one would do
 * @param rest whether it waits for the room that all else on its page leaves, and fits there
 */
record Either(Stance stance, List<Block> blocks, Saves saves, boolean rest) implements Block {

    /** Nothing; the last one for a card less; or none for larger type, which gives way before words do. */
    enum Saves { NOTHING, CARDS, TYPE }

    /** What a later way says less than those before it: more than may be cut of one. */
    static final int STEP = 1000;

    @Override
    public boolean takesRest() {
        return rest || Block.super.takesRest();
    }

    @Override
    public double naturalMm(Setter setter) {
        return blocks.isEmpty() ? 0 : blocks.get(0).naturalMm(setter);
    }

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        Laid laid = Laid.NOTHING;
        int lost = 0;
        for (Block way : candidates(setter)) {
            laid = Stack.of(List.of(way)).lay(widthMm, roomMm, setter).losing(lost);
            if (laid.whole()) {
                return laid;
            }
            lost = saves == Saves.TYPE ? Math.max(lost, laid.lost()) + STEP : 0;
        }
        return laid;
    }

    @Override
    public List<FlowPart> flow(double widthMm, double roomMm, Setter setter) {
        if (rest) {
            return List.of(FlowPart.rest(this, widthMm, roomMm, setter));
        }
        List<FlowPart> parts = List.of();
        for (Block way : candidates(setter)) {
            parts = FlowPart.of(way, widthMm, roomMm, setter);
            if (parts.stream().allMatch(part -> part.laid().whole()) && (saves == Saves.CARDS || fits(parts, roomMm))) {
                return parts;
            }
        }
        return parts;
    }

    /** Whether they take no more rooms than they begin of themselves. */
    private static boolean fits(List<FlowPart> parts, double roomMm) {
        double usedMm = 0;
        for (FlowPart part : parts) {
            usedMm = (part.breaks() ? 0 : usedMm) + part.heightMm();
            if (usedMm > roomMm + ColumnWidth.SLACK_MM) {
                return false;
            }
        }
        return true;
    }

    private List<Block> candidates(Setter setter) {
        return saves == Saves.CARDS && setter.brief() ? blocks.subList(blocks.size() - 1, blocks.size()) : blocks;
    }
}
