package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pieces that name a cloth on hand and leave out what it is. */
class ClothTakenTests {

    private static final String ON_HAND = """
            cloth-on-hand:
              - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm}
              - {name: Sea-mist, kind: linen, count: 36, size: 20 cm x 30 cm}
              - {name: Foam, kind: block, count: 16, size: 1 m x 1 m}
              - {name: Old sail, kind: linen, count: 36, size: 1 m x 1 m}
              - {name: Old sail, kind: linen, count: 28, size: 1 m x 1 m}
              - {name: Chalk, kind: evenweave, count: 32, size: 1 m x 1 m}
              - {name: Chalk, kind: linen, count: 32, size: 1 m x 1 m}
              - {name: Oyster, kind: linen, count: 40, size: 1 m x 1 m}
              - {name: Oyster, kind: evenweave, count: 25, size: 1 m x 1 m}
            """;

    @TempDir
    Path folder;

    private Written basket(String settings, String cloth) {
        return new Written(folder).file("basket.yaml", settings).file("pieces/p.yaml", "piece: Knot\nstitches: 20 x 30\ncloth: " + cloth + "\n");
    }

    private Cloth cloth(String cloth) {
        return basket(ON_HAND, cloth).basket().pieces().get(0).cloth();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {name: Sea-mist, over: 2}                   | LINEN     | 36 | 2
            {name: ' SEA-MIST ', over: 1}               | LINEN     | 36 | 1
            {name: Foam}                                | BLOCK     | 16 | 1
            {name: Old sail, count: 28, over: 2}        | LINEN     | 28 | 2
            {name: Chalk, kind: evenweave, over: 2}     | EVENWEAVE | 32 | 2
            {name: Oyster, kind: evenweave, over: 1}    | EVENWEAVE | 25 | 1
            {name: Oyster, count: 40, over: 2}          | LINEN     | 40 | 2
            """)
    void whatIsLeftOutIsTakenFromTheClothOfThatName(String written, Cloth.Kind kind, double count, int over) {
        Cloth cloth = cloth(written);
        assertEquals(kind, cloth.kind());
        assertEquals(new Count(count, count), cloth.count());
        assertEquals(over, cloth.over());
    }

    @Test
    void whatIsWrittenIsNotAskedOfTheClothsOnHand() {
        assertEquals(new Count(20, 20), cloth("{name: Sea-mist, kind: evenweave, count: 20, over: 2}").count());
        assertEquals(new Count(20, 20), cloth("{name: Fog, kind: evenweave, count: 20, over: 2}").count());
    }

    @Test
    void aClothMayBeCutAlready() {
        assertTrue(cloth("{name: Foam, cut: yes}").cut());
        assertFalse(cloth("{name: Foam}").cut());
        assertEquals(List.of("pieces/p.yaml:3:26: \"soon\" is neither yes nor no; write yes or no"),
                basket(ON_HAND, "{name: Foam, cut: soon}").problems());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {name: Seamist, over: 2}                | 3:15: there is no cloth on hand named "Seamist"; did you mean Sea-mist? If not, write its kind and count
            {name: Fog, over: 2}                    | 3:15: there is no cloth on hand named "Fog"; write its kind and count
            {name: Fog, kind: linen, over: 2}       | 3:15: there is no cloth on hand named "Fog"; write its count
            {name: Foem, count: 16}                 | 3:15: there is no cloth on hand named "Foem"; did you mean Foam? If not, write its kind
            {name: Old sail, over: 2}               | 3:15: the cloths on hand named "Old sail" differ in count; write its count
            {name: old sail, kind: linen, over: 2}  | 3:15: the cloths on hand named "old sail" differ in count; write its count
            {name: Chalk, over: 2}                  | 3:15: the cloths on hand named "Chalk" differ in kind; write its kind
            {name: Oyster, over: 2}                 | 3:15: the cloths on hand named "Oyster" differ in kind and count; write its kind and count
            {name: Foam, kind: linen, over: 2}      | 3:15: no cloth on hand named "Foam" has the kind written here; write its count
            {name: Foam, count: 14}                 | 3:15: no cloth on hand named "Foam" has the count written here; write its kind
            {name: Sea-mist}                        | 3:8: cloth has no over; write one, such as over: 2
            {name: Foam, over: 2}                   | 3:27: block cloth is not worked over 2; write over: 1, or leave it out
            {over: 2, count: 36}                    | 3:8: cloth has no kind; write one, such as kind: linen
            {over: 2, kind: linen}                  | 3:8: cloth has no count; write one, such as count: 36
            {name: "", over: 2}                     | 3:15: this text is empty; write something, such as Sea-mist
            {name: Oyster, kind: lined, over: 2}    | 3:29: "lined" is not a kind of cloth; did you mean linen?
            {name: Oyster, knid: linen, over: 2}    | 3:23: "knid" is not a key of cloth; did you mean kind?
            {name: Oyster, count: 400, over: 2}     | 3:30: 400 is not a count any cloth has; write threads to the inch, 3 to 120
            """)
    void whatCannotBeTakenIsOneProblem(String cloth, String message) {
        assertEquals(List.of("pieces/p.yaml:" + message), basket(ON_HAND, cloth.strip()).problems());
    }

    /** Whoever has no cloth on hand is asked for what is missing, not for a cloth on hand. */
    @Test
    void withoutClothOnHandANameIsOnlyAName() {
        assertEquals(List.of("pieces/p.yaml:3:8: cloth has no kind; write one, such as kind: linen", "pieces/p.yaml:3:8: cloth has no count; write one, such as count: 36"),
                basket("units: cm\n", "{name: Sea-mist, over: 2}").problems());
    }

    /** A piece that may well name a cloth she has is not told of its name beside the fault that hides the cloth. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            cloth-on-hand: [{name: Sea-mist, kind: linen, count: 36}]      | 1:17: this cloth on hand has no size; write one, such as size: 70 cm x 90 cm
            cloth-on-hand: Sea-mist                                        | 1:16: cloth-on-hand needs a list; write it like - {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm}
            cloth-on-hnd: []                                               | 1:1: "cloth-on-hnd" is not a key of basket.yaml; did you mean cloth-on-hand?
            [units]                                                        | 1:1: basket.yaml needs keys with values; write it like title: My basket
            """)
    void clothsThatCannotBeReadMakeNoNoiseInPieces(String settings, String message) {
        assertEquals(List.of("basket.yaml:" + message), basket(settings + "\n", "{name: Sea-mist, over: 2}").problems());
    }

    @Test
    void aPieceGivenAloneTakesFromTheClothOfItsBasket() {
        Written written = basket(ON_HAND, "{name: Foam}");
        assertEquals(new Count(16, 16),
                BasketReader.read(written.folder().resolve("pieces/p.yaml")).basket().orElseThrow().pieces().get(0).cloth().count());
    }
}
