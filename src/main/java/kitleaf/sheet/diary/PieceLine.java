package kitleaf.sheet.diary;

/**
 * One piece in the list of all.
 *
 * @param title what it is called
 * @param designer who drew it; empty where nobody is named
 * @param kept where its chart and its bag are; empty where she did not say
 * @param cloth what it is stitched on
 * @param size its finished size
 * @param done how much of it is done, 0 to 1
 * @param percent the same as whole percents
 * @param left how many stitches are left; empty where none are
 * @param started the day of its first stitch; empty where nobody wrote it down
 * @param touched the last day somebody had it in hand; empty where nobody wrote it down
 */
public record PieceLine(String title, String designer, String kept, String cloth, String size, double done, String percent, String left,
                        String started, String touched) {
}
