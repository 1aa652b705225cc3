package kitleaf.basket;

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
 * @param strands plies in the needle, 1 to {@value #MOST_STRANDS}
 * @param stitches how many of each kind; empty when only a share is known
 * @param share its part of the piece's coverage, 0 to 1
 * @param used what it was seen to eat
 * @param over threads its stitches span where that differs from the piece
 * @param lot the dye lot on hand
 */
public record CalledThread(String code, Optional<String> name, Optional<Colour> colour, Optional<String> symbol,
                           String skein, int strands, List<StitchCount> stitches, OptionalDouble share,
                           Optional<Used> used, OptionalInt over, Optional<String> lot) {

    /** The most plies taken in one needle. */
    public static final int MOST_STRANDS = 12;

    /** Copies the list; refuses strands outside 1 to {@value #MOST_STRANDS}. */
    public CalledThread {
        Objects.requireNonNull(code);
        Objects.requireNonNull(skein);
        stitches = List.copyOf(stitches);
        if (strands < 1 || strands > MOST_STRANDS) {
            throw new IllegalArgumentException("strands must be 1 to " + MOST_STRANDS + ": " + strands);
        }
    }
}
