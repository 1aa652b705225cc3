package kitleaf.basket.reader;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.place.Problem;

/**
 * What came of reading a basket: the basket, or every problem in it.
 *
 * @param basket present exactly when there are no problems
 * @param problems all of them, by place
 * @param misfits what makes problems of what sheets have no room for
 * @param language the one to talk of it in, if its {@code basket.yaml} names one, however broken the rest of that file
 */
public record Reading(Optional<Basket> basket, List<Problem> problems, Misfits misfits, Optional<Locale> language) {

    /** Refuses a basket with problems and no basket without any. */
    public Reading {
        Objects.requireNonNull(basket);
        Objects.requireNonNull(misfits);
        Objects.requireNonNull(language);
        problems = problems.stream().sorted(Problem.BY_PLACE).toList();
        if (basket.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading holds either a basket or problems");
        }
    }
}
