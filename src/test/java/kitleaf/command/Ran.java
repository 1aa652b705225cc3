package kitleaf.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The program run on some arguments.
 *
 * @param code its exit code
 * @param out what it said
 * @param err what it complained of
 */
record Ran(int code, String out, String err) {

    static Ran kitleaf(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Kitleaf.run(Stream.of(arguments).map(String::valueOf).toArray(String[]::new),
                new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(code, text(out), text(err));
    }

    /** Writes a basket of one piece file and gives its folder. */
    static Path basket(Path folder, String settings, String piece) throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        Files.writeString(folder.resolve("basket.yaml"), settings);
        Files.writeString(folder.resolve("pieces/piece.yaml"), piece);
        return folder;
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
