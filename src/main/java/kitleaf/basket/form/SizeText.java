package kitleaf.basket.form;

import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * Two lengths across and down, {@code 2 5/8 in x 1 in}.
 *
 * @param side how each of them is written
 * @param alone whether one length may stand for both
 * @param advice the phrase that says what to write where there are not two
 * @param example one to show her
 */
public record SizeText(LengthText side, boolean alone, String advice, String example) implements Form<SizeText.Size> {

    /**
     * Two lengths in millimetres.
     *
     * @param acrossMm along the sheet's width
     * @param downMm along its height
     */
    public record Size(double acrossMm, double downMm) {
    }

    @Override
    public Size read(String text) throws Fault {
        String[] sides = text.strip().split("\\s*[xX×]\\s*", -1);
        if (sides.length == 1 && alone) {
            double mm = side.read(sides[0]);
            return new Size(mm, mm);
        }
        if (sides.length != 2) {
            throw Fault.of(Said.of("size.wrong", Quote.bare(text)), Said.of(advice, example));
        }
        return new Size(side.read(sides[0]), side.read(sides[1]));
    }

    @Override
    public JsonShape shape() {
        String by = LengthText.PATTERN + "\\s*[xX×]\\s*" + LengthText.PATTERN;
        return JsonShape.pattern(alone ? "(" + LengthText.PATTERN + "|" + by + ")" : by,
                Said.of("note.sides", Said.of(advice, example), side.shape().notes().get(0)));
    }
}
