package kitleaf.command.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import kitleaf.words.Said;

/**
 * The last edit in a folder, kept there in a hidden file so that it can be taken back: three lines and the bytes before.
 *
 * @param name the edited file, from the folder on
 * @param written the SHA-256 of what it held afterwards, in hexadecimal digits
 * @param told what was said of the edit, in one line
 * @param before what it held before
 */
public record LastEdit(String name, String written, String told, byte[] before) {

    /** Nothing that is read as part of a basket has a name that begins with a dot. */
    private static final String FILE = ".kitleaf-undo";
    private static final int LINES = 3;

    /** Takes the bytes as they are; they are not copied. */
    public LastEdit {
        Objects.requireNonNull(name);
        Objects.requireNonNull(written);
        told = told.replaceAll("\\R", " ");
        Objects.requireNonNull(before);
    }

    /** An edit that left these bytes. */
    public static LastEdit of(String name, String told, byte[] before, byte[] after) {
        return new LastEdit(name, digest(after), told, before);
    }

    /** The one kept in a folder; none where nothing is kept. */
    public static Optional<LastEdit> in(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        byte[] kept = Files.readAllBytes(file);
        String[] lines = new String[LINES];
        int from = 0;
        for (int line = 0; line < LINES; line++) {
            int end = from;
            while (end < kept.length && kept[end] != '\n') {
                end++;
            }
            if (end == kept.length) {
                return Optional.empty();
            }
            lines[line] = new String(kept, from, end - from, StandardCharsets.UTF_8);
            from = end + 1;
        }
        return Optional.of(new LastEdit(lines[0], lines[1], lines[2], Arrays.copyOfRange(kept, from, kept.length)));
    }

    /** Keeps it in a folder, in the place of the one before. */
    public void keep(Path folder, Consumer<Said> complain) throws IOException {
        try (OutFolder out = OutFolder.open(folder, complain)) {
            try (Draft draft = out.draft(FILE)) {
                draft.stream().write((name + "\n" + written + "\n" + told + "\n").getBytes(StandardCharsets.UTF_8));
                draft.stream().write(before);
            }
            out.replaceAll();
        }
    }

    /** Takes away what is kept in a folder. */
    public static void forget(Path folder) throws IOException {
        Files.deleteIfExists(folder.resolve(FILE));
    }

    /** Whether these bytes are still those it wrote. */
    public boolean left(byte[] now) {
        return written.equals(digest(now));
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
