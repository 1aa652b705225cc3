package kitleaf.basket.thread;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A thread a chart calls for.
 *
 * @param code what stands on the skein or in the chart's key, as the stitcher writes it
 * @param name its colour name
 * @param colour what it looks like on screen and paper
 * @param symbol its sign in the chart
 * @param skein the put-up it comes in, a name from the basket's {@code skeins}
 * @param strands plies in the needle
 * @param stitches how many of each kind; empty when only a share is known
 * @param share its part of the piece's coverage, 0 to 1
 * @param used what it was seen to eat
 * @param over threads its stitches span where that differs from the piece
 * @param lot the dye lot on hand, or the one to have
 * @param mixLots whether other lots may serve too, where the lot matters
 */
public record CalledThread(String code, Optional<String> name, Optional<Colour> colour, Optional<String> symbol,
                           String skein, Strands strands, List<StitchCount> stitches, OptionalDouble share,
                           Optional<Used> used, OptionalInt over, Optional<String> lot, boolean mixLots) {

    /** Copies the list. */
    public CalledThread {
        Objects.requireNonNull(code);
        Objects.requireNonNull(skein);
        Objects.requireNonNull(strands);
        stitches = List.copyOf(stitches);
    }

    /** The kinds it is worked in, in the order they were written; crosses where it has a share alone. */
    public List<StitchKind> kinds() {
        return stitches.isEmpty() ? List.of(StitchKind.CROSS)
                : stitches.stream().filter(one -> one.count() > 0).map(StitchCount::kind).toList();
    }
}
