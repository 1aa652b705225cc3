import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Packs the program into a folder that runs where there is no Java: a runtime with the program linked in, classes laid
 * out for a quick start by a training run, and a launcher. Works with the JDK that runs it, 17 or later, for the system it
 * runs on.
 *
 * <p>{@code java src/dist/Packer.java PROJECT VERSION}, after the jar has been built.
 */
final class Packer {

    private static final String MAIN = "kitleaf.command.Kitleaf";

    /**
     * How the program is run. A run is short and its work is spread thin, so the quick compiler and the collector without threads
     * of its own do best, at 100,000 labels too; the room for young objects is fixed, so that memory follows what is kept and
     * not how long the run is.
     */
    private static final List<String> OPTIONS = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmn16m");

    /** What is done most, and what the program is trained on: every kind of sheet of a basket that has something of everything. */
    private static final List<String> PRINT = List.of("print", "examples/harbour", "--out", "target/dist/training/out");

    /** Licences and notices in the jar. */
    private static final Pattern PAPERS = Pattern.compile("/?META-INF/([^/]*(LICENSE|NOTICE|licenses|MPL|LGPL)[^/]*|licenses/.*)");

    private final Path project;
    private final String version;
    private final Path work;
    private final Path folder;

    private Packer(Path project, String version) {
        this.project = project;
        this.version = version;
        this.work = project.resolve("target/dist/training");
        this.folder = project.resolve("target/dist/kitleaf");
    }

    public static void main(String[] arguments) throws Exception {
        new Packer(Path.of(arguments[0]).toAbsolutePath(), arguments[1]).pack();
    }

    private void pack() throws Exception {
        delete(project.resolve("target/dist"));
        Files.createDirectories(work);
        link(module());
        train();
        launchers();
        papers();
        zip();
        delete(work);
    }

    /** The jar with a module descriptor in it. */
    private Path module() throws IOException {
        Path jar = work.resolve("kitleaf.jar");
        Files.copy(project.resolve("target/kitleaf.jar"), jar);
        tool("javac", "--module-version", version, "-d", work.resolve("descriptor").toString(),
                "--patch-module", "kitleaf=" + jar, project.resolve("src/dist/module/module-info.java").toString());
        tool("jar", "--update", "--file", jar.toString(), "-C", work.resolve("descriptor").toString(), "module-info.class");
        return jar;
    }

    private void link(Path jar) {
        tool("jlink", "--module-path", jar.toString(), "--add-modules", "kitleaf", "--output", folder.resolve("runtime").toString(),
                "--strip-java-debug-attributes", "--no-header-files", "--no-man-pages");
    }

    private void train() throws IOException, InterruptedException {
        Path list = work.resolve("classes.txt");
        java(List.of("-Xshare:off", "-XX:DumpLoadedClassList=" + list), PRINT);
        // The archive becomes the runtime's own: found without an option, wherever the folder is moved.
        java(List.of("-XX:SharedClassListFile=" + list, "-Xshare:dump"), List.of());
        // Without this the program would run from an archive it cannot use, only slower, and nobody would know.
        java(List.of("-Xshare:on"), List.of("--version"));
    }

    private void launchers() throws IOException {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        launcher("kitleaf.sh", bin.resolve("kitleaf"));
        launcher("kitleaf.bat", bin.resolve("kitleaf.bat"));
        bin.resolve("kitleaf").toFile().setExecutable(true, false);
    }

    private void launcher(String template, Path to) throws IOException {
        Files.writeString(to, Files.readString(project.resolve("src/dist").resolve(template))
                .replace("@options@", String.join(" ", OPTIONS)).replace("@main@", MAIN));
    }

    /** What one reads beside the program: the guide, the example, the licences. */
    private void papers() throws IOException {
        for (String file : List.of("README.md", "LICENSE")) {
            Files.copy(project.resolve(file), folder.resolve(file));
        }
        copy(project.resolve("examples"), folder.resolve("examples"));
        Path licences = Files.createDirectories(folder.resolve("licences"));
        try (FileSystem jar = FileSystems.newFileSystem(project.resolve("target/kitleaf.jar"));
                Stream<Path> files = Files.walk(jar.getPath("META-INF"))) {
            for (Path file : files.filter(path -> PAPERS.matcher(path.toString()).matches()).filter(Files::isRegularFile).toList()) {
                Files.copy(file, licences.resolve(file.getFileName().toString()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        try (Stream<Path> fonts = Files.walk(project.resolve("fonts"))) {
            for (Path licence : fonts.filter(path -> path.endsWith("OFL.txt")).toList()) {
                Files.copy(licence, licences.resolve(licence.getParent().getFileName() + "-OFL.txt"));
            }
        }
    }

    /** The folder as one file to hand over; what may be run stays so. */
    private void zip() throws IOException {
        URI to = URI.create("jar:" + project.resolve("target/dist/kitleaf.zip").toUri());
        try (FileSystem zip = FileSystems.newFileSystem(to, Map.of("create", "true", "enablePosixFileAttributes", "true"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted().toList()) {
                    Path entry = zip.getPath("kitleaf").resolve(folder.relativize(file).toString());
                    Files.copy(file, entry);
                    boolean run = Files.isDirectory(file) || Files.isExecutable(file);
                    Files.setPosixFilePermissions(entry, PosixFilePermissions.fromString(run ? "rwxr-xr-x" : "rw-r--r--"));
                }
            }
        }
    }

    /** Runs the linked program from the project's folder. */
    private void java(List<String> options, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(folder.resolve("runtime/bin/java").toString()));
        command.addAll(OPTIONS);
        command.addAll(options);
        command.add(MAIN);
        command.addAll(arguments);
        Path said = work.resolve("said.txt");
        int code = new ProcessBuilder(command).directory(project.toFile()).redirectErrorStream(true).redirectOutput(said.toFile()).start().waitFor();
        if (code != 0) {
            List<String> lines = Files.readAllLines(said);
            throw new IllegalStateException(String.join(" ", command) + " ended with " + code + "\n"
                    + String.join("\n", lines.subList(Math.max(0, lines.size() - 20), lines.size())));
        }
    }

    private static void tool(String name, String... arguments) {
        int code = ToolProvider.findFirst(name).orElseThrow(() -> new IllegalStateException("this JDK has no " + name))
                .run(System.out, System.err, arguments);
        if (code != 0) {
            throw new IllegalStateException(name + " ended with " + code);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.sorted().toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
