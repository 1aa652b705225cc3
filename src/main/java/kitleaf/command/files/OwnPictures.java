package kitleaf.command.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The pictures in a folder that Kitleaf drew, as a hidden list beside them says: the SHA-256 of each and its name. A picture that she put
 * in the place of one is hers; a list that is not there or is damaged says that all are.
 */
final class OwnPictures {

    /** The list. */
    static final String FILE = ".kitleaf-pictures";

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) ([a-z][a-z-]*-[0-9]{2,9}\\.png)");
    private static final int MOST_BYTES = 10_000_000;
    private static final int CHUNK = 1 << 16;

    private final Map<String, String> sums;

    private OwnPictures(Map<String, String> sums) {
        this.sums = sums;
    }

    /** Those of earlier runs. */
    static OwnPictures in(Path folder) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        Path file = folder.resolve(FILE);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
            return new OwnPictures(sums);
        }
        for (String line : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).split("\n")) {
            Matcher known = LINE.matcher(line);
            if (!known.matches()) {
                return new OwnPictures(new TreeMap<>());
            }
            sums.put(known.group(2), known.group(1));
        }
        return new OwnPictures(sums);
    }

    /** Whether a picture lies there as it was drawn. */
    boolean lies(Path folder, String name) throws IOException {
        Path file = folder.resolve(name);
        return sums.containsKey(name) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && sums.get(name).equals(sum(file));
    }

    /** The names of those that were drawn of some sheets. */
    List<String> of(Predicate<String> sheets) {
        return sums.keySet().stream().filter(sheets).toList();
    }

    /** The same without those of some sheets. */
    OwnPictures without(Predicate<String> sheets) {
        Map<String, String> rest = new TreeMap<>(sums);
        rest.keySet().removeIf(sheets);
        return new OwnPictures(rest);
    }

    /** Records one that was drawn. */
    void add(String name, Path drawn) throws IOException {
        sums.put(name, sum(drawn));
    }

    boolean none() {
        return sums.isEmpty();
    }

    /** The text of the list. */
    String text() {
        StringBuilder text = new StringBuilder();
        sums.forEach((name, sum) -> text.append(sum).append(' ').append(name).append('\n'));
        return text.toString();
    }

    private static String sum(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            MessageDigest sum = MessageDigest.getInstance("SHA-256");
            byte[] chunk = new byte[CHUNK];
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                sum.update(chunk, 0, read);
            }
            return HexFormat.of().formatHex(sum.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }
}
