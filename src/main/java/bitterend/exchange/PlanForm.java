package bitterend.exchange;

import static bitterend.exchange.form.Codec.ANY;
import static bitterend.exchange.form.Codec.DAY;
import static bitterend.exchange.form.Codec.LENGTH;
import static bitterend.exchange.form.Codec.TEXT;
import static bitterend.exchange.form.Codec.WHOLE_NUMBER;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Sentence;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.Undone;
import bitterend.packing.Unplanned;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a plan stands in a plan file, both ways. Whether it makes sense is for the checker to say: here only what cannot be
 * read is told.
 */
final class PlanForm {
    private static final Pattern MILLISECONDS = Pattern.compile("([0-9]{1,15}) ms");
    private static final Pattern BY_CLASS = Pattern.compile("[0-9]{1,18}( [0-9]{1,18}){4}");
    private static final Pattern SCALE = Pattern.compile("[1-9][0-9]{0,17}");
    private static final Pattern HUMPS = Pattern.compile("_([a-z])");

    private static final Codec<Integer> COUNTED = Codec.whole(1, 999_999_999);
    private static final Codec<Duration> TIME =
            new Codec<>(time -> time.toMillis() + " ms", PlanForm::milliseconds, Duration.ZERO);

    /** Whole numbers for the classes of urgency, the first the most urgent: {@code 0 36 0 0 5}. */
    private static final Codec<List<Long>> CLASSES = new Codec<>(
            numbers -> numbers.stream().map(String::valueOf).collect(Collectors.joining(" ")),
            PlanForm::byClass,
            Bound.noPrices());

    /** What numbers of a proof are counted in: parts of a thousandth of a coin, one or more. */
    static final Codec<Long> SCALED = new Codec<>(scale -> scale, PlanForm::scale, 1L);

    private final Findings findings;
    private MoneyText money = MoneyText.NO_CURRENCY;
    private Codec<Cost> cost = cost(money);

    PlanForm(Findings findings) {
        this.findings = findings;
    }

    /** Amounts of a currency, exact. */
    static Codec<Cost> cost(MoneyText money) {
        return new Codec<>(money::exact, money::parseExact, Cost.ZERO);
    }

    PlanDocument document(Members<PlanDocument> plan) {
        boolean older = plan.is("format", any -> PlanJson.FORMAT, ANY).equals(PlanJson.OLDER);
        int number = plan.mayBe("number", PlanDocument::number, COUNTED, 0);
        PlanDocument.Made made = plan.among(PlanDocument::made, PlanForm::made);
        money = new MoneyText(
                plan.is("currency", document -> document.money().currency(), ShopJson.CURRENCY),
                plan.is(
                        "minorDigits",
                        document -> document.money().minorDigits(),
                        Codec.whole(0, 4).orElse(MoneyText.NO_CURRENCY.minorDigits())));
        cost = cost(money);
        CutPlan parts = plan.among(PlanDocument::plan, older ? this::olderParts : this::parts);
        plan.follow(PlanJson::follows, PlanJson.LEFT_OUT, PlanJson.TO_MEASURE, PlanJson.ON_ORDER);
        PlanFacts facts = older
                ? plan.among(PlanDocument::facts, PlanForm::older)
                : plan.object("facts", PlanDocument::facts, new FactsForm(money, parts.day(), findings)::facts);
        return new PlanDocument(number, parts, money, made, facts);
    }

    private static PlanDocument.Made made(Members<PlanDocument.Made> made) {
        return new PlanDocument.Made(
                made.is("engine", PlanDocument.Made::engine, TEXT),
                made.is("seed", PlanDocument.Made::seed, WHOLE_NUMBER),
                made.written("effort", PlanDocument.Made::effort, TEXT, ""),
                made.is("time", PlanDocument.Made::time, TIME),
                made.free("inputs", PlanDocument.Made::inputs, TEXT.orElse("")),
                List.of());
    }

    private CutPlan parts(Members<CutPlan> plan) {
        return olderParts(plan).withBounds(plan.list("bounds", CutPlan::bounds, this::bound));
    }

    /** Bounds of older plans cannot be checked again and are not read. */
    private CutPlan olderParts(Members<CutPlan> plan) {
        LocalDate day = plan.is("day", CutPlan::day, DAY);
        Cost total = plan.is("cost", CutPlan::cost, cost);
        LengthBook book = plan.object("book", CutPlan::book, PlanForm::book);
        return new CutPlan(
                day,
                plan.list("draws", CutPlan::draws, this::draw),
                plan.list("unplanned", CutPlan::unplanned, PlanForm::unplanned),
                book,
                total,
                List.of());
    }

    /** What older plans say of their input. */
    private static PlanFacts older(Members<PlanFacts> plan) {
        plan.follow(any -> new JsonTree(), "bounds");
        return new PlanFacts.Older(
                plan.free("movements", any -> Map.of(), WHOLE_NUMBER),
                plan.free("moved", any -> Map.of(), TEXT.orElse("")),
                plan.free("kept", any -> Map.of(), TEXT.orElse("")));
    }

    private ReelDraw draw(Members<ReelDraw> draw) {
        String reel = draw.is("reel", ReelDraw::reel, Codec.PLANNED_REEL);
        Length leadTrim = draw.is("leadTrim", ReelDraw::leadTrim, LENGTH);
        Length left = draw.is("leftOnReel", ReelDraw::leftOnReel, LENGTH);
        Cost price = draw.is("cost", ReelDraw::cost, cost);
        LengthBook book = draw.object("book", ReelDraw::book, PlanForm::book);
        List<RunDraw> runs = draw.list("runs", ReelDraw::runs, PlanForm::run);
        if (runs.isEmpty()) {
            draw.error("runs", "a list of at least one run");
        }
        LocalDate forward = draw.mayBe("cutOn", ReelDraw::forward, DAY, LocalDate.MAX);
        return new ReelDraw(reel, leadTrim, runs, left, book, price, forward);
    }

    private static RunDraw run(Members<RunDraw> run) {
        int number = run.is("run", RunDraw::run, COUNTED);
        Length from = run.is("from", RunDraw::from, LENGTH);
        Length to = run.is("to", RunDraw::to, LENGTH);
        Length left = run.is("left", RunDraw::left, LENGTH);
        RunDraw.Rest rest =
                run.is("rest", RunDraw::rest, Codec.word(RunDraw.Rest.values()).orElse(RunDraw.Rest.SCRAP));
        return new RunDraw(number, from, to, run.list("cuts", RunDraw::cuts, PlanForm::cut), left, rest);
    }

    private static Cut cut(Members<Cut> cut) {
        return new Cut(
                cut.is("piece", Cut::piece, ANY), cut.is("from", Cut::from, LENGTH), cut.is("to", Cut::to, LENGTH));
    }

    private static LengthBook book(Members<LengthBook> members) {
        LengthBook book = LengthBook.EMPTY;
        for (LengthBook.Account part : LengthBook.Account.values()) {
            book = book.with(part, members.is(member(part), whole -> whole.of(part), LENGTH));
        }
        return book;
    }

    /** A constant as the name of a member: {@code cutLoss}. */
    private static String member(Enum<?> constant) {
        return HUMPS.matcher(constant.name().toLowerCase(Locale.ROOT))
                .replaceAll(hump -> hump.group(1).toUpperCase(Locale.ROOT));
    }

    private static Unplanned unplanned(Members<Unplanned> unplanned) {
        String piece = unplanned.is("piece", Unplanned::piece, ANY);
        Rule rule = unplanned.is(
                "rule", each -> each.reason().rule(), Codec.word(Rule.values()).orElse(Rule.PLANNED));
        String why =
                unplanned.written("reason", each -> each.reason().sentence().exact(), ANY, "");
        String help = unplanned.written("help", each -> each.help().exact(), ANY, "");
        return new Unplanned(
                piece,
                new Reason(rule, sentence(unplanned, why, "reasonLengths", each -> each.reason()
                        .sentence())),
                sentence(unplanned, help, "helpLengths", Unplanned::help));
    }

    /** A plan of an older version keeps its sentences without their lengths: those are read in metres. */
    private static Sentence sentence(
            Members<Unplanned> unplanned, String words, String lengths, Function<Unplanned, Sentence> part) {
        return Sentence.of(
                words, unplanned.mayBeValues(lengths, each -> part.apply(each).metres(), LENGTH));
    }

    private Bound bound(Members<Bound> bound) {
        return new Bound(
                bound.texts("ropes", Bound::ropes),
                bound.is("best", Bound::best, cost),
                bound.is("root", Bound::root, cost),
                bound.is("scale", Bound::scale, SCALED),
                Undone.of(bound.is("undone", each -> each.undone().weights(), CLASSES)),
                bound.is("undonePrices", Bound::undonePrices, CLASSES),
                bound.list("duals", Bound::duals, PlanForm::dual),
                bound.writtenObject("cases", Bound::cases, this::cases, Bound.Cases.NONE));
    }

    private static Bound.Dual dual(Members<Bound.Dual> dual) {
        long price = dual.is("price", Bound.Dual::price, WHOLE_NUMBER);
        return new Bound.Dual(dual.texts("pieces", Bound.Dual::pieces), price);
    }

    private Bound.Cases cases(Members<Bound.Cases> cases) {
        return new Bound.Cases(
                cases.list("costs", Bound.Cases::costs, this::costProof),
                cases.list("least", Bound.Cases::least, PlanForm::leastProof));
    }

    private Bound.CostProof costProof(Members<Bound.CostProof> each) {
        return new Bound.CostProof(
                each.is("cost", Bound.CostProof::cost, cost),
                each.object("proof", Bound.CostProof::proof, ProofForm::proof));
    }

    private static Bound.LeastProof leastProof(Members<Bound.LeastProof> each) {
        return new Bound.LeastProof(
                each.is("class", Bound.LeastProof::urgency, Codec.whole(1, Undone.CLASSES)),
                each.is("weight", Bound.LeastProof::weight, WHOLE_NUMBER),
                each.object("proof", Bound.LeastProof::proof, ProofForm::proof));
    }

    private static Parsed<Long> scale(String text) {
        return SCALE.matcher(text).matches()
                ? Parsed.of(Long.parseLong(text))
                : Parsed.refused("a whole number from 1 on");
    }

    private static Parsed<List<Long>> byClass(String text) {
        return BY_CLASS.matcher(text).matches()
                ? Parsed.of(Arrays.stream(text.split(" ")).map(Long::parseLong).toList())
                : Parsed.refused("five whole numbers, such as 0 36 0 0 5");
    }

    private static Parsed<Duration> milliseconds(String text) {
        Matcher milliseconds = MILLISECONDS.matcher(text);
        return milliseconds.matches()
                ? Parsed.of(Duration.ofMillis(Long.parseLong(milliseconds.group(1))))
                : Parsed.refused("a time such as 10000 ms");
    }
}
