package kitleaf.sheet.plan;

import kitleaf.sheet.page.Box;

/**
 * Words in the drawing of a cloth plan, as many of them as have room; the first that are to go are the longest. Absent text is empty.
 *
 * @param box where they may stand
 * @param name of a piece, or whether a rest is kept
 * @param lies which way a piece lies, where that needs words
 * @param brief the same in a word
 */
public record PlanNote(Box box, String name, String lies, String brief) { }
