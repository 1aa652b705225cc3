package kitleaf.basket.table;

import java.util.Optional;
import kitleaf.basket.yaml.Node;

/** Finds the tables that files name. */
public interface Tables {

    /**
     * The table a value names, or nothing and a problem.
     *
     * @param key what the table stands for
     * @param example the name of such a file, to show her
     */
    Optional<TableFile> find(Node.Scalar value, String key, String example);
}
