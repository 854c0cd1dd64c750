package org.honorsdue.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;

/** The floor plan of ARCHITECTURE.md, held against the code. */
@AnalyzeClasses(packages = "org.honorsdue", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorPlanTest {
    @ArchTest
    static final ArchRule arrows_point_down_only = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("org.honorsdue..")
            .withOptionalLayers(true)
            .layer("reference")
            .definedBy("org.honorsdue.reference..")
            .layer("service")
            .definedBy("org.honorsdue.service..")
            .layer("reading")
            .definedBy("org.honorsdue.reading..")
            .layer("determination")
            .definedBy("org.honorsdue.determination..")
            .layer("insignia")
            .definedBy("org.honorsdue.insignia..")
            .layer("documents")
            .definedBy("org.honorsdue.documents..")
            .layer("scanning")
            .definedBy("org.honorsdue.scanning..")
            .layer("casebook")
            .definedBy("org.honorsdue.casebook..")
            .layer("workbench")
            .definedBy("org.honorsdue.workbench..")
            .layer("cli")
            .definedBy("org.honorsdue.cli..")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("workbench")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("casebook")
            .mayOnlyBeAccessedByLayers("workbench", "cli")
            .whereLayer("documents")
            .mayOnlyBeAccessedByLayers("casebook", "workbench", "cli")
            .whereLayer("scanning")
            .mayOnlyBeAccessedByLayers("casebook", "workbench", "cli")
            .whereLayer("insignia")
            .mayOnlyBeAccessedByLayers("documents", "casebook", "workbench", "cli")
            .whereLayer("determination")
            .mayOnlyBeAccessedByLayers("insignia", "documents", "scanning", "casebook", "workbench", "cli")
            .whereLayer("reading")
            .mayOnlyBeAccessedByLayers("documents", "scanning", "casebook", "workbench", "cli")
            .as("arrows point down only")
            .because("a picture becomes entries, entries become facts, facts become findings, and nothing flows back:"
                    + " a correction is a new entry, and everything after it is computed again");

    @ArchTest
    static final ArchRule the_law_reads_no_clock_and_no_file = noClasses()
            .that()
            .resideInAnyPackage("org.honorsdue.determination..", "org.honorsdue.service..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.net..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .because("today is a parameter: the same paper and the same date give the same sheet for ever");

    @ArchTest
    static final ArchRule no_drawers = noClasses()
            .should()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .resideInAnyPackage("..util..", "..common..", "..helper..", "..manager..")
            .because("a helper lives with the type it helps, where a reader looks for it");

    @ArchTest
    static final ArchRule modules_have_no_cycles = slices().matching("org.honorsdue.(*)..")
            .should()
            .beFreeOfCycles()
            .because("a subject that needs another which needs it back is one subject");
}
