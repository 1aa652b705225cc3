package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.basket.CardGrid;
import kitleaf.basket.Goals;
import kitleaf.basket.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoalsReaderTests {

    @TempDir
    private Path folder;

    private Written settings(String text) {
        return new Written(folder).file("basket.yaml", text)
                .file("pieces/breakwater.yaml", Written.PIECE.replace("Fog bell", "Breakwater"))
                .file("pieces/fog-bell.yaml", Written.PIECE + "---\n" + Written.PIECE.replace("Fog bell", "Bell buoy"));
    }

    private Goals goals(String text) {
        return settings("goals: " + text + "\n").basket().goals().orElseThrow();
    }

    @Test
    void everyKeyIsReadIntoItsField() {
        assertEquals(new Goals(2027, OptionalInt.of(9), List.of(), Goals.By.WEIGHT, 0.85, Optional.of(new CardGrid(5, 2)),
                        Optional.of(new Paper("A2 landscape", 594, 420)), OptionalLong.of(7)),
                goals("{year: 2027, choose: 9, by: weight, main-share: 85%, cards: 5 x 2, wall: A2 landscape, seed: 7}"));
    }

    @Test
    void whatIsNotSaidIsUsual() {
        assertEquals(new Goals(2027, OptionalInt.empty(), List.of(), Goals.By.NUMBER, 0.7, Optional.empty(), Optional.empty(), OptionalLong.empty()),
                goals("{year: 2027}"));
        assertEquals(Optional.empty(), settings("units: cm\n").basket().goals());
    }

    @Test
    void namedPiecesAreKeptInHerOrder() {
        assertEquals(List.of("fog-bell-2", "breakwater", "fog-bell"), goals("{year: 2027, pieces: [fog-bell-2, breakwater, fog-bell]}").pieces());
        assertEquals(OptionalInt.empty(), goals("{year: 2027, pieces: [fog-bell]}").choose());
    }

    @Test
    void limitsAreTaken() {
        assertEquals(1900, goals("{year: 1900, choose: 1, seed: 0, cards: 1 x 1}").year());
        Goals most = goals("{year: 2199, choose: 100, main-share: 100%, cards: 10×10, seed: 1000000000, by: number}");
        assertEquals(new Goals(2199, OptionalInt.of(100), List.of(), Goals.By.NUMBER, 1, Optional.of(new CardGrid(10, 10)), Optional.empty(), OptionalLong.of(1_000_000_000)), most);
        assertEquals(0.505, goals("{year: 2027, main-share: 50.5%}").mainShare());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            goals:                              | 1:1: goals has no value; write one, such as goals: {year: 2027, choose: 9}
            goals: 2027                         | 1:8: goals needs keys with values; write it like {year: 2027, choose: 9}
            goals: {choose: 9}                  | 1:8: goals has no year; write one, such as year: 2027
            goals: {yaer: 2027}                 | 1:9: "yaer" is not a key of goals; did you mean year?
            goals: {year: 1899}                 | 1:15: 1899 is out of range; write 1900 to 2199
            goals: {year: 2200}                 | 1:15: 2200 is out of range; write 1900 to 2199
            goals: {year: next}                 | 1:15: "next" is not a whole number; write digits only, such as 2027
            goals: {year: 2027, choose: 0}      | 1:29: 0 is out of range; write 1 to 100
            goals: {year: 2027, choose: 101}    | 1:29: 101 is out of range; write 1 to 100
            goals: {year: 2027, choose: 2.5}    | 1:29: "2.5" is not a whole number; write digits only, such as 9
            goals: {year: 2027, by: wieght}     | 1:25: "wieght" is not what to choose by; did you mean weight?
            goals: {year: 2027, by: luck}       | 1:25: "luck" is not what to choose by; write one of: number, weight
            goals: {year: 2027, main-share: 50%}  | 1:33: "50%" is not the greater part; write more than 50%, up to 100%
            goals: {year: 2027, main-share: 101%} | 1:33: "101%" is more than the whole; write more than 50%, up to 100%
            goals: {year: 2027, main-share: -1%}  | 1:33: "-1%" is less than nothing; write more than 50%, up to 100%
            goals: {year: 2027, main-share: 0.7}  | 1:33: "0.7" has no % sign; write 70%
            goals: {year: 2027, main-share: most} | 1:33: "most" is not a percentage; write one, such as 70%
            goals: {year: 2027, cards: 9}       | 1:28: "9" is not a grid of cards; write columns x rows, such as 3 x 3
            goals: {year: 2027, cards: 3 x 3 x 3} | 1:28: "3 x 3 x 3" is not a grid of cards; write columns x rows, such as 3 x 3
            goals: {year: 2027, cards: 0 x 3}   | 1:28: 0 is out of range; write 1 to 10
            goals: {year: 2027, cards: 3 x 11}  | 1:28: 11 is out of range; write 1 to 10
            goals: {year: 2027, cards: 3 x three} | 1:28: "three" is not a whole number; write digits only, such as 3
            goals: {year: 2027, wall: A9}       | 1:27: "A9" is not a paper known here; write one of: A5, A4, A3, A2, A1, letter, legal, tabloid, or its size, such as 210 mm x 320 mm
            goals: {year: 2027, wall: A2 sideways} | 1:27: "sideways" is not a way to turn paper; write one of: portrait, landscape
            goals: {year: 2027, seed: -1}       | 1:27: -1 is out of range; write 0 to 1000000000
            goals: {year: 2027, seed: luck}     | 1:27: "luck" is not a whole number; write digits only, such as 7
            goals: {year: 2027, choose: 2, pieces: [fog-bell, breakwater]} | 1:40: choose leaves the choice open, and pieces makes it; keep one of the two
            goals: {year: 2027, pieces: fog-bell} | 1:29: pieces needs a list; write it like [breakwater, fog-bell]
            goals: {year: 2027, pieces: []}     | 1:29: pieces names none; name one or more, or leave it out to get as many as fit
            goals: {year: 2027, pieces: [[fog-bell]]} | 1:30: each entry of pieces needs one value; write it like fog-bell
            goals: {year: 2027, pieces: [""]}   | 1:30: this text is empty; write something, such as fog-bell
            goals: {year: 2027, pieces: [fog-bell, breakwater, fog-bell]} | 1:52: "fog-bell" stands twice in pieces; name each piece once
            goals: {year: 2027, pieces: [fogbell]} | 1:30: "fogbell" is not a piece of this basket; did you mean fog-bell?
            goals: {year: 2027, pieces: [fog-bell, lamp]} | 1:40: "lamp" is not a piece of this basket; write one of: breakwater, fog-bell, fog-bell-2
            """)
    void eachFaultIsOneProblem(String text, String message) {
        assertEquals(List.of("basket.yaml:" + message), settings(text + "\n").problems());
    }

    @Test
    void moreNamedPiecesThanAnyGridHoldsAreTold() {
        Written written = settings("goals: {year: 2027, pieces: [" + IntStream.range(0, 101).mapToObj(i -> "p" + i)
                .collect(Collectors.joining(", ")) + "]}\n");
        for (int i = 0; i < 101; i++) {
            written.file("pieces/p" + i + ".yaml", Written.PIECE.replace("Fog bell", "Buoy " + i));
        }
        assertEquals(List.of("basket.yaml:1:29: pieces names 101 pieces; name at most 100"), written.problems());
    }

    @Test
    void namesAreLookedUpWhateverElseIsWrongWithTheGoals() {
        assertEquals(List.of("basket.yaml:1:15: 27 is out of range; write 1900 to 2199",
                "basket.yaml:1:28: \"fogbell\" is not a piece of this basket; did you mean fog-bell?"),
                settings("goals: {year: 27, pieces: [fogbell]}\n").problems());
    }

    @Test
    void aPieceWithAFaultOfItsOwnIsStillAPiece() {
        assertEquals(List.of("pieces/lamp.yaml:4:9: \"3\" is a bare number; write it with its unit, such as 3 in or 7.5 cm"),
                settings("goals: {year: 2027, pieces: [lamp]}\n")
                        .file("pieces/lamp.yaml", Written.PIECE.replace("Fog bell", "Lamp") + "margin: 3\n").problems());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            lamp.yaml | piece: [Lamp                      | pieces/lamp.yaml:1:8: this [ is never closed; write ] where the group ends
            lamp.yaml |                                   | pieces/lamp.yaml: this file is empty; write a piece in it, or take it out
            lamp.yml  | piece: Lamp                       | pieces/lamp.yml: this file's name does not end in .yaml; rename it to lamp.yaml
            """)
    void piecesThatCannotBeReadMakeNoNoiseInTheGoals(String file, String text, String message) {
        assertEquals(List.of(message), settings("goals: {year: 2027, pieces: [lamp]}\n")
                .file("pieces/" + file, text == null ? "" : text + "\n").problems());
    }

    @Test
    void anEmptyDocumentMakesNoNoiseInTheGoals() {
        assertEquals(List.of("pieces/lamp.yaml:4:1: this document is empty; write a piece in it, or take out this ---"),
                settings("goals: {year: 2027, pieces: [lamp-2]}\n")
                        .file("pieces/lamp.yaml", Written.PIECE.replace("Fog bell", "Lamp") + "---\n").problems());
    }

    @Test
    void aBasketWithoutPiecesIsNotToldOfItsGoalsToo() {
        assertEquals(List.of(".: there are no pieces in this basket; write each in a file of its own in its pieces folder, ending in .yaml"),
                new Written(folder).file("basket.yaml", "goals: {year: 2027, pieces: [lamp]}\n").problems());
    }

    /** Read alone, a piece does not make its neighbours unknown. */
    @Test
    void aBarePieceTakesTheGoalsOfItsBasketAsTheyAre() {
        settings("goals: {year: 2027, pieces: [fog-bell, breakwater]}\n");
        assertEquals(List.of("fog-bell", "breakwater"),
                BasketReader.read(folder.resolve("pieces/breakwater.yaml")).basket().orElseThrow().goals().orElseThrow().pieces());
    }
}
