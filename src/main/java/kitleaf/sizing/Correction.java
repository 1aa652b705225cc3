package kitleaf.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.HowFar;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;

/**
 * What a reading put right: how far a piece was found to be, beside what its earlier readings and its log came to that day.
 *
 * @param reading what was found
 * @param stitches by how many more, or below 0 fewer, than the sum
 */
public record Correction(HowFar reading, long stitches) {

    /**
     * The corrections of a piece, oldest first; the first thing known of a piece corrects nothing.
     *
     * @param perHour her pace in stitches an hour; hours without a stitch count are worth nothing where it is empty
     */
    public static List<Correction> of(Piece piece, OptionalDouble perHour) {
        Progress all = piece.progress();
        List<Correction> corrections = new ArrayList<>();
        for (int i = 0; i < all.readings().size(); i++) {
            HowFar reading = all.readings().get(i);
            Progress until = all.asOf(reading.on());
            Progress before = new Progress(until.started(), Optional.empty(), Optional.empty(), until.done(),
                    all.readings().subList(0, i), until.log(), List.of());
            Progress found = new Progress(before.started(), before.stitched(), before.finished(), before.done(),
                    all.readings().subList(0, i + 1), until.log(), List.of());
            if (before.reading().isPresent() || !before.log().isEmpty()) {
                corrections.add(new Correction(reading, StitchTally.of(piece.with(found), perHour).done()
                        - StitchTally.of(piece.with(before), perHour).done()));
            }
        }
        return corrections;
    }
}
