package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * One direction of a wall that is printed in tiles, and where in it joins do the least harm.
 *
 * @param lengthMm of the wall
 * @param fromMm where what is drawn begins; before it the wall is blank and need not be printed
 * @param toMm where it ends
 * @param parts what a join should not run through
 */
record WallAxis(double lengthMm, double fromMm, double toMm, List<Part> parts) {

    /** Between joins that are tried; two of them lie in any gap between cards. */
    private static final double STEP_MM = 0.5;
    /** A strip narrower than that is not worth its paper, nor the taping; the head of an A1 wall is wider. */
    private static final double LEAST_MM = 30;
    /** So small that they never outweigh a part, and the first the second: joins in the middle of gaps, tiles of one length. */
    private static final double OFF_MIDDLE = 0.05;
    private static final double UNEVEN = 0.01;

    /** Copies the list; refuses what lies outside the wall. */
    WallAxis {
        parts = List.copyOf(parts);
        if (!(0 <= fromMm && fromMm < toMm && toMm <= lengthMm)) {
            throw new IllegalArgumentException("drawn from " + fromMm + " to " + toMm + " of " + lengthMm + " mm");
        }
    }

    /**
     * Something a join may run through.
     *
     * @param fromMm where it begins, with what is to be kept clear of joins
     * @param toMm where it ends
     * @param harm what cutting it costs, in tiles for each tile along the join; above 0
     */
    record Part(double fromMm, double toMm, double harm) { }

    /**
     * How much of what is drawn a tile can show, by its place in its row or column.
     *
     * @param firstMm up to its join
     * @param middleMm from join to join
     * @param lastMm from its join on
     * @param onlyMm without any join
     */
    record Room(double firstMm, double middleMm, double lastMm, double onlyMm) {

        /** Refuses rooms in which no joins can be set. */
        Room {
            if (!(middleMm >= 10 * STEP_MM && firstMm >= middleMm && lastMm >= middleMm && onlyMm >= middleMm)) {
                throw new IllegalArgumentException("no room for tiles: " + firstMm + ", " + middleMm + ", " + lastMm + ", " + onlyMm);
            }
        }

        private boolean between(double tileMm, double mostMm) {
            return tileMm >= Math.min(LEAST_MM, middleMm / 3) && tileMm <= mostMm;
        }
    }

    /**
     * Joins in their order.
     *
     * @param atMm where they are
     * @param harm what they do, all together, a little more where they are off the middle of a gap
     */
    record Joins(List<Double> atMm, double harm) {

        /** Copies the list. */
        Joins {
            atMm = List.copyOf(atMm);
        }

        int tiles() {
            return atMm.size() + 1;
        }
    }

    /** The best joins for the fewest tiles, and for one more. */
    List<Joins> choices(Room room) {
        int fewest = fewest(room);
        List<Joins> choices = new ArrayList<>();
        // Joins stand on steps, so that the very fewest may just miss.
        for (int tiles = fewest; tiles <= fewest + 1 || choices.isEmpty(); tiles++) {
            best(room, tiles).ifPresent(choices::add);
        }
        return choices;
    }

    private int fewest(Room room) {
        double drawnMm = toMm - fromMm;
        return drawnMm <= room.onlyMm() ? 1 : 2 + (int) Math.ceil(Math.max(0,
                drawnMm - room.firstMm() - room.lastMm()) / room.middleMm() - 1e-9);
    }

    /** By dynamic programming over the places: the least harm with which so many joins end at each. */
    private Optional<Joins> best(Room room, int tiles) {
        if (tiles == 1) {
            return Optional.of(new Joins(List.of(), 0));
        }
        double[] places = places();
        double[] edges = edges();
        double[] harm = Arrays.stream(places).map(at -> harm(at, edges)).toArray();
        double[] least = new double[places.length];
        for (int at = 0; at < places.length; at++) {
            least[at] = room.between(places[at] - fromMm, room.firstMm()) ? harm[at] + uneven(places[at] - fromMm)
                    : Double.POSITIVE_INFINITY;
        }
        int[][] before = new int[tiles][places.length];
        for (int join = 2; join < tiles; join++) {
            double[] next = new double[places.length];
            Arrays.fill(next, Double.POSITIVE_INFINITY);
            for (int at = 0; at < places.length; at++) {
                for (int from = at - 1; from >= 0 && places[at] - places[from] <= room.middleMm(); from--) {
                    double all = least[from] + harm[at] + uneven(places[at] - places[from]);
                    if (all < next[at] && room.between(places[at] - places[from], room.middleMm())) {
                        next[at] = all;
                        before[join][at] = from;
                    }
                }
            }
            least = next;
        }
        int last = -1;
        double all = Double.POSITIVE_INFINITY;
        for (int at = places.length - 1; at >= 0 && toMm - places[at] <= room.lastMm(); at--) {
            double here = least[at] + uneven(toMm - places[at]);
            if (here < all && room.between(toMm - places[at], room.lastMm())) {
                all = here;
                last = at;
            }
        }
        if (last < 0) {
            return Optional.empty();
        }
        Double[] joins = new Double[tiles - 1];
        for (int join = tiles - 1; join > 0; join--) {
            joins[join - 1] = places[last];
            last = before[join][last];
        }
        return Optional.of(new Joins(List.of(joins), all));
    }

    private double uneven(double tileMm) {
        return UNEVEN * tileMm * tileMm / (lengthMm * lengthMm);
    }

    private double[] places() {
        TreeSet<Double> places = new TreeSet<>();
        for (double at = fromMm + STEP_MM; at < toMm; at += STEP_MM) {
            places.add(at);
        }
        double[] edges = edges();
        for (int i = 1; i < edges.length; i++) {
            places.add((edges[i - 1] + edges[i]) / 2);
        }
        return places.stream().filter(at -> at > fromMm && at < toMm).mapToDouble(at -> at).toArray();
    }

    /** Where parts begin and end; between two of these a join does the same harm everywhere. */
    private double[] edges() {
        TreeSet<Double> edges = new TreeSet<>(List.of(fromMm, toMm));
        parts.forEach(part -> edges.addAll(List.of(part.fromMm(), part.toMm())));
        return edges.stream().mapToDouble(edge -> edge).toArray();
    }

    private double harm(double atMm, double[] edges) {
        double most = parts.stream().filter(part -> part.fromMm() < atMm && atMm < part.toMm()).mapToDouble(Part::harm).max().orElse(0);
        int above = 1;
        while (above < edges.length - 1 && edges[above] < atMm) {
            above++;
        }
        double halfMm = (edges[above] - edges[above - 1]) / 2;
        return most + OFF_MIDDLE * Math.abs(atMm - (edges[above] - halfMm)) / halfMm;
    }
}
