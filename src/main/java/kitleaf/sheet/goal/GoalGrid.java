package kitleaf.sheet.goal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kitleaf.basket.CardGrid;
import kitleaf.basket.Paper;

/**
 * How goal cards lie on a wall: so many of the places there are as there are cards.
 *
 * @param wall its paper
 * @param columns side by side
 * @param rows one below the other
 * @param widthMm of a card
 * @param heightMm of a card
 * @param scale how much larger than on an ordinary card all on it may be, see {@link CardRoom#scale}
 */
record GoalGrid(Paper wall, int columns, int rows, double widthMm, double heightMm, double scale) {

    /**
     * Walls to choose from, those before preferred, and what is kept free on each: at its sides, above and below all cards and between two.
     */
    record Walls(List<Paper> papers, double sidesMm, double aboveMm, double belowMm, double gapMm) { }

    /** The grid she asked for, on the wall on which its cards are largest; empty where words have no room on such cards. */
    static Optional<GoalGrid> asked(CardGrid cards, Walls walls, CardRoom room) {
        return walls.papers().stream().map(wall -> of(wall, cards.columns(), cards.rows(), walls, room)).filter(it -> it.scale() > 0)
                .max(Comparator.comparingDouble(room::worth));
    }

    /** On as few walls as can be, the grid with the largest cards and few places left blank. */
    static GoalGrid best(Walls walls, CardRoom room) {
        int all = room.entries().size();
        for (int pages = 1;; pages++) {
            int each = (all + pages - 1) / pages;
            Optional<GoalGrid> best = walls.papers().stream().flatMap(wall -> IntStream.rangeClosed(1, each)
                    .mapToObj(columns -> of(wall, columns, (each + columns - 1) / columns, walls, room)))
                    .filter(it -> it.scale() > 0 || each == 1)
                    .max(Comparator.comparingDouble(it -> room.worth(it) * Math.sqrt((double) each / (it.columns() * it.rows()))));
            if (best.isPresent()) {
                return best.get();
            }
        }
    }

    private static GoalGrid of(Paper wall, int columns, int rows, Walls walls, CardRoom room) {
        double widthMm = (wall.widthMm() - walls.sidesMm() + walls.gapMm()) / columns - walls.gapMm();
        double heightMm = (wall.heightMm() - walls.aboveMm() - walls.belowMm() + walls.gapMm()) / rows - walls.gapMm();
        int all = room.entries().size();
        return new GoalGrid(wall, Math.min(columns, all), Math.min(rows, (all + columns - 1) / columns), widthMm, heightMm,
                room.scale(widthMm, heightMm));
    }
}
