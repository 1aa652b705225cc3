import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.LogManager;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.fontbox.ttf.NameRecord;
import org.apache.fontbox.ttf.NamingTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Holds the finished jar against what has to lie in it: its licence, the notices of all libraries, and the licence of every typeface. What
 * lies in it and is no library of its own is then written into the bill of materials.
 *
 * <p>{@code java -cp target/kitleaf.jar src/dist/Shipped.java PROJECT REPOSITORY}, after the jar and the bill have been made; the
 * repository is where Maven keeps the libraries. Ends with 1, and says why, if something is missing.
 */
final class Shipped {

    private static final String OUR_FONTS = "kitleaf/fonts/";

    /**
     * What libraries carry a copy of.
     *
     * @param type CycloneDX's word for it
     * @param licence SPDX's name of it, from the library's own notice or from what lies beside the copy
     * @param place how the names of its files in the jar begin
     */
    private record Copy(String type, String name, String licence, String place) { }

    private static final List<Copy> COPIES = List.of(
            new Copy("library", "FastDoubleParser", "MIT", "com/fasterxml/jackson/core/internal/shaded/fdp/"),
            new Copy("library", "Schubfach", "MIT", "com/fasterxml/jackson/core/io/schubfach/"),
            new Copy("data", "Adobe Core 14 font metrics", "APAFML", "com/lowagie/text/pdf/fonts/Helvetica"),
            new Copy("data", "Adobe Core 14 font metrics", "APAFML", "org/apache/pdfbox/resources/afm/"),
            new Copy("data", "Adobe glyph lists", "BSD-3-Clause", "org/apache/pdfbox/resources/glyphlist/"),
            new Copy("data", "Adobe CMap resources", "BSD-3-Clause", "org/apache/fontbox/cmap/"),
            new Copy("data", "Compact ICC Profiles, CMYK", "CC0-1.0", "org/apache/pdfbox/resources/icc/"),
            new Copy("library", "TwelveMonkeys ImageIO, fax decoder", "BSD-3-Clause", "org/apache/pdfbox/filter/CCITTFaxDecoderStream"));

    /** What a typeface says of itself: the numbers of the OpenType specification's table {@code name}. */
    private static final int COPYRIGHT = 0;
    private static final int FULL_NAME = 4;
    private static final int VERSION = 5;
    private static final int LICENCE = 13;

    private static final Pattern NUMBER = Pattern.compile("Version ([0-9.]+).*", Pattern.DOTALL);
    private static final Pattern LIBRARY = Pattern.compile("pkg:maven/([^/]+)/([^@]+)@([^?]+)\\?type=jar");

    private final Path project;
    private final Path repository;
    private final ZipFile jar;
    private final List<String> faults = new ArrayList<>();

    private Shipped(Path project, Path repository, ZipFile jar) {
        this.project = project;
        this.repository = repository;
        this.jar = jar;
    }

    public static void main(String[] arguments) throws Exception {
        // What the reader of typefaces leaves out of them is no matter here.
        LogManager.getLogManager().reset();
        Path project = Path.of(arguments[0]);
        try (ZipFile jar = new ZipFile(project.resolve("target/kitleaf.jar").toFile())) {
            Shipped shipped = new Shipped(project, Path.of(arguments[1]), jar);
            shipped.hold(project.resolve("target/bom.json"));
            if (!shipped.faults.isEmpty()) {
                System.err.println("the jar is not fit to be handed on:\n  " + String.join("\n  ", shipped.faults));
                System.exit(1);
            }
        }
    }

    private void hold(Path file) throws Exception {
        ObjectMapper json = new ObjectMapper();
        ObjectNode bill = (ObjectNode) json.readTree(file.toFile());
        papers(bill);
        folders();
        ArrayNode components = (ArrayNode) bill.get("components");
        for (String name : names()) {
            if (name.endsWith(".ttf")) {
                components.add(typeface(json.createObjectNode(), name));
            }
        }
        for (Copy copy : COPIES) {
            if (names().stream().noneMatch(name -> name.startsWith(copy.place()))) {
                faults.add("there is no " + copy.name() + " at " + copy.place() + " any more");
            }
            components.add(component(json.createObjectNode(), copy.type(), copy.name(), copy.licence(), copy.place()));
        }
        if (faults.isEmpty()) {
            json.writerWithDefaultPrettyPrinter().writeValue(file.toFile(), bill);
        }
    }

    /** Our own licence as it is, and every line of every library's notice. */
    private void papers(ObjectNode bill) throws IOException {
        if (!text("META-INF/LICENSE").equals(Files.readString(project.resolve("LICENSE")))) {
            faults.add("META-INF/LICENSE is not the project's LICENSE");
        }
        String notice = text("META-INF/NOTICE");
        if (!notice.contains("in this case for Kitleaf\n")) {
            faults.add("META-INF/NOTICE does not say that it is Kitleaf's");
        }
        demand(notice, Files.readString(project.resolve("src/main/notice/NOTICE")), "Kitleaf");
        int read = 0;
        for (var component : bill.get("components")) {
            Matcher library = LIBRARY.matcher(component.path("purl").asText());
            if (library.matches()) {
                String name = library.group(2);
                Path path = repository.resolve(library.group(1).replace('.', '/')).resolve(name).resolve(library.group(3));
                try (ZipFile theirs = new ZipFile(path.resolve(name + "-" + library.group(3) + ".jar").toFile())) {
                    for (String entry : List.of("META-INF/NOTICE", "META-INF/NOTICE.txt")) {
                        if (theirs.getEntry(entry) != null) {
                            demand(notice, text(theirs, entry), name);
                            read++;
                        }
                    }
                }
            }
        }
        if (read == 0) {
            faults.add("target/bom.json names no library that has a notice");
        }
    }

    private void demand(String notice, String lines, String whose) {
        lines.lines().map(String::strip).filter(line -> !notice.contains(line))
                .forEach(line -> faults.add("META-INF/NOTICE lacks a line of " + whose + ": " + line));
    }

    /** Each folder of ours has a typeface, and the text of its licence. */
    private void folders() throws IOException {
        try (Stream<Path> folders = Files.list(project.resolve("fonts"))) {
            for (Path folder : folders.sorted().toList()) {
                String place = OUR_FONTS + folder.getFileName() + "/";
                if (names().stream().noneMatch(name -> name.startsWith(place) && name.endsWith(".ttf"))) {
                    faults.add(place + " holds no typeface");
                }
                if (!text(place + "OFL.txt").contains("SIL OPEN FONT LICENSE Version 1.1")) {
                    faults.add(place + " lacks its OFL.txt");
                }
            }
        }
    }

    private ObjectNode typeface(ObjectNode component, String place) throws IOException, GeneralSecurityException {
        byte[] bytes = bytes(jar, place);
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes))) {
            NamingTable says = font.getNaming();
            if (!said(says, LICENCE).contains("SIL Open Font License, Version 1.1")) {
                faults.add(place + " does not say that it is under the SIL Open Font License 1.1");
            }
            component(component, "file", said(says, FULL_NAME), "OFL-1.1", place).put("copyright", said(says, COPYRIGHT));
            Matcher number = NUMBER.matcher(said(says, VERSION));
            if (number.matches()) {
                component.put("version", number.group(1));
            } else {
                faults.add(place + " does not name its version");
            }
            component.putArray("hashes").addObject().put("alg", "SHA-256")
                    .put("content", HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
            return component;
        }
    }

    private static String said(NamingTable says, int number) {
        String text = says.getName(number, NameRecord.PLATFORM_WINDOWS, NameRecord.ENCODING_WINDOWS_UNICODE_BMP,
                NameRecord.LANGUAGE_WINDOWS_EN_US);
        return text == null ? "" : text;
    }

    private static ObjectNode component(ObjectNode component, String type, String name, String licence, String place) {
        component.put("type", type).put("bom-ref", place).put("name", name);
        component.putArray("licenses").addObject().putObject("license").put("id", licence);
        component.putObject("evidence").putArray("occurrences").addObject().put("location", place);
        return component;
    }

    private Set<String> names() {
        Set<String> names = new TreeSet<>();
        jar.stream().forEach(entry -> names.add(entry.getName()));
        return names;
    }

    /** The empty text where there is no such file. */
    private String text(String name) throws IOException {
        return jar.getEntry(name) == null ? "" : text(jar, name);
    }

    private static String text(ZipFile from, String name) throws IOException {
        return new String(bytes(from, name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(ZipFile from, String name) throws IOException {
        try (var in = from.getInputStream(from.getEntry(name))) {
            return in.readAllBytes();
        }
    }
}
