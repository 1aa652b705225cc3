package kitleaf.sheet.page;

/**
 * What every page has around its own content, and what its template needs to know of it. Absent text is empty.
 *
 * @param widthMm of the paper
 * @param heightMm of the paper
 * @param number this page's, from 1
 * @param count pages of the whole sheet
 * @param basketTitle for the signature
 * @param sheetTitle for the signature, such as "cut sheets"
 * @param date the date of the data, in words
 * @param correction what the printer correction is set to, in words
 * @param foot the places of the foot in large print; null for ordinary sheets
 */
public record PageFrame(double widthMm, double heightMm, int number, int count, String basketTitle,
                        String sheetTitle, String date, String correction, Foot foot) { }
