package kitleaf.basket.place;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Knows which files make a basket. */
public final class BasketFiles {

    public static final String SETTINGS = "basket.yaml";
    public static final String PIECES = "pieces";
    public static final String ENDING = ".yaml";

    /** Some editors put .txt behind whatever name she gives. */
    private static final Pattern ALMOST = Pattern.compile("\\.ya?ml(\\.txt)?$", Pattern.CASE_INSENSITIVE);
    /** What some give every text. */
    private static final String TEXT = ".txt";

    /** The line that makes a piece, and how far into a file it is looked for. */
    private static final Pattern PIECE = Pattern.compile("^piece\\s*:", Pattern.MULTILINE);
    /** Notes may well speak of a piece; that they count its stitches in a line of its own is asked beside that. */
    private static final Pattern STITCHES = Pattern.compile("^stitches\\s*:", Pattern.MULTILINE);
    private static final int HEAD = 8_192;

    /** The most piece files taken: a piece a day for a quarter of a century. */
    public static final int MOST_FILES = 10_000;

    private BasketFiles() {
    }

    /** A file as she would name it: from the folder she stands in, without a needless {@code ./}. */
    public static Path shown(Path path) {
        return path.startsWith(".") && path.getNameCount() > 1 ? path.subpath(1, path.getNameCount()) : path;
    }

    /** The basket a single piece file belongs to: the folder above its own, if that is called pieces and has settings beside it. */
    public static Optional<Path> basketOf(Path pieceFile) {
        Path folder = pieceFile.toAbsolutePath().normalize().getParent();
        if (folder == null || folder.getParent() == null || !folder.endsWith(PIECES)
                || !Files.exists(folder.getParent().resolve(SETTINGS))) {
            return Optional.empty();
        }
        // Her own words for the folder are kept where they reach that far.
        Path given = pieceFile.getParent();
        if (given == null) {
            return Optional.of(Path.of(".."));
        }
        if (!given.endsWith(PIECES)) {
            return Optional.of(given.resolve(".."));
        }
        return Optional.of(given.getParent() == null ? Path.of("") : given.getParent());
    }

    /** The ID of a document: its file's name without the ending, numbered from the second document on. */
    public static String id(Path pieceFile, int document) {
        String name = pieceFile.getFileName().toString();
        String base = name.substring(0, name.length() - ENDING.length());
        return document == 1 ? base : base + "-" + document;
    }

    /** The piece files of a basket in the order of their names; files named almost right are told of. */
    public static List<Path> pieces(Path basket, LinkGuard fence, Problems problems) {
        misnamed(basket.resolve("basket.yml"), problems);
        misnamed(basket.resolve(SETTINGS + ".txt"), problems);
        beside(basket, fence, problems);
        Path folder = basket.resolve(PIECES);
        List<Path> files = new ArrayList<>();
        Optional<Path> real = Files.exists(folder) ? fence.findFolder(folder, problems) : Optional.empty();
        if (real.isEmpty()) {
            return files;
        }
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(real.get())) {
            stream.forEach(entry -> entries.add(folder.resolve(entry.getFileName())));
        } catch (NotDirectoryException e) {
            problems.add(shown(folder), Fault.of("file.pieces"));
        } catch (IOException e) {
            problems.add(SourceReader.unreadable(shown(folder), e));
        }
        entries.sort(null);
        if (entries.size() > MOST_FILES) {
            problems.add(shown(folder), Fault.of("file.most", MOST_FILES));
            return files;
        }
        for (Path entry : entries) {
            String name = entry.getFileName().toString();
            String low = name.toLowerCase(Locale.ROOT);
            // Files with a leading dot are left there by editors and file systems.
            if (name.startsWith(".")) {
                continue;
            }
            if (name.codePoints().anyMatch(Quote::hidden)
                    || low.endsWith(ENDING) && Visible.nothing(name.substring(0, name.length() - ENDING.length()))) {
                if (low.endsWith(ENDING)) {
                    problems.add(shown(entry), Fault.of("file.hidden-name"));
                }
            } else if (name.endsWith(ENDING)) {
                files.add(entry);
            } else if (ALMOST.matcher(low).find() || low.endsWith(TEXT) && isStrayPiece(entry, fence)) {
                misnamed(entry, problems);
            }
        }
        return files;
    }

    /** Whether a text file holds a piece and is no copy kept beside it. */
    private static boolean isStrayPiece(Path file, LinkGuard fence) {
        String name = file.getFileName().toString();
        return !Files.exists(file.resolveSibling(name.substring(0, name.length() - TEXT.length()) + ENDING))
                && holds(file, fence, PIECE) && holds(file, fence, STITCHES);
    }

    /** A piece written beside the settings would be left out without a word. */
    private static void beside(Path basket, LinkGuard fence, Problems problems) {
        List<Path> stray = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(basket, "*" + ENDING)) {
            for (Path file : files) {
                if (!file.endsWith(SETTINGS) && !file.getFileName().toString().startsWith(".") && holds(file, fence, PIECE)) {
                    stray.add(file);
                }
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            // Whatever reads the basket's own files will tell more.
            return;
        }
        stray.sort(null);
        stray.forEach(file -> problems.add(shown(file), Fault.of("file.beside", PIECES)));
    }

    /** Whether a line stands at the beginning of a file in the basket; whatever its letters, those of a key are the same. */
    private static boolean holds(Path file, LinkGuard fence, Pattern line) {
        try {
            Optional<Path> real = fence.real(file).filter(it -> Files.isRegularFile(it, LinkOption.NOFOLLOW_LINKS));
            return real.isPresent() && line.matcher(new String(SourceReader.head(real.get(), HEAD), StandardCharsets.ISO_8859_1)).find();
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static void misnamed(Path file, Problems problems) {
        if (Files.exists(file)) {
            String name = file.getFileName().toString();
            Matcher ending = ALMOST.matcher(name);
            String base = ending.find() ? name.substring(0, ending.start())
                    : name.toLowerCase(Locale.ROOT).endsWith(TEXT) ? name.substring(0, name.length() - TEXT.length()) : name;
            problems.add(shown(file), Fault.of("file.ending", Quote.bare(base + ENDING)));
        }
    }
}
