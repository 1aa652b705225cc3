package kitleaf.press;

/** A stretch of text in one style. */
record Span(String text, Style style) {
}
