package kitleaf.command.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a run is about to put in place and to take away, written down beside it before the first move. Should the run be killed between,
 * the next one ends what it began: the new files are whole, so nothing is put back.
 *
 * @param run by which its drafts are known
 * @param put names of files, each lying ready as {@code .kitleaf-RUN-NAME.new}
 * @param take names of pictures that go, if they are still what {@link OwnPictures} recorded
 */
record Moves(String run, List<String> put, List<String> take) {

    /** Where they are written down: a line {@code run RUN}, a line {@code put NAME} or {@code take NAME} each, and {@code end}. */
    static final String FILE = ".kitleaf-moves";

    /** What Kitleaf writes, so that whatever else such a file says nothing of hers is moved or goes. */
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]*(\\.schema)?\\.(pdf|png|csv|json)");
    private static final Pattern RUN = Pattern.compile("run [0-9a-f]{16}");
    private static final Pattern READY = Pattern.compile("\\.kitleaf-[0-9a-f]{16}-.+\\.new");

    /** On a disk without locks a run this old is not in the midst of its moves; common practice, no source. */
    private static final Duration OLD = Duration.ofMinutes(1);
    private static final int MOST_BYTES = 10_000_000;

    Moves {
        put = List.copyOf(put);
        take = List.copyOf(take);
    }

    /** Where a file lies ready to be put in place. */
    Path ready(Path folder, String name) {
        return folder.resolve(".kitleaf-" + run + "-" + name + ".new");
    }

    /** Writes them down, whole or not at all. */
    void write(Path folder, Drafts drafts) throws IOException {
        StringBuilder text = new StringBuilder("run " + run + "\n");
        put.forEach(name -> text.append("put ").append(name).append('\n'));
        take.forEach(name -> text.append("take ").append(name).append('\n'));
        Path part = drafts.path("moves");
        Files.writeString(part, text.append("end\n"));
        Files.move(part, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Puts one file in its place. */
    void put(Path folder, String name) throws IOException {
        Files.move(ready(folder, name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What there is to do when all files are in their places. */
    void end(Path folder) throws IOException {
        OwnPictures own = OwnPictures.in(folder);
        for (String name : take) {
            if (own.lies(folder, name)) {
                Files.deleteIfExists(folder.resolve(name));
            }
        }
        if (put.contains(OwnPictures.FILE)) {
            put(folder, OwnPictures.FILE);
        } else if (!take.isEmpty()) {
            Files.deleteIfExists(folder.resolve(OwnPictures.FILE));
        }
        forget(folder);
    }

    static void forget(Path folder) throws IOException {
        Files.deleteIfExists(folder.resolve(FILE));
    }

    /** What came of a run that was stopped between its moves. */
    enum Mended { NOTHING, ALL_IN_PLACE, MIXED }

    /**
     * Ends what a killed run began, and takes away what lay ready for a run that was killed before.
     *
     * @param turn this run's turn at the folder
     */
    static Mended mend(Path folder, Turn turn) throws IOException {
        Path file = folder.resolve(FILE);
        Mended mended = Mended.NOTHING;
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && (turn.locked() || isOld(file))) {
            mended = read(file).map(moves -> moves.finished(folder)).orElse(false) ? Mended.ALL_IN_PLACE : Mended.MIXED;
            forget(folder);
        }
        if (turn.locked()) {
            try (DirectoryStream<Path> ready = Files.newDirectoryStream(folder, ".kitleaf-*.new")) {
                for (Path one : ready) {
                    if (READY.matcher(one.getFileName().toString()).matches() && Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS)) {
                        Files.deleteIfExists(one);
                    }
                }
            }
        }
        return mended;
    }

    private static boolean isOld(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toInstant().isBefore(Instant.now().minus(OLD));
    }

    private boolean finished(Path folder) {
        try {
            for (String name : put) {
                // What was moved already lies ready no more.
                if (!name.equals(OwnPictures.FILE) && Files.isRegularFile(ready(folder, name), LinkOption.NOFOLLOW_LINKS)) {
                    put(folder, name);
                }
            }
            end(folder);
            return true;
        } catch (NoSuchFileException e) {
            // It was killed after the last of them.
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static Optional<Moves> read(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            return Optional.empty();
        }
        List<String> lines = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).lines().toList();
        if (lines.size() < 2 || !RUN.matcher(lines.get(0)).matches() || !lines.get(lines.size() - 1).equals("end")) {
            return Optional.empty();
        }
        List<String> put = new ArrayList<>();
        List<String> take = new ArrayList<>();
        for (String line : lines.subList(1, lines.size() - 1)) {
            String name = line.substring(line.indexOf(' ') + 1);
            boolean known = NAME.matcher(name).matches();
            if (line.startsWith("put ") && (known || name.equals(OwnPictures.FILE))) {
                put.add(name);
            } else if (line.startsWith("take ") && known) {
                take.add(name);
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(new Moves(lines.get(0).substring("run ".length()), put, take));
    }
}
