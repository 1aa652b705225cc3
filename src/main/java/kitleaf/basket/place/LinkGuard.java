package kitleaf.basket.place;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fence round a basket, which no link leads out of, neither to read nor to write. It gives files as they really lie: what was
 * looked at is what is then opened, whatever a link is turned to meanwhile. Folders are followed once, since a large basket has a
 * great many files in one.
 */
public final class LinkGuard {

    private final Optional<Path> basket;
    private final Map<Path, Optional<Path>> folders = new ConcurrentHashMap<>();

    private LinkGuard(Optional<Path> basket) {
        this.basket = basket;
    }

    /** The fence round a basket, whatever links lead to that itself. */
    public static LinkGuard round(Path basket) {
        return new LinkGuard(Optional.of(basket));
    }

    /**
     * The fence round what a piece file she named lies in: the folder that has its {@code pieces} folder. None stands round a file that
     * lies alone, which may be a link to wherever she keeps it.
     */
    public static LinkGuard of(Path pieceFile) {
        Path folder = pieceFile.toAbsolutePath().normalize().getParent();
        return new LinkGuard(Optional.ofNullable(folder).filter(it -> it.endsWith(BasketFiles.PIECES)).map(Path::getParent));
    }

    /**
     * Where a file really lies; nothing if that is outside.
     *
     * @throws IOException if it is not there, or a link or a folder cannot be followed
     */
    public Optional<Path> real(Path file) throws IOException {
        Path folder = file.getParent();
        if (folder == null || file.getFileName().toString().equals("..") || Files.isSymbolicLink(file)) {
            return inside(file.toRealPath());
        }
        Optional<Path> known = folders.get(folder);
        if (known == null) {
            known = folder(folder);
            folders.put(folder, known);
        }
        return known.map(real -> real.resolve(file.getFileName()));
    }

    /** The same for a folder. */
    public Optional<Path> folder(Path folder) throws IOException {
        return inside(folder.toRealPath());
    }

    /** The same for a reader: what is outside or cannot be followed is told. */
    public Optional<Path> find(Path file, Problems problems) {
        return find(file, this::real, "file.link", problems);
    }

    /** The same for a reader of a folder. */
    Optional<Path> findFolder(Path folder, Problems problems) {
        return find(folder, this::folder, "file.link-folder", problems);
    }

    /** Follows links. */
    private interface Following {
        Optional<Path> to(Path file) throws IOException;
    }

    private static Optional<Path> find(Path file, Following following, String outside, Problems problems) {
        try {
            Optional<Path> real = following.to(file);
            if (real.isEmpty()) {
                problems.add(BasketFiles.shown(file), Fault.of(outside));
            }
            return real;
        } catch (IOException e) {
            problems.add(SourceReader.unreadable(BasketFiles.shown(file), e));
            return Optional.empty();
        }
    }

    private Optional<Path> inside(Path real) throws IOException {
        return basket.isEmpty() || real.startsWith(basket.get().toRealPath()) ? Optional.of(real) : Optional.empty();
    }
}
