package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.Flaw;

/**
 * A cloth to cut from, laid with its warp down, whichever way she wrote it.
 *
 * @param place its place in the basket, among the cloths on hand or the shop cuts, from 0
 * @param widthMm its side across the warp
 * @param heightMm its side along the warp
 * @param turning whether pieces may be turned on it
 * @param laidOver whether its width and height changed places to bring the warp down
 * @param flaws its flaws, laid over with it
 * @param onHand the cloth on hand it is, if it is one
 * @param cut the shop cut it is, if it is one
 */
record Stock(int place, double widthMm, double heightMm, boolean turning, boolean laidOver, List<Flaw> flaws,
             Optional<ClothOnHand> onHand, Optional<ClothCut> cut) {

    /**
     * How far beyond an edge a piece may seem to reach: a millionth of a millimetre, for the last bits of doubles.
     */
    static final double SLACK_MM = 1e-6;

    /** The least that is cut off with a flaw. */
    private static final double STRIP_MM = 1;

    Stock {
        flaws = List.copyOf(flaws);
    }

    static Stock of(int place, ClothOnHand cloth) {
        boolean over = cloth.warp() == Cloth.WarpRun.ACROSS;
        List<Flaw> flaws = over ? cloth.flaws().stream().map(Stock::laidOver).toList() : cloth.flaws();
        return new Stock(place, over ? cloth.heightMm() : cloth.widthMm(), over ? cloth.widthMm() : cloth.heightMm(), cloth.turning(), over,
                flaws, Optional.of(cloth), Optional.empty());
    }

    static Stock of(int place, ClothCut cut) {
        boolean over = cut.warp() == Cloth.WarpRun.ACROSS;
        return new Stock(place, over ? cut.heightMm() : cut.widthMm(), over ? cut.widthMm() : cut.heightMm(), cut.turning(), over,
                List.of(), Optional.empty(), Optional.of(cut));
    }

    private static Flaw laidOver(Flaw flaw) {
        return new Flaw(flaw.run() == Flaw.Run.DOWN ? Flaw.Run.ACROSS : Flaw.Run.DOWN, flaw.fromMm(), flaw.wideMm());
    }

    double areaMm2() {
        return widthMm * heightMm;
    }

    /**
     * A part of the cloth between flaws. A piece lies on no flaw, and a flaw runs from edge to edge: so cutting along the
     * flaws first shuts out no plan.
     *
     * @param xMm from the cloth's left edge
     * @param yMm from its top edge
     * @param widthMm above 0
     * @param heightMm above 0
     */
    record Panel(double xMm, double yMm, double widthMm, double heightMm) {
    }

    /** Its panels, row by row; the whole cloth if it has no flaw. */
    List<Panel> panels(Kerf kerf) {
        List<double[]> columns = between(Flaw.Run.DOWN, widthMm, kerf.besideMm());
        List<double[]> rows = between(Flaw.Run.ACROSS, heightMm, kerf.belowMm());
        List<Panel> panels = new ArrayList<>();
        for (double[] row : rows) {
            for (double[] column : columns) {
                panels.add(new Panel(column[0], row[0], column[1] - column[0], row[1] - row[0]));
            }
        }
        return panels;
    }

    /**
     * The stretches between flaws that run one way. A flaw no wider than a kerf goes with one cut. A wider one is cut out
     * by a cut on either side, or by one if it lies at the cloth's edge, and what falls off between has to be something.
     */
    private List<double[]> between(Flaw.Run run, double lengthMm, double kerfMm) {
        List<double[]> stretches = new ArrayList<>();
        double start = 0;
        for (Flaw flaw : flaws.stream().filter(f -> f.run() == run).sorted(Comparator.comparingDouble(Flaw::fromMm)).toList()) {
            boolean atEdge = flaw.fromMm() - start <= SLACK_MM;
            if (!atEdge) {
                stretches.add(new double[] {start, flaw.fromMm()});
            }
            double cutMm = atEdge ? kerfMm + STRIP_MM : flaw.wideMm() <= kerfMm ? kerfMm : 2 * kerfMm + STRIP_MM;
            start = Math.max(start, Math.max(flaw.toMm(), flaw.fromMm() + cutMm));
        }
        if (lengthMm - start > SLACK_MM) {
            stretches.add(new double[] {start, lengthMm});
        }
        return stretches;
    }
}
