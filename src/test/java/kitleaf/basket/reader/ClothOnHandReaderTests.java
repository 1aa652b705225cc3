package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSide;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Flaw;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClothOnHandReaderTests {

    @TempDir
    Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private List<ClothOnHand> read(String text) {
        return settings(text).basket().clothSupply().onHand();
    }

    @Test
    void everyKeyIsReadIntoItsField() {
        assertEquals(List.of(new ClothOnHand("Sea-mist", Cloth.Kind.LINEN, new Count(36, 36), 700, 900, Cloth.WarpRun.DOWN,
                Optional.of(ClothSide.LEFT), true, List.of(new Flaw(Flaw.Run.DOWN, 220, 10), new Flaw(Flaw.Run.ACROSS, 400, 20)))), read("""
                cloth-on-hand:
                  - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm, warp: down, selvedge: left, turning: yes,
                     flaws: [{from-left: 22 cm, wide: 1 cm}, {from-top: 40 cm, wide: 2 cm}]}
                """));
    }

    /** 71 threads in 2 in are 35.5 to the inch; 144 in 10.16 cm, which are 4 in, are 36. An inch is 25.4 mm. */
    @Test
    void whatIsNotSaidIsUsual() {
        ClothOnHand cloth = read("""
                cloth-on-hand:
                  - name: Bolt end
                    kind: linen
                    count: {warp: 71 in 2 in, weft: 144 in 10.16 cm}
                    size: 10 in x 1/2 yd
                """).get(0);
        assertEquals(35.5, cloth.count().warpPerInch(), 1e-9);
        assertEquals(36, cloth.count().weftPerInch(), 1e-9);
        assertEquals(254, cloth.widthMm(), 1e-9);
        assertEquals(457.2, cloth.heightMm(), 1e-9);
        assertEquals(new ClothOnHand("Bolt end", Cloth.Kind.LINEN, cloth.count(), cloth.widthMm(), cloth.heightMm(), Cloth.WarpRun.DOWN,
                Optional.empty(), false, List.of()), cloth);
    }

    @Test
    void withoutClothOnHandThereIsNone() {
        assertEquals(ClothSupply.NONE, settings("units: cm\n").basket().clothSupply());
        assertEquals(List.of(), read("cloth-on-hand: []\n"));
    }

    /** The selvedge runs along the warp: one at a side makes it run down, one above or below across. */
    @ParameterizedTest
    @CsvSource({"'', DOWN", "selvedge: left, DOWN", "selvedge: right, DOWN", "selvedge: top, ACROSS", "selvedge: bottom, ACROSS",
        "warp: across, ACROSS", "warp: down, DOWN", "'selvedge: top, warp: across', ACROSS", "'selvedge: right, warp: down', DOWN"})
    void theSelvedgeGivesTheWarp(String keys, Cloth.WarpRun warp) {
        assertEquals(warp, read("cloth-on-hand: [{name: A, kind: block, count: 14, size: 1 m x 1 m, " + keys + "}]\n").get(0).warp());
    }

    @ParameterizedTest
    @CsvSource({"1 cm x 1 cm", "20 m x 20 m", "1 cm x 20 m"})
    void sizesReachFromOneCentimetreToTwentyMetres(String size) {
        assertEquals(1, read("cloth-on-hand: [{name: A, kind: block, count: 14, size: " + size + "}]\n").size());
    }

    /** Strips that end on an edge: 22 + 1 = 23 cm; 11 + 22 = 33 mm, which doubles may miss by a hair. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            23 cm x 30 cm  | from-left: 22 cm, wide: 1 cm
            30 cm x 23 cm  | from-top: 22 cm, wide: 1 cm
            23 cm x 30 cm  | from-left: 0 cm, wide: 23 cm
            3.3 cm x 5 cm  | from-left: 1.1 cm, wide: 2.2 cm
            """)
    void aFlawMayReachTheEdge(String size, String flaw) {
        assertEquals(1, read("cloth-on-hand: [{name: A, kind: block, count: 14, size: " + size + ", flaws: [{" + flaw + "}]}]\n")
                .get(0).flaws().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            cloth-on-hand:                         | 1:1: cloth-on-hand has no value; write one, such as cloth-on-hand: - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm}
            cloth-on-hand: linen                   | 1:16: cloth-on-hand needs a list; write it like - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm}
            cloth-on-hand: [linen]                 | 1:17: this cloth on hand needs keys with values; write it like - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm}
            cloth-onhand: []                       | 1:1: "cloth-onhand" is not a key of basket.yaml; did you mean cloth-on-hand?
            cloth-on-hand: [{}]                    | 1:17: this cloth on hand has no name; write one, such as name: Sea-mist // 1:17: this cloth on hand has no kind; write one, such as kind: linen // 1:17: this cloth on hand has no count; write one, such as count: 36 // 1:17: this cloth on hand has no size; write one, such as size: 70 cm x 90 cm
            """)
    void aListOfClothsIsNeeded(String settings, String messages) {
        assertEquals(told(messages), settings(settings + "\n").problems());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            size: 70 cm                           | 2:10: "70 cm" is not one length by another; write width x height, such as 70 cm x 90 cm
            size: 70 x 90 cm                      | 2:10: "70" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            size: 9 mm x 90 cm                    | 2:10: "9 mm" is not the side of a cloth; write 1 cm to 20 m
            size: 70 cm x 21 m                    | 2:10: "21 m" is not the side of a cloth; write 1 cm to 20 m
            size: 1 m x 1 m, widht: 3             | 2:21: "widht" is not a key of this cloth on hand; write one of: name, kind, count, size, warp, selvedge, turning, flaws
            size: 1 m x 1 m, seldvege: left       | 2:21: "seldvege" is not a key of this cloth on hand; did you mean selvedge?
            size: 1 m x 1 m, selvedge: lift       | 2:31: "lift" is not a side of a cloth; did you mean left?
            size: 1 m x 1 m, warp: up             | 2:27: "up" is not a way the warp runs; write one of: down, across
            size: 1 m x 1 m, turning: perhaps     | 2:30: "perhaps" is neither yes nor no; write yes or no
            size: 1 m x 1 m, selvedge: left, warp: across | 2:43: the warp runs along the selvedge, and this one is on the left; write warp: down, or leave it out
            size: 1 m x 1 m, selvedge: right, warp: across | 2:44: the warp runs along the selvedge, and this one is on the right; write warp: down, or leave it out
            size: 1 m x 1 m, selvedge: top, warp: down    | 2:42: the warp runs along the selvedge, and this one is at the top; write warp: across, or leave it out
            size: 1 m x 1 m, selvedge: bottom, warp: down | 2:45: the warp runs along the selvedge, and this one is at the bottom; write warp: across, or leave it out
            size: 1 m x 1 m, flaws: 3 cm          | 2:28: flaws needs a list; write it like - {from-left: 22 cm, wide: 1 cm}
            size: 1 m x 1 m, flaws: [3 cm]        | 2:29: this flaw needs keys with values; write it like - {from-left: 22 cm, wide: 1 cm}
            size: 1 m x 1 m, flaws: [{wide: 1 cm}]  | 2:29: this flaw has neither from-left nor from-top; write from-left: 22 cm if it runs down the cloth, from-top: 22 cm if it runs across
            size: 1 m x 1 m, flaws: [{form-left: 1 cm, wide: 1 cm}]  | 2:30: "form-left" is not a key of this flaw; did you mean from-left?
            size: 1 m x 1 m, flaws: [{from-left: 1 cm}]  | 2:29: this flaw has no wide; write one, such as wide: 1 cm
            size: 1 m x 1 m, flaws: [{from-left: 1 cm, from-top: 2 cm, wide: 1 cm}]  | 2:57: a flaw runs either down the cloth or across it; keep one of from-left and from-top
            size: 1 m x 1 m, flaws: [{from-left: 1 cm, wide: 0 cm}]  | 2:53: "0 cm" is not how wide a flaw is; write more than 0 mm, up to 20 m
            size: 1 m x 1 m, flaws: [{from-left: -1 cm, wide: 1 cm}]  | 2:41: "-1 cm" is less than nothing; write a length of 0 or more, such as 3 in or 7.5 cm
            size: 1 m x 1 m, flaws: [{from-top: 21 m, wide: 1 cm}]  | 2:40: "21 m" is further than any cloth reaches; write 0 mm to 20 m
            size: 70 cm x 1 m, flaws: [{from-left: 69 cm, wide: 2 cm}]  | 2:43: this flaw ends at 710.0 mm, and the cloth is 700.0 mm wide; write where it lies on the cloth, or mend the size
            size: 1 m x 70 cm, flaws: [{from-top: 70 cm, wide: 0.01 mm}]  | 2:42: this flaw ends at 700.01 mm, and the cloth is 700.00 mm high; write where it lies on the cloth, or mend the size
            """)
    void oneFaultOfAClothIsOneProblem(String keys, String message) {
        assertEquals(told(message), settings("cloth-on-hand:\n- {" + keys.strip() + ",\n   name: A, kind: linen, count: 36}\n").problems());
    }

    /** A bolt of 20 m with a crease every 10 cm has 200 of them; the first beyond is where to stop. */
    @Test
    void twoHundredFlawsAreReadAndOneMoreIsTooMany() {
        assertEquals(200, read(creased(200)).get(0).flaws().size());
        assertEquals(told("207:5: these are more than 200 flaws on one cloth; write those that lie near each other as one wide flaw, "
                + "or each good part between them as a cloth of its own"), settings(creased(201)).problems());
    }

    private static String creased(int flaws) {
        return "cloth-on-hand:\n- name: A\n  kind: linen\n  count: 36\n  size: 1 m x 20 m\n  flaws:\n"
                + IntStream.range(0, flaws).mapToObj(i -> "  - {from-top: " + i + " cm, wide: 1 mm}\n").collect(Collectors.joining());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            name: A, kind: linnen, count: 36  | 1:33: "linnen" is not a kind of cloth; did you mean linen?
            name: A, kind: linen, count: 2    | 1:47: 2 is not a count any cloth has; write threads to the inch, 3 to 120
            name: A, kind: linen, count: {warp: 35} | 1:47: count has no weft; write one, such as weft: 36
            name: "", kind: linen, count: 36  | 1:24: this text is empty; write something, such as Sea-mist
            kind: linen, count: 36            | 1:17: this cloth on hand has no name; write one, such as name: Sea-mist
            name: A, count: 36                | 1:17: this cloth on hand has no kind; write one, such as kind: linen
            name: A, kind: linen              | 1:17: this cloth on hand has no count; write one, such as count: 36
            """)
    void whatItIsMustBeSaid(String keys, String message) {
        assertEquals(told(message), settings("cloth-on-hand: [{" + keys.strip() + ", size: 1 m x 1 m}]\n").problems());
    }

    @Test
    void allProblemsAreToldAtOnce() {
        assertEquals(told("2:23: \"wool\" is not a kind of cloth; write one of: linen, evenweave, block"
                + " // 2:55: \"over\" is neither yes nor no; write yes or no // 3:5: this cloth on hand has no size; write one, such as size: 70 cm x 90 cm"), settings("""
                cloth-on-hand:
                  - {name: Net, kind: wool, size: 1 m x 1 m, turning: over, count: 20}
                  - {name: Sail, kind: linen, count: 36}
                """).problems());
    }

    private static List<String> told(String messages) {
        return Stream.of(messages.split(" // ")).map(message -> "basket.yaml:" + message).toList();
    }
}
