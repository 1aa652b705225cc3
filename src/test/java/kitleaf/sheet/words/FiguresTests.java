package kitleaf.sheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import kitleaf.basket.Units;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTests {

    @ParameterizedTest
    @CsvSource({"14.25, 16, 14 1⁄4", "14, 16, 14", "0.5, 16, 1⁄2", "3.0625, 16, 3 1⁄16", "7.7778, 8, 7 3⁄4", "11.6667, 8, 11 5⁄8", "0.99, 8, 1", "0.01, 8, 0", "2.9375, 8, 3"})
    void inches_are_whole_numbers_and_true_fractions(double inches, int denominator, String written) {
        assertEquals(written, Figures.inches(inches * 25.4, denominator).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @CsvSource({"361.95, 36.2", "100, 10", "4.96, 0.5", "0, 0", "1199.96, 120"})
    void centimetres_are_to_the_millimetre_without_noughts(double mm, String written) {
        assertEquals(written, new Figures(Units.CM, SheetWords.in(Locale.ENGLISH)).centimetres(mm));
    }

    @Test
    void her_units_come_first() {
        assertEquals("10 in", new Figures(Units.IN, SheetWords.in(Locale.ENGLISH)).length(254).replace('\u00a0', ' '));
        assertEquals("25.4 cm", new Figures(Units.CM, SheetWords.in(Locale.ENGLISH)).length(254).replace('\u00a0', ' '));
        assertEquals("25.4 cm", new Figures(Units.IN, SheetWords.in(Locale.ENGLISH)).other(254).replace('\u00a0', ' '));
        assertEquals("10 × 15 in", new Figures(Units.CM, SheetWords.in(Locale.ENGLISH)).otherSize(254, 381).replace('\u00a0', ' '));
    }

    /**
     * What is cut is never smaller than needed, in either unit. By hand: 14 1/4 x 18 in are 361.95 x 457.2 mm, up to the millimetre
     * 36.2 x 45.8 cm. 36 x 48 cm are 226.77 and 302.36 sixteenths of 1.5875 mm, up to 227 and 303: 14 3/16 x 18 15/16 in; 40.5 and
     * 51 cm are 255.12 and 321.26: 16 x 20 1/8 in. 10 in are 25.4 cm to the last bit, and no step is added to what is whole.
     */
    @ParameterizedTest
    @CsvSource({"361.95, 457.2, '14 1⁄4 × 18 in', 36.2 × 45.8 cm", "360, 480, '14 3⁄16 × 18 15⁄16 in', 36 × 48 cm",
            "405, 510, '16 × 20 1⁄8 in', 40.5 × 51 cm",
        "254, 508, 10 × 20 in, 25.4 × 50.8 cm"})
    void what_is_cut_is_rounded_up_in_both_units(double widthMm, double heightMm, String inches, String centimetres) {
        Figures figures = new Figures(Units.IN, SheetWords.in(Locale.ENGLISH));
        assertEquals(inches, figures.cut(widthMm, heightMm).replace('\u00a0', ' '));
        assertEquals(centimetres, figures.swapped().cut(widthMm, heightMm).replace('\u00a0', ' '));
        assertEquals(inches.split(" × ")[1], figures.cutLength(heightMm).replace('\u00a0', ' '));
        assertEquals(centimetres.split(" × ")[1], figures.swapped().cutLength(heightMm).replace('\u00a0', ' '));
    }

    /** Cloth that lies there is measured: 457.2 mm are 45.72 cm, to the nearest millimetre 45.7. */
    @Test
    void what_lies_there_is_to_the_nearest() {
        Figures figures = new Figures(Units.CM, SheetWords.in(Locale.ENGLISH));
        assertEquals("36.2 × 45.7 cm", figures.measured(361.95, 457.2).replace('\u00a0', ' '));
        assertEquals("14 1⁄4 × 18 in", figures.swapped().measured(362.2, 457.2).replace('\u00a0', ' '));
    }

    /** What is read back is never further off than half the smallest step shown. */
    @Property
    void a_written_inch_is_within_half_a_step(@ForAll @DoubleRange(min = 0, max = 3000) double mm) {
        String written = Figures.inches(mm, 16);
        double read = 0;
        for (String part : written.split("\u00a0")) {
            String[] fraction = part.split("\u2044");
            read += fraction.length == 2 ? Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1]) : Double.parseDouble(part);
        }
        assertTrue(Math.abs(read * 25.4 - mm) <= 25.4 / 32 + 1e-9, written);
    }

    /** Against the JDK's exact decimals: a number a hair off a half, as 2.675 is in binary, goes the way its digits say. */
    @Test
    void decimals_are_rounded_by_all_their_digits() {
        Figures figures = new Figures(Units.CM, SheetWords.in(Locale.ENGLISH));
        Random random = new Random(3);
        List<Double> values = new ArrayList<>(List.of(0.0, -0.0, 0.25, 2.675, 1.005, 0.05, 0.049999999, -0.04, -0.05, 9.9999, 1e7 + 0.25, 123456.05, -1e-9));
        for (int i = 0; i < 20_000; i++) {
            double half = (random.nextInt(200_000) + 0.5) / Math.pow(10, random.nextInt(4));
            values.add(half);
            values.add(Math.nextUp(half));
            values.add(random.nextDouble() * 1_000 - 500);
        }
        for (double value : values) {
            for (int places = 0; places <= 4; places++) {
                BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
                assertEquals(exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString(), figures.decimal(value, places), value + " to " + places);
            }
        }
    }
}
