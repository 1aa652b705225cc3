package kitleaf.sheet.page;

import java.util.List;

/**
 * A piece of a page of large print that is not parted: a paragraph, a row to tick off, a drawing. What it holds is placed from
 * its own top.
 *
 * @param yMm its top on the page
 * @param heightMm what it takes up
 * @param keepWithNext whether it must not be the last on a page
 * @param texts what is written
 * @param ticked whether a box to tick stands before it
 * @param swatch a thread's colour and symbol, or null
 * @param swatchBox where that stands, or null
 * @param ruleMm a fine line below it; 0 for none
 * @param drawing whether the page's drawing stands here
 */
public record Passage(double yMm, double heightMm, boolean keepWithNext, List<PlacedText> texts, boolean ticked, Swatch swatch,
                      Box swatchBox, double ruleMm, boolean drawing) {

    /** Copies the list. */
    public Passage {
        texts = List.copyOf(texts);
    }

    /** What is blank at its foot, rule and all: nothing where the page's drawing stands. */
    double blankMm() {
        double textsMm = texts.stream().mapToDouble(PlacedText::bottomMm).max().orElse(heightMm);
        return Math.max(0, heightMm - Math.max(textsMm, swatchBox == null ? 0 : swatchBox.bottomMm()));
    }

    /** The same with less blank at its foot, by a part from 0 to 1. */
    Passage closer(double part) {
        double lessMm = blankMm() * part;
        return new Passage(yMm, heightMm - lessMm, keepWithNext, texts, ticked, swatch, swatchBox, ruleMm > 0 ? ruleMm - lessMm / 2 : 0,
                drawing);
    }

    static Passage of(double heightMm, List<PlacedText> texts) {
        return new Passage(0, heightMm, false, texts, false, null, null, 0, false);
    }

    /** Room for a page's drawing, so many millimetres high. */
    public static Passage room(double heightMm) {
        return new Passage(0, heightMm, false, List.of(), false, null, null, 0, true);
    }

    Passage kept() {
        return new Passage(yMm, heightMm, true, texts, ticked, swatch, swatchBox, ruleMm, drawing);
    }

    /** The same with a fine line at its foot and so much room below. */
    Passage ruled(double belowMm) {
        return new Passage(yMm, heightMm + belowMm, keepWithNext, texts, ticked, swatch, swatchBox, heightMm + belowMm / 2, drawing);
    }

    Passage ticked(Swatch colour, Box box) {
        return new Passage(yMm, heightMm, keepWithNext, texts, true, colour, box, ruleMm, drawing);
    }

    /** The same with its top at a place on its page, in millimetres. */
    public Passage at(double topMm) {
        return new Passage(topMm, heightMm, keepWithNext, texts, ticked, swatch, swatchBox, ruleMm, drawing);
    }
}
