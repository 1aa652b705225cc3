package kitleaf.sheet.goal;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.PlacedText;

/**
 * A goal card, placed on the grid before scaling. Absent text is empty.
 *
 * @param box the card
 * @param title of the piece
 * @param cloth count and size in a line
 * @param outline the piece, to the scale all cards share
 * @param number stitches left, or the word that it is finished
 * @param note what the number is, hours left and weeks planned; the day it was finished
 * @param likely between which days it will be finished
 * @param late what stands against it; empty for nothing
 * @param percent how much is done, written
 * @param done how much is done, 0 to 1
 * @param finished whether it is done
 * @param unbegun whether nobody has put a needle in it
 * @param cells the twenty cells of the progress band
 * @param hatch the hatching of what is done, as path data
 * @param dateBox where the day is written by hand
 * @param words in large print all that is written, in its places; else empty
 */
public record GoalCard(Box box, String title, String cloth, Box outline, String number, String note, String likely, String late,
                       String percent, double done, boolean finished, boolean unbegun, List<Box> cells, String hatch, Box dateBox, List<PlacedText> words) {

    /** Copies the list. */
    public GoalCard {
        Objects.requireNonNull(box);
        Objects.requireNonNull(outline);
        cells = List.copyOf(cells);
        words = List.copyOf(words);
    }
}
