package kitleaf.basket.reader;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.words.NearMiss;

/**
 * The cloths on hand that pieces may name.
 *
 * @param cloths those that could be read
 * @param known whether those are all; false when some could not be read, and then no name is told to be wrong
 */
record KnownCloths(List<ClothOnHand> cloths, boolean known) {

    /** Whether she surely has none, so that no piece can mean one. */
    boolean none() {
        return known && cloths.isEmpty();
    }

    /** The name that was probably meant. */
    Optional<String> near(String written) {
        return NearMiss.of(written, cloths.stream().map(ClothOnHand::name).distinct().toList());
    }
}
