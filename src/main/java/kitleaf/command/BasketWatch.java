package kitleaf.command;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import kitleaf.command.speech.Voice;

/**
 * Waits for saves. The files of a basket are few, so they are looked at again and again rather than watched by the
 * system: that sees every way to save, also by renaming, and works on network disks and in every system alike.
 */
final class BasketWatch {

    private static final int LOOK_EVERY_MILLIS = 200;
    /** Looks without a change after which a save is taken to be over: programs that save many files do it in one go. */
    private static final int QUIET_LOOKS = 2;
    /** Longer than this no run of saves is waited for. */
    private static final int MOST_LOOKS = 25;
    private static final int DEEP = 4;
    private static final int MOST_FILES = 5_000;
    private static final int MOST_NAMED = 3;

    private final Path basket;
    private final Path out;
    private final Optional<Path> templates;
    private final Voice voice;
    private Map<Path, List<Object>> seen;

    /**
     * Watches from now on.
     *
     * @param out not looked into, since it changes with every print
     */
    BasketWatch(Path basket, Path out, Optional<Path> templates, Voice voice) {
        this.basket = basket;
        this.out = out.toAbsolutePath().normalize();
        this.templates = templates;
        this.voice = voice;
        this.seen = look();
    }

    /** Waits until something was saved and all is quiet, and names what; nothing once it is told to stop. */
    Optional<String> next(BooleanSupplier stop) {
        Map<Path, List<Object>> before = seen;
        // An interrupted thread does not sleep: it would look without a pause for ever.
        while (!stop.getAsBoolean() && !Thread.currentThread().isInterrupted()) {
            rest();
            Map<Path, List<Object>> now = look();
            if (!now.equals(before)) {
                seen = settled(now, stop);
                if (!seen.equals(before)) {
                    return Optional.of(names(before, seen));
                }
            }
        }
        return Optional.empty();
    }

    private Map<Path, List<Object>> settled(Map<Path, List<Object>> first, BooleanSupplier stop) {
        Map<Path, List<Object>> last = first;
        int quiet = 0;
        for (int looks = 0; looks < MOST_LOOKS && quiet < QUIET_LOOKS && !stop.getAsBoolean() && !Thread.currentThread().isInterrupted();
                looks++) {
            rest();
            Map<Path, List<Object>> now = look();
            quiet = now.equals(last) ? quiet + 1 : 0;
            last = now;
        }
        return last;
    }

    private static void rest() {
        try {
            Thread.sleep(LOOK_EVERY_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private String names(Map<Path, List<Object>> before, Map<Path, List<Object>> now) {
        List<String> names = new ArrayList<>();
        now.forEach((file, stamp) -> {
            if (!stamp.equals(before.get(file))) {
                names.add(file.getFileName().toString());
            }
        });
        before.keySet().stream().filter(file -> !now.containsKey(file))
                .forEach(file -> names.add(voice.say("watch.gone", file.getFileName().toString())));
        int more = names.size() - MOST_NAMED;
        String named = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
        return more > 0 ? voice.say("watch.more", named, more) : named;
    }

    private Map<Path, List<Object>> look() {
        Map<Path, List<Object>> files = new TreeMap<>();
        if (Files.isDirectory(basket)) {
            walk(basket, DEEP, files);
        } else {
            Path folder = basket.toAbsolutePath().normalize().getParent();
            walk(folder, 1, files);
            if (folder.endsWith("pieces")) {
                walk(folder.getParent(), 1, files);
            }
        }
        templates.ifPresent(folder -> walk(folder, 1, files));
        return files;
    }

    private void walk(Path folder, int depth, Map<Path, List<Object>> files) {
        try {
            Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), depth, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path inner, BasicFileAttributes attributes) {
                    boolean skipped = inner.toAbsolutePath().normalize().equals(out) || (!inner.equals(folder) && hidden(inner));
                    return skipped ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (!hidden(file) && file.toString().matches(".*\\.(ya?ml|csv|ftlx|properties)")) {
                        files.put(file, List.of(attributes.lastModifiedTime(), attributes.size(),
                                Optional.ofNullable(attributes.fileKey())));
                    }
                    return files.size() < MOST_FILES ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException e) {
                    // It went away while it was looked at, or may not be read; the print says which.
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            // The folder is away for a moment; what is missing is told when it is printed.
            files.clear();
        }
    }

    private static boolean hidden(Path path) {
        Path name = path.getFileName();
        return name != null && name.toString().startsWith(".");
    }
}
