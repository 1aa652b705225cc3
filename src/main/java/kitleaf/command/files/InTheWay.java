package kitleaf.command.files;

import java.nio.file.FileSystemException;
import java.nio.file.Path;
import kitleaf.words.Said;

/** Something stands in the way of a file that the system itself has no word for. */
public final class InTheWay extends FileSystemException {

    private static final long serialVersionUID = 1L;

    private final transient Said said;

    public InTheWay(Path file, String key, Object... slots) {
        super(file.toString());
        this.said = Said.of(key, slots);
    }

    public Said said() {
        return said;
    }
}
