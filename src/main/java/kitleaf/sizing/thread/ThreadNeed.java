package kitleaf.sizing.thread;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import kitleaf.basket.Amount;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Used;

/** What one thread takes in a piece or in one of its parts. What cannot be known is said to be unknown, never nothing. */
public sealed interface ThreadNeed {

    /**
     * A thread whose need can be reckoned.
     *
     * @param part the part it is worked in; empty for the piece itself
     * @param thread as the chart calls for it
     * @param putUp how it is sold
     * @param cell what its stitches fill
     * @param stitches how many, 0 or more; not always whole when they come from a share
     * @param pathMm the drawn path of all its stitches, front and back; empty when {@code used} was taken instead
     * @param plyLengthMm single plies drawn from the skeins: path x allowances x strands, each kind of stitch with its own
     */
    record Known(Optional<Part> part, CalledThread thread, PutUp putUp, Cell cell, double stitches, OptionalDouble pathMm,
                 Estimate plyLengthMm) implements ThreadNeed {

        /** Refuses stitches and paths below nothing. */
        public Known {
            Objects.requireNonNull(part);
            Objects.requireNonNull(thread);
            Objects.requireNonNull(putUp);
            Objects.requireNonNull(cell);
            Objects.requireNonNull(plyLengthMm);
            if (!(stitches >= 0) || !(pathMm.orElse(0) >= 0)) {
                throw new IllegalArgumentException("no such need: " + stitches + " stitches, " + pathMm);
            }
        }

        /** The same in skeins: ply length / (skein length x plies). */
        public Estimate skeins() {
            return plyLengthMm.times(1 / (putUp.lengthMm() * putUp.plies()));
        }
    }

    /**
     * A thread whose need cannot be reckoned.
     *
     * @param part the part it is worked in; empty for the piece itself
     * @param thread as the chart calls for it
     * @param putUp how it is sold
     * @param cell what its stitches fill
     * @param why what is missing
     */
    record Unknown(Optional<Part> part, CalledThread thread, PutUp putUp, Cell cell, Why why) implements ThreadNeed {

        /** Refuses a missing component. */
        public Unknown {
            Objects.requireNonNull(part);
            Objects.requireNonNull(thread);
            Objects.requireNonNull(putUp);
            Objects.requireNonNull(cell);
            Objects.requireNonNull(why);
        }
    }

    /** What is missing for a need to be known. */
    enum Why {
        /** It has a share of a coverage that is not given. */
        NO_COVERAGE,
        /** It has neither stitches nor a share. */
        NO_STITCHES
    }

    /**
     * How far what she used once may differ from what she will use again: 10 % either way, an assumption, no source. It
     * is narrower than the allowances' spread, since her hand and her thread are already in it.
     */
    double USED_SPREAD = 0.10;

    /** The part it is worked in; empty for the piece itself. */
    Optional<Part> part();

    /** The thread as the chart calls for it. */
    CalledThread thread();

    /** How it is sold. */
    PutUp putUp();

    /** What its stitches fill. */
    Cell cell();

    /** The size of tapestry needle that suits its usual strands; see {@link Needle}. */
    default int needle() {
        return Needle.size(cell(), thread().strands().usual());
    }

    /** The size that suits one kind of its stitches. */
    default int needle(StitchKind kind) {
        return Needle.size(cell(), thread().strands().in(kind));
    }

    /** All sizes it takes, each once, in no order; one at least. */
    default IntStream needles() {
        return thread().strands().differ() ? thread().kinds().stream().mapToInt(this::needle).distinct() : IntStream.of(needle());
    }

    /**
     * What a thread of a piece takes. The cell is that of the thread's own {@code over}, else of the part's, else of the
     * cloth's. Stitches are those counted; where none are, the thread's share of the piece's coverage, taken as crosses
     * in rows. A {@code used} record replaces path, allowances and strands alike: so many skeins a stitch, whatever the
     * stitches are.
     *
     * @param part the part it is worked in; empty for the piece itself
     */
    static ThreadNeed of(Piece piece, Optional<Part> part, CalledThread thread, PutUp putUp) {
        int over = thread.over().orElse(part.map(Part::over).orElse(piece.cloth().over()));
        Cell cell = Cell.of(piece.cloth(), over);
        if (!thread.stitches().isEmpty()) {
            double stitches = thread.stitches().stream().mapToLong(StitchCount::count).sum();
            double pathMm = thread.stitches().stream().mapToDouble(one -> one.count() * ThreadPath.oneMm(one, cell)).sum();
            double plyPathMm = !thread.strands().differ() ? pathMm * thread.strands().usual() : thread.stitches().stream()
                    .mapToDouble(one -> one.count() * ThreadPath.oneMm(one, cell) * thread.strands().in(one.kind())).sum();
            return known(part, thread, putUp, cell, stitches, pathMm, plyPathMm);
        }
        if (thread.share().isEmpty()) {
            return new Unknown(part, thread, putUp, cell, Why.NO_STITCHES);
        }
        if (piece.coverage().isEmpty()) {
            return new Unknown(part, thread, putUp, cell, Why.NO_COVERAGE);
        }
        double stitches = thread.share().getAsDouble() * number(piece.coverage().get(), piece.stitches().cells());
        double pathMm = stitches * ThreadPath.crossInRowsMm(cell);
        return known(part, thread, putUp, cell, stitches, pathMm, pathMm * thread.strands().in(StitchKind.CROSS));
    }

    private static Known known(Optional<Part> part, CalledThread thread, PutUp putUp, Cell cell, double stitches, double pathMm,
                               double plyPathMm) {
        if (thread.used().isPresent()) {
            Used used = thread.used().get();
            double plyMm = used.skeins() / used.stitches() * stitches * putUp.lengthMm() * putUp.plies();
            return new Known(part, thread, putUp, cell, stitches, OptionalDouble.empty(),
                    new Estimate(plyMm * (1 - USED_SPREAD), plyMm, plyMm * (1 + USED_SPREAD)));
        }
        return new Known(part, thread, putUp, cell, stitches, OptionalDouble.of(pathMm),
                Allowances.estimateMm(plyPathMm));
    }

    private static double number(Amount amount, long cells) {
        return amount instanceof Amount.Stitches stitches ? stitches.number() : ((Amount.Share) amount).fraction() * cells;
    }
}
