package kitleaf.command;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A run's mark in the folder it writes to: a hidden file that the run keeps locked while it lives. The system lets go of
 * the lock when a run ends, however it ends. So drafts whose mark can be locked, or is gone, are those of a run that was killed,
 * and are taken away; those of a run that is still writing beside this one are left alone.
 */
final class RunMark implements Closeable {

    /** {@code .kitleaf-RUN.run} is a mark, {@code .kitleaf-RUN-NAME.part} a draft of the run it marks. */
    private static final Pattern OURS = Pattern.compile("\\.kitleaf-([0-9a-f]{16})(\\.run|-.+\\.part)");

    private final Path folder;
    private final String run;
    private final Path file;
    private final FileChannel channel;
    private final boolean locked;

    private RunMark(Path folder, String run, Path file, FileChannel channel, boolean locked) {
        this.folder = folder;
        this.run = run;
        this.file = file;
        this.channel = channel;
        this.locked = locked;
    }

    /** Marks a new run and takes away what killed runs left in the folder. */
    static RunMark in(Path folder) throws IOException {
        RunMark mark = set(folder);
        try {
            mark.sweep();
        } catch (IOException e) {
            // Litter that cannot be taken away must not keep her from her sheets.
        }
        return mark;
    }

    /** The file of this run's draft of a sheet. */
    Path draft(String name) {
        return folder.resolve(".kitleaf-" + run + "-" + name + ".part");
    }

    /** By which this run's drafts are known. */
    String run() {
        return run;
    }

    private static RunMark set(Path folder) throws IOException {
        while (true) {
            String run = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
            Path file = folder.resolve(".kitleaf-" + run + ".run");
            // The name need not be secret, since no mark is made where something lies already; a secret one takes longer than a page.
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            // Ends with the program where it is interrupted too, if it is let to end.
            file.toFile().deleteOnExit();
            try {
                // Marks are taken away only by who holds their lock. If one that sweeps took this one for a dead run's in
                // the moment before, another is made.
                if (channel.tryLock() != null && Files.exists(file)) {
                    return new RunMark(folder, run, file, channel, true);
                }
                channel.close();
            } catch (IOException e) {
                // This disk knows no locks: nothing is swept on it.
                return new RunMark(folder, run, file, channel, false);
            }
        }
    }

    private void sweep() throws IOException {
        if (!locked) {
            return;
        }
        List<Path> marks = new ArrayList<>();
        List<Path> drafts = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, ".kitleaf-*")) {
            for (Path entry : entries) {
                Matcher ours = OURS.matcher(entry.getFileName().toString());
                if (ours.matches() && !ours.group(1).equals(run) && Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS)) {
                    (ours.group(2).equals(".run") ? marks : drafts).add(entry);
                }
            }
        }
        // A run makes its mark before its drafts and takes it away after them: a draft without one is litter.
        for (Path draft : drafts) {
            Matcher ours = OURS.matcher(draft.getFileName().toString());
            if (ours.matches() && dead(folder.resolve(".kitleaf-" + ours.group(1) + ".run"), false)) {
                Files.deleteIfExists(draft);
            }
        }
        for (Path mark : marks) {
            dead(mark, true);
        }
    }

    /** Whether no run holds this mark, which is taken away then if asked for. */
    private static boolean dead(Path mark, boolean takeAway) throws IOException {
        if (!Files.exists(mark, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        try (FileChannel other = FileChannel.open(mark, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            boolean dead = other.tryLock() != null;
            if (dead && takeAway) {
                Files.deleteIfExists(mark);
            }
            return dead;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    /** Takes the mark away. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
    }
}
