package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSide;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Flaw;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.form.CountText;
import kitleaf.basket.place.Fault;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What the records of cloth take and refuse, and which cloths a cut is sold in. */
class ClothSupplyPropertyTests {

    private static final Count COUNT = new Count(36, 36);

    private static ClothOnHand onHand(double widthMm, double heightMm, Flaw... flaws) {
        return new ClothOnHand("Sea-mist", Cloth.Kind.LINEN, COUNT, widthMm, heightMm, Cloth.WarpRun.DOWN, Optional.empty(), false, List.of(flaws));
    }

    private static Cloth cloth(Optional<String> name, Cloth.Kind kind, Count count) {
        return new Cloth(name, kind, count, 1, Shrink.NONE, Cloth.Counted.AFTER, Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false);
    }

    private static ClothCut cut(Optional<String> cloth, Optional<Cloth.Kind> kind, Optional<Count> count) {
        return new ClothCut("half", 500, 500, Cloth.WarpRun.DOWN, false, Optional.empty(), cloth, kind, count);
    }

    /** In whole micrometres, so that inside and outside are exact here and only the record works in doubles. */
    @Property
    void aFlawIsTakenExactlyWhenItLiesInsideTheCloth(@ForAll Flaw.Run run, @ForAll @IntRange(min = 10_000, max = 60_000) int widthUm,
            @ForAll @IntRange(min = 10_000, max = 60_000) int heightUm, @ForAll @IntRange(max = 50_000) int fromUm,
            @ForAll @IntRange(min = 1, max = 30_000) int wideUm) {
        Flaw flaw = new Flaw(run, fromUm / 1000.0, wideUm / 1000.0);
        boolean inside = fromUm + wideUm <= (run == Flaw.Run.DOWN ? widthUm : heightUm);
        if (inside) {
            assertEquals(List.of(flaw), onHand(widthUm / 1000.0, heightUm / 1000.0, flaw).flaws());
        } else {
            assertThrows(IllegalArgumentException.class, () -> onHand(widthUm / 1000.0, heightUm / 1000.0, flaw));
        }
    }

    /** Whatever limits a cut has, it is sold in the cloth they were taken from, and in no cloth that misses one of them. */
    @Property
    void aCutIsSoldInExactlyTheClothsItsLimitsName(@ForAll boolean byName, @ForAll boolean byKind, @ForAll boolean byCount,
            @ForAll Cloth.Kind kind, @ForAll @IntRange(min = 14, max = 40) int perInch) {
        Count count = new Count(perInch, perInch);
        ClothCut cut = cut(Optional.of("Sea-mist").filter(n -> byName), Optional.of(kind).filter(k -> byKind), Optional.of(count).filter(c -> byCount));
        assertTrue(cut.soldIn(cloth(Optional.of(" sea-MIST "), kind, count)));
        assertEquals(!byName, cut.soldIn(cloth(Optional.of("Seamist"), kind, count)));
        assertEquals(!byName, cut.soldIn(cloth(Optional.empty(), kind, count)));
        Cloth.Kind otherKind = Cloth.Kind.values()[(kind.ordinal() + 1) % 3];
        assertEquals(!byKind, cut.soldIn(cloth(Optional.of("Sea-mist"), otherKind, count)));
        assertEquals(!byCount, cut.soldIn(cloth(Optional.of("Sea-mist"), kind, new Count(perInch, perInch + 0.5))));
        assertEquals(!byCount, cut.soldIn(cloth(Optional.of("Sea-mist"), kind, new Count(perInch + 0.5, perInch))));
    }

    /** 72 threads in 50.8 mm are 72 in 2 in, so 36 to the inch. */
    @Test
    void aCountIsTheSameHoweverItWasMeasured() throws Fault {
        CountText text = new CountText();
        Count measured = new Count(text.read("72 in 50.8 mm"), text.read("108 in 7.62 cm"));
        assertTrue(measured.same(COUNT));
        assertFalse(new Count(36, 36.001).same(COUNT));
    }

    @Test
    void namesAreComparedWithoutCaseAndTheSpacesAroundThem() {
        assertTrue(onHand(100, 100).isCalled(" sea-MIST"));
        assertFalse(onHand(100, 100).isCalled("sea mist"));
    }

    @Test
    void recordsRefuseWhatNoClothIs() {
        assertEquals(10, onHand(10, 20_000).widthMm());
        for (double sideMm : new double[] {9.99, 20_000.01, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> onHand(sideMm, 100));
            assertThrows(IllegalArgumentException.class, () -> onHand(100, sideMm));
            assertThrows(IllegalArgumentException.class, () -> ClothCut.usual("half", sideMm, 100));
            assertThrows(IllegalArgumentException.class, () -> ClothCut.usual("half", 100, sideMm));
        }
        for (double wrongMm : new double[] {-0.01, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new Flaw(Flaw.Run.DOWN, wrongMm, 1));
            assertThrows(IllegalArgumentException.class, () -> new Flaw(Flaw.Run.DOWN, 1, wrongMm));
            assertThrows(IllegalArgumentException.class, () -> new Cutting(wrongMm, 100));
            assertThrows(IllegalArgumentException.class, () -> new Cutting(3, wrongMm));
        }
        assertThrows(IllegalArgumentException.class, () -> new Flaw(Flaw.Run.DOWN, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Cutting(30.01, 100));
        assertThrows(IllegalArgumentException.class, () -> new Cutting(3, 1000.01));
    }

    @Test
    void theSelvedgeRunsAlongTheWarp() {
        for (ClothSide side : ClothSide.values()) {
            for (Cloth.WarpRun warp : Cloth.WarpRun.values()) {
                boolean along = (side == ClothSide.LEFT || side == ClothSide.RIGHT) == (warp == Cloth.WarpRun.DOWN);
                if (along) {
                    assertEquals(warp, selvedged(side, warp).warp());
                } else {
                    assertThrows(IllegalArgumentException.class, () -> selvedged(side, warp));
                }
            }
        }
    }

    private static ClothOnHand selvedged(ClothSide side, Cloth.WarpRun warp) {
        return new ClothOnHand("Sea-mist", Cloth.Kind.LINEN, COUNT, 100, 100, warp, Optional.of(side), false, List.of());
    }
}
