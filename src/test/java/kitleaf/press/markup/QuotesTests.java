package kitleaf.press.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Marks as English (“ ” ‘ ’) and German („ “ ‚ ‘) have them, after Unicode CLDR's delimiters, and the apostrophe after the Unicode
 * Standard, 6.2; inch and foot marks as she typed them. Worked by eye.
 */
class QuotesTests {

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', value = {
        "Harbour-master's almanac|Harbour-master’s almanac", "the sailors' knot|the sailors’ knot", "Rock 'n' rope|Rock ’n’ rope",
        "The \"Gull\" (1927)|The “Gull” (1927)", "\"Gull's 'Rest'\"|“Gull’s ‘Rest’”", "'Slack water'|‘Slack water’",
        "'70s buoys|’70s buoys", "the 1990's|the 1990’s",
        "5\" hoop|5\" hoop", "5 1/2\" x 7\"|5 1/2\" x 7\"", "2½\" and 3'6\"|2½\" and 3'6\"", "\"Pier 9\"|“Pier 9”",
        "\"Pier 9\" and \"Pier 10\"|“Pier 9” and “Pier 10”", "\"5\" hoop\"|“5\" hoop”", "(\"Mole\")|(“Mole”)", "a \" b|a \" b",
        "N\uFDD57 \uFDD6B\uFDD6 'b b'|N'7 \"B\" ‘b b’", "\"Gull\uFDD4\"Gull\"|“Gull\uFDD4“Gull”", "plain|plain"})
    void english_marks_are_set(String typed, String set) {
        assertEquals(set, Quotes.of("en-GB").set(typed));
        assertEquals(set, Quotes.of("fr").set(typed));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', value = {"\"Am Kai\"|„Am Kai“", "'Am Kai'|‚Am Kai‘", "Wie geht's|Wie geht’s",
        "5\" breit|5\" breit"})
    void german_marks_are_set(String typed, String set) {
        assertEquals(set, Quotes.of("de").set(typed));
        assertEquals(set, Quotes.of("de-AT").set(typed));
    }
}
