package kitleaf.sheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers get into markup. */
class NumberTextTests {

    @ParameterizedTest
    @CsvSource({
        "0, 0", "-0.0, 0", "12, 12", "12.5, 12.5", "16.999999999999996, 17", "0.1, 0.1", "0.30000000000000004, 0.3", "-3.25, -3.25",
        "-0.5, -0.5", "0.000001, 0.000001", "0.0000004, 0", "-0.0000004, 0", "594.123456, 594.123456", "1.05, 1.05", "1.000001, 1.000001"})
    void aNumberIsWrittenToAMillionthWithoutNoise(double number, String written) {
        assertEquals(written, NumberText.of(number));
    }

    @ParameterizedTest
    @CsvSource({"1e12, 1.0E12", "NaN, NaN", "-Infinity, -Infinity"})
    void whatIsNoLengthIsWrittenAsItIs(double number, String written) {
        assertEquals(written, NumberText.of(number));
    }

    /** Against the JDK's own decimals. */
    @Property
    void everyLengthIsTheNearestMillionth(@ForAll @DoubleRange(min = -20_000, max = 20_000) double number) {
        BigDecimal written = new BigDecimal(NumberText.of(number));
        BigDecimal off = written.subtract(new BigDecimal(number)).abs();
        // Half a millionth, and what scaling a double can lose.
        assertEquals(-1, off.compareTo(new BigDecimal("0.00000050001")), written.toPlainString());
        assertEquals(written, written.setScale(Math.min(6, written.scale()), RoundingMode.UNNECESSARY));
    }
}
