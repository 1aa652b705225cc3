package kitleaf.basket;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The fence round a basket, which no link leads out of. Folders are followed once: a large basket has a great many files in one. */
final class Fence {

    private final Path basket;
    private final Map<Path, Boolean> folders = new ConcurrentHashMap<>();

    Fence(Path basket) {
        this.basket = basket;
    }

    /**
     * Whether a file lies in the basket, whatever links lead to it.
     *
     * @throws IOException if a link or a folder cannot be followed
     */
    boolean holds(Path file) throws IOException {
        Path folder = file.getParent();
        if (folder == null || Files.isSymbolicLink(file)) {
            return isInside(file);
        }
        Boolean known = folders.get(folder);
        if (known == null) {
            known = isInside(folder);
            folders.put(folder, known);
        }
        return known;
    }

    private boolean isInside(Path path) throws IOException {
        return path.toRealPath().startsWith(basket.toRealPath());
    }
}
