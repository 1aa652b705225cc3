package kitleaf.press.flow;

import kitleaf.press.drawing.PageArtist;
import kitleaf.press.markup.MarkupException;

/**
 * A block laid out in its room, to be drawn at any place.
 *
 * @param heightMm how high it is
 * @param baselineMm of its first line of words, from its top; NaN where it has none
 * @param capMm how high the capitals of that line are; what stands beside it is centred on them
 * @param whole whether all of it is there as it should be: nothing cut, no word parted, nothing beyond its room
 * @param lost what it says less than it could: 0 for nothing, more for briefer words and for what is cut
 * @param drawing draws it
 */
public record Laid(double heightMm, double baselineMm, double capMm, boolean whole, int lost, Drawing drawing) {

    static final Laid NOTHING = blank(0);

    /** Draws something whose top left corner lies at a place. */
    public interface Drawing {
        void at(double xMm, double yMm, PageArtist artist) throws MarkupException;
    }

    /** Room with nothing in it. */
    static Laid blank(double heightMm) {
        return drawn(heightMm, (x, y, artist) -> { });
    }

    /** Something without words of its own. */
    static Laid drawn(double heightMm, Drawing drawing) {
        return new Laid(heightMm, Double.NaN, 0, true, 0, drawing);
    }

    Laid notWhole() {
        return whole ? new Laid(heightMm, baselineMm, capMm, false, lost, drawing) : this;
    }

    /** The same, which says so much less. */
    Laid losing(int more) {
        return more == 0 ? this : new Laid(heightMm, baselineMm, capMm, whole, lost + more, drawing);
    }

    /** The same, so far to the right. */
    Laid at(double rightMm) {
        Drawing here = drawing;
        return new Laid(heightMm, baselineMm, capMm, whole, lost, (x, y, artist) -> here.at(x + rightMm, y, artist));
    }

    boolean hasWords() {
        return !Double.isNaN(baselineMm);
    }

    /** Blocks put together; the first line of words among them, in the order they are put, is theirs. */
    static final class Group implements Drawing {

        private final Laid[] parts;
        private final double[] xMm;
        private final double[] yMm;
        private int size;
        private double heightMm;
        private double baselineMm = Double.NaN;
        private double capMm;
        private boolean whole = true;
        private int lost;

        /** Room for so many. */
        Group(int most) {
            parts = new Laid[most];
            xMm = new double[most];
            yMm = new double[most];
        }

        void put(Laid laid, double x, double y) {
            parts[size] = laid;
            xMm[size] = x;
            yMm[size++] = y;
            whole &= laid.whole;
            lost += laid.lost;
            heightMm = Math.max(heightMm, y + laid.heightMm);
            if (!hasWords() && laid.hasWords()) {
                baselineMm = y + laid.baselineMm;
                capMm = laid.capMm;
            }
        }

        private boolean hasWords() {
            return !Double.isNaN(baselineMm);
        }

        /** Room below the last. */
        void pad(double afterMm) {
            heightMm += afterMm;
        }

        void notWhole() {
            whole = false;
        }

        double heightMm() {
            return heightMm;
        }

        Laid laid() {
            return new Laid(heightMm, baselineMm, capMm, whole, lost, this);
        }

        @Override
        public void at(double x, double y, PageArtist artist) throws MarkupException {
            for (int i = 0; i < size; i++) {
                parts[i].drawing.at(x + xMm[i], y + yMm[i], artist);
            }
        }
    }
}
