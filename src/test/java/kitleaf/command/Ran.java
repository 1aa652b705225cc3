package kitleaf.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.command.speech.Terminal;
import org.junit.jupiter.api.Assumptions;

/**
 * The program run on some arguments.
 *
 * @param code its exit code
 * @param out what it said
 * @param err what it complained of
 */
record Ran(int code, String out, String err) {

    static Ran kitleaf(Object... arguments) {
        return run(Terminal.NONE, Map.of(), arguments);
    }

    /** The program run where these variables are set. */
    static Ran in(Map<String, String> surroundings, Object... arguments) {
        return run(Terminal.NONE, surroundings, arguments);
    }

    /** The program run on a terminal, with somebody typing these lines and then nothing more. */
    static Ran answering(String typed, Object... arguments) {
        return answering(Map.of(), typed, arguments);
    }

    /** The same where these variables are set. */
    static Ran answering(Map<String, String> surroundings, String typed, Object... arguments) {
        return run(new Terminal(Optional.of(new BufferedReader(new StringReader(typed)))), surroundings, arguments);
    }

    private static Ran run(Terminal terminal, Map<String, String> surroundings, Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Kitleaf.run(Stream.of(arguments).map(String::valueOf).toArray(String[]::new), terminal, surroundings,
                new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(code, text(out), text(err));
    }

    /** The program as a process of its own, standing in a folder; changes to the environment take a name and a value each. */
    static Process start(Path folder, List<String> environment, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("java.class.path"), "kitleaf.command.Kitleaf"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        for (int i = 0; i < environment.size(); i += 2) {
            builder.environment().put(environment.get(i), environment.get(i + 1));
        }
        return builder.start();
    }

    /** The program run to its end as a process of its own, standing in a folder. */
    static Ran inFolder(Path folder, String... arguments) throws IOException, InterruptedException {
        return ended(start(folder, List.of(), arguments));
    }

    /** What a process has said by its end. */
    static Ran ended(Process process) throws IOException, InterruptedException {
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out, err);
    }

    /** Writes a basket of one piece file and gives its folder. */
    static Path basket(Path folder, String settings, String piece) throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        Files.writeString(folder.resolve("basket.yaml"), settings);
        Files.writeString(folder.resolve("pieces/piece.yaml"), piece);
        return folder;
    }

    /** Makes a link; the test is left out where there are none, or where they want rights a user does not have. */
    static Path link(Path link, Path target) throws IOException {
        try {
            return Files.createSymbolicLink(link, target);
        } catch (UnsupportedOperationException | FileSystemException e) {
            return Assumptions.abort("no links can be made here: " + e);
        }
    }

    /** Makes a file look as if it was last written so long ago. */
    static void age(Path file, Duration ago) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(ago)));
    }

    /** What lies in a folder. */
    static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
