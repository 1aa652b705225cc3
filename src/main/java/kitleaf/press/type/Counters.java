package kitleaf.press.type;

import java.util.List;

/**
 * What a page or a card knows of its place among others. In the markup each is a character that Unicode keeps for a program's own use and
 * no text has (noncharacters, The Unicode Standard, 23.7), so that it can stand in any phrase of any language.
 */
public final class Counters {

    /** This page's number, the number of pages, this card's number, and the number of cards. */
    private static final String SIGNS = "\uFDD0\uFDD1\uFDD2\uFDD3";
    private static final int PAGES = 1;

    /** Numbers as wide as they may become; measured before they are known. */
    public static final Counters WIDE = new Counters(888, 888, 88, 88);

    private final int[] numbers;

    public Counters(int... numbers) {
        this.numbers = numbers;
    }

    public Counters card(int number, int cards) {
        return new Counters(numbers[0], numbers[PAGES], number, cards);
    }

    public Counters pages(int pages) {
        return new Counters(numbers[0], pages, numbers[2], numbers[3]);
    }

    /** Whether a text has any of them. */
    public static boolean in(List<Span> spans) {
        return has(spans, SIGNS.charAt(0), SIGNS.charAt(SIGNS.length() - 1));
    }

    /** Whether a text says how many pages there are, which is known last. */
    public static boolean countsPages(List<Span> spans) {
        return has(spans, SIGNS.charAt(PAGES), SIGNS.charAt(PAGES));
    }

    private static boolean has(List<Span> spans, char first, char last) {
        for (int i = 0; i < spans.size(); i++) {
            String text = spans.get(i).text();
            for (int at = 0; at < text.length(); at++) {
                if (text.charAt(at) >= first && text.charAt(at) <= last) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The text with the numbers in it. */
    public List<Span> fill(List<Span> spans) {
        return spans.stream().map(span -> new Span(fill(span.text()), span.style())).toList();
    }

    public Copy fill(Copy copy) {
        return new Copy(fill(copy.spans()), copy.style(), copy.widthPt(), copy.lines());
    }

    private String fill(String text) {
        String filled = text;
        for (int i = 0; i < numbers.length; i++) {
            filled = filled.replace(SIGNS.substring(i, i + 1), Integer.toString(numbers[i]));
        }
        return filled;
    }
}
