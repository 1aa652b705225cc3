package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Flaw;
import kitleaf.basket.cloth.Shrink;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.PieceSize;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever is planned can be cut as it says. */
class ClothPlanValidityTests {

    private static final Count EVEN = new Count(28, 28);
    private static final Count UNEVEN = new Count(35.5, 36.83);

    private static Cloth asked(Random random) {
        Count count = random.nextInt(3) == 0 ? EVEN : UNEVEN;
        Optional<String> name = random.nextInt(2) == 0 ? Optional.empty() : Optional.of(random.nextBoolean() ? "Fog" : "Tar");
        Shrink shrink = random.nextInt(3) == 0 ? new Shrink(0.05, 0.02) : Shrink.NONE;
        return new Cloth(name, Cloth.Kind.LINEN, count, 2, shrink, Cloth.Counted.AFTER,
                random.nextInt(4) == 0 ? Cloth.WarpRun.ACROSS : Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false);
    }

    private static ClothOnHand onHand(Random random) {
        double width = 200 + random.nextInt(700);
        double height = 200 + random.nextInt(700);
        List<Flaw> flaws = IntStream.range(0, random.nextInt(3) == 0 ? 1 + random.nextInt(3) : 0).mapToObj(i -> {
            boolean down = random.nextBoolean();
            double wide = 1 + random.nextInt(30);
            return new Flaw(down ? Flaw.Run.DOWN : Flaw.Run.ACROSS, random.nextInt(4) == 0 ? 0 : random.nextInt((int) ((down ? width : height) - wide)), wide);
        }).toList();
        return new ClothOnHand(random.nextBoolean() ? "Fog" : "tar ", Cloth.Kind.LINEN, random.nextInt(3) == 0 ? EVEN : UNEVEN, width, height,
                random.nextInt(3) == 0 ? Cloth.WarpRun.ACROSS : Cloth.WarpRun.DOWN, Optional.empty(), random.nextBoolean(), flaws);
    }

    private static ClothCut shopCut(Random random, int number) {
        return new ClothCut("cut " + number, 150 + random.nextInt(600), 150 + random.nextInt(600),
                random.nextInt(3) == 0 ? Cloth.WarpRun.ACROSS : Cloth.WarpRun.DOWN, random.nextBoolean(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Property(tries = 3000, seed = "20270107")
    void every_piece_can_be_cut_as_planned(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int number, @ForAll @IntRange(max = 4) int cloths,
                                           @ForAll @IntRange(max = 3) int shopCuts) {
        Random random = new Random(seed);
        List<Piece> pieces = IntStream.range(0, number)
                .mapToObj(i -> Cloths.piece("p" + i, 30 + random.nextInt(200), 30 + random.nextInt(200), asked(random), Progress.NONE)).toList();
        ClothSupply supply = new ClothSupply(Stream.generate(() -> onHand(random)).limit(cloths).toList(),
                IntStream.range(0, shopCuts).mapToObj(i -> shopCut(random, i)).toList(), true, new Cutting(random.nextInt(6), 50));
        Reckoning reckoning = Reckoning.of(Cloths.basket(supply, pieces));
        ClothPlan plan = reckoning.clothPlan();
        List<String> placed = new ArrayList<>(plan.unplaced().stream().map(piece -> piece.piece().id()).toList());
        for (PlannedCloth cloth : plan.cloths()) {
            assertFalse(cloth.cuts().isEmpty());
            double warpKerf = 25.4 / cloth.count().warpPerInch() + supply.cutting().frayMm();
            double weftKerf = 25.4 / cloth.count().weftPerInch() + supply.cutting().frayMm();
            boolean down = cloth.warp() == Cloth.WarpRun.DOWN;
            new CuttingTable(down ? warpKerf : weftKerf, down ? weftKerf : warpKerf).cutsUp(cloth);
            CuttingTable.numbersRun(cloth);
            assertEquals(Optional.empty(), CutVerifier.fault(cloth.widthMm(), cloth.heightMm(), cloth.cuts().stream()
                    .map(cut -> new CutVerifier.Placed(cut.xMm(), cut.yMm(), cut.widthMm(), cut.heightMm())).toList()));
            boolean turning = cloth.bought() ? plan.buy().stream().anyMatch(buy -> buy.cut().name().equals(cloth.name()) && buy.cut().turning())
                    : supply.onHand().stream().anyMatch(c -> c.name().equals(cloth.name()) && c.widthMm() == cloth.widthMm() && c.turning());
            for (PlannedCut cut : cloth.cuts()) {
                placed.add(cut.piece().piece().id());
                fits(cut, cloth, turning, reckoning.cutStepMm());
            }
        }
        Collections.sort(placed);
        assertEquals(pieces.stream().map(Piece::id).sorted().toList(), placed);
    }

    private static void fits(PlannedCut cut, PlannedCloth cloth, boolean turning, double stepMm) {
        Cloth asked = cut.piece().piece().cloth();
        assertTrue(asked.kind() == cloth.kind() && asked.count().equals(cloth.count()));
        assertTrue(asked.name().isEmpty() || cloth.cloth().orElseThrow().strip().equalsIgnoreCase(asked.name().get()));
        assertEquals(cut.asAsked(), cut.warp() == asked.warp());
        assertTrue(cut.asAsked() || turning);
        // The warp of the cloth runs under the design as the cut says: upright on cloth of its own warp, on its side on the other.
        assertEquals(cut.turned(), cut.warp() != cloth.warp());
        ChartSize chart = cut.piece().piece().stitches();
        PieceSize size = PieceSize.of(chart, asked.with(cut.warp()), cut.piece().piece().margins(), stepMm);
        assertEquals(size, cut.size());
        assertEquals(cut.turned() ? size.down().cutMm() : size.across().cutMm(), cut.widthMm());
        assertEquals(cut.turned() ? size.across().cutMm() : size.down().cutMm(), cut.heightMm());
    }
}
