package kitleaf.command.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import kitleaf.basket.place.LinkGuard;

/** Files that were not there before, made all or none: unless they are kept, they go again, and the folders made for them. */
public final class NewFiles implements Closeable {

    /** The latest first, so that a folder is empty by its turn. */
    private final Deque<Path> made = new ArrayDeque<>();

    /** Makes a folder, and those it lies in, where they are not there yet. */
    public void folder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        if (folder.getParent() != null) {
            folder(folder.getParent());
        }
        // Of a/.. there is a folder as soon as there is a.
        if (!Files.isDirectory(folder)) {
            Files.createDirectory(folder);
            made.push(folder);
        }
    }

    /**
     * Makes a folder of a basket where it is not there yet, and gives where it really lies.
     *
     * @throws InTheWay if a link in its place leads out of the basket
     */
    public Path folder(Path folder, LinkGuard fence) throws IOException {
        folder(folder);
        return fence.folder(folder).orElseThrow(() -> new InTheWay(folder, "write.link"));
    }

    /**
     * Writes a file that is not there yet, and is never there by half.
     *
     * @throws java.nio.file.FileAlreadyExistsException if it is
     */
    public void file(Path file, String text) throws IOException {
        Path part = Drafts.in(file.toAbsolutePath().getParent()).path("new");
        try {
            try (Draft draft = new Draft(part, file)) {
                draft.stream().write(text.getBytes(StandardCharsets.UTF_8));
            }
            place(part, file);
            made.push(file);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void place(Path draft, Path file) throws IOException {
        try {
            // Unlike a move, this fails if something has come to lie there even now.
            Files.createLink(file, draft);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | IOException e) {
            // This disk knows no second names.
            Files.move(draft, file);
        }
    }

    /** Leaves what was made where it is. */
    public void keep() {
        made.clear();
    }

    @Override
    public void close() throws IOException {
        IOException failed = null;
        while (!made.isEmpty()) {
            try {
                Files.deleteIfExists(made.pop());
            } catch (IOException e) {
                // The others are to go all the same; a folder somebody has used meanwhile stays.
                failed = e;
            }
        }
        if (failed != null) {
            throw failed;
        }
    }
}
