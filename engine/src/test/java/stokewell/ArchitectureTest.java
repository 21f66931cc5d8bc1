package stokewell;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The rules of docs/design.md: each arrow goes one way, and the engine is silent. */
class ArchitectureTest {

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("test-classes"))
            .importPackages("stokewell");

    @Test
    void nothingOnTheLeftImportsWhatIsOnItsRight() {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("stokewell..")
                .withOptionalLayers(true)
                .layer("matter")
                .definedBy("stokewell.matter")
                .layer("transfer")
                .definedBy("stokewell.transfer")
                .layer("rig")
                .definedBy("stokewell.rig")
                .layer("weather")
                .definedBy("stokewell.weather")
                .layer("solve")
                .definedBy("stokewell.solve")
                .layer("balance")
                .definedBy("stokewell.balance")
                .layer("parts")
                .definedBy(
                        "stokewell.fire",
                        "stokewell.loop",
                        "stokewell.store",
                        "stokewell.emitter",
                        "stokewell.building",
                        "stokewell.control")
                .layer("network")
                .definedBy("stokewell.network")
                .layer("run")
                .definedBy("stokewell.run")
                .layer("answers")
                .definedBy("stokewell.check", "stokewell.size", "stokewell.fit", "stokewell.plan", "stokewell.sheet")
                .whereLayer("answers")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("run")
                .mayOnlyBeAccessedByLayers("answers")
                .whereLayer("network")
                .mayOnlyBeAccessedByLayers("run", "answers")
                .whereLayer("parts")
                .mayOnlyBeAccessedByLayers("network", "run", "answers")
                .whereLayer("balance")
                .mayOnlyBeAccessedByLayers("parts", "network", "run", "answers")
                .whereLayer("solve")
                .mayOnlyBeAccessedByLayers("network", "run", "answers")
                .whereLayer("rig")
                .mayOnlyBeAccessedByLayers("network", "run", "answers")
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
