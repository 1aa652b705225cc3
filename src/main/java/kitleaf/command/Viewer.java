package kitleaf.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kitleaf.words.Said;

/** Opens files with whatever the desktop opens them with. */
final class Viewer {

    private static final int QUICK_SECONDS = 2;

    private Viewer() { }

    /** Opens a file or a folder, and gives what to tell her if that could not be. */
    static Optional<Said> open(Path path) {
        Optional<Said> none = Optional.of(Said.of("print.no-viewer", path.toString()));
        List<String> command = command(System.getProperty("os.name"), System.getenv());
        if (command.isEmpty()) {
            return none;
        }
        try {
            Process process = new ProcessBuilder(concat(command, path.toAbsolutePath().toString()))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            // An opener that fails does so at once; one that stays is a viewer somebody looks into.
            boolean failed = process.waitFor(QUICK_SECONDS, TimeUnit.SECONDS) && process.exitValue() != 0
                    && !command.get(0).equals("explorer.exe");
            return failed ? none : Optional.empty();
        } catch (IOException e) {
            return none;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** The desktop's own opener; none where there is no desktop. */
    static List<String> command(String system, Map<String, String> environment) {
        String low = system.toLowerCase(Locale.ROOT);
        if (low.startsWith("mac")) {
            return List.of("open");
        }
        if (low.startsWith("windows")) {
            // It answers 1 even when all went well.
            return List.of("explorer.exe");
        }
        boolean desktop = !environment.getOrDefault("DISPLAY", "").isEmpty() || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
        return desktop ? List.of("xdg-open") : List.of();
    }

    private static List<String> concat(List<String> command, String last) {
        return Stream.concat(command.stream(), Stream.of(last)).toList();
    }
}
