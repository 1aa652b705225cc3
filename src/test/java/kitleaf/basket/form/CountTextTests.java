package kitleaf.basket.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.place.Fault;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CountTextTests {

    /** 28 to the inch is 11.0236 to the centimetre (28 / 2.54), so 110.236 in 10 cm is 28 to the inch to three figures. */
    @Test
    void measuredCountsAreThreadsToTheInch() throws Fault {
        assertEquals(28, new CountText().read("110.236 in 10 cm"), 1e-3);
        assertEquals(35.5, new CountText().read("71 in 2 in"), 1e-9);
        assertEquals(35.5, new CountText().read("71 in 2\""), 1e-9);
        assertEquals(35.2, new CountText().read("35.2"), 1e-9);
        assertEquals(14, new CountText().read("14 ct"), 1e-9);
        assertEquals(14, new CountText().read("14CT."), 1e-9);
    }

    /** 3 to the inch, however it was measured, is a count the record takes. */
    @Test
    void countsAtTheLimitsAreNotLostToRounding() throws Fault {
        for (int hundredths = 1; hundredths <= 3000; hundredths++) {
            String inches = BigDecimal.valueOf(hundredths, 2).toPlainString();
            String least = BigDecimal.valueOf(3L * hundredths, 2).toPlainString();
            String most = BigDecimal.valueOf(120L * hundredths, 2).toPlainString();
            Count count = new Count(new CountText().read(least + " in " + inches + " in"), new CountText().read(most + " in " + inches + " in"));
            assertEquals(3, count.warpPerInch(), 1e-9);
            assertEquals(120, count.weftPerInch(), 1e-9);
        }
    }

    @Property
    void countingOverInchesOrMillimetresGivesOneCount(@ForAll @IntRange(min = 3, max = 120) int perInch,
            @ForAll @IntRange(min = 1, max = 20) int inches) throws Fault {
        double byInch = new CountText().read(perInch * inches + " in " + inches + " in");
        double byMm = new CountText().read(perInch * inches + " in " + BigDecimal.valueOf(inches * 254L, 1) + " mm");
        assertEquals(perInch, byInch, 1e-9);
        assertEquals(byInch, byMm, 1e-9);
    }
}
