package kitleaf.press;

/**
 * A block laid out in its room, to be drawn at any place.
 *
 * @param heightMm how high it is
 * @param baselineMm of its first line of words, from its top; NaN where it has none
 * @param capMm how high the capitals of that line are; what stands beside it is centred on them
 * @param whole whether all of it is there as it should be: nothing cut, no word parted, nothing beyond its room
 * @param drawing draws it
 */
record Laid(double heightMm, double baselineMm, double capMm, boolean whole, Drawing drawing) {

    static final Laid NOTHING = blank(0);

    /** Draws something whose top left corner lies at a place. */
    interface Drawing {
        void at(double xMm, double yMm, PageArtist artist) throws MarkupException;
    }

    /** Room with nothing in it. */
    static Laid blank(double heightMm) {
        return drawn(heightMm, (x, y, artist) -> { });
    }

    /** Something without words of its own. */
    static Laid drawn(double heightMm, Drawing drawing) {
        return new Laid(heightMm, Double.NaN, 0, true, drawing);
    }

    Laid notWhole() {
        return whole ? new Laid(heightMm, baselineMm, capMm, false, drawing) : this;
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
            return new Laid(heightMm, baselineMm, capMm, whole, this);
        }

        @Override
        public void at(double x, double y, PageArtist artist) throws MarkupException {
            for (int i = 0; i < size; i++) {
                parts[i].drawing.at(x + xMm[i], y + yMm[i], artist);
            }
        }
    }
}
