package kitleaf.sizing.label;

/**
 * Where one label lies. Lengths are measured from the top left corner of its sheet.
 *
 * @param label which label, from 0
 * @param page which sheet, from 0
 * @param column from 0, at the left
 * @param row from 0, at the top
 * @param xMm to the label's left side, 0 or more
 * @param yMm to its top, 0 or more
 * @param widthMm above 0
 * @param heightMm above 0
 */
public record LabelPlace(int label, int page, int column, int row, double xMm, double yMm, double widthMm, double heightMm) {

    /** Refuses places that are on no sheet. */
    public LabelPlace {
        if (label < 0 || page < 0 || column < 0 || row < 0 || !(xMm >= 0) || !(yMm >= 0) || !(widthMm > 0) || !(heightMm > 0)) {
            throw new IllegalArgumentException("no such place: label " + label + ", page " + page + ", column " + column + ", row " + row
                    + ", " + xMm + ", " + yMm + ", " + widthMm + ", " + heightMm);
        }
    }
}
