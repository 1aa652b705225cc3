package kitleaf.sizing.thread;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;

/**
 * One thread in one put-up: what all unfinished pieces still need of it, what the stash gives and what to buy.
 *
 * @param code what stands on the skein
 * @param putUp how it is sold
 * @param thread as it is first called for with a name, else as it is first called for
 * @param lots the dye lots that pieces name for it, sorted
 * @param shares piece by piece, in the order the stash was shared
 * @param unknown IDs of pieces that call for it without telling how much, sorted
 * @param each what one skein costs, if known
 */
public record BuyLine(String code, PutUp putUp, CalledThread thread, List<String> lots, List<StashShare> shares, List<String> unknown,
        Optional<Price> each) {

    /** Copies the lists. */
    public BuyLine {
        Objects.requireNonNull(code);
        Objects.requireNonNull(putUp);
        Objects.requireNonNull(thread);
        lots = List.copyOf(lots);
        shares = List.copyOf(shares);
        unknown = List.copyOf(unknown);
        Objects.requireNonNull(each);
    }

    /** What the pieces whose need is known still need, in skeins. */
    public Estimate needSkeins() {
        return shares.stream().map(StashShare::needSkeins).reduce(Estimate.NONE, Estimate::plus);
    }

    /** What comes from the stash, in skeins. */
    public double drawnSkeins() {
        return shares.stream().mapToDouble(StashShare::drawnSkeins).sum();
    }

    /** What the stash does not give. */
    public Missing missing() {
        return shares.stream().map(StashShare::missing).reduce(Missing.NONE, Missing::plus);
    }

    /** The same in skeins. */
    public double missingSkeins() {
        return missing().skeins();
    }

    /**
     * Whole skeins to buy, all in one lot unless pieces name several: what is missing for all pieces together, rounded up once, or
     * once for each lot that has to be asked for.
     */
    public long buy() {
        return missing().buy();
    }

    /** Whether {@link #buy()} hangs on a tenth of a skein. */
    public Edge edge() {
        return missing().edge();
    }

    /** What they cost, if the price is known. */
    public Optional<Price> cost() {
        return each.map(price -> new Price(price.amount().multiply(BigDecimal.valueOf(buy())), price.currency()));
    }
}
