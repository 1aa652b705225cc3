package kitleaf;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keeps the arrows: words -> basket -> sizing -> sheet -> press, with the commands above them all. */
class ArchitectureTests {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("kitleaf");

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
    void press_knows_nothing_of_baskets() {
        noClasses().that().resideInAPackage("kitleaf.press..")
                .should().dependOnClassesThat().resideInAnyPackage("kitleaf.basket..", "kitleaf.sizing..", "kitleaf.sheet..",
                        "kitleaf.command..", "freemarker..", "com.fasterxml..", "picocli..")
                .check(CLASSES);
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
}
