package kitleaf.sheet.goal;

/**
 * What a goal card says, before it is placed. Absent text is empty.
 *
 * @param title of the piece
 * @param cloth count and size in a line
 * @param widthMm of the finished design
 * @param heightMm of the finished design
 * @param number stitches left, or that it is finished
 * @param note what the number is, hours and weeks; the day it was finished
 * @param likely between which days it will be finished
 * @param progress how much is done, in percent, or that it may be begun
 * @param done 0 to 1
 * @param finished whether it is done
 * @param unbegun whether nobody has put a needle in it
 */
public record GoalEntry(String title, String cloth, double widthMm, double heightMm, String number, String note, String likely,
                        String progress, double done, boolean finished, boolean unbegun) { }
