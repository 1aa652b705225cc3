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
 * @param remarks what is to be told though nothing is wrong, by place
 * @param misfits what makes problems of what sheets have no room for
 * @param language the one to talk of it in, if its {@code basket.yaml} names one, however broken the rest of that file
 */
public record Reading(Optional<Basket> basket, List<Problem> problems, List<Problem> remarks, Misfits misfits, Optional<Locale> language) {

    /** Of all that was told. */
    Reading(Optional<Basket> basket, List<Problem> told, Misfits misfits, Optional<Locale> language) {
        this(basket, told.stream().filter(problem -> !problem.remark()).toList(), told.stream().filter(Problem::remark).toList(), misfits,
                language);
    }

    /** Refuses a basket with problems and no basket without any. */
    public Reading {
        Objects.requireNonNull(basket);
        Objects.requireNonNull(misfits);
        Objects.requireNonNull(language);
        problems = problems.stream().sorted(Problem.BY_PLACE).toList();
        remarks = remarks.stream().sorted(Problem.BY_PLACE).toList();
        if (basket.isPresent() != problems.isEmpty()) {
            throw new IllegalArgumentException("a reading holds either a basket or problems");
        }
    }
}
