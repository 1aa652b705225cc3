package kitleaf.basket.place;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import kitleaf.basket.reader.Written;
import kitleaf.words.Said;
import org.junit.jupiter.api.Test;

class ProblemTextTests {

    private static final Path FILE = Path.of("pieces", "fog-bell.yaml");

    private static String render(int line, int column, int length, String source) {
        return Written.english(new Problem(FILE, line, column, length, told("wrong"), told("write"), Optional.of(source)));
    }

    /** A phrase that is nothing but its slot. */
    private static Said told(String text) {
        return Said.of("thing.key", text);
    }

    @Test
    void aValueIsMarkedUnderItsLine() {
        Problem problem = new Problem(FILE, 6, 9, 1, Said.of("length.bare.wrong", "3"),
                Said.of("length.bare.write"), Optional.of("margin: 3"));
        assertEquals("""
                pieces/fog-bell.yaml:6:9: "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
                   6 | margin: 3
                     |         ^""", Written.english(problem));
    }

    @Test
    void aWholeFileIsOneLine() {
        assertEquals("pieces/fog-bell.yaml: wrong; write", Written.english(Problem.of(FILE, Fault.of(told("wrong"), told("write")))));
    }

    @Test
    void tabsStayTabsSoThatTheMarkStaysUnderItsValue() {
        assertEquals("pieces/fog-bell.yaml:12:4: wrong; write\n  12 | \ta\tbcd e\n     | \t \t^^^", render(12, 4, 3, "\ta\tbcd e"));
    }

    @Test
    void charactersOutsideTheBasicPlaneAreOneWide() {
        assertEquals("pieces/fog-bell.yaml:1:3: wrong; write\n   1 | 😀 b\n     |   ^", render(1, 3, 1, "😀 b"));
    }

    @Test
    void marksEndWithTheLine() {
        assertEquals("pieces/fog-bell.yaml:1:3: wrong; write\n   1 | abcd\n     |   ^^", render(1, 3, 99, "abcd"));
        assertEquals("pieces/fog-bell.yaml:1:5: wrong; write\n   1 | abcd\n     |     ^", render(1, 5, 1, "abcd"));
    }

    @Test
    void signsThatSteerAScreenAreNotPassedOn() {
        assertEquals("pieces/fog-bell.yaml:1:1: wrong; write\n   1 | a\uFFFD[31m\n     | ^", render(1, 1, 1, "a\u001b[31m"));
    }

    /** 160 characters are shown, half of them before the mark: 1000 - 1 - 80 characters are left off, and one dot stands for them. */
    @Test
    void longLinesAreShownAroundTheMark() {
        String text = render(1, 1000, 1, "a".repeat(999) + "X" + "b".repeat(999));
        assertEquals("   1 | …" + "a".repeat(80) + "X" + "b".repeat(79) + "…", text.split("\n")[1]);
        assertEquals("     |  " + " ".repeat(80) + "^", text.split("\n")[2]);
    }
}
