package kitleaf.sizing.cloth;

import java.util.Objects;
import kitleaf.basket.Part;

/**
 * The size of a part worked over another number of threads, at the hoop.
 *
 * @param part the part, its own chart size known
 * @param widthMm its width
 * @param heightMm its height
 */
public record PartSize(Part part, double widthMm, double heightMm) {

    /** Refuses a missing part. */
    public PartSize {
        Objects.requireNonNull(part);
    }
}
