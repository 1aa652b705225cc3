package kitleaf.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;

/** Puts text into a file of hers, whole or not at all. */
final class FileText {

    private FileText() { }

    /**
     * Puts new bytes in the place of old ones, if those are still there. The file keeps its rights.
     *
     * @param mark this run's mark in the file's folder
     * @param real the file where it really lies
     * @return whether they were put there
     */
    static boolean replace(RunMark mark, Path real, byte[] before, byte[] after) throws IOException {
        if (Files.exists(real) && !Files.isWritable(real)) {
            throw new AccessDeniedException(real.toString());
        }
        // Not named after the file, whose name may be as long as names can be.
        Path file = mark.draft("text");
        try {
            try (Draft draft = new Draft(file, real)) {
                draft.stream().write(after);
            }
            if (!holds(real, before)) {
                return false;
            }
            Files.move(file, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return true;
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static boolean holds(Path real, byte[] bytes) throws IOException {
        try (InputStream in = Files.newInputStream(real, LinkOption.NOFOLLOW_LINKS)) {
            return Arrays.equals(bytes, in.readNBytes(bytes.length + 1));
        } catch (NoSuchFileException e) {
            return false;
        }
    }
}
