package bitterend.exchange;

import static bitterend.measure.LengthText.exact;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonTree;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Sentence;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.UncertainRest;
import bitterend.packing.Unplanned;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The plan file, {@code plan.json}: exact, versioned, the same bytes for the same plan. */
public final class PlanJson {
    static final String FORMAT = "bitterend/plan/2";
    /** The older form, which kept nothing of what the plan was made from. */
    static final String OLDER = "bitterend/plan/1";

    /** What follows from the rest of a plan, written for other programs and not read. */
    static final String TO_MEASURE = "toMeasure";

    /** Order lines that are not in a plan, with why; written for other programs and not read. */
    static final String LEFT_OUT = "leftOut";

    /** The parts of the book of lengths, in the order in which they are written. */
    static final Map<String, Function<LengthBook, Length>> BOOK = book();

    private PlanJson() {}

    /** The text of a plan file. A plan that was read in the older form is not written any more. */
    public static String text(PlanDocument document) {
        if (!(document.facts() instanceof PlanFacts.Whole facts)) {
            throw new IllegalArgumentException("plan " + document.number() + " does not say what it was made from");
        }
        CutPlan plan = document.plan();
        MoneyText money = document.money();
        JsonTree text = head(document)
                .with("currency", money.currency())
                .with("minorDigits", money.minorDigits())
                .with("day", plan.day().toString())
                .with("cost", money.exact(plan.cost()))
                .with("book", tree(plan.book()))
                .with(
                        "draws",
                        plan.draws().stream().map(draw -> tree(draw, money)).toList())
                .with("unplanned", plan.unplanned().stream().map(PlanJson::tree).toList())
                .with(
                        "bounds",
                        plan.bounds().stream().map(bound -> tree(bound, money)).toList());
        if (!document.made().leftOut().isEmpty()) {
            AnswerJson.with(text, LEFT_OUT, document.made().leftOut());
        }
        List<UncertainRest> rests = uncertain(plan, facts.problem());
        if (!rests.isEmpty()) {
            text.with(TO_MEASURE, toMeasure(plan, rests));
        }
        return text.with("facts", new FactsForm(money, new Findings()).tree(facts))
                .text();
    }

    private static List<UncertainRest> uncertain(CutPlan plan, PackingProblem problem) {
        Map<String, ReelDraw> draws =
                plan.draws().stream().collect(Collectors.toMap(ReelDraw::reel, draw -> draw, (one, other) -> one));
        return problem.reels().stream()
                .filter(reel -> draws.containsKey(reel.id()))
                .flatMap(reel -> UncertainRest.of(problem, reel, Objects.requireNonNull(draws.get(reel.id()))).stream())
                .toList();
    }

    /** Scrap for certain, rope that is probably there, and what is to be measured: it follows from the rest of the plan. */
    private static JsonTree toMeasure(CutPlan plan, List<UncertainRest> rests) {
        Length probably = rests.stream().map(UncertainRest::byLedger).reduce(Length.ZERO, Length::plus);
        return new JsonTree()
                .with("certainScrap", exact(plan.book().scrap().minus(probably)))
                .with("probablyLeft", exact(probably))
                .with(
                        "reels",
                        rests.stream()
                                .map(rest -> new JsonTree()
                                        .with("reel", rest.reel())
                                        .with("byLedger", exact(rest.byLedger()))
                                        .with("certain", exact(rest.certain()))
                                        .with("keepFrom", exact(rest.keepFrom())))
                                .toList());
    }

    private static JsonTree head(PlanDocument document) {
        PlanDocument.Made made = document.made();
        JsonTree text = new JsonTree().with("format", FORMAT);
        if (document.number() > 0) {
            text.with("number", document.number());
        }
        return text.with("engine", made.engine())
                .with("seed", made.seed())
                .with("effort", made.effort())
                .with("time", made.time().toMillis() + " ms")
                .with("inputs", FactsForm.texts(made.inputs()));
    }

    /** Writes a plan file whole or not at all; a file of this name that is there is replaced. */
    public static void write(Path file, PlanDocument document) {
        WholeFile.write(file, text(document));
    }

    /** Reads a plan file; every problem is told to the findings. */
    public static Optional<PlanDocument> read(Path file, Findings findings) {
        return input(file, findings).flatMap(input -> new PlanReader(findings).read(input));
    }

    static Optional<InputFile> input(Path file, Findings findings) {
        Path folder = file.toAbsolutePath().getParent();
        Path name = file.getFileName();
        if (folder == null || name == null) {
            throw new IllegalArgumentException("not a file: " + file);
        }
        return InputFile.require(folder, name.toString(), findings);
    }

    private static JsonTree tree(LengthBook book) {
        JsonTree tree = new JsonTree();
        BOOK.forEach((name, part) -> tree.with(name, exact(part.apply(book))));
        return tree;
    }

    private static JsonTree tree(ReelDraw draw, MoneyText money) {
        return new JsonTree()
                .with("reel", draw.reel())
                .with("leadTrim", exact(draw.leadTrim()))
                .with("leftOnReel", exact(draw.leftOnReel()))
                .with("cost", money.exact(draw.cost()))
                .with("book", tree(draw.book()))
                .with("runs", draw.runs().stream().map(PlanJson::tree).toList());
    }

    private static JsonTree tree(RunDraw run) {
        return new JsonTree()
                .with("run", run.run())
                .with("from", exact(run.from()))
                .with("to", exact(run.to()))
                .with("left", exact(run.left()))
                .with("rest", word(run.rest()))
                .with(
                        "cuts",
                        run.cuts().stream()
                                .map(cut -> new JsonTree()
                                        .with("piece", cut.piece())
                                        .with("from", exact(cut.from()))
                                        .with("to", exact(cut.to())))
                                .toList());
    }

    private static JsonTree tree(Unplanned unplanned) {
        JsonTree tree = new JsonTree()
                .with("piece", unplanned.piece())
                .with("rule", word(unplanned.reason().rule()))
                .with("reason", unplanned.reason().sentence().exact())
                .with("help", unplanned.help().exact());
        lengths(tree, "reasonLengths", unplanned.reason().sentence());
        lengths(tree, "helpLengths", unplanned.help());
        return tree;
    }

    /** The lengths that stand in a sentence, so that whoever reads it prints them in their units. */
    private static void lengths(JsonTree tree, String name, Sentence sentence) {
        if (!sentence.metres().isEmpty()) {
            tree.with(name, (Object)
                    sentence.metres().stream().map(LengthText::exact).toList());
        }
    }

    private static JsonTree tree(Bound bound, MoneyText money) {
        return new JsonTree()
                .with("ropes", (Object) bound.ropes())
                .with("best", money.exact(bound.best()))
                .with("root", money.exact(bound.root()))
                .with("scale", bound.scale())
                .with("undone", byClass(bound.undone().weights()))
                .with("undonePrices", byClass(bound.undonePrices()))
                .with(
                        "duals",
                        bound.duals().stream()
                                .map(dual -> new JsonTree()
                                        .with("price", dual.price())
                                        .with("pieces", (Object) dual.pieces()))
                                .toList())
                .with("cases", tree(bound.cases(), money));
    }

    private static JsonTree tree(Bound.Cases cases, MoneyText money) {
        return new JsonTree()
                .with(
                        "costs",
                        cases.costs().stream()
                                .map(each -> new JsonTree()
                                        .with("cost", money.exact(each.cost()))
                                        .with("proof", ProofForm.tree(each.proof())))
                                .toList())
                .with(
                        "least",
                        cases.least().stream()
                                .map(each -> new JsonTree()
                                        .with("class", each.urgency())
                                        .with("weight", each.weight())
                                        .with("proof", ProofForm.tree(each.proof())))
                                .toList());
    }

    /** Whole numbers for the classes of urgency, the first the most urgent: {@code 0 36 0 0 5}. */
    private static String byClass(List<Long> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** A constant as a word: {@code on reel}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Map<String, Function<LengthBook, Length>> book() {
        Map<String, Function<LengthBook, Length>> parts = new LinkedHashMap<>();
        parts.put("before", LengthBook::before);
        parts.put("pieces", LengthBook::pieces);
        parts.put("cutLoss", LengthBook::cutLoss);
        parts.put("leadTrim", LengthBook::leadTrim);
        parts.put("flaws", LengthBook::flaws);
        parts.put("scrap", LengthBook::scrap);
        parts.put("kept", LengthBook::kept);
        parts.put("left", LengthBook::left);
        parts.put("innerWraps", LengthBook::innerWraps);
        return parts;
    }
}
