package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;

/** Blocks side by side: words on one baseline, all else centred on their capitals, unless they say otherwise. */
record Row(Stance stance, List<Block> blocks, double gapMm) implements Block {

    @Override
    public double naturalMm(Setter setter) {
        double sum = gapMm * Math.max(0, blocks.size() - 1);
        for (int i = 0; i < blocks.size(); i++) {
            sum += contentMm(i, setter);
        }
        return sum;
    }

    /** How wide a block of it is of itself; 0 where it is not there. */
    double contentMm(int index, Setter setter) {
        Block block = blocks.get(index);
        ColumnWidth width = block.stance().width();
        return !block.isThere(setter) ? 0 : width.kind() == ColumnWidth.Kind.MILLIMETRES ? width.number() : block.naturalMm(setter);
    }

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        List<ColumnWidth> widths = new ArrayList<>(blocks.size());
        double[] contentsMm = new double[blocks.size()];
        for (int i = 0; i < contentsMm.length; i++) {
            ColumnWidth width = blocks.get(i).stance().width();
            widths.add(width);
            contentsMm[i] = width.kind() == ColumnWidth.Kind.CONTENT ? contentMm(i, setter) : 0;
        }
        ColumnWidth.Shared shared = ColumnWidth.share(widths, contentsMm, widthMm, gapMm);
        Laid laid = lay(shared.widthsMm(), gapMm, roomMm, setter);
        return shared.whole() ? laid : laid.notWhole();
    }

    /** In columns of given widths; blocks that are not there leave theirs blank. */
    Laid lay(double[] widthsMm, double betweenMm, double roomMm, Setter setter) {
        Laid[] laid = new Laid[blocks.size()];
        double highestMm = 0;
        double capMm = 0;
        boolean worded = false;
        for (int i = 0; i < laid.length; i++) {
            Block block = blocks.get(i);
            if (!block.takesRest() && block.isThere(setter)) {
                laid[i] = block.lay(widthsMm[i], roomMm, setter);
                highestMm = Math.max(highestMm, laid[i].heightMm());
                if (!worded && laid[i].hasWords()) {
                    worded = true;
                    capMm = laid[i].capMm();
                }
            }
        }
        double lineMm = 0;
        for (int i = 0; i < laid.length; i++) {
            Stance stance = blocks.get(i).stance();
            if (laid[i] == null && blocks.get(i).isThere(setter)) {
                laid[i] = blocks.get(i).lay(widthsMm[i], roomMm < Double.POSITIVE_INFINITY ? roomMm : highestMm, setter);
            }
            if (laid[i] != null && stance.align() == null) {
                lineMm = Math.max(lineMm, stance.beforeMm() + anchorMm(laid[i], capMm));
            }
        }
        Laid row = place(laid, widthsMm, betweenMm, lineMm, capMm);
        return row.heightMm() > roomMm + ColumnWidth.SLACK_MM ? row.notWhole() : row;
    }

    /** From the top of a block to the baseline of the row. */
    private static double anchorMm(Laid laid, double capMm) {
        return laid.hasWords() ? laid.baselineMm() : (laid.heightMm() + capMm) / 2;
    }

    private Laid place(Laid[] laid, double[] widthsMm, double betweenMm, double lineMm, double capMm) {
        double heightMm = 0;
        for (int i = 0; i < laid.length; i++) {
            if (laid[i] != null) {
                Stance stance = blocks.get(i).stance();
                double topMm = stance.align() == null ? lineMm - anchorMm(laid[i], capMm) : stance.beforeMm();
                heightMm = Math.max(heightMm, topMm + laid[i].heightMm() + stance.afterMm());
            }
        }
        Laid.Group group = new Laid.Group(laid.length);
        double xMm = 0;
        for (int i = 0; i < laid.length; i++) {
            if (laid[i] != null) {
                Stance stance = blocks.get(i).stance();
                double spareMm = heightMm - laid[i].heightMm() - stance.beforeMm() - stance.afterMm();
                double topMm = stance.align() == null ? lineMm - anchorMm(laid[i], capMm) : stance.beforeMm() + spareMm * stance.align()
                        .before;
                group.put(laid[i], xMm, topMm);
            }
            xMm += widthsMm[i] + betweenMm;
        }
        group.pad(heightMm - group.heightMm());
        return group.laid();
    }
}
