package kitleaf.basket.reader;

import kitleaf.basket.LabelStock;
import kitleaf.basket.Paper;
import kitleaf.basket.form.SizeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Millimetres;
import kitleaf.basket.place.Quote;

/**
 * Labels one after another in one direction of a sheet, as she described them; they may not fit.
 *
 * @param key what their number is called
 * @param along {@code across} or {@code down}
 * @param number 1 or more
 * @param labelMm the side of a label
 * @param firstMm from the sheet's edge to the first one
 * @param pitchMm from the start of one to the start of the next
 * @param sheetMm the side of the sheet
 */
record LabelLine(String key, String along, int number, double labelMm, double firstMm, double pitchMm, double sheetMm) {

    static LabelLine across(int columns, SizeText.Size label, SizeText.Size first, SizeText.Size pitch, Paper paper) {
        return new LabelLine("columns", "across", columns, label.acrossMm(), first.acrossMm(), pitch.acrossMm(), paper.widthMm());
    }

    static LabelLine down(int rows, SizeText.Size label, SizeText.Size first, SizeText.Size pitch, Paper paper) {
        return new LabelLine("rows", "down", rows, label.downMm(), first.downMm(), pitch.downMm(), paper.heightMm());
    }

    /** Whether they stand clear of each other and on the sheet; where they do not, that is told, with the lengths. */
    boolean fits(Fields fields, Paper paper) {
        if (number > 1 && pitchMm < labelMm - LabelStock.SLACK_MM) {
            Millimetres.Pair told = Millimetres.apart(labelMm, pitchMm);
            fields.wrong("pitch", Fault.of("label.overlap." + along, told.first(), told.second()));
            return false;
        }
        double endMm = LabelStock.rightMm(number, labelMm, firstMm, pitchMm);
        if (endMm > sheetMm + LabelStock.SLACK_MM) {
            Millimetres.Pair told = Millimetres.apart(endMm, sheetMm);
            fields.wrong(key, Fault.of("label.reach." + along + (number == 1 ? ".one" : ".many"), number, told.first(),
                    Quote.bare(paper.name()), told.second()));
            return false;
        }
        return true;
    }
}
