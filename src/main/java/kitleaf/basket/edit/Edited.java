package kitleaf.basket.edit;

import java.nio.file.Path;

/** A file that was read once and edited, and is not yet written. */
public interface Edited {

    /** Where it really lies, which is where it was read. */
    Path file();

    /** Its bytes as they were read. */
    byte[] before();

    /** Its bytes as they shall be. */
    byte[] after();
}
