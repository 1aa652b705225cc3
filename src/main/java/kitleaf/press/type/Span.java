package kitleaf.press.type;

import kitleaf.press.markup.Style;

/** A stretch of text in one style. */
public record Span(String text, Style style) {
}
