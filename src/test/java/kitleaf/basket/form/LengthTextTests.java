package kitleaf.basket.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Locale;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Fault;
import kitleaf.words.Words;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class LengthTextTests {

    private static final Unit<Length> MM = MetricPrefix.MILLI(Units.METRE);

    private static double outsideMm(double number, Unit<Length> unit) {
        return Quantities.getQuantity(number, unit).to(MM).getValue().doubleValue();
    }

    /** Expected values come from a JSR 385 library (Indriya, US customary units). */
    @Test
    void unitsAreThoseOfTheJsr385Library() throws Fault {
        assertEquals(outsideMm(3, USCustomary.INCH), LengthText.plain("3 in"), 1e-9);
        assertEquals(outsideMm(2.5, USCustomary.INCH), LengthText.plain("2 1/2 in"), 1e-9);
        assertEquals(outsideMm(2.5, USCustomary.INCH), LengthText.plain("2½ in"), 1e-9);
        assertEquals(outsideMm(0.75, USCustomary.INCH), LengthText.plain("¾ in"), 1e-9);
        assertEquals(outsideMm(3, USCustomary.INCH), LengthText.plain("3\""), 1e-9);
        assertEquals(outsideMm(3, USCustomary.INCH), LengthText.plain("3″"), 1e-9);
        assertEquals(outsideMm(3, USCustomary.INCH), LengthText.plain("3 inches"), 1e-9);
        assertEquals(outsideMm(1, USCustomary.INCH), LengthText.plain("1 inch"), 1e-9);
        assertEquals(outsideMm(0.5, USCustomary.YARD), LengthText.plain("1/2 yd"), 1e-9);
        assertEquals(outsideMm(2, USCustomary.YARD), LengthText.plain("2 yards"), 1e-9);
        assertEquals(outsideMm(1, USCustomary.YARD), LengthText.plain("1 Yard"), 1e-9);
        assertEquals(outsideMm(7.5, MetricPrefix.CENTI(Units.METRE)), LengthText.plain("7.5 cm"), 1e-9);
        assertEquals(outsideMm(75, MM), LengthText.plain("75mm"), 1e-9);
        assertEquals(outsideMm(8, Units.METRE), LengthText.plain("8 m"), 1e-9);
    }

    /** 25.4 mm is an inch by definition, so a hundredth of an inch is 0.254 mm. */
    @Property
    void inchesAndMillimetresOfOneLengthAgree(@ForAll @IntRange(min = 0, max = 100_000) int hundredths) throws Fault {
        String inches = BigDecimal.valueOf(hundredths, 2).toPlainString();
        String millimetres = BigDecimal.valueOf(hundredths).multiply(new BigDecimal("0.254")).toPlainString();
        assertEquals(LengthText.plain(millimetres + " mm"), LengthText.plain(inches + " in"), 1e-9);
    }

    @Property
    void fractionsAreTheirQuotient(@ForAll @IntRange(min = 0, max = 99) int whole, @ForAll @IntRange(min = 0, max = 63) int over,
            @ForAll @IntRange(min = 1, max = 64) int under) throws Fault {
        String text = String.format(Locale.ROOT, "%d %d/%d in", whole, over, under);
        assertEquals((whole + (double) over / under) * 25.4, LengthText.plain(text), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3          | "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            7,5 cm     | "7,5 cm" has a decimal comma; write a point, as in 7.5 cm
            1,000 mm   | "1,000 mm" has a comma in a number; write it without, and with a point before decimals
            2-1/2 in   | "2-1/2 in" does not start with a number Kitleaf can read; write it like 3 in, 2.5 in or 2 1/2 in
            3 inchs    | "3 inchs" has the unit "inchs", which is not known here; did you mean inch?
            3 parsec   | "3 parsec" has the unit "parsec", which is not known here; write in, cm, mm, m or yd
            1/0 in     | "1/0 in" divides by 0; write a fraction such as 1/2 in
            -3 in      | "-3 in" is less than nothing; write a length of 0 or more, such as 3 in or 7.5 cm
            Infinity m | "Infinity m" is not a length a tape can show; write one such as 3 in or 7.5 cm
            ∞ in       | "∞ in" is not a length a tape can show; write one such as 3 in or 7.5 cm
            NaN cm     | "NaN cm" is not a length a tape can show; write one such as 3 in or 7.5 cm
            wide       | "wide" is not a length; write a number and its unit, such as 3 in or 7.5 cm
            1.2.3 cm   | "1.2.3 cm" does not start with a number Kitleaf can read; write it like 3 in, 2.5 in or 2 1/2 in
            """, quoteCharacter = '`')
    void faultsSayWhatToWrite(String text, String message) {
        assertEquals(message, message(text));
    }

    @Test
    void numbersTooLongForADoubleAreNoLength() {
        assertEquals("is not a length a tape can show; write one such as 3 in or 7.5 cm",
                message("9".repeat(400) + " m").replaceFirst("^\"9{40}…\" ", ""));
    }

    private static String message(String text) {
        Fault fault = assertThrows(Fault.class, () -> LengthText.plain(text));
        Words words = BasketWords.in(Locale.ENGLISH);
        return words.say(fault.wrong()) + "; " + words.say(fault.write());
    }
}
