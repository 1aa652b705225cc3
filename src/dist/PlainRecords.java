import java.io.IOException;
import java.lang.classfile.Attributes;
import java.lang.classfile.ClassFile;
import java.lang.classfile.ClassModel;
import java.lang.classfile.ClassTransform;
import java.lang.classfile.CodeBuilder;
import java.lang.classfile.CodeModel;
import java.lang.classfile.Label;
import java.lang.classfile.MethodModel;
import java.lang.classfile.TypeKind;
import java.lang.classfile.attribute.RecordAttribute;
import java.lang.classfile.attribute.RecordComponentInfo;
import java.lang.classfile.instruction.InvokeDynamicInstruction;
import java.lang.constant.ClassDesc;
import java.lang.constant.ConstantDescs;
import java.lang.constant.MethodTypeDesc;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Writes out the {@code equals} and {@code hashCode} of the program's records in a jar. Java makes them when they are first called,
 * each of handles strung together, which no cache keeps and the quick compiler never makes quick. What they give stays the same.
 * Needs JDK 24.
 *
 * <p>{@code java src/dist/PlainRecords.java JAR}
 */
final class PlainRecords {

    private static final ClassDesc OBJECT_METHODS = ClassDesc.of("java.lang.runtime.ObjectMethods");
    private static final ClassDesc OBJECTS = Objects.class.describeConstable().orElseThrow();

    private PlainRecords() { }

    public static void main(String[] arguments) throws IOException {
        try (FileSystem jar = FileSystems.newFileSystem(Path.of(arguments[0])); Stream<Path> files = Files.walk(jar.getPath("/kitleaf"))) {
            List<Path> classes = files.filter(file -> file.toString().endsWith(".class")).toList();
            for (Path file : classes) {
                rewrite(file);
            }
        }
    }

    private static void rewrite(Path file) throws IOException {
        ClassFile maker = ClassFile.of();
        ClassModel record = maker.parse(Files.readAllBytes(file));
        RecordAttribute attribute = record.findAttribute(Attributes.record()).orElse(null);
        if (attribute == null) {
            return;
        }
        ClassDesc type = record.thisClass().asSymbol();
        List<RecordComponentInfo> components = attribute.components();
        Files.write(file, maker.transformClass(record, ClassTransform.transformingMethods(PlainRecords::made, (method, part) -> {
            if (part instanceof CodeModel code) {
                boolean equals = code.parent().orElseThrow().methodName().equalsString("equals");
                method.withCode(equals ? to -> equal(to, type, components) : to -> hash(to, type, components));
            } else {
                method.with(part);
            }
        })));
    }

    /** Whether Java makes the method when it is first called. */
    private static boolean made(MethodModel method) {
        boolean asked = method.methodName().equalsString("equals") && method.methodType().equalsString("(Ljava/lang/Object;)Z")
                || method.methodName().equalsString("hashCode") && method.methodType().equalsString("()I");
        return asked && method.code().stream().flatMap(CodeModel::elementStream).anyMatch(part ->
                part instanceof InvokeDynamicInstruction call && call.bootstrapMethod().owner().equals(OBJECT_METHODS));
    }

    /** All components the same; floating-point numbers as {@code Double.compare} has it. */
    private static void equal(CodeBuilder to, ClassDesc type, List<RecordComponentInfo> components) {
        Label other = to.newLabel();
        to.aload(1).instanceOf(type).ifeq(other);
        to.aload(1).checkcast(type).astore(2);
        for (RecordComponentInfo component : components) {
            ClassDesc of = component.descriptorSymbol();
            String name = component.name().stringValue();
            to.aload(0).getfield(type, name, of).aload(2).getfield(type, name, of);
            switch (TypeKind.from(of)) {
                case LONG -> to.lcmp().ifne(other);
                case FLOAT, DOUBLE -> to.invokestatic(box(of), "compare", MethodTypeDesc.of(ConstantDescs.CD_int, of, of)).ifne(other);
                case REFERENCE -> to.invokestatic(OBJECTS, "equals",
                        MethodTypeDesc.of(ConstantDescs.CD_boolean, ConstantDescs.CD_Object, ConstantDescs.CD_Object)).ifeq(other);
                default -> to.if_icmpne(other);
            }
        }
        to.iconst_1().ireturn().labelBinding(other).iconst_0().ireturn();
    }

    /** Thirty-one times what came before, and the component's own: the sum that Java makes, so that nothing changes its order. */
    private static void hash(CodeBuilder to, ClassDesc type, List<RecordComponentInfo> components) {
        to.iconst_0();
        for (RecordComponentInfo component : components) {
            ClassDesc of = component.descriptorSymbol();
            to.bipush(31).imul().aload(0).getfield(type, component.name().stringValue(), of);
            if (of.isPrimitive()) {
                to.invokestatic(box(of), "hashCode", MethodTypeDesc.of(ConstantDescs.CD_int, of));
            } else {
                to.invokestatic(OBJECTS, "hashCode", MethodTypeDesc.of(ConstantDescs.CD_int, ConstantDescs.CD_Object));
            }
            to.iadd();
        }
        to.ireturn();
    }

    private static ClassDesc box(ClassDesc primitive) {
        return switch (TypeKind.from(primitive)) {
            case BOOLEAN -> ConstantDescs.CD_Boolean;
            case BYTE -> ConstantDescs.CD_Byte;
            case CHAR -> ConstantDescs.CD_Character;
            case SHORT -> ConstantDescs.CD_Short;
            case INT -> ConstantDescs.CD_Integer;
            case LONG -> ConstantDescs.CD_Long;
            case FLOAT -> ConstantDescs.CD_Float;
            case DOUBLE -> ConstantDescs.CD_Double;
            default -> throw new IllegalArgumentException(primitive.displayName());
        };
    }
}
