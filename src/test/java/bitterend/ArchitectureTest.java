package bitterend;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The walls of the house: which room may look into which. DEVELOPERS.md draws the same arrows. */
@AnalyzeClasses(packages = "bitterend", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    private static final String OURS = "bitterend..";

    @ArchTest
    static final ArchRule noCircles =
            slices().matching("bitterend.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule finding_importsNothingOfOurs = mayOnlyUse("bitterend.finding..");

    @ArchTest
    static final ArchRule measure_usesFinding = mayOnlyUse("bitterend.measure..", "bitterend.finding..");

    @ArchTest
    static final ArchRule catalogue_usesMeasure =
            mayOnlyUse("bitterend.catalogue..", "bitterend.measure..", "bitterend.finding..");

    @ArchTest
    static final ArchRule demand_usesCatalogue =
            mayOnlyUse("bitterend.demand..", "bitterend.catalogue..", "bitterend.measure..", "bitterend.finding..");

    @ArchTest
    static final ArchRule stock_usesCatalogue =
            mayOnlyUse("bitterend.stock..", "bitterend.catalogue..", "bitterend.measure..", "bitterend.finding..");

    @ArchTest
    static final ArchRule packing_usesDemandAndStock = mayOnlyUse(
            "bitterend.packing..",
            "bitterend.demand..",
            "bitterend.stock..",
            "bitterend.catalogue..",
            "bitterend.measure..",
            "bitterend.finding..");

    @ArchTest
    static final ArchRule packingItself_seesNoEngine = none("bitterend.packing", "bitterend.packing.(*)..");

    @ArchTest
    static final ArchRule enginesAndChecker_doNotSeeOneAnother = slices().matching(
                    "bitterend.packing.(patterns|order|check|greedy)..")
            .should()
            .notDependOnEachOther()
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule checker_knowsNoSolver = none(
            "bitterend.packing.check..",
            "bitterend.packing.patterns..",
            "bitterend.packing.model..",
            "bitterend.packing.rules..",
            "bitterend.packing.search..",
            "bitterend.packing.greedy..",
            "bitterend.packing.order..",
            "bitterend.packing.strategy..",
            "org.optaplanner..");

    @ArchTest
    static final ArchRule onlyStrategy_seesEngines = noClasses()
            .that()
            .resideInAPackage(OURS)
            .and()
            .resideOutsideOfPackages(
                    "bitterend.packing.strategy..",
                    "bitterend.packing.model..",
                    "bitterend.packing.rules..",
                    "bitterend.packing.search..",
                    "bitterend.packing.patterns..",
                    "bitterend.packing.greedy..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "bitterend.packing.model..",
                    "bitterend.packing.rules..",
                    "bitterend.packing.search..",
                    "bitterend.packing.patterns..",
                    "bitterend.packing.greedy..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule model_doesNotSeeRulesOrSearch =
            none("bitterend.packing.model..", "bitterend.packing.rules..", "bitterend.packing.search..");

    @ArchTest
    static final ArchRule rules_doNotSeeSearch = none("bitterend.packing.rules..", "bitterend.packing.search..");

    @ArchTest
    static final ArchRule optaplanner_staysInItsRooms = onlyIn(
            "org.optaplanner..",
            "bitterend.packing.model..",
            "bitterend.packing.rules..",
            "bitterend.packing.search..");

    @ArchTest
    static final ArchRule jackson_staysInExchange = onlyIn("com.fasterxml.jackson..", "bitterend.exchange..");

    @ArchTest
    static final ArchRule jdbc_staysInStore = onlyIn("java.sql..", "bitterend.store..");

    @ArchTest
    static final ArchRule picocli_staysInCli = onlyIn("picocli..", "bitterend.cli..");

    @ArchTest
    static final ArchRule standardStreams_onlyInCli = noClasses()
            .that()
            .resideOutsideOfPackage("bitterend.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .allowEmptyShould(true);

    private static ArchRule mayOnlyUse(String room, String... others) {
        String[] allowed = new String[others.length + 1];
        allowed[0] = room;
        System.arraycopy(others, 0, allowed, 1, others.length);
        return noClasses()
                .that()
                .resideInAPackage(room)
                .should()
                .dependOnClassesThat(resideInAPackage(OURS).and(resideOutsideOfPackages(allowed)))
                .allowEmptyShould(true);
    }

    private static ArchRule none(String room, String... forbidden) {
        return noClasses()
                .that()
                .resideInAPackage(room)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden)
                .allowEmptyShould(true);
    }

    private static ArchRule onlyIn(String library, String... rooms) {
        return noClasses()
                .that()
                .resideInAPackage(OURS)
                .and()
                .resideOutsideOfPackages(rooms)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .allowEmptyShould(true);
    }
}
