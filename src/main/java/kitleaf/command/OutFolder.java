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
        // A link to a folder is a folder too, but not one that can be made.
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
        return new OutFolder(folder, RunMark.in(folder));
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
                throw new FileSystemException(draft.target().toString(), null, "a folder stands where the sheet should go");
            }
        }
        List<String> replaced = new ArrayList<>();
        for (Draft draft : drafts) {
            String name = draft.target().getFileName().toString();
            try {
                Files.move(draft.file(), draft.target(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException e) {
                throw new FileSystemException(draft.target().toString(), null, name + " could not be replaced; close it where it is open, "
                        + "or choose another folder with --out" + (replaced.isEmpty() ? "" : "; new already: " + String.join(", ", replaced)));
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
        return couldNotWrite(folder, e, "; choose another folder with --out");
    }

    /** The same, with what to do about it where she may not write or something is in the way. */
    static Failure couldNotWrite(Path path, IOException e, String advice) {
        String why = e instanceof AccessDeniedException ? "you may not write there" + advice
                : e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException
                        ? "there is a file in the way" + advice
                : e instanceof NoSuchFileException ? "there is no such place" + advice
                : e instanceof FileSystemException f && f.getReason() != null ? f.getReason()
                : e.getMessage() == null ? "the disk gave no reason" : e.getMessage();
        return new Failure(Exit.COULD_NOT_WRITE, "could not write to " + path + ": " + why);
    }
}
