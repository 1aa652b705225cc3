package kitleaf.press.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NumberScannerTests {

    /** The JDK's own reader of numbers is the outside word. */
    private static void same(String text) throws BadValue {
        assertEquals(Double.doubleToLongBits(Double.parseDouble(text)), Double.doubleToLongBits(NumberScanner.whole(text)), text);
    }

    @Test
    void numbers_are_read_to_the_last_bit() throws BadValue {
        for (String text : List.of("0", "-0", "+7", ".5", "5.", "-.25", "0.1", "0.30000000000000004", "30.599999999999998", "9999.999999999999",
                "1e3", "1.5E-3", "000012.50", "0.000000000000001", "123456789012345e-12", "0.1234567890123456")) {
            same(text);
        }
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            same(Double.toString((random.nextDouble() - 0.5) * 9000));
            same((random.nextBoolean() ? "-" : "") + random.nextInt(9999) + "." + Math.abs(random.nextLong() % 100_000_000_000L));
        }
    }
}
