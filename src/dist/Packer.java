import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Packs the program into a folder that runs where there is no Java: a runtime with the program linked in, classes laid
 * out for a quick start by a training run, and a launcher. Works with JDK 17 and later, for the system it runs on.
 *
 * <p>{@code java src/dist/Packer.java PROJECT VERSION [JDK]}, after the jar has been built. Without a JDK named it takes the newest
 * that lies beside the one it runs on, if that is 25 or later, since those keep more ready for the start.
 */
final class Packer {

    private static final String MAIN = "kitleaf.command.Kitleaf";

    /**
     * How the program is run. A run is short and its work is spread thin, so the quick compiler and the collector without threads
     * of its own do best, at 100,000 labels too; the room for young objects is fixed, so that memory follows what is kept and
     * not how long the run is. A larger part of it than usual is for those that outlive the first collection: what is in hand, a
     * page or a file, is then gone before it is taken for something to be kept.
     */
    private static final List<String> OPTIONS = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmn16m", "-XX:SurvivorRatio=3",
            "-XX:-UsePerfData");

    /**
     * The most memory for objects, unless she says otherwise: the largest picture takes 140 MB, the memory one template may ask for 256 MB,
     * and 100,000 labels some 100 MB in all.
     */
    private static final String MEMORY = "512m";

    /** The first Java that keeps classes linked, not only loaded (JEP 483, 514). */
    private static final int KEEPS_LINKED = 25;

    /** What the training run wrote down is of classes alone: methods compiled because they were once, not because they are needed, cost a short run more than they save. */
    private static final List<String> CLASSES_ALONE = List.of("-XX:-AOTRecordTraining");

    /** Bought stock, which the example does not have. */
    private static final String STOCK = "\nlabel-stock: {columns: 3, rows: 10, label: 63 mm x 25 mm, first: 8 mm x 15 mm, pitch: 65 mm x 26 mm}\n";

    private static final Pattern RELEASE = Pattern.compile("JAVA_VERSION=\"([0-9]+).*");

    /** Licences and notices in the jar. */
    private static final Pattern PAPERS = Pattern.compile("/?META-INF/([^/]*(LICENSE|NOTICE|licenses|MPL|LGPL)[^/]*|licenses/.*)");

    private static final String CACHE = "runtime/lib/kitleaf.aot";

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
        Path here = Path.of(System.getProperty("java.home")).toRealPath();
        boolean named = arguments.length > 2 && !arguments[2].isBlank();
        Path jdk = named ? Path.of(arguments[2]).toRealPath() : newestBeside(here).orElse(here);
        if (!jdk.equals(here)) {
            System.out.println("packing with " + jdk);
            List<String> command = List.of(jdk.resolve("bin/java").toString(), arguments[0] + "/src/dist/Packer.java", arguments[0], arguments[1], jdk.toString());
            int code = new ProcessBuilder(command).inheritIO().start().waitFor();
            if (code == 0 || named) {
                System.exit(code);
            }
            System.out.println("that did not work; packing with " + here);
        }
        new Packer(Path.of(arguments[0]).toAbsolutePath(), arguments[1]).pack();
    }

    /** The newest JDK in the folder that holds this one, if it keeps classes linked. */
    private static Optional<Path> newestBeside(Path jdk) throws IOException {
        try (Stream<Path> homes = Files.list(jdk.getParent())) {
            return homes.filter(home -> (Files.exists(home.resolve("bin/jlink")) || Files.exists(home.resolve("bin/jlink.exe"))) && feature(home) >= KEEPS_LINKED).max(Comparator.comparing(Packer::feature));
        }
    }

    /** 25 of a JDK 25; 0 where that cannot be told. */
    private static int feature(Path jdk) {
        try (Stream<String> lines = Files.lines(jdk.resolve("release"))) {
            return lines.map(RELEASE::matcher).filter(Matcher::matches).mapToInt(line -> Integer.parseInt(line.group(1))).findFirst().orElse(0);
        } catch (IOException unreadable) {
            return 0;
        }
    }

    /**
     * Methods known only by their names are called some hundred times in a run, and to make code for each takes longer than all its calls.
     * What a training run wrote down of methods is not there to be read (see {@link #CLASSES_ALONE}), and a thread that looks for it at every
     * class costs a twentieth of a short run.
     */
    private static List<String> options() {
        return keepsLinked() ? with(OPTIONS, "-Djdk.reflect.useNativeAccessorOnly=true", "-XX:+UnlockDiagnosticVMOptions", "-XX:-AOTReplayTraining")
                : with(OPTIONS, "-Dsun.reflect.inflationThreshold=2147483647");
    }

    private static boolean keepsLinked() {
        return Runtime.version().feature() >= KEEPS_LINKED;
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
    private Path module() throws IOException, InterruptedException {
        Path jar = work.resolve("kitleaf.jar");
        Files.copy(project.resolve("target/kitleaf.jar"), jar);
        tool("javac", "--module-version", version, "-d", work.resolve("descriptor").toString(),
                "--patch-module", "kitleaf=" + jar, project.resolve("src/dist/module/module-info.java").toString());
        tool("jar", "--update", "--file", jar.toString(), "-C", work.resolve("descriptor").toString(), "module-info.class");
        if (keepsLinked()) {
            for (String change : List.of("StackMaps", "PlainRecords")) {
                run(List.of(Path.of(System.getProperty("java.home"), "bin/java").toString(), project.resolve("src/dist/" + change + ".java").toString(), jar.toString()));
            }
        }
        return jar;
    }

    private void link(Path jar) {
        tool("jlink", "--module-path", jar.toString(), "--add-modules", "kitleaf,jdk.localedata", "--output", folder.resolve("runtime").toString(),
                // How dates are written in the languages there are.
                "--include-locales", "en,de", "--strip-java-debug-attributes", "--no-header-files", "--no-man-pages");
    }

    private void train() throws IOException, InterruptedException {
        if (keepsLinked()) {
            Path written = work.resolve("classes.aotconf");
            java(with(CLASSES_ALONE, "-XX:AOTMode=record", "-XX:AOTConfiguration=" + written), print());
            java(with(CLASSES_ALONE, "-XX:AOTMode=create", "-XX:AOTConfiguration=" + written, "-XX:AOTCache=" + folder.resolve(CACHE)), List.of());
        } else {
            Path written = work.resolve("classes.txt");
            java(List.of("-Xshare:off", "-XX:DumpLoadedClassList=" + written), print());
            // The archive becomes the runtime's own: found without an option, wherever the folder is moved.
            java(List.of("-XX:SharedClassListFile=" + written, "-Xshare:dump"), List.of());
        }
        // Without this the program would run from an archive it cannot use, only slower, and nobody would know.
        java(keepsLinked() ? List.of("-XX:AOTMode=on", "-XX:AOTCache=" + folder.resolve(CACHE)) : List.of("-Xshare:on"), List.of("--version"));
    }

    /** What is done most, and what the program is trained on: every kind of sheet of a basket that has something of everything. */
    private List<String> print() throws IOException {
        Path basket = work.resolve("basket");
        delete(basket);
        copy(project.resolve("examples/harbour"), basket);
        Files.writeString(basket.resolve("basket.yaml"), STOCK, StandardOpenOption.APPEND);
        return List.of("print", basket.toString(), "--out", work.resolve("out").toString());
    }

    private static List<String> with(List<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }

    private void launchers() throws IOException {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        launcher("kitleaf.sh", bin.resolve("kitleaf"), "\"-XX:AOTCache=$runtime/lib/kitleaf.aot\"");
        launcher("kitleaf.bat", bin.resolve("kitleaf.bat"), "\"-XX:AOTCache=%runtime%\\lib\\kitleaf.aot\"");
        bin.resolve("kitleaf").toFile().setExecutable(true, false);
    }

    private void launcher(String template, Path to, String cache) throws IOException {
        String options = String.join(" ", keepsLinked() ? with(options(), cache) : options());
        Files.writeString(to, Files.readString(project.resolve("src/dist").resolve(template)).replace("@options@", options).replace("@memory@", MEMORY).replace("@main@", MAIN));
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
        command.addAll(options());
        command.addAll(options);
        command.add(MAIN);
        command.addAll(arguments);
        run(command);
    }

    private void run(List<String> command) throws IOException, InterruptedException {
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
