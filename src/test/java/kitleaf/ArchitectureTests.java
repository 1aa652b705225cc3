package kitleaf;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** Keeps the arrows: words -> basket -> sizing -> sheet -> press, with the commands above them all. */
class ArchitectureTests {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("kitleaf");

    private static final int MOST_IN_A_ROOM = 28;

    /** What most packages of sheets are made of. */
    private static final Set<String> SHARED = Set.of("words", "page");

    /** The packages of sheets that may know less than that. All that are not named here, nor the templates, have a kind of sheet each. */
    private static final Map<String, Set<String>> BELOW = Map.of("words", Set.of(), "page", Set.of("words"), "plain", Set.of("words"));

    /** The packages right below one, by what follows its name. */
    private static Set<String> packages(String above) {
        return CLASSES.stream().map(JavaClass::getPackageName).filter(name -> name.startsWith(above))
                .map(name -> name.substring(above.length()).split("\\.")[0]).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void all_six_packages_are_looked_at() {
        for (String name : List.of("words", "basket", "sizing", "sheet", "press", "command")) {
            assertTrue(CLASSES.stream().anyMatch(it -> it.getPackageName().startsWith("kitleaf." + name)), name);
        }
        assertTrue(CLASSES.size() > 100, "only " + CLASSES.size() + " classes");
    }

    @Test
    void words_know_nothing_of_what_is_talked_about() {
        classes().that().resideInAPackage("kitleaf.words..")
                .should().onlyDependOnClassesThat().resideInAnyPackage("kitleaf.words..", "java.lang..", "java.util..", "java.io", "java.nio.charset")
                .check(CLASSES);
    }

    @Test
    void basket_knows_nothing_of_what_comes_after_it() {
        noClasses().that().resideInAPackage("kitleaf.basket..")
                .should().dependOnClassesThat().resideInAnyPackage("kitleaf.sizing..", "kitleaf.sheet..", "kitleaf.press..",
                        "kitleaf.command..", "freemarker..", "com.lowagie..", "io.nayuki..", "picocli..")
                .check(CLASSES);
    }

    @Test
    void the_records_of_a_basket_know_nothing_of_how_they_are_read() {
        noClasses().that().resideInAnyPackage("kitleaf.basket", "kitleaf.basket.cloth", "kitleaf.basket.thread")
                .should().dependOnClassesThat(resideInAPackage("kitleaf.basket..")
                        .and(resideOutsideOfPackages("kitleaf.basket", "kitleaf.basket.cloth", "kitleaf.basket.thread")))
                .check(CLASSES);
    }

    @Test
    void files_are_edited_in_a_room_that_nobody_who_reads_them_knows() {
        noClasses().that().resideInAPackage("kitleaf.basket..").and().resideOutsideOfPackage("kitleaf.basket.edit")
                .should().dependOnClassesThat().resideInAPackage("kitleaf.basket.edit").check(CLASSES);
        noClasses().that().resideOutsideOfPackage("kitleaf.basket.edit")
                .should().dependOnClassesThat().resideInAPackage("org.yaml.snakeyaml.nodes..").check(CLASSES);
    }

    /** So that one finds one's way in each. */
    @Test
    void no_package_is_crowded() {
        Map<String, Long> classes = CLASSES.stream().filter(it -> it.isTopLevelClass() && !it.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
        assertTrue(classes.size() >= 30, classes.toString());
        classes.forEach((name, number) -> assertTrue(number <= MOST_IN_A_ROOM, name + " has " + number));
    }

    @Test
    void sizing_is_arithmetic_on_records_alone() {
        classes().that().resideInAPackage("kitleaf.sizing..")
                .should().onlyDependOnClassesThat().resideInAnyPackage("kitleaf.sizing..", "kitleaf.basket..",
                        "java.lang..", "java.util..", "java.time..", "java.math..")
                .check(CLASSES);
        noClasses().that().resideInAPackage("kitleaf.sizing..")
                .should().dependOnClassesThat().haveSimpleNameEndingWith("Reader")
                .check(CLASSES);
    }

    @Test
    void sheet_knows_nothing_of_the_press() {
        noClasses().that().resideInAPackage("kitleaf.sheet..")
                .should().dependOnClassesThat().resideInAnyPackage("kitleaf.press..", "kitleaf.command..", "com.lowagie..",
                        "io.nayuki..", "com.fasterxml..", "picocli..")
                .check(CLASSES);
    }

    @Test
    void within_sheet_arrows_point_down() {
        Set<String> packages = packages("kitleaf.sheet.");
        assertTrue(packages.containsAll(Set.of("words", "page", "template", "plain", "cut", "plan", "label", "tag", "list", "goal", "duplex")), packages.toString());
        for (String name : packages) {
            String itself = "kitleaf.sheet." + name + "..";
            String[] known = Stream.concat(Stream.of(itself), BELOW.getOrDefault(name, SHARED).stream().map(it -> "kitleaf.sheet." + it + ".."))
                    .toArray(String[]::new);
            noClasses().that().resideInAPackage(itself)
                    .should().dependOnClassesThat(resideInAPackage("kitleaf.sheet..").and(resideOutsideOfPackages(known)))
                    .check(CLASSES);
        }
    }

    @Test
    void the_package_of_a_kind_of_sheet_is_known_to_Sheets_alone() {
        for (String name : packages("kitleaf.sheet.")) {
            if (!name.equals("template") && !BELOW.containsKey(name)) {
                String itself = "kitleaf.sheet." + name + "..";
                noClasses().that().resideOutsideOfPackage(itself).and().doNotHaveFullyQualifiedName("kitleaf.sheet.Sheets")
                        .should().dependOnClassesThat().resideInAPackage(itself)
                        .check(CLASSES);
            }
        }
    }

    @Test
    void templates_alone_know_freemarker() {
        noClasses().that().resideOutsideOfPackage("kitleaf.sheet.template..")
                .should().dependOnClassesThat().resideInAPackage("freemarker..")
                .check(CLASSES);
    }

    @Test
    void press_knows_nothing_of_baskets() {
        noClasses().that().resideInAPackage("kitleaf.press..")
                .should().dependOnClassesThat().resideInAnyPackage("kitleaf.basket..", "kitleaf.sizing..", "kitleaf.sheet..",
                        "kitleaf.command..", "freemarker..", "com.fasterxml.jackson..", "picocli..")
                .check(CLASSES);
    }

    /** Each knows those before it alone. */
    @Test
    void within_press_arrows_point_down() {
        List<String> rooms = List.of("markup", "type", "binding", "drawing", "flow");
        assertEquals(Set.copyOf(rooms), packages("kitleaf.press."));
        for (int i = 0; i < rooms.size(); i++) {
            String[] known = rooms.subList(0, i + 1).stream().map(it -> "kitleaf.press." + it).toArray(String[]::new);
            noClasses().that().resideInAPackage("kitleaf.press." + rooms.get(i))
                    .should().dependOnClassesThat(resideInAPackage("kitleaf.press..").and(resideOutsideOfPackages(known)))
                    .check(CLASSES);
        }
        noClasses().that().resideInAPackage("kitleaf.press..").and().resideOutsideOfPackage("kitleaf.press.flow")
                .and().doNotHaveFullyQualifiedName("kitleaf.press.Press")
                .should().dependOnClassesThat().resideInAPackage("kitleaf.press.flow")
                .check(CLASSES);
    }

    /** What others may ask of the press. */
    @Test
    void the_rooms_of_the_press_are_its_own() {
        Set<String> open = Set.of("MarkupException", "PressWords", "TextMeasure", "Typefaces", "QrSize");
        noClasses().that().resideOutsideOfPackage("kitleaf.press..").should().dependOnClassesThat(resideInAPackage("kitleaf.press.*..")
                .and(DescribedPredicate.describe("are not open to all", it -> !open.contains(it.getSimpleName()))))
                .check(CLASSES);
    }

    /** {@code speech} and {@code json} know none of the others, {@code files} and {@code asking} speech alone. */
    @Test
    void within_command_arrows_point_down() {
        Map<String, Set<String>> known = Map.of("speech", Set.of(), "json", Set.of(), "files", Set.of("speech"), "asking", Set.of("speech"),
                "printing", Set.of("speech", "files"));
        assertEquals(known.keySet(), packages("kitleaf.command."));
        known.forEach((name, others) -> {
            String[] rest = Stream.concat(Stream.of(name), others.stream())
                    .map(it -> "kitleaf.command." + it + "..").toArray(String[]::new);
            noClasses().that().resideInAPackage("kitleaf.command." + name)
                    .should().dependOnClassesThat(resideInAPackage("kitleaf.command..").and(resideOutsideOfPackages(rest)))
                    .check(CLASSES);
        });
        noClasses().that().resideInAnyPackage("kitleaf.command.speech", "kitleaf.command.json", "kitleaf.command.files",
                "kitleaf.command.asking", "kitleaf.command.printing").should().dependOnClassesThat().resideInAPackage("picocli..").check(CLASSES);
    }

    @Test
    void no_package_depends_on_itself_by_a_detour() {
        slices().matching("kitleaf.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void only_the_program_itself_touches_the_standard_streams() {
        noClasses().that().doNotHaveFullyQualifiedName("kitleaf.command.Kitleaf")
                .should().accessField(System.class, "out").orShould().accessField(System.class, "err").check(CLASSES);
    }

    /** So whatever is said goes through {@code Screen}. */
    @Test
    void nothing_else_opens_another_way_to_them() {
        noClasses().that().doNotHaveFullyQualifiedName("kitleaf.command.Kitleaf").should().callMethod(CommandLine.class, "setOut", PrintWriter.class)
                .orShould().callMethod(CommandLine.class, "setErr", PrintWriter.class).check(CLASSES);
        noClasses().should().accessField(FileDescriptor.class, "out").orShould().accessField(FileDescriptor.class, "err")
                .orShould().callMethod(Console.class, "writer").orShould().callMethod(Throwable.class, "printStackTrace").check(CLASSES);
        noClasses().that().doNotHaveFullyQualifiedName("kitleaf.command.speech.Screen")
                .should().dependOnClassesThat().areAssignableTo(PrintStream.class)
                .orShould().callConstructorWhere(target(owner(assignableTo(PrintWriter.class))))
                .because("only the program itself hands the streams to the screen").check(CLASSES.that(not(simpleName("Kitleaf"))));
    }
}
