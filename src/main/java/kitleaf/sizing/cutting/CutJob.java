package kitleaf.sizing.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One rectangle and the types to be cut from it, in whole numbers, so that sums of lengths are exact and the search
 * never asks whether two doubles are equal.
 *
 * <p>Lengths are counted in billionths of a millimetre. Pieces are rounded to the nearest, and the rectangle gets
 * {@link #SLACK_MM} on top, so that three pieces of a third of its width do fit. What cannot be cut or is
 * worth nothing is left out here; the rest are called kinds, each way one may lie a lay.
 */
final class CutJob {

    /** Lengths that differ by this are equal: far below what cloth can be cut to, far above what doubles lose in sums. */
    static final double SLACK_MM = 1e-6;

    private static final double UNITS_PER_MM = 1e9;

    /** A kilometre: products of lengths in units and small counts stay well inside a long. */
    private static final double LONGEST_MM = 1e6;

    /** Values that differ by less than this share of all there is to win are equal, unless all are whole. */
    private static final double VALUE_EASE = 1e-9;

    /** Up to this sum whole values are told apart: then a thousandth of one is far above what doubles lose in sums. */
    private static final double LARGEST_WHOLE = 1e9;

    /** Sums and bounds are exact to this share of {@link #valueStep}. */
    static final double LOST_IN_SUMS = 1e-3;

    private final List<CutType> types;
    private final List<Integer> typeOf = new ArrayList<>();
    private final List<Integer> kindOf = new ArrayList<>();
    private final List<Integer> shapeOf = new ArrayList<>();

    /** The rectangle. */
    final long width;
    final long height;

    /** For each kind: how many at most, what each is worth, the least area it takes. */
    final int[] most;
    final double[] value;
    final double[] area;

    /** For each lay: the kind, its width and height. */
    final int[] kind;
    final long[] wide;
    final long[] high;

    /** Two different values differ by this at least; never 0, so that equal sums in another order are equal. */
    final double valueStep;
    private final boolean whole;

    CutJob(double widthMm, double heightMm, List<CutType> types) {
        if (!(widthMm > 0 && heightMm > 0 && widthMm <= LONGEST_MM && heightMm <= LONGEST_MM)) {
            throw new IllegalArgumentException("no such stock: " + widthMm + " x " + heightMm);
        }
        this.types = List.copyOf(types);
        width = (long) Math.floor((widthMm + SLACK_MM) * UNITS_PER_MM);
        height = (long) Math.floor((heightMm + SLACK_MM) * UNITS_PER_MM);
        List<long[]> lays = new ArrayList<>();
        for (int type = 0; type < this.types.size(); type++) {
            if (this.types.get(type).most() > 0 && this.types.get(type).value() > 0) {
                addKind(type, lays);
            }
        }
        kind = kindOf.stream().mapToInt(Integer::intValue).toArray();
        wide = lays.stream().mapToLong(lay -> lay[0]).toArray();
        high = lays.stream().mapToLong(lay -> lay[1]).toArray();
        value = typeOf.stream().mapToDouble(type -> this.types.get(type).value()).toArray();
        area = new double[value.length];
        Arrays.fill(area, Double.POSITIVE_INFINITY);
        for (int lay = 0; lay < kind.length; lay++) {
            area[kind[lay]] = Math.min(area[kind[lay]], (double) wide[lay] * high[lay]);
        }
        most = new int[value.length];
        double all = 0;
        for (int i = 0; i < most.length; i++) {
            most[i] = (int) Math.min(this.types.get(typeOf.get(i)).most(), Math.ceil((double) width * height / area[i]));
            all += most[i] * value[i];
        }
        double step = wholeStep(all);
        whole = step > 0;
        valueStep = whole ? step : all * VALUE_EASE;
    }

    /** The most that a sum of values below a bound can be. */
    double within(double bound) {
        return whole ? Math.floor(bound / valueStep + LOST_IN_SUMS) * valueStep : bound * (1 + VALUE_EASE * LOST_IN_SUMS);
    }

    private void addKind(int type, List<long[]> lays) {
        List<Shape> shapes = types.get(type).shapes();
        int known = lays.size();
        for (int shape = 0; shape < shapes.size(); shape++) {
            long across = Math.max(1, Math.round(Math.min(shapes.get(shape).widthMm(), 2 * LONGEST_MM) * UNITS_PER_MM));
            long down = Math.max(1, Math.round(Math.min(shapes.get(shape).heightMm(), 2 * LONGEST_MM) * UNITS_PER_MM));
            boolean twice = lays.stream().skip(known).anyMatch(lay -> lay[0] == across && lay[1] == down);
            if (across <= width && down <= height && !twice) {
                lays.add(new long[] {across, down});
                kindOf.add(typeOf.size());
                shapeOf.add(shape);
            }
        }
        if (lays.size() > known) {
            typeOf.add(type);
        }
    }

    /** The greatest whole number that all values are multiples of; 0 where they are not whole. */
    private double wholeStep(double all) {
        if (all > LARGEST_WHOLE || Arrays.stream(value).anyMatch(it -> it != Math.rint(it))) {
            return 0;
        }
        return Arrays.stream(value).mapToLong(it -> (long) it).reduce(0, CutJob::divisor);
    }

    /** The greatest common divisor; 0 and any number have that number. */
    static long divisor(long one, long other) {
        long divisor = one;
        for (long rest = other; rest != 0;) {
            long last = divisor % rest;
            divisor = rest;
            rest = last;
        }
        return divisor;
    }

    int kinds() {
        return most.length;
    }

    int lays() {
        return kind.length;
    }

    /** The piece of a lay as the caller knows it. */
    Block single(int lay) {
        int type = typeOf.get(kind[lay]);
        Shape shape = types.get(type).shapes().get(shapeOf.get(lay));
        return new Block.Single(type, shapeOf.get(lay), shape.widthMm(), shape.heightMm());
    }

    /** What a block is worth, added up in the order of the types, so that equal sets have equal values. */
    double valueOf(Block block) {
        int[] counts = new int[types.size()];
        block.count(counts);
        double sum = 0;
        for (int type = 0; type < counts.length; type++) {
            sum += counts[type] * types.get(type).value();
        }
        return sum;
    }
}
