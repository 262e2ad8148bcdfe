package bitterend;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** The walls of the house: which room may look into which. DEVELOPERS.md draws the same arrows. */
final class ArchitectureTest {

    private static final String OURS = "bitterend..";
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("bitterend");

    @Test
    void noCircles() {
        slices().matching("bitterend.(**)")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void finding_importsNothingOfOurs() {
        mayOnlyUse("bitterend.finding..").check(HOUSE);
    }

    @Test
    void measure_usesFinding() {
        mayOnlyUse("bitterend.measure..", "bitterend.finding..").check(HOUSE);
    }

    @Test
    void catalogue_usesMeasure() {
        mayOnlyUse("bitterend.catalogue..", "bitterend.measure..", "bitterend.finding..")
                .check(HOUSE);
    }

    @Test
    void demand_usesCatalogue() {
        mayOnlyUse("bitterend.demand..", "bitterend.catalogue..", "bitterend.measure..", "bitterend.finding..")
                .check(HOUSE);
    }

    @Test
    void stock_usesCatalogue() {
        mayOnlyUse("bitterend.stock..", "bitterend.catalogue..", "bitterend.measure..", "bitterend.finding..")
                .check(HOUSE);
    }

    @Test
    void packing_usesDemandAndStock() {
        mayOnlyUse(
                        "bitterend.packing..",
                        "bitterend.demand..",
                        "bitterend.stock..",
                        "bitterend.catalogue..",
                        "bitterend.measure..",
                        "bitterend.finding..")
                .check(HOUSE);
    }

    @Test
    void quoting_usesPackingAndHistoryButNoEngine() {
        mayOnlyUse(
                        "bitterend.quoting..",
                        "bitterend.packing",
                        "bitterend.packing.order",
                        "bitterend.history..",
                        "bitterend.demand..",
                        "bitterend.stock..",
                        "bitterend.catalogue..",
                        "bitterend.measure..",
                        "bitterend.finding..")
                .check(HOUSE);
    }

    @Test
    void packingItself_seesNoEngine() {
        mayOnlyUse(
                        "bitterend.packing",
                        "bitterend.packing.proof",
                        "bitterend.demand..",
                        "bitterend.stock..",
                        "bitterend.catalogue..",
                        "bitterend.measure..",
                        "bitterend.finding..")
                .check(HOUSE);
    }

    @Test
    void pageOfAReport_knowsNothingOfRope() {
        mayOnlyUse("bitterend.report.page", "bitterend.finding..").check(HOUSE);
    }

    @Test
    void proof_isRecordsAlone() {
        mayOnlyUse("bitterend.packing.proof").check(HOUSE);
    }

    @Test
    void enginesAndChecker_doNotSeeOneAnother() {
        slices().matching("bitterend.packing.(patterns|loads|order|check|greedy|bench)..")
                .should()
                .notDependOnEachOther()
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void checker_knowsNoSolver() {
        none(
                        "bitterend.packing.check..",
                        "bitterend.packing.linear..",
                        "bitterend.packing.loads..",
                        "bitterend.packing.patterns..",
                        "bitterend.packing.bench..",
                        "bitterend.packing.model..",
                        "bitterend.packing.rules..",
                        "bitterend.packing.search..",
                        "bitterend.packing.greedy..",
                        "bitterend.packing.order..",
                        "bitterend.packing.strategy..",
                        "org.optaplanner..")
                .check(HOUSE);
    }

    @Test
    void onlyStrategy_seesEngines() {
        noClasses()
                .that()
                .resideInAPackage(OURS)
                .and()
                .resideOutsideOfPackages(
                        "bitterend.packing.strategy..",
                        "bitterend.packing.model..",
                        "bitterend.packing.rules..",
                        "bitterend.packing.search..",
                        "bitterend.packing.patterns..",
                        "bitterend.packing.loads..",
                        "bitterend.packing.bench..",
                        "bitterend.packing.greedy..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "bitterend.packing.model..",
                        "bitterend.packing.rules..",
                        "bitterend.packing.search..",
                        "bitterend.packing.patterns..",
                        "bitterend.packing.loads..",
                        "bitterend.packing.bench..",
                        "bitterend.packing.greedy..")
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void linearPrograms_areForTheirEngines() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "bitterend.packing.linear..", "bitterend.packing.patterns..", "bitterend.packing.loads..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("bitterend.packing.linear..")
                .check(HOUSE);
        none("bitterend.packing.linear..", "bitterend.(demand|stock|catalogue|measure|finding)..")
                .check(HOUSE);
    }

    @Test
    void model_doesNotSeeRulesOrSearch() {
        none("bitterend.packing.model..", "bitterend.packing.rules..", "bitterend.packing.search..")
                .check(HOUSE);
    }

    @Test
    void rules_doNotSeeSearch() {
        none("bitterend.packing.rules..", "bitterend.packing.search..").check(HOUSE);
    }

    @Test
    void optaplanner_staysInItsRooms() {
        onlyIn(
                        "org.optaplanner..",
                        "bitterend.packing.model..",
                        "bitterend.packing.rules..",
                        "bitterend.packing.search..")
                .check(HOUSE);
    }

    @Test
    void jackson_staysInExchange() {
        onlyIn("com.fasterxml.jackson..", "bitterend.exchange..").check(HOUSE);
    }

    @Test
    void jdbc_staysInStore() {
        onlyIn("java.sql..", "bitterend.store..").check(HOUSE);
    }

    @Test
    void picocli_staysInCli() {
        onlyIn("picocli..", "bitterend.cli..").check(HOUSE);
    }

    @Test
    void standardStreams_onlyInCli() {
        noClasses()
                .that()
                .resideOutsideOfPackage("bitterend.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .allowEmptyShould(true)
                .check(HOUSE);
    }

    @Test
    void work_knowsNoCommandNoPageAndNoStore() {
        none("bitterend.work..", "bitterend.cli..", "bitterend.report..", "bitterend.store..")
                .check(HOUSE);
    }

    @Test
    void onlyFrontEnds_seeWork() {
        onlyIn("bitterend.work..", "bitterend.work..", "bitterend.cli..").check(HOUSE);
    }

    @Test
    void report_knowsNoFileAndNoCommand() {
        none("bitterend.report..", "bitterend.exchange..", "bitterend.store..", "bitterend.cli..")
                .check(HOUSE);
    }

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
