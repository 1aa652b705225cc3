package kitleaf.press.type;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Numbers as PDF has them (ISO 32000-1, 7.3.3): no exponent, no sign on nought. Worked by hand. */
class ContentBytesTests {

    private static String number(double number) {
        return new String(new ContentBytes(1).number(number).toBytes(), StandardCharsets.US_ASCII);
    }

    private static String place(double number) {
        return new String(new ContentBytes(1).place(number).toBytes(), StandardCharsets.US_ASCII);
    }

    @Test
    void noughts_at_the_end_are_left_out() {
        assertEquals("0 ", number(0));
        assertEquals("12 ", number(12));
        assertEquals("6.80315 ", number(6.80315));
        assertEquals("0.5 ", number(0.5));
        assertEquals("-40.00001 ", number(-40.00001));
    }

    @Test
    void places_have_three_decimals_and_what_is_multiplied_five() {
        assertEquals("10.191 ", place(10.19112));
        assertEquals("10.19112 ", number(10.19112));
        assertEquals("0.001 ", place(0.0006));
    }

    /** Against the JDK's decimals. */
    @Test
    void every_digit_is_written() {
        for (int i = -1_200_000; i < 13_000_000; i += i < 13_000 && i > -13_000 ? 1 : 997) {
            assertEquals(plain(BigDecimal.valueOf(i, 3)), place(i / 1e3));
            assertEquals(plain(BigDecimal.valueOf(i, 5)), number(i / 1e5));
            assertEquals(plain(BigDecimal.valueOf(12L * i, 1)), number(12L * i / 10.0));
        }
    }

    private static String plain(BigDecimal number) {
        return (number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString()) + " ";
    }

    @Test
    void rounding_up_carries_into_the_whole() {
        assertEquals("3 ", place(2.9996));
        assertEquals("100 ", number(99.999997));
        assertEquals("-1 ", place(-0.9999));
    }

    @Test
    void what_rounds_to_nought_has_no_sign() {
        assertEquals("0 ", place(-0.0004));
        assertEquals("0 ", number(-0.0));
    }

    @Test
    void large_numbers_have_no_exponent() {
        assertEquals("1000000000000 ", number(1e12));
        assertEquals("-2000000000 ", place(-2e9));
    }
}
