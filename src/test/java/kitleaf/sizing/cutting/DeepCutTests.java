package kitleaf.sizing.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows so long that a call for each piece would not fit on the stack. */
class DeepCutTests {

    private static final int ROW = 60_000;

    /** 60,000 strips of 0.3 mm, side by side: 18 m. What lies in a row is one block within the other. */
    @Test
    void a_row_of_sixty_thousand_is_cut_and_counted() {
        BestCut.Found found = BestCut.of(0.3 * ROW, 100, List.of(new CutType(List.of(new Shape(0.3, 100)), ROW, 1)), new Patience(2_000));
        int[] held = new int[1];
        found.block().orElseThrow().count(held);
        assertEquals(ROW, held[0]);
        assertEquals(ROW, found.value());
        assertEquals(0.3 * ROW, found.block().get().widthMm(), 1e-6);
    }
}
