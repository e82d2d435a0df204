package org.capwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rooms of the program: each knows only those before it, and the core knows no toolkit. No exceptions. */
class ArchitectureTest {
    private static final List<String> ROOMS = List.of("units", "geom", "drawing", "metal", "job", "part", "blank",
            "swing", "air", "check", "layout", "fitup", "stock", "price", "export", "store", "cli", "desk");
    private static final List<String> OUTSIDE_THE_CORE = List.of("export", "store", "cli", "desk");
    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("org.capwright");

    @Test
    void everyClassIsInARoom() {
        classes().should().resideInAnyPackage(packages(ROOMS)).check(PROGRAM);
    }

    @TestFactory
    Stream<DynamicTest> eachRoomImportsOnlyEarlierOnes() {
        return ROOMS.stream().limit(ROOMS.size() - 1L).map(room -> DynamicTest.dynamicTest(room, () -> {
            List<String> later = ROOMS.subList(ROOMS.indexOf(room) + 1, ROOMS.size());
            noClasses().that().resideInAPackage("org.capwright." + room + "..")
                    .should().dependOnClassesThat().resideInAnyPackage(packages(later))
                    .allowEmptyShould(true).check(PROGRAM);
        }));
    }

    @Test
    void theCoreKnowsNoToolkit() {
        List<String> core = ROOMS.stream().filter(room -> !OUTSIDE_THE_CORE.contains(room)).toList();
        noClasses().that().resideInAnyPackage(packages(core))
                .should().dependOnClassesThat().resideInAnyPackage("javafx..", "org.apache.pdfbox..", "tools.jackson..",
                        "com.fasterxml..", "org.apache.commons.csv..", "picocli..")
                .check(PROGRAM);
    }

    @Test
    void noRoomsGoInCircles() {
        slices().matching("org.capwright.(*)..").should().beFreeOfCycles().check(PROGRAM);
    }

    private static String[] packages(List<String> rooms) {
        return rooms.stream().map(room -> "org.capwright." + room + "..").toArray(String[]::new);
    }
}
