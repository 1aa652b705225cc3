import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.classfile.ClassFile;
import java.lang.classfile.ClassFileVersion;
import java.lang.classfile.ClassHierarchyResolver;
import java.lang.classfile.ClassModel;
import java.lang.classfile.ClassTransform;
import java.lang.classfile.CodeTransform;
import java.lang.constant.ClassDesc;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Gives old class files in a jar the stack maps that class files have had since Java 6. Java keeps no class ready that it has to
 * verify in the old way, nor what refers to one, and a library may be compiled for older Javas than its users have. The code in
 * the classes stays as it is. Needs JDK 24.
 *
 * <p>{@code java src/dist/StackMaps.java JAR}
 */
final class StackMaps {

    private final FileSystem jar;
    private final ClassFile maker;

    private StackMaps(FileSystem jar) {
        this.jar = jar;
        this.maker = ClassFile.of(ClassFile.StackMapsOption.GENERATE_STACK_MAPS, ClassFile.ClassHierarchyResolverOption.of(
                ClassHierarchyResolver.ofResourceParsing(this::inJar).orElse(ClassHierarchyResolver.defaultResolver())));
    }

    public static void main(String[] arguments) throws IOException {
        try (FileSystem jar = FileSystems.newFileSystem(Path.of(arguments[0])); Stream<Path> files = Files.walk(jar.getPath("/"))) {
            StackMaps maps = new StackMaps(jar);
            List<Path> classes = files.filter(file -> file.toString().endsWith(".class")).toList();
            for (Path file : classes) {
                maps.add(file);
            }
        }
    }

    private void add(Path file) throws IOException {
        ClassModel old = maker.parse(Files.readAllBytes(file));
        if (old.majorVersion() <= ClassFile.JAVA_6_VERSION) {
            Files.write(file, maker.transformClass(old, ClassTransform.transformingMethodBodies(CodeTransform.ACCEPT_ALL).andThen((made, part) ->
                    made.with(part instanceof ClassFileVersion ? ClassFileVersion.of(ClassFile.JAVA_17_VERSION, 0) : part))));
        }
    }

    private InputStream inJar(ClassDesc type) {
        String descriptor = type.descriptorString();
        Path file = jar.getPath(descriptor.substring(1, descriptor.length() - 1) + ".class");
        try {
            return Files.exists(file) ? Files.newInputStream(file) : null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
