package kitleaf.command.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;

/**
 * A run's drafts in the folder it writes to: hidden files by names no other run has. Drafts nobody has written to for long are those of
 * a run that was killed, and are taken away.
 */
final class Drafts {

    /** {@code .kitleaf-RUN-NAME.part} is a draft. */
    private static final Pattern OURS = Pattern.compile("\\.kitleaf-[0-9a-f]{16}-.+\\.part");

    /** The longest run takes minutes; common practice, no source. */
    private static final Duration OLD = Duration.ofHours(1);

    private final Path folder;
    private final String run;

    private Drafts(Path folder, String run) {
        this.folder = folder;
        this.run = run;
    }

    /** Those of a new run; what killed runs left in the folder is taken away. */
    static Drafts in(Path folder) {
        try {
            sweep(folder);
        } catch (IOException e) {
            // Litter that cannot be taken away must not keep her from her sheets.
        }
        // The name need not be secret, since no draft is made where something lies already; a secret one takes longer than a page.
        return new Drafts(folder, HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong()));
    }

    /** By which this run's drafts are known. */
    String run() {
        return run;
    }

    /** Where a draft of this name lies. */
    Path path(String name) {
        return folder.resolve(".kitleaf-" + run + "-" + name + ".part");
    }

    /** Begins a draft of what is to lie there. */
    Draft of(Path target) throws IOException {
        return new Draft(path(target.getFileName().toString()), target);
    }

    private static void sweep(Path folder) throws IOException {
        Instant old = Instant.now().minus(OLD);
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, ".kitleaf-*.part")) {
            for (Path entry : entries) {
                if (OURS.matcher(entry.getFileName().toString()).matches() && Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)
                        && Files.getLastModifiedTime(entry).toInstant().isBefore(old)) {
                    Files.deleteIfExists(entry);
                }
            }
        }
    }
}
