package bitterend;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.toCollection;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.PlantedLookAtQuotes;
import bitterend.cli.PlainFront;
import bitterend.cli.PlantedPlanning;
import bitterend.history.PlantedLookAtTheStrategy;
import bitterend.packing.PackingProblem;
import bitterend.work.IssuePlan;
import bitterend.work.KeepPlan;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Which package may use which. DEVELOPERS.md draws the same arrows. */
final class ArchitectureTest {

    private static final String OURS = "bitterend..";
    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("bitterend");

    /** What everything about ropes, orders and reels is told in. */
    private static final String FACTS = "catalogue demand finding measure stock stock.worth ";

    /** Every package, and the packages of ours that it may use beside itself. */
    private static final Map<String, String> MAY_USE = Map.ofEntries(
            Map.entry("finding", "measure"),
            Map.entry("measure", ""),
            Map.entry("catalogue", "finding measure"),
            Map.entry("demand", "catalogue finding measure"),
            Map.entry("demand.calibration", "catalogue demand finding measure"),
            Map.entry("stock", "catalogue finding measure"),
            Map.entry("stock.worth", "catalogue finding measure stock"),
            Map.entry("packing", FACTS + "packing.proof"),
            Map.entry("packing.proof", ""),
            Map.entry("packing.linear", ""),
            Map.entry("packing.effort", "packing.linear"),
            Map.entry("packing.patterns", "packing.effort packing.linear packing.patterns.knapsack"),
            Map.entry("packing.patterns.knapsack", "packing.effort packing.linear"),
            Map.entry("packing.loads", FACTS + "packing packing.effort packing.linear packing.proof"),
            Map.entry("packing.greedy", FACTS + "packing packing.bench"),
            Map.entry("packing.bench", FACTS + "packing"),
            Map.entry("packing.order", FACTS + "packing packing.bench"),
            Map.entry("packing.explain", FACTS + "packing packing.bench"),
            Map.entry("packing.check", FACTS + "packing packing.proof"),
            Map.entry("packing.model", FACTS + "packing"),
            Map.entry("packing.rules", FACTS + "packing packing.model"),
            Map.entry("packing.search", FACTS + "packing packing.model packing.rules"),
            Map.entry(
                    "packing.strategy",
                    FACTS + "packing packing.bench packing.check packing.greedy packing.loads packing.order "
                            + "packing.patterns packing.search"),
            Map.entry("day", FACTS + "packing"),
            Map.entry("history", "demand finding measure"),
            Map.entry("buying", FACTS + "history packing"),
            Map.entry("quoting", FACTS + "history packing packing.order quoting.sharing"),
            Map.entry("quoting.sharing", FACTS + "packing"),
            Map.entry("store", "finding measure stock"),
            Map.entry(
                    "exchange",
                    FACTS + "buying day demand.calibration exchange.form history packing packing.explain packing.proof "
                            + "quoting quoting.sharing"),
            Map.entry("exchange.form", "finding measure"),
            Map.entry("work", FACTS + "buying day exchange history packing packing.check"),
            Map.entry(
                    "work.plans",
                    FACTS + "buying day exchange packing packing.check packing.explain packing.strategy quoting "
                            + "work work.orders"),
            Map.entry("work.orders", FACTS + "day exchange packing work"),
            Map.entry("work.rack", FACTS + "day exchange packing work work.orders"),
            Map.entry(
                    "work.trade",
                    FACTS + "buying day demand.calibration exchange history packing packing.strategy quoting "
                            + "quoting.sharing work work.plans"),
            Map.entry("report.page", "finding"),
            Map.entry(
                    "report",
                    FACTS + "buying day demand.calibration packing packing.explain quoting quoting.sharing "
                            + "report.page"),
            Map.entry("report.sheet", FACTS + "packing report report.page"),
            Map.entry(
                    "cli",
                    FACTS + "buying day demand.calibration exchange packing packing.explain packing.strategy quoting "
                            + "report report.page report.sheet store work work.orders work.plans work.rack work.trade"));

    /** Whoever may calculate in binary fractions: linear programs, and the formulas with a name. */
    private static final Pattern IN_FRACTIONS = Pattern.compile("packing/(linear|patterns|loads)/.*"
            + "|catalogue/(EyeFormula|TeardropFormula|SeizingFormula)[.]java"
            + "|demand/calibration/(Prediction|Difference)Formula[.]java"
            + "|stock/Gauge[.]java"
            + "|stock/worth/CoilFormula[.]java|packing/check/Curve(Formula|Check)[.]java"
            + "|buying/StandardErrors[.]java"
            // choices of a search: no length and no price rests on them
            + "|packing/(model/RunOfReel|greedy/Job)[.]java");

    private static final Pattern COMMENT_OR_TEXT =
            Pattern.compile("/[*].*?[*]/|//[^\\n]*|\"(?:\\\\.|[^\"\\\\\\n])*\"", Pattern.DOTALL);
    private static final Pattern FRACTION = Pattern.compile("\\b(?:double|float|Double|Float)\\b");

    @TestFactory
    Stream<DynamicTest> everyPackage_usesOnlyWhatItMay() {
        return MAY_USE.keySet().stream()
                .sorted()
                .map(name ->
                        DynamicTest.dynamicTest(name, () -> dependencies(name).check(PROGRAM)));
    }

    @Test
    void everyPackage_isListed() {
        Set<String> there = PROGRAM.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith("bitterend."))
                .map(name -> name.substring("bitterend.".length()))
                .collect(toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(MAY_USE.keySet()), there);
    }

    @Test
    void packages_makeNoCircle() {
        slices().matching("bitterend.(**)").should().beFreeOfCycles().check(PROGRAM);
    }

    @Test
    void buyingThatLooksAtQuotes_isFound() {
        assertBroken("buying", PlantedLookAtQuotes.class);
    }

    @Test
    void historyThatLooksAtTheStrategy_isFound() {
        assertBroken("history", PlantedLookAtTheStrategy.class);
    }

    /**
     * What a front may use of packages that do something: values, that is records, enums and what holds them together. Of
     * their services these alone, and the list only ever gets shorter.
     */
    private static final Set<String> SERVICES_OF_FRONTS = Set.of(
            // answers to programs
            "exchange.AnswerJson",
            "exchange.BuyJson",
            "exchange.CoilValuesJson",
            "exchange.ExplainJson",
            "exchange.OrdersJson",
            "exchange.PackingNoteForm",
            "exchange.PlanJson",
            "exchange.QuoteJson",
            "exchange.ReelsExport",
            "exchange.StockJson",
            "exchange.StudyJson",
            // files that are named on the command line, read or written
            "exchange.QuoteReader",
            "exchange.QuoteRequestFile",
            "exchange.QuoteRequestReading",
            "exchange.WholeFile",
            // words and figures as they are typed and told
            "exchange.FlawText",
            "exchange.StockText",
            "packing.Words");

    /** Interfaces of services; any other one holds values together. */
    private static final Set<String> DOING = Set.of(
            "bitterend.packing.Packer",
            "bitterend.stock.Ledger",
            "bitterend.stock.Ledger$Books",
            "bitterend.stock.Ledger$Stock",
            "bitterend.stock.LedgerPlace",
            "bitterend.stock.StockValue");

    /** Questions of a rack that is imagined, and one that is read as it was written, are made elsewhere. */
    @Test
    void questionOfTheDay_isMadeInOnePlace() {
        noClasses()
                .that()
                .resideOutsideOfPackage("bitterend.packing")
                .and()
                .doNotHaveFullyQualifiedName("bitterend.work.DayProblem")
                .and()
                .doNotHaveFullyQualifiedName("bitterend.exchange.FactsForm")
                .and()
                .doNotHaveFullyQualifiedName("bitterend.buying.SimulatedRack")
                .and()
                .doNotHaveFullyQualifiedName("bitterend.quoting.sharing.NewRope")
                .should()
                .callConstructorWhere(target(owner(type(PackingProblem.class))))
                .check(PROGRAM);
    }

    @Test
    void fronts_useTheServicesOfWorkAlone() {
        fronts().check(PROGRAM);
    }

    /** A plan is kept and issued by the verb that knows what goes with it, such as sheets that are called back. */
    @Test
    void plans_areKeptAndIssuedByVerbs() {
        keeping().check(PROGRAM);
        assertTrue(keeping()
                .evaluate(new ClassFileImporter().importClasses(PlantedPlanning.keeping()))
                .hasViolation());
    }

    private static ArchRule keeping() {
        return noClasses()
                .that()
                .resideInAPackage("bitterend.cli..")
                .should()
                .callConstructorWhere(target(owner(type(KeepPlan.class))).or(target(owner(type(IssuePlan.class)))));
    }

    @Test
    void secondFront_isHeldToTheSame() {
        fronts().check(new ClassFileImporter().importClasses(PlainFront.class));
    }

    @Test
    void frontThatPlansBooksOrAsks_isFound() {
        for (Class<?> planted : List.of(PlantedPlanning.all())) {
            assertTrue(
                    fronts().evaluate(new ClassFileImporter().importClasses(planted))
                            .hasViolation(),
                    planted.getName());
        }
    }

    /** As it is written, too: the compiler copies constants, and leaves no trace of where they came from. */
    @Test
    void store_isImportedWhereAFrontFindsItsShop() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/bitterend/cli"))) {
            List<String> found = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> read(file).contains("bitterend.store"))
                    .map(file -> file.getFileName().toString())
                    .toList();
            assertEquals(List.of("ShopArgument.java"), found);
        }
    }

    @Test
    void store_isNamedWhereAFrontFindsItsShop() {
        noClasses()
                .that()
                .resideInAPackage("bitterend.cli..")
                .and()
                .doNotHaveSimpleName("ShopArgument")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("bitterend.store..")
                .check(PROGRAM);
    }

    private static ArchRule fronts() {
        return noClasses()
                .that()
                .resideInAPackage("bitterend.cli..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe("do the work", ArchitectureTest::isBarredFromFronts));
    }

    private static boolean isBarredFromFronts(JavaClass used) {
        boolean ofFronts = Stream.of("cli", "work", "report", "finding", "measure")
                .anyMatch(name -> used.getPackageName().equals("bitterend." + name)
                        || used.getPackageName().startsWith("bitterend." + name + "."));
        boolean says = used.isRecord()
                || used.isEnum()
                || used.isAnnotation()
                || used.isAssignableTo(Throwable.class)
                || (used.isInterface() && !DOING.contains(used.getName()));
        return used.getPackageName().startsWith("bitterend.")
                && !ofFronts
                && !says
                && !SERVICES_OF_FRONTS.contains(used.getName().substring("bitterend.".length()));
    }

    @Test
    void fractions_areForLinearProgramsAndFormulas() throws IOException {
        Path sources = Path.of("src/main/java/bitterend");
        try (Stream<Path> files = Files.walk(sources)) {
            List<String> found = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> calculatesInFractions(
                            sources.relativize(file).toString().replace('\\', '/'), read(file)))
                    .map(Path::toString)
                    .toList();
            assertEquals(List.of(), found);
        }
    }

    @Test
    void moneyInFractions_isFound() {
        String planted = "record Planted(double money) {}";
        assertTrue(calculatesInFractions("buying/Planted.java", planted));
        assertTrue(!calculatesInFractions("packing/linear/Planted.java", planted));
        assertTrue(
                !calculatesInFractions("buying/Planted.java", "/** A double braid. */ record Planted(long money) {}"));
    }

    @Test
    void linear_showsOneType() {
        classes()
                .that()
                .resideInAPackage("bitterend.packing.linear")
                .and()
                .arePublic()
                .and()
                .areTopLevelClasses()
                .should()
                .haveSimpleName("Simplex")
                .check(PROGRAM);
    }

    @Test
    void packages_ofTheSolverAreForTheStrategyAlone() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "bitterend.packing.strategy..",
                        "bitterend.packing.model..",
                        "bitterend.packing.rules..",
                        "bitterend.packing.search..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "bitterend.packing.model..", "bitterend.packing.rules..", "bitterend.packing.search..")
                .check(PROGRAM);
    }

    @Test
    void optaplanner_staysInItsPackages() {
        onlyIn(
                        "org.optaplanner..",
                        "bitterend.packing.model..",
                        "bitterend.packing.rules..",
                        "bitterend.packing.search..")
                .check(PROGRAM);
    }

    @Test
    void jackson_staysInExchange() {
        onlyIn("com.fasterxml.jackson..", "bitterend.exchange..").check(PROGRAM);
    }

    @Test
    void jdbc_staysInStore() {
        onlyIn("java.sql..", "bitterend.store..").check(PROGRAM);
    }

    @Test
    void picocli_staysInCli() {
        onlyIn("picocli..", "bitterend.cli..").check(PROGRAM);
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
                .check(PROGRAM);
    }

    private static ArchRule dependencies(String name) {
        String used = MAY_USE.get(name);
        String[] allowed = Stream.concat(Stream.of(name), used.isEmpty() ? Stream.of() : Arrays.stream(used.split(" ")))
                .map(other -> "bitterend." + other)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage("bitterend." + name)
                .should()
                .dependOnClassesThat(resideInAPackage(OURS).and(resideOutsideOfPackages(allowed)));
    }

    private static void assertBroken(String name, Class<?> planted) {
        assertTrue(dependencies(name)
                .evaluate(new ClassFileImporter().importClasses(planted))
                .hasViolation());
    }

    private static ArchRule onlyIn(String library, String... packages) {
        return noClasses()
                .that()
                .resideInAPackage(OURS)
                .and()
                .resideOutsideOfPackages(packages)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    private static boolean calculatesInFractions(String file, String source) {
        return !IN_FRACTIONS.matcher(file).matches()
                && FRACTION.matcher(COMMENT_OR_TEXT.matcher(source).replaceAll(""))
                        .find();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
