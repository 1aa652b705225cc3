package kitleaf.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;

/** Puts text into a file of hers, whole or not at all. */
final class FileText {

    private FileText() { }

    /**
     * Puts new bytes in the place of old ones; the file keeps its permissions, and a link stays a link.
     *
     * @throws IOException if that cannot be, or if the file no longer holds the old bytes
     */
    static void replace(Path file, byte[] before, byte[] after) throws IOException {
        Path real = file.toRealPath();
        if (!Files.isWritable(real)) {
            throw new AccessDeniedException(file.toString());
        }
        Path draft = Files.createTempFile(real.getParent(), ".kitleaf-", ".part");
        try {
            Files.write(draft, after);
            PosixFileAttributeView old = Files.getFileAttributeView(real, PosixFileAttributeView.class);
            if (old != null) {
                Files.setPosixFilePermissions(draft, old.readAttributes().permissions());
            }
            if (!Arrays.equals(before, Files.readAllBytes(real))) {
                throw new InTheWay(file, "write.saved-meanwhile");
            }
            Files.move(draft, real, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }
}
