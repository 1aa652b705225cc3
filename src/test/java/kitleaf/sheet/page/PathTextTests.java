package kitleaf.sheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PathTextTests {

    /** The JDK's format strings are the outside word on rounding; halves among the values. */
    @Test
    void numbers_are_rounded_as_format_strings_round_them() {
        Random random = new Random(3);
        for (int i = 0; i < 5_000; i++) {
            double x = i % 2 == 0 ? random.nextInt(400_000) / 2000.0 : (random.nextDouble() - 0.3) * 300;
            double y = random.nextInt(4_000_000) / 20_000.0;
            PathText path = new PathText(3);
            path.stroke(x, y, y, x);
            assertEquals(String.format(Locale.ROOT, "M%.3f %.3fL%.3f %.3f", x, y, y, x), path.toString());
        }
    }
}
