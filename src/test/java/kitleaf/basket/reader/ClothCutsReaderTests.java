package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClothCutsReaderTests {

    @TempDir
    Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private ClothSupply supply(String text) {
        return settings(text).basket().clothSupply();
    }

    /** An inch is 25.4 mm: 27 in are 685.8 mm, 18 in are 457.2 mm. */
    @Test
    void everyKeyIsReadIntoItsField() {
        ClothSupply supply = supply("""
                cloth-cuts:
                  - {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP, kind: linen, count: 36, cloth: Sea-mist, warp: across, turning: yes}
                """);
        ClothCut cut = supply.cuts().get(0);
        assertEquals(685.8, cut.widthMm(), 1e-9);
        assertEquals(457.2, cut.heightMm(), 1e-9);
        assertEquals(List.of(new ClothCut("fat quarter", cut.widthMm(), cut.heightMm(), Cloth.WarpRun.ACROSS, true,
                Optional.of(new Price(new BigDecimal("14.00"), "GBP")), Optional.of("Sea-mist"), Optional.of(Cloth.Kind.LINEN),
                Optional.of(new Count(36, 36)))), supply.cuts());
        assertTrue(supply.cutsGiven());
    }

    @Test
    void aNameAndASizeAreEnough() {
        assertEquals(List.of(new ClothCut("strip", 100, 500, Cloth.WarpRun.DOWN, false, Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty())), supply("cloth-cuts: [{name: strip, size: 10 cm x 50 cm}]\n").cuts());
    }

    /** 13 in are 330.2 mm, 18 in 457.2 mm, 27 in 685.8 mm, 54 in 1371.6 mm; which are usual is common practice, no source. */
    @Test
    void withoutTheKeyTheUsualCutsHold() {
        ClothSupply supply = supply("units: cm\n");
        assertFalse(supply.cutsGiven());
        assertEquals(List.of("fat quarter 685.8 x 457.2", "fat eighth 330.2 x 457.2", "half yard 1371.6 x 457.2", "50 x 70 cm cut 700.0 x 500.0"),
                supply.cuts().stream().map(cut -> cut.name() + " " + Math.round(cut.widthMm() * 10) / 10.0 + " x " + Math.round(cut.heightMm() * 10) / 10.0).toList());
        assertTrue(supply.cuts().stream().allMatch(cut -> cut.warp() == Cloth.WarpRun.DOWN && cut.turning() && cut.price().isEmpty()
                && cut.cloth().isEmpty() && cut.kind().isEmpty() && cut.count().isEmpty()));
    }

    @Test
    void anEmptyListSaysThatNothingIsSold() {
        ClothSupply supply = supply("cloth-cuts: []\n");
        assertTrue(supply.cutsGiven());
        assertEquals(List.of(), supply.cuts());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            cloth-cuts:                        | 1:1: cloth-cuts has no value; write one, such as cloth-cuts: - {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP}
            cloth-cuts: fat quarter            | 1:13: cloth-cuts needs a list; write it like - {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP}
            cloth-cuts: [fat quarter]          | 1:14: this cut needs keys with values; write it like - {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP}
            cloth-cut: []                      | 1:1: "cloth-cut" is not a key of basket.yaml; did you mean cloth-cuts?
            cloth-cuts: [{}]                   | 1:14: this cut has no name; write one, such as name: fat quarter // 1:14: this cut has no size; write one, such as size: 27 in x 18 in
            cloth-cuts: [{name: A, size: 18 in}]  | 1:30: "18 in" is not one length by another; write width x height, such as 27 in x 18 in
            cloth-cuts: [{name: A, size: 1 m x 21 m}] | 1:30: "21 m" is not the side of a cloth; write 1 cm to 20 m
            cloth-cuts: [{name: A, size: 1 m x 1 m, prise: 4 GBP}] | 1:41: "prise" is not a key of this cut; did you mean price?
            cloth-cuts: [{name: A, size: 1 m x 1 m, price: 4}] | 1:48: "4" is a bare number; write it with its currency, such as 14.00 GBP
            cloth-cuts: [{name: A, size: 1 m x 1 m, price: 1000000001 GBP}] | 1:48: "1000000001 GBP" is more than any cut of cloth costs; write 0 to 1000000000
            cloth-cuts: [{name: A, size: 1 m x 1 m, kind: linnen}] | 1:47: "linnen" is not a kind of cloth; did you mean linen?
            cloth-cuts: [{name: A, size: 1 m x 1 m, count: many}] | 1:48: "many" is not a count; write threads to the inch, such as 36, or as measured, such as 71 in 2 in
            cloth-cuts: [{name: A, size: 1 m x 1 m, cloth: ""}] | 1:48: this text is empty; write something, such as Sea-mist
            cloth-cuts: [{name: A, size: 1 m x 1 m, warp: acros}] | 1:47: "acros" is not a way the warp runs; did you mean across?
            cloth-cuts: [{name: A, size: 1 m x 1 m, turning: 1}] | 1:50: "1" is neither yes nor no; write yes or no
            """)
    void eachFaultIsOneProblem(String settings, String messages) {
        assertEquals(told(messages), settings(settings + "\n").problems());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            name: Half                         | name: half
            name: half, cloth: Sea-mist        | name: half
            name: half, cloth: Sea-mist        | name: half, cloth: sea-mist
            name: half, kind: linen            | name: half, count: 36
            name: half, count: 35.5            | name: half, count: 71 in 2 in
            """)
    void twoCutsOfOneClothHaveTwoNames(String one, String other) {
        assertEquals(told("3:10: \"half\" is also the name of another cut of the same cloth; give each a name of its own"),
                settings("cloth-cuts:\n- {" + one.strip() + ", size: 1 m x 1 m}\n- {" + other.strip() + ", size: 2 m x 1 m}\n").problems());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            name: half, cloth: Sea-mist        | name: half, cloth: Old sail
            name: half, kind: linen            | name: half, kind: block, count: 14
            name: half, count: 36              | name: half, count: 35.5
            name: half                         | name: halve
            """)
    void cutsOfOtherClothsMayShareAName(String one, String other) {
        assertEquals(2, supply("cloth-cuts:\n- {" + one.strip() + ", size: 1 m x 1 m}\n- {" + other.strip() + ", size: 2 m x 1 m}\n").cuts().size());
    }

    /** A cut whose limits are in doubt is not also told to share its name. */
    @Test
    void aCutThatIsInDoubtIsToldOnce() {
        assertEquals(told("3:24: \"wool\" is not a kind of cloth; write one of: linen, evenweave, block"), settings("""
                cloth-cuts:
                  - {name: half, size: 1 m x 1 m}
                  - {name: half, kind: wool, size: 1 m x 2 m}
                """).problems());
    }

    @Test
    void eitherAllCutsHaveAPriceOrNone() {
        assertEquals(told("3:12: this cut has no price, and others have; write price: 14.00 GBP beside it, or take all prices out of cloth-cuts"
                + " // 4:12: this cut has no price, and others have; write price: 14.00 GBP beside it, or take all prices out of cloth-cuts"), settings("""
                cloth-cuts:
                  - {name: A, size: 1 m x 1 m, price: 3 GBP}
                  - {name: B, size: 1 m x 2 m}
                  - {name: C, size: 1 m x 3 m}
                """).problems());
        // A price that is there but wrong is told once, and is a price.
        assertEquals(told("2:39: \"3\" is a bare number; write it with its currency, such as 14.00 GBP"), settings("""
                cloth-cuts:
                  - {name: A, size: 1 m x 1 m, price: 3}
                  - {name: B, size: 1 m x 2 m, price: 0 GBP}
                """).problems());
    }

    @Test
    void allPricesAreInOneCurrency() {
        assertEquals(told("3:42: this price is in EUR, and that of fat quarter in GBP; give all prices in one currency"), settings("""
                cloth-cuts:
                  - {name: fat quarter, size: 27 in x 18 in, price: 3 GBP}
                  - {name: half, size: 1 m x 2 m, price: 3 EUR}
                """).problems());
        assertEquals(told("2:39: this price is in EUR, and that of cotton in GBP; give all prices in one currency"), settings("""
                cloth-cuts:
                  - {name: A, size: 1 m x 1 m, price: 3 EUR}
                prices: {cotton: 1.20 GBP}
                """).problems());
    }

    private static List<String> told(String messages) {
        return Stream.of(messages.split(" // ")).map(message -> "basket.yaml:" + message).toList();
    }
}
