package kitleaf.press.flow;

import java.util.List;

/** A part of a flow: it is given room and says how high it comes out there. Lengths are millimetres. */
sealed interface Block permits FlowText, DrawnPlace, RuleLine, Stack, Row, Grid, Either {

    Stance stance();

    /**
     * It as it comes out.
     *
     * @param widthMm what it has across
     * @param roomMm what it has down; infinite where pages go on
     */
    Laid lay(double widthMm, double roomMm, Setter setter);

    /** How wide it is of itself, in one line. */
    double naturalMm(Setter setter);

    /** What stands in it. */
    default List<Block> blocks() {
        return List.of();
    }

    /** Whether it takes what room is left below. */
    default boolean takesRest() {
        // Asked of every block of every label, as what follows is: no stream.
        for (Block block : blocks()) {
            if (block.takesRest()) {
                return true;
            }
        }
        return false;
    }

    /** Whether there is nothing in it: then what is blank above and below it goes too. */
    default boolean isEmpty() {
        for (Block block : blocks()) {
            if (!block.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** Whether it is there, as what is only on one of several cards may not be. */
    default boolean isThere(Setter setter) {
        return !isEmpty() && (setter.many() || !stance().many());
    }

    /** Words in it, to tell of it by. */
    default String firstWords() {
        return blocks().stream().map(Block::firstWords).filter(words -> !words.isEmpty()).findFirst().orElse("");
    }

    /** What a page may end between, from top to bottom, without the blank around the block: mostly the block as one. */
    default List<FlowPart> flow(double widthMm, double roomMm, Setter setter) {
        return List.of(takesRest() ? FlowPart.rest(this, widthMm, roomMm, setter) : FlowPart.of(lay(widthMm, roomMm, setter)));
    }

    /** How wide it is in a stack of a width. */
    default double widthIn(double widthMm) {
        ColumnWidth width = stance().width();
        return switch (width.kind()) {
            case MILLIMETRES -> Math.min(widthMm, width.number());
            case SHARE -> widthMm * width.number();
            case CONTENT, REST -> widthMm;
        };
    }
}
