package stokewell;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of docs/design.md: each arrow goes one way, and the engine is silent. */
class ArchitectureTest {

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("test-classes"))
            .importPackages("stokewell");

    /** Packages, and those that may use them beside themselves. */
    private record Use(String of, String by) {}

    private static final String PARTS =
            "stokewell.fire stokewell.loop stokewell.store stokewell.emitter stokewell.building stokewell.control";
    private static final String ANSWERS = "stokewell.check stokewell.size stokewell.fit stokewell.plan stokewell.sheet";
    private static final String RUNS = "stokewell.network stokewell.run " + ANSWERS;

    private static Stream<Use> uses() {
        return Stream.of(
                new Use(ANSWERS, ""),
                new Use("stokewell.run", ANSWERS),
                new Use("stokewell.network", "stokewell.run " + ANSWERS),
                new Use(PARTS, RUNS),
                new Use("stokewell.balance", PARTS + " " + RUNS),
                new Use("stokewell.solve", RUNS),
                new Use("stokewell.rig", RUNS));
    }

    @ParameterizedTest
    @MethodSource("uses")
    void nothingOnTheLeftImportsWhatIsOnItsRight(Use use) {
        noClasses()
                .that()
                .resideInAPackage("stokewell..")
                .and()
                .resideOutsideOfPackages((use.of + " " + use.by).split(" "))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(use.of.split(" "))
                .check(ENGINE);
    }

    @Test
    void theSolverKnowsNoHeat() {
        classes()
                .that()
                .resideInAPackage("stokewell.solve")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("stokewell.solve", "java.lang..", "java.util..")
                .check(ENGINE);
    }

    @Test
    void theEngineDoesNoInputOrOutputAndReadsNoClock() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..", "java.nio.file..", "java.net..", "java.sql..", "java.awt..", "java.util.logging..")
                .orShould()
                .callMethod(java.time.Clock.class, "systemDefaultZone")
                .orShould()
                .callMethod(java.time.LocalDateTime.class, "now")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .because("files, clocks and the network enter through parameters")
                .check(ENGINE);
    }

    @Test
    void noClassIsADrawer() {
        noClasses()
                .should()
                .haveSimpleNameEndingWith("Util")
                .orShould()
                .haveSimpleNameEndingWith("Utils")
                .orShould()
                .haveSimpleNameEndingWith("Helper")
                .orShould()
                .haveSimpleNameEndingWith("Manager")
                .orShould()
                .haveSimpleNameEndingWith("Impl")
                .check(ENGINE);
    }
}
