package kitleaf.basket.reader.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Margins;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import org.junit.jupiter.api.Test;

class SharedValuesTests {

    private final SharedValues recurring = new SharedValues();

    private static List<StitchCount> crosses(int count) {
        return List.of(StitchCount.of(StitchKind.CROSS, count));
    }

    @Test
    void what_comes_again_is_the_same_thing() {
        assertSame(recurring.words(Optional.of("Ebb grey")), recurring.words(Optional.of(new String("Ebb grey"))));
        assertSame(recurring.colour(Optional.of(new Colour("#6b7f8c"))), recurring.colour(Optional.of(new Colour("#6b7f8c"))));
        assertSame(recurring.stitches(crosses(120)), recurring.stitches(crosses(120)));
        assertSame(recurring.margins(Margins.all(76.2)), recurring.margins(Margins.all(76.2)));
        assertSame(recurring.cloth(cloth(36)), recurring.cloth(cloth(36)));
    }

    private static Cloth cloth(double count) {
        return new Cloth(Optional.of("Sea-mist"), Cloth.Kind.LINEN, new Count(count, count), 2, Shrink.NONE, Cloth.Counted.AFTER,
                Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false);
    }

    @Test
    void what_differs_stays_what_it_is() {
        assertEquals(crosses(120), recurring.stitches(crosses(120)));
        assertEquals(crosses(121), recurring.stitches(crosses(121)));
        List<StitchCount> back = List.of(StitchCount.of(StitchKind.BACK, 120));
        assertEquals(back, recurring.stitches(back));
        List<StitchCount> rows = List.of(new StitchCount(StitchKind.CROSS, 120, Optional.of(StitchCount.Worked.ROWS), OptionalInt.empty(), OptionalDouble.empty()));
        assertEquals(rows, recurring.stitches(rows));
        assertEquals(Optional.empty(), recurring.words(Optional.empty()));
        recurring.cloth(cloth(36));
        assertEquals(cloth(32), recurring.cloth(cloth(32)));
        recurring.margins(Margins.all(76.2));
        assertEquals(Margins.all(50), recurring.margins(Margins.all(50)));
    }

    @Test
    void past_its_bound_things_are_handed_back_as_they_came() {
        for (int i = 0; i < 10_000; i++) {
            recurring.words(Optional.of("thread " + i));
        }
        assertEquals(Optional.of("one more"), recurring.words(Optional.of("one more")));
        assertNotSame(recurring.words(Optional.of("one more")), recurring.words(Optional.of("one more")));
    }
}
