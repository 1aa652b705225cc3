package kitleaf.sizing.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class BestCutPropertyTests {

    @Property(tries = 3000, seed = "20270101")
    void no_sequence_of_cuts_yields_more(@ForAll long mix, @ForAll boolean turns) {
        CutCase job = CutCase.whole(mix, 11, 4, 3, turns);
        BestCut.Found found = job.cut();
        assertTrue(found.proven());
        assertEquals(EveryCut.best((int) job.widthMm(), (int) job.heightMm(), job.types()), found.value(), 0);
    }

    /** Six types of one piece each on a larger stock: more cuts deep, where more of the bounds have a say. */
    @Property(tries = 400, seed = "20270102")
    void no_deep_sequence_of_cuts_yields_more(@ForAll long mix, @ForAll boolean turns) {
        CutCase job = CutCase.whole(mix, 16, 7, 1, turns);
        assertEquals(EveryCut.best((int) job.widthMm(), (int) job.heightMm(), job.types()), job.cut().value(), 0);
    }

    /** Ten pieces on a stock where about half of them fit: what a household asks for. */
    private static CutCase ten(long mix, boolean turns) {
        CutCase job = CutCase.whole(mix, 24, 1, 1, turns);
        List<CutType> types = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            types.addAll(CutCase.whole(mix + i * 31L, (int) job.widthMm(), 1, 1, turns).types());
        }
        return new CutCase(job.widthMm(), job.heightMm(), types);
    }

    @Property(tries = 60, seed = "20270107")
    void no_subset_of_ten_pieces_is_worth_more(@ForAll long mix, @ForAll boolean turns) {
        CutCase job = ten(mix, turns);
        BestCut.Found found = job.cut();
        assertTrue(found.proven());
        assertEquals(EverySubset.best((int) job.widthMm(), (int) job.heightMm(), job.types()), found.value(), 0);
    }

    /**
     * The same in sizes with no common measure, so that there are too many sums of them and the bound has to count in coarse
     * lengths. Each piece grows by 0.02 mm at most, ten in a row by 0.2 mm, and the stock by 0.7 mm: what fitted fits, and
     * what was a millimetre too long is too long. Beside them two strips of 0.1 mm always fit, so thin that coarse lengths lose them.
     */
    @Property(tries = 100, seed = "20270105", edgeCases = EdgeCasesMode.NONE)
    void crooked_sizes_change_nothing_where_they_fit_as_before(@ForAll long mix, @ForAll @LongRange(min = 1, max = 1_000_000) long crook, @ForAll boolean turns) {
        CutCase job = ten(mix, turns);
        List<CutType> crooked = new ArrayList<>();
        for (CutType type : job.types()) {
            long part = 1 + crook * 7919 * (crooked.size() + 1) % 999_983;
            crooked.add(new CutType(type.shapes().stream().map(it -> new Shape(it.widthMm() + part * 2e-8, it.heightMm() + part * 1e-8)).toList(),
                    type.most(), type.value()));
        }
        crooked.add(new CutType(List.of(new Shape(0.1, job.heightMm() + 0.7)), 2, 3));
        BestCut.Found found = new CutCase(job.widthMm() + 0.7, job.heightMm() + 0.7, crooked).cut();
        assertTrue(found.proven());
        assertEquals(EverySubset.best((int) job.widthMm(), (int) job.heightMm(), job.types()) + 2 * 3, found.value(), 0);
    }

    @Property(tries = 2000, seed = "20270103")
    void whenever_patience_ends_the_answer_is_sound_and_the_bound_holds(@ForAll long mix, @ForAll @IntRange(max = 400) int steps, @ForAll boolean turns) {
        CutCase job = CutCase.whole(mix, 16, 6, 2, turns);
        BestCut.Found hasty = job.cut(steps);
        assertTrue(hasty.bound() >= job.cut().value());
    }

    /** With room for few blocks most are dropped; what is said of the rest must still be true. */
    @Property(tries = 1500, seed = "20270104")
    void whatever_is_dropped_for_want_of_room_the_bound_holds(@ForAll long mix, @ForAll @IntRange(max = 40) int room, @ForAll boolean turns) {
        CutCase job = CutCase.whole(mix, 16, 6, 2, turns);
        BestCut.Found cramped = job.sound(BestCut.of(job.widthMm(), job.heightMm(), job.types(), new Patience(CutCase.LONG), room));
        assertTrue(cramped.bound() >= job.cut().value());
    }

    @Property(tries = 60, seed = "20270106")
    void household_pieces_are_cut_soundly(@ForAll long mix, @ForAll @IntRange(min = 10, max = 60) int types, @ForAll boolean turns) {
        BestCut.Found found = CutCase.household(mix, types, turns).cut(5000);
        assertTrue(found.value() > 0);
    }
}
