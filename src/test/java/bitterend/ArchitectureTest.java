package bitterend;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Objects.requireNonNull;
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

    /** Every package, and the packages of ours that it may use beside itself. */
    private static final Map<String, String> MAY_USE = Map.ofEntries(
            Map.entry("finding", "measure"),
            Map.entry("measure", ""),
            Map.entry("measure.formula", "measure"),
            Map.entry("threads", ""),
            Map.entry("catalogue", "measure"),
            Map.entry("demand", "catalogue finding measure"),
            Map.entry("demand.calibration", "catalogue demand finding measure"),
            Map.entry("stock", "catalogue finding measure"),
            Map.entry("stock.worth", "measure stock"),
            Map.entry("packing", "catalogue demand measure packing.proof stock"),
            Map.entry("packing.proof", ""),
            Map.entry("packing.linear", ""),
            Map.entry("packing.effort", "packing.linear"),
            Map.entry("packing.cells", ""),
            Map.entry(
                    "packing.patterns",
                    "packing.effort packing.linear packing.patterns.fewest packing.patterns.knapsack packing.proof"),
            Map.entry("packing.patterns.fewest", "packing.cells packing.effort packing.linear packing.proof"),
            Map.entry("packing.patterns.knapsack", "packing.effort"),
            Map.entry(
                    "packing.loads",
                    "catalogue demand measure packing packing.cells packing.effort packing.linear packing.proof stock"),
            Map.entry("packing.greedy", "demand packing packing.bench"),
            Map.entry("packing.bench", "demand measure packing stock"),
            Map.entry("packing.order", "demand finding measure packing packing.bench stock"),
            Map.entry("packing.explain", "demand finding measure packing packing.bench stock"),
            Map.entry("packing.check", "catalogue demand finding measure packing packing.proof stock stock.worth"),
            Map.entry("packing.model", "catalogue demand measure packing stock"),
            Map.entry("packing.rules", "demand packing packing.model stock"),
            Map.entry("packing.search", "finding measure packing packing.model packing.rules"),
            Map.entry(
                    "packing.strategy",
                    "catalogue demand finding measure packing packing.bench packing.check "
                            + "packing.greedy packing.loads packing.order packing.patterns packing.search stock threads"),
            Map.entry("day", "demand finding measure packing packing.order stock stock.worth"),
            Map.entry("history", "demand measure"),
            Map.entry("market", "finding measure packing stock"),
            Map.entry("buying", "catalogue demand finding history market measure packing stock stock.worth threads"),
            Map.entry("buying.reorder", "buying buying.steady catalogue demand finding history market measure stock"),
            Map.entry("buying.steady", "buying catalogue demand history market measure stock stock.worth threads"),
            Map.entry(
                    "quoting",
                    "catalogue demand finding market measure packing packing.order quoting.sharing stock threads"),
            Map.entry("quoting.sharing", "catalogue demand measure packing stock"),
            Map.entry("quoting.life", "finding measure quoting"),
            Map.entry("quoting.after", "finding measure quoting stock"),
            Map.entry("store", "finding measure stock"),
            Map.entry(
                    "exchange",
                    "buying buying.reorder buying.steady catalogue day demand demand.calibration exchange.form exchange.mapping finding "
                            + "history market measure measure.formula packing packing.explain packing.proof quoting "
                            + "quoting.after quoting.sharing stock stock.worth"),
            Map.entry("exchange.quotes", "exchange exchange.form finding measure quoting quoting.life report.page"),
            Map.entry("exchange.mapping", "catalogue exchange.form finding measure"),
            Map.entry("exchange.form", "exchange.workbook finding measure"),
            Map.entry("exchange.workbook", "finding"),
            Map.entry(
                    "work",
                    "catalogue day demand exchange exchange.form finding history market measure packing packing.check stock "
                            + "stock.worth"),
            Map.entry(
                    "work.plans",
                    "buying catalogue day demand exchange finding market measure packing packing.check "
                            + "packing.explain packing.strategy quoting stock threads work work.orders"),
            Map.entry("work.orders", "catalogue day demand exchange finding measure packing stock work"),
            Map.entry(
                    "work.rack",
                    "buying catalogue day demand exchange finding history market measure packing stock work "
                            + "work.orders"),
            Map.entry(
                    "work.quotes",
                    "catalogue day demand exchange exchange.quotes finding measure packing quoting quoting.after "
                            + "quoting.life stock work work.orders work.rack work.trade"),
            Map.entry(
                    "work.trade",
                    "buying buying.reorder buying.steady catalogue day demand demand.calibration exchange finding history market measure "
                            + "packing packing.strategy quoting quoting.sharing stock stock.worth threads work work.plans"),
            Map.entry("work.imports", "demand exchange exchange.form exchange.mapping finding stock work work.orders"),
            Map.entry("report.page", "finding"),
            Map.entry("report.table", "finding"),
            Map.entry(
                    "report",
                    "buying buying.reorder buying.steady catalogue day demand demand.calibration finding market measure packing "
                            + "packing.explain packing.order quoting quoting.after quoting.life quoting.sharing "
                            + "report.page report.table stock stock.worth"),
            Map.entry("report.sheet", "catalogue demand finding measure packing report report.page stock"),
            Map.entry(
                    "front",
                    "buying.reorder day demand exchange exchange.mapping exchange.quotes finding measure packing quoting quoting.life "
                            + "report report.page report.sheet report.table work work.orders work.plans work.quotes "
                            + "work.trade"),
            Map.entry(
                    "serve",
                    "buying buying.reorder catalogue day demand exchange exchange.mapping exchange.quotes finding front market measure packing "
                            + "packing.strategy quoting quoting.life report report.page report.sheet report.table stock work "
                            + "work.imports work.orders work.plans work.quotes work.rack work.trade"),
            Map.entry(
                    "cli",
                    "buying buying.reorder buying.steady catalogue day demand demand.calibration exchange exchange.mapping exchange.quotes "
                            + "finding front measure packing "
                            + "packing.strategy quoting quoting.after quoting.life report report.page report.sheet report.table serve stock store work "
                            + "work.imports work.orders work.plans work.quotes work.rack work.trade"));

    /** Whoever may calculate in binary fractions: linear programs, and the formulas with a name. */
    private static final Pattern IN_FRACTIONS = Pattern.compile("packing/(linear|patterns|loads)/.*"
            + "|catalogue/(EyeFormula|TeardropFormula|SeizingFormula)[.]java"
            + "|demand/HangFormula[.]java|demand/calibration/(Prediction|Difference)Formula[.]java"
            + "|stock/Gauge[.]java"
            + "|stock/worth/CoilFormula[.]java|packing/check/Curve(Formula|Check)[.]java"
            + "|buying/StandardErrors[.]java|buying/steady/(Demand|Interval)Formula[.]java"
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

    /** An arrow that nobody uses any more would be there for whoever should not use it. */
    @TestFactory
    Stream<DynamicTest> everyPackage_usesAllThatItMay() {
        return MAY_USE.keySet().stream()
                .sorted()
                .map(name -> DynamicTest.dynamicTest(
                        name, () -> assertEquals(String.join(" ", mayUse(name)), String.join(" ", uses(name)))));
    }

    private static Set<String> mayUse(String name) {
        return Stream.of(requireNonNull(MAY_USE.get(name)).split(" "))
                .filter(other -> !other.isEmpty())
                .collect(toCollection(TreeSet::new));
    }

    private static Set<String> uses(String name) {
        return PROGRAM.stream()
                .filter(type -> type.getPackageName().equals("bitterend." + name))
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .map(dependency ->
                        dependency.getTargetClass().getBaseComponentType().getPackageName())
                .filter(other -> other.startsWith("bitterend.") && !other.equals("bitterend." + name))
                .map(other -> other.substring("bitterend.".length()))
                .collect(toCollection(TreeSet::new));
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
            "exchange.AfterJson",
            "exchange.AnswerJson",
            "exchange.BuyAdviceJson",
            "exchange.BuyJson",
            "exchange.CalibrationJson",
            "exchange.ClaimsJson",
            "exchange.CoilValuesJson",
            "exchange.ExplainJson",
            "exchange.IdleJson",
            "exchange.ImportJson",
            "exchange.LateRopeJson",
            "exchange.OrdersJson",
            "exchange.PackingNoteForm",
            "exchange.NewOrderJson",
            "exchange.PlanJson",
            "exchange.CustomerQuoteJson",
            "exchange.QuoteJson",
            "exchange.quotes.QuotesJson",
            "exchange.ReorderJson",
            "exchange.ReelsExport",
            "exchange.ShortageJson",
            "exchange.StockJson",
            "exchange.CountCsv",
            "exchange.CountJson",
            "exchange.ReceiptJson",
            "exchange.StudyJson",
            "exchange.WeekJson",
            // files that are named on the command line, read or written
            "exchange.QuoteReader",
            "exchange.QuoteRequestFile",
            "exchange.QuoteRequestReading",
            "exchange.WholeFile",
            // words and figures as they are typed and told
            "exchange.FlawText",
            "exchange.StockText",
            "exchange.TypedText",
            "packing.Words");

    /** Interfaces of services; any other one holds values together. */
    private static final Set<String> DOING = Set.of(
            "bitterend.packing.Packer",
            "bitterend.stock.Ledger",
            "bitterend.stock.Ledger$Books",
            "bitterend.stock.Ledger$Stock",
            "bitterend.stock.LedgerPlace",
            "bitterend.stock.Neighbours",
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
                .resideInAnyPackage("bitterend.cli..", "bitterend.serve..", "bitterend.front..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe("do the work", ArchitectureTest::isBarredFromFronts));
    }

    private static boolean isBarredFromFronts(JavaClass used) {
        boolean ofFronts = Stream.of("cli", "serve", "front", "work", "report", "finding", "measure")
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
    void workbooks_areWrittenInOnePlace() {
        onlyIn("org.dhatim..", "bitterend.report.table..").check(PROGRAM);
    }

    @Test
    void http_staysInServe() {
        onlyIn("io.javalin..", "bitterend.serve..").check(PROGRAM);
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
