package kitleaf.sizing.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitleaf.sizing.plan.search.Patience;

/**
 * One quick way to cut a rectangle: it is filled from its corner, always with the piece that scores best of those that fit, and each
 * piece parts what is left of its rectangle in two by a cut from edge to edge. What a piece scores is how large it is and how nearly
 * it fills a side of the rectangle, weighed by chance: of many guesses one is good.
 */
final class Guess {

    private final List<List<Shape>> shapes;
    private final int[] left;
    private final double[] scores;
    private final double snug;
    private final boolean smallFirst;
    private final Patience patience;
    private final List<Room> rooms = new ArrayList<>();

    /** A rectangle to be filled, and with what: a piece in its corner, and what lies near it and far from it, beyond the first cut. */
    private static final class Room {
        private final double width;
        private final double height;
        private Block.Single corner;
        private boolean down;
        private Room near;
        private Room far;
        private Block block;

        Room(double width, double height) {
            this.width = width;
            this.height = height;
        }

        void join() {
            if (corner != null) {
                EdgeCut.Run run = down ? EdgeCut.Run.DOWN : EdgeCut.Run.ACROSS;
                Block row = near.block == null ? corner : Block.Pair.of(run.other(), corner, near.block);
                block = far.block == null ? row : Block.Pair.of(run, row, far.block);
            }
        }
    }

    private Guess(List<List<Shape>> shapes, int[] left, Random random, Patience patience) {
        this.shapes = shapes;
        this.left = left;
        this.patience = patience;
        double large = random.nextDouble() * 2;
        double chance = random.nextDouble() * 0.5;
        scores = new double[left.length];
        for (int kin = 0; kin < left.length; kin++) {
            scores[kin] = Math.pow(shapes.get(kin).get(0).areaMm2(), large) * Math.exp(chance * random.nextGaussian());
        }
        snug = random.nextDouble() * 4;
        smallFirst = random.nextBoolean();
    }

    /**
     * Fills a rectangle.
     *
     * @param widthMm its width, the kerf added
     * @param heightMm its height, the kerf added
     * @param shapes the ways each kin may lie
     * @param most how many of each there are to cut
     * @param patience is told of every piece looked at, and not asked
     * @return empty if none of them fits
     */
    static Optional<Block> of(double widthMm, double heightMm, List<List<Shape>> shapes, int[] most, Random random, Patience patience) {
        return new Guess(shapes, most.clone(), random, patience).fill(new Room(widthMm + Stock.SLACK_MM, heightMm + Stock.SLACK_MM));
    }

    private Optional<Block> fill(Room whole) {
        // A strip of a thousand pieces is a thousand rooms deep: too many for calls within calls.
        Deque<Room> open = new ArrayDeque<>(List.of(whole));
        rooms.add(whole);
        while (!open.isEmpty()) {
            Room room = open.pop();
            room.corner = best(room);
            if (room.corner != null) {
                left[room.corner.index()]--;
                part(room);
                open.push(smallFirst ? room.far : room.near);
                open.push(smallFirst ? room.near : room.far);
            }
        }
        for (int at = rooms.size() - 1; at >= 0; at--) {
            rooms.get(at).join();
        }
        return Optional.ofNullable(whole.block);
    }

    /** The first cut is the one that leaves the larger rectangle beyond it. */
    private void part(Room room) {
        double width = room.width - room.corner.widthMm();
        double height = room.height - room.corner.heightMm();
        room.down = width * room.height > height * room.width;
        room.near = room.down ? new Room(room.corner.widthMm() + Stock.SLACK_MM, height)
                : new Room(width, room.corner.heightMm() + Stock.SLACK_MM);
        room.far = room.down ? new Room(width, room.height) : new Room(room.width, height);
        rooms.add(room.near);
        rooms.add(room.far);
    }

    private Block.Single best(Room room) {
        patience.steps(left.length);
        Block.Single best = null;
        double bestScore = 0;
        for (int kin = 0; kin < left.length; kin++) {
            for (int way = 0; left[kin] > 0 && way < shapes.get(kin).size(); way++) {
                Shape shape = shapes.get(kin).get(way);
                double filled = Math.max(shape.widthMm() / room.width, shape.heightMm() / room.height);
                if (filled <= 1) {
                    double score = scores[kin] * (1 + snug * filled * filled * filled * filled);
                    if (score > bestScore) {
                        best = new Block.Single(kin, way, shape.widthMm(), shape.heightMm());
                        bestScore = score;
                    }
                }
            }
        }
        return best;
    }
}
