package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import kitleaf.basket.Basket;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cutting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClothSupplyReaderTests {

    @TempDir
    Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private Cutting cutting(String text) {
        return settings(text).basket().clothSupply().cutting();
    }

    @Test
    void cuttingIsReadAndUsualWhereNotSaid() {
        assertEquals(new Cutting(3, 100), cutting("units: cm\n"));
        assertEquals(new Cutting(5, 250), cutting("cutting: {fray: 5 mm, usable: 25 cm}\n"));
        assertEquals(new Cutting(0, 100), cutting("cutting: {fray: 0 mm}\n"));
        assertEquals(new Cutting(3, 0), cutting("cutting: {usable: 0 cm}\n"));
        assertEquals(new Cutting(30, 1000), cutting("cutting: {fray: 30 mm, usable: 1 m}\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            cutting:                   | 1:1: cutting has no value; write one, such as cutting: {fray: 3 mm, usable: 10 cm}
            cutting: 3 mm              | 1:10: cutting needs keys with values; write it like {fray: 3 mm, usable: 10 cm}
            cutting: {frey: 3 mm}      | 1:11: "frey" is not a key of cutting; did you mean fray?
            cutting: {fray: 31 mm}     | 1:17: "31 mm" is not what a cut frays; write 0 mm to 30 mm
            cutting: {fray: 3}         | 1:17: "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            cutting: {usable: 1.1 m}   | 1:19: "1.1 m" is not the side of a remnant to keep; write 0 mm to 1 m
            cuting: {fray: 3 mm}       | 1:1: "cuting" is not a key of basket.yaml; did you mean cutting?
            """)
    void eachFaultOfCuttingIsOneProblem(String settings, String message) {
        assertEquals(List.of("basket.yaml:" + message), settings(settings + "\n").problems());
    }

    @Test
    void clothStaysWithTheBasketOnOtherPaperAndWithFewerPieces() {
        Basket basket = settings("cloth-on-hand: [{name: A, kind: block, count: 14, size: 1 m x 1 m}]\ncutting: {fray: 1 mm}\n").basket();
        assertEquals(1, basket.clothSupply().onHand().size());
        assertEquals(basket.clothSupply(), basket.on(new Paper("A3", 297, 420), Units.CM).clothSupply());
        assertEquals(basket.clothSupply(), basket.only(List.of()).clothSupply());
    }
}
