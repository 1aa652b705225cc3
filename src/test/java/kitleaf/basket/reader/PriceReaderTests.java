package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitleaf.basket.Price;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceReaderTests {

    @TempDir
    Path folder;

    private Written settings(String text) {
        return new Written(folder).file("pieces/p.yaml", Written.PIECE).file("basket.yaml", text);
    }

    private static Price price(String amount, String currency) {
        return new Price(new BigDecimal(amount), currency);
    }

    @Test
    void pricesAreReadByPutUp() {
        assertEquals(Map.of("cotton", price("1.20", "GBP"), "silk", price("4.50", "GBP"), "floss silk", price("0.00", "GBP")), settings("""
                skeins:
                  silk: {length: 5 m, plies: 7}
                  floss silk: {length: 5 m, plies: 7}
                prices: {cotton: 1.2 GBP, silk: 4.50GBP, floss silk: 0 GBP}
                """).basket().prices());
    }

    @Test
    void withoutPricesThereAreNone() {
        assertEquals(Map.of(), settings("units: cm\n").basket().prices());
        assertEquals(Map.of(), settings("prices: {}\n").basket().prices());
    }

    /** ISO 4217 gives the yen no minor unit and the Kuwaiti dinar a thousandth (from memory; the JDK's table agrees). */
    @Test
    void amountsHaveTheDecimalsOfTheirCurrency() {
        assertEquals(price("250", "JPY"), settings("prices: {cotton: 250 JPY}\n").basket().prices().get("cotton"));
        assertEquals(price("0.455", "KWD"), settings("prices: {cotton: .455 KWD}\n").basket().prices().get("cotton"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            prices:                    | 1:1: prices has no value; write one, such as prices: {cotton: 1.20 GBP}
            prices: 1.20 GBP           | 1:9: prices needs keys with values; write it like {cotton: 1.20 GBP}
            prices: {cotton: }         | 1:10: cotton has no value; write one, such as cotton: 1.20 GBP
            prices: {cotton: [1 GBP]}  | 1:18: cotton needs one value; write it like 1.20 GBP
            prices: {cotton: 1.20}     | 1:18: "1.20" is a bare number; write it with its currency, such as 1.20 GBP
            prices: {cotton: £1.20}    | 1:18: "£1.20" is not a price; write an amount and its currency, such as 1.20 GBP
            prices: {cotton: GBP 1.20} | 1:18: "GBP 1.20" is not a price; write an amount and its currency, such as 1.20 GBP
            prices: {cotton: 1.2.0 GBP} | 1:18: "1.2.0 GBP" is not a price; write an amount and its currency, such as 1.20 GBP
            prices: {cotton: "1,20 GBP"} | 1:18: "1,20 GBP" has a decimal comma; write a point, as in 1.20 GBP
            prices: {cotton: "1,200 GBP"} | 1:18: "1,200 GBP" has a comma in a number; write it without, and with a point before decimals
            prices: {cotton: -1 GBP}   | 1:18: "-1 GBP" is less than nothing; write an amount of 0 or more
            prices: {cotton: 1000000001 GBP} | 1:18: "1000000001 GBP" is more than any skein costs; write 0 to 1000000000
            prices: {cotton: 1.20 gbp} | 1:18: "gbp" is not a currency known here; did you mean GBP?
            prices: {cotton: 1.20 QQQ} | 1:18: "QQQ" is not a currency known here; write its three capitals (ISO 4217), such as GBP or EUR
            prices: {cotton: 1.20 pounds} | 1:18: "pounds" is not a currency known here; write its three capitals (ISO 4217), such as GBP or EUR
            prices: {cotton: 1.20 XAU} | 1:18: "XAU" is not a currency known here; write its three capitals (ISO 4217), such as GBP or EUR
            prices: {cotton: 1.205 GBP} | 1:18: "1.205 GBP" has more decimals than GBP has; write at most 2
            prices: {cotton: 120.5 JPY} | 1:18: "120.5 JPY" has more decimals than JPY has; write a whole number
            prices: {coton: 1.20 GBP}  | 1:10: "coton" is not a skein of this basket; did you mean cotton?
            prices: {"a\\eb": [1]}       | 1:10: "a�b" holds a line break, tab or other sign that does not show; write it on one line with plain spaces // 1:18: this price needs one value; write it like 1.20 GBP
            prices: {coton: 1.20}      | 1:10: "coton" is not a skein of this basket; did you mean cotton? // 1:17: "1.20" is a bare number; write it with its currency, such as 1.20 GBP
            prices: {wool: 1.20 GBP}   | 1:10: "wool" is not a skein of this basket; write cotton, or add it to skeins in basket.yaml
            """)
    void eachFaultIsOneProblem(String settings, String messages) {
        List<String> told = Stream.of(messages.split(" // ")).map(message -> "basket.yaml:" + message).toList();
        assertEquals(told, settings(settings + "\n").problems());
    }

    @Test
    void allPricesAreInOneCurrency() {
        assertEquals(List.of("basket.yaml:4:9: this price is in EUR, and that of cotton in GBP; give all prices in one currency"), settings("""
                skeins: {silk: {length: 5 m, plies: 7}}
                prices:
                  cotton: 1.20 GBP
                  silk: 4.50 EUR
                """).problems());
    }

    @Test
    void putUpsThatCannotBeReadMakeNoNoiseInPrices() {
        assertEquals(List.of("basket.yaml:1:16: this skein has no length; write one, such as length: 8 m"),
                settings("skeins: {silk: {plies: 7}}\nprices: {silk: 4.50 GBP}\n").problems());
    }
}
