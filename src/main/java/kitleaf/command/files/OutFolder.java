package kitleaf.command.files;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kitleaf.basket.place.LinkGuard;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.words.Said;

/**
 * The folder the sheets go to. Drafts are written beside the old sheets and take their places only when all
 * of them are whole; a failure before that leaves the old ones as they were.
 */
public final class OutFolder implements Closeable {

    private final Path folder;
    private final Drafts own;
    private final Consumer<Said> told;
    private final List<Draft> drafts = new ArrayList<>();
    private Predicate<String> stale = name -> false;

    private OutFolder(Path folder, Drafts own, Consumer<Said> told) {
        this.folder = folder;
        this.own = own;
        this.told = told;
    }

    /**
     * Opens a folder, and ends what a killed run began in it.
     *
     * @param told what there is to say of that, and of waiting for another run
     */
    public static OutFolder open(Path folder, Consumer<Said> told) throws IOException {
        return opened(made(folder), told);
    }

    /**
     * Opens a folder of a basket.
     *
     * @throws InTheWay if a link in its place leads out of the basket
     */
    public static OutFolder open(Path folder, LinkGuard fence, Consumer<Said> told) throws IOException {
        return opened(fence.folder(made(folder)).orElseThrow(() -> new InTheWay(folder, "write.link")), told);
    }

    private static OutFolder opened(Path folder, Consumer<Said> told) throws IOException {
        OutFolder out = new OutFolder(folder, Drafts.in(folder), told);
        if (Files.exists(folder.resolve(Moves.FILE), LinkOption.NOFOLLOW_LINKS)) {
            // If a run that lives is at it, there is nothing to mend.
            Optional<Turn> turn = Turn.tried(folder);
            if (turn.isPresent()) {
                out.mend(turn.get());
                turn.get().close();
            }
        }
        return out;
    }

    private void mend(Turn turn) throws IOException {
        switch (Moves.mend(folder, turn)) {
            case ALL_IN_PLACE -> told.accept(Said.of("write.mended", folder.toString()));
            case MIXED -> told.accept(Said.of("write.mixed", folder.toString()));
            case NOTHING -> { }
        }
    }

    private static Path made(Path folder) throws IOException {
        // A link to a folder is a folder too, but not one that can be made.
        return Files.isDirectory(folder) ? folder : Files.createDirectories(folder);
    }

    public Path path(String name) {
        return folder.resolve(name);
    }

    /** A draft of the file of this name. */
    public Draft draft(String name) throws IOException {
        Draft draft = own.of(path(name));
        drafts.add(draft);
        return draft;
    }

    /** Pictures an earlier run drew that go when the new ones have their places, unless one of those takes theirs. */
    public void clear(Predicate<String> pictures) {
        stale = stale.or(pictures);
    }

    /** Puts every draft in its place, while no other run does so here. */
    public void replaceAll() throws IOException {
        try (Turn turn = turn()) {
            mend(turn);
            replaceInTurn();
        }
    }

    /**
     * Puts a text in the place of another, if that is still there; waits for other runs like {@link #replaceAll}.
     *
     * @param before what the file held when it was read
     * @return whether it was put there; if not, the file is as somebody else saved it
     */
    public boolean replace(String name, byte[] before, byte[] after) throws IOException {
        Path file = path(name);
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw new AccessDeniedException(file.toString());
        }
        // Not named after the file, whose name may be as long as names can be.
        Path text = own.path("text");
        Turn turn = turn();
        try {
            try (Draft draft = new Draft(text, file)) {
                draft.stream().write(after);
            }
            if (!holds(file, before)) {
                return false;
            }
            Files.move(text, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return true;
        } finally {
            Files.deleteIfExists(text);
            turn.close();
        }
    }

    private static boolean holds(Path file, byte[] bytes) throws IOException {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return Arrays.equals(bytes, in.readNBytes(bytes.length + 1));
        } catch (NoSuchFileException e) {
            // What is not there yet holds nothing.
            return bytes.length == 0;
        }
    }

    private Turn turn() throws IOException {
        return Turn.at(folder, Turn.PATIENCE, () -> told.accept(Said.of("write.waiting", folder.toString())));
    }

    private void replaceInTurn() throws IOException {
        for (Draft draft : drafts) {
            if (Files.isDirectory(draft.target())) {
                throw new InTheWay(draft.target(), "write.folder-in-the-way");
            }
        }
        Moves moves = moves();
        List<String> replaced = new ArrayList<>();
        for (Draft draft : drafts) {
            String name = name(draft);
            try {
                moves.put(folder, name);
            } catch (IOException e) {
                if (replaced.isEmpty()) {
                    withdraw(moves);
                }
                throw replaced.isEmpty() ? new InTheWay(draft.target(), "write.not-replaced", name)
                        : new InTheWay(draft.target(), "write.partly-replaced", name, String.join(", ", replaced));
            }
            replaced.add(name);
        }
        moves.end(folder);
        drafts.clear();
    }

    /**
     * Makes all ready and writes it down. Drafts are named anew, since those of a run that is interrupted are taken away as it ends,
     * and what is written down to be moved must not be.
     */
    private Moves moves() throws IOException {
        OwnPictures old = OwnPictures.in(folder);
        OwnPictures pictures = old.without(stale);
        List<String> put = new ArrayList<>();
        for (Draft draft : drafts) {
            put.add(name(draft));
            if (name(draft).endsWith(".png")) {
                pictures.add(name(draft), draft.file());
            }
        }
        List<String> take = old.of(stale.and(name -> !put.contains(name)));
        Moves moves = new Moves(own.run(), pictures.none() ? put : Stream.concat(put.stream(), Stream.of(OwnPictures.FILE)).toList(), take);
        try {
            for (Draft draft : drafts) {
                ready(draft, moves);
            }
            if (!pictures.none()) {
                Files.writeString(moves.ready(folder, OwnPictures.FILE), pictures.text());
            }
            moves.write(folder, own);
        } catch (IOException e) {
            withdraw(moves);
            throw e;
        }
        return moves;
    }

    private void ready(Draft draft, Moves moves) throws InTheWay {
        try {
            Files.move(draft.file(), moves.ready(folder, name(draft)), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new InTheWay(draft.target(), "write.not-replaced", name(draft));
        }
    }

    /** Takes away what lay ready. */
    private void withdraw(Moves moves) throws IOException {
        Moves.forget(folder);
        for (String name : moves.put()) {
            Files.deleteIfExists(moves.ready(folder, name));
        }
    }

    private static String name(Draft draft) {
        return draft.target().getFileName().toString();
    }

    /** Takes away drafts that found no place. */
    @Override
    public void close() throws IOException {
        for (Draft draft : drafts) {
            Files.deleteIfExists(draft.file());
        }
    }

    /** What to tell her when writing failed. */
    public static Failure couldNotWrite(Path folder, IOException e) {
        return Failure.of(Exit.COULD_NOT_WRITE, "write.failed", folder.toString(), why(e, Refusals.OUT));
    }

    /** The same for a file that no other folder can be chosen for. */
    public static Failure couldNotWriteThere(Path path, IOException e) {
        return Failure.of(Exit.COULD_NOT_WRITE, "write.failed", path.toString(), why(e, Refusals.BARE));
    }

    /** The same for the schemas of a basket. */
    public static Failure noRoomForSchemas(Path folder, IOException e) {
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
