package kitleaf.basket;

import java.util.Optional;

/** Finds the tables that files name. */
interface Tables {

    /**
     * The table a value names, or nothing and a problem.
     *
     * @param key what the table stands for
     * @param example the name of such a file, to show her
     */
    Optional<TableFile> find(Node.Scalar value, String key, String example);
}
