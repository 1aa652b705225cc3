package kitleaf.basket.reader.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;

/** Gathers the shares of one piece's threads, its parts' among them, and tells when they are more than the whole. */
public final class Shares {

    /** Each may have been rounded up to a whole percentage, by half of one at most. */
    private static final double ROUNDED = 0.005;
    /** What adding doubles may bring. */
    private static final double ADDING = 1e-9;

    private record Share(Place place, double fraction, int strands) {
    }

    private final List<Share> shares = new ArrayList<>();

    /** One more share, of a thread with so many strands in the needle. */
    void add(Place place, double fraction, int strands) {
        shares.add(new Share(place, fraction, strands));
    }

    /** Those of other threads of the piece. */
    public void addAll(Shares others) {
        shares.addAll(others.shares);
    }

    /**
     * Tells at the share with which it becomes too much. As with crosses, threads of fewer strands than others may be
     * halves of a blend, whose share stands under both, so each counts half.
     */
    public void check(Problems problems) {
        int most = shares.stream().mapToInt(Share::strands).max().orElse(0);
        double all = shares.stream().mapToDouble(Share::fraction).sum();
        double sum = 0;
        for (Share share : shares) {
            sum += share.strands() < most ? share.fraction() / 2 : share.fraction();
            if (sum > 1 + ROUNDED * shares.size() + ADDING) {
                problems.add(share.place(), Fault.of("share.more", BigDecimal.valueOf(100 * all).setScale(1, RoundingMode.HALF_UP)
                        .stripTrailingZeros().toPlainString() + "%"));
                return;
            }
        }
    }
}
