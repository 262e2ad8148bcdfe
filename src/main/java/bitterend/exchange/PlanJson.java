package bitterend.exchange;

import static bitterend.measure.LengthText.exact;

import bitterend.day.ChangedSince;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.UncertainRest;
import bitterend.packing.explain.Rider;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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

    /** Orders that ride on rope on order, the least leeway first; written for other programs and not read. */
    static final String ON_ORDER = "ridesOnOrder";

    private PlanJson() {}

    /** The text of a plan file. A plan that was read in the older form is not written any more. */
    public static String text(PlanDocument document) {
        if (!(document.facts() instanceof PlanFacts.Whole)) {
            throw new IllegalArgumentException("plan " + document.number() + " does not say what it was made from");
        }
        return Members.tree(new PlanForm(new Findings())::document, document).text();
    }

    /** What follows from the rest of a plan: order lines that are not in it, and what is to be measured. */
    static JsonTree follows(PlanDocument document) {
        JsonTree tree = new JsonTree();
        if (!document.made().leftOut().isEmpty()) {
            AnswerJson.with(tree, LEFT_OUT, document.made().leftOut());
        }
        List<Rider> riders = document.facts() instanceof PlanFacts.Whole facts
                ? Rider.of(facts.problem(), document.plan().draws())
                : List.of();
        if (!riders.isEmpty()) {
            tree.with(ON_ORDER, riders.stream().map(PlanJson::rider).toList());
        }
        List<UncertainRest> rests = document.facts() instanceof PlanFacts.Whole facts
                ? uncertain(document.plan(), facts.problem())
                : List.of();
        return rests.isEmpty() ? tree : tree.with(TO_MEASURE, toMeasure(document.plan(), rests));
    }

    /** An order that a late delivery of rope puts at risk. */
    private static JsonTree rider(Rider rider) {
        return new JsonTree()
                .with("order", rider.order())
                .with("pieces", (Object) rider.pieces())
                .with("orderOfRope", rider.arrival().order())
                .with("expected", rider.arrival().expected().toString())
                .with("countedFrom", rider.arrival().from().toString())
                .with("cutBy", rider.cutBy().toString())
                .with("leeway", rider.leeway());
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

    /** Writes a plan file whole or not at all; a file of this name that is there is replaced. */
    public static void write(Path file, PlanDocument document) {
        WholeFile.write(file, text(document));
    }

    /** Reads a plan file; every problem is told to the findings. */
    public static Optional<PlanDocument> read(Path file, Findings findings) {
        return input(file, findings).flatMap(input -> read(input, findings));
    }

    static Optional<InputFile> input(Path file, Findings findings) {
        return InputFile.named(file, findings);
    }

    static Optional<PlanDocument> read(InputFile input, Findings findings) {
        Findings own = new Findings();
        Optional<PlanDocument> document = JsonDocument.read(
                input, FORMAT, own, object -> Members.read(new PlanForm(own)::document, object), OLDER);
        // What the shop was warned of when the plan was made is nothing to say of the plan.
        findings.addAll(own.sorted().stream().filter(Finding::isError).toList());
        return own.hasErrors() ? Optional.empty() : document;
    }

    /** What a plan made of the promises of the one before it. */
    public static String changes(int plan, ChangedSince since) {
        return ChangesJson.text(plan, since);
    }
}
