package kitleaf.command;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.Fence;
import kitleaf.words.Said;

/**
 * The folder the sheets go to. Drafts are written beside the old sheets and take their places only when all
 * of them are whole; a failure before that leaves the old ones as they were.
 */
final class OutFolder implements Closeable {

    private final Path folder;
    private final RunMark mark;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Path> stale = new ArrayList<>();

    private OutFolder(Path folder, RunMark mark) {
        this.folder = folder;
        this.mark = mark;
    }

    static OutFolder open(Path folder) throws IOException {
        return opened(made(folder));
    }

    /**
     * Opens a folder of a basket.
     *
     * @throws InTheWay if a link in its place leads out of the basket
     */
    static OutFolder open(Path folder, Fence fence) throws IOException {
        return opened(fence.folder(made(folder)).orElseThrow(() -> new InTheWay(folder, "write.link")));
    }

    private static OutFolder opened(Path folder) throws IOException {
        return new OutFolder(folder, RunMark.in(folder));
    }

    private static Path made(Path folder) throws IOException {
        // A link to a folder is a folder too, but not one that can be made.
        return Files.isDirectory(folder) ? folder : Files.createDirectories(folder);
    }

    Path path(String name) {
        return folder.resolve(name);
    }

    /** A draft of the file of this name. */
    Draft draft(String name) throws IOException {
        Draft draft = new Draft(mark.draft(name), path(name));
        drafts.add(draft);
        return draft;
    }

    /** Files of an earlier print that go when the new ones have their places, unless one of those takes theirs. */
    void clear(List<Path> files) {
        stale.addAll(files);
    }

    /** Puts every draft in its place. */
    void replaceAll() throws IOException {
        for (Draft draft : drafts) {
            if (Files.isDirectory(draft.target())) {
                throw new InTheWay(draft.target(), "write.folder-in-the-way");
            }
        }
        List<String> replaced = new ArrayList<>();
        for (Draft draft : drafts) {
            String name = draft.target().getFileName().toString();
            try {
                Files.move(draft.file(), draft.target(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException e) {
                throw replaced.isEmpty() ? new InTheWay(draft.target(), "write.not-replaced", name)
                        : new InTheWay(draft.target(), "write.partly-replaced", name, String.join(", ", replaced));
            }
            replaced.add(name);
        }
        for (Path old : stale) {
            if (drafts.stream().noneMatch(draft -> draft.target().equals(old))) {
                Files.deleteIfExists(old);
            }
        }
        drafts.clear();
    }

    /** Takes away drafts that found no place. */
    @Override
    public void close() throws IOException {
        for (Draft draft : drafts) {
            Files.deleteIfExists(draft.file());
        }
        mark.close();
    }

    /** What to tell her when writing failed. */
    static Failure couldNotWrite(Path folder, IOException e) {
        return Failure.of(Exit.COULD_NOT_WRITE, "write.failed", folder.toString(), why(e, Refusals.OUT));
    }

    /** The same for a file that no other folder can be chosen for. */
    static Failure couldNotWriteThere(Path path, IOException e) {
        return Failure.of(Exit.COULD_NOT_WRITE, "write.failed", path.toString(), why(e, Refusals.BARE));
    }

    /** The same for the schemas of a basket. */
    static Failure noRoomForSchemas(Path folder, IOException e) {
        return Failure.of(Exit.COULD_NOT_WRITE, "write.failed", folder.toString(), why(e, Refusals.SCHEMAS));
    }

    /** Phrases for what may stand in the way, each with its own advice. */
    private record Refusals(String forbidden, String fileInTheWay, String noPlace) {
        static final Refusals OUT = new Refusals("write.forbidden.out", "write.file-in-the-way.out", "write.no-place.out");
        static final Refusals BARE = new Refusals("write.forbidden", "write.file-in-the-way", "write.no-place");
        static final Refusals SCHEMAS = new Refusals("write.forbidden.schemas", "write.file-in-the-way.schemas", "write.no-place.schemas");
    }

    /** What stood in the way: a phrase, or the system's own words. */
    private static Object why(IOException e, Refusals refusals) {
        if (e instanceof AccessDeniedException) {
            return Said.of(refusals.forbidden());
        }
        if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return Said.of(refusals.fileInTheWay());
        }
        if (e instanceof NoSuchFileException) {
            return Said.of(refusals.noPlace());
        }
        if (e instanceof InTheWay stands) {
            return stands.said();
        }
        if (e instanceof FileSystemException f && f.getReason() != null) {
            return f.getReason();
        }
        return e.getMessage() == null ? Said.of("write.no-reason") : e.getMessage();
    }
}
