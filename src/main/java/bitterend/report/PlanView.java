package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.day.BenchDay;
import bitterend.day.ChangedSince;
import bitterend.demand.Piece;
import bitterend.finding.Finding;
import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.packing.Arrival;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.UncertainRest;
import bitterend.packing.explain.CutWeek;
import bitterend.packing.order.OrderOfWork;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A plan and what a reader must know to follow it.
 *
 * @param shop name of the shop
 * @param problem the question
 * @param plan the answer
 * @param beforeCut what to do at each mark before the cut, by rope id; may lack ropes
 * @param notes warnings about the work, such as first articles to measure
 * @param lines the order lines behind its pieces; may be empty
 * @param firstFit the same question by the rule of thumb, where somebody asked for the comparison
 * @param hours what it asks of the bench, day by day; empty where the shop states no hours
 * @param since what changed against the plan before it, where there is one
 * @param mark which plan it is, printed on every page
 * @param byId pieces and reels by their ids, and what is cut first
 * @param part which of its reels are shown
 */
public record PlanView(
        String shop,
        PackingProblem problem,
        CutPlan plan,
        Map<String, BeforeCut> beforeCut,
        List<Finding> notes,
        List<WorkLine> lines,
        Optional<CutPlan> firstFit,
        List<BenchDay> hours,
        Optional<ChangedSince> since,
        PlanMark mark,
        ById byId,
        PlanPart part) {
    /** Where the month begins in {@code 2026-03-06}. */
    private static final int YEAR = 5;

    /** A plan that has no number. */
    public PlanView(
            String shop, PackingProblem problem, CutPlan plan, Map<String, BeforeCut> beforeCut, List<Finding> notes) {
        this(shop, problem, plan, beforeCut, notes, List.of(), PlanMark.NONE);
    }

    /** A plan of these order lines, under a mark. */
    public PlanView(
            String shop,
            PackingProblem problem,
            CutPlan plan,
            Map<String, BeforeCut> beforeCut,
            List<Finding> notes,
            List<WorkLine> lines,
            PlanMark mark) {
        this(
                shop,
                problem,
                plan,
                beforeCut,
                notes,
                lines,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                mark,
                ById.of(problem, lines),
                PlanPart.whole(plan.day()));
    }

    /** What is looked up for every mark on a page. */
    public record ById(
            Map<String, Piece> pieces,
            Map<String, Reel> reels,
            Map<String, WorkLine> lines,
            OrderOfWork order,
            CutDays days) {
        static ById of(PackingProblem problem, List<WorkLine> lines) {
            Map<String, WorkLine> byPiece = new HashMap<>();
            lines.forEach(line -> line.demanded().pieces().forEach(piece -> byPiece.put(piece.id(), line)));
            return new ById(
                    problem.pieces().stream().collect(Collectors.toUnmodifiableMap(Piece::id, Function.identity())),
                    problem.reels().stream().collect(Collectors.toUnmodifiableMap(Reel::id, Function.identity())),
                    Collections.unmodifiableMap(byPiece),
                    new OrderOfWork(problem),
                    new CutDays(problem));
        }
    }

    public PlanView {
        beforeCut = Collections.unmodifiableMap(new TreeMap<>(beforeCut));
        notes = List.copyOf(notes);
        lines = List.copyOf(lines);
        hours = List.copyOf(hours);
    }

    /** The same under another mark. */
    public PlanView marked(PlanMark other) {
        return new PlanView(shop, problem, plan, beforeCut, notes, lines, firstFit, hours, since, other, byId, part);
    }

    /** The same beside what first fit makes of the question. */
    public PlanView beside(CutPlan byFirstFit) {
        Optional<CutPlan> fit = Optional.of(byFirstFit);
        return new PlanView(shop, problem, plan, beforeCut, notes, lines, fit, hours, since, mark, byId, part);
    }

    /** The same beside what changed against the plan before it; nothing for none. */
    public PlanView since(Optional<ChangedSince> before) {
        return new PlanView(shop, problem, plan, beforeCut, notes, lines, firstFit, hours, before, mark, byId, part);
    }

    /** The same beside the hours of the bench. */
    public PlanView timed(List<BenchDay> bench) {
        return new PlanView(shop, problem, plan, beforeCut, notes, lines, firstFit, bench, since, mark, byId, part);
    }

    /** Some of its reels. What is said of the whole plan, what is proven and which pieces wait for which, stays so. */
    public PlanView only(PlanPart some) {
        return new PlanView(shop, problem, plan, beforeCut, notes, lines, firstFit, hours, since, mark, byId, some);
    }

    /** Every piece wanted, by id. */
    public Map<String, Piece> pieces() {
        return byId.pieces();
    }

    /** The reels that are shown, in the order in which they are cut: by day, the most urgent piece, place and number. */
    public List<ReelDraw> draws() {
        return wholePlan().stream().filter(part::has).toList();
    }

    /** Every reel of the plan in that order. */
    public List<ReelDraw> wholePlan() {
        return byId.order().of(plan.draws()).stream()
                .sorted(Comparator.comparing(byId.days()::of))
                .toList();
    }

    /** Whether a reel is a promise: it need not be cut on the day of the plan, and its sheet is not out. */
    public boolean isPromise(ReelDraw draw) {
        return !byId.days().isToday(draw) && !mark.isOut(draw.reel());
    }

    /** On which of the days ahead the reels that are shown are cut, and what is left undone on which. */
    public CutWeek week() {
        return CutWeek.of(problem, draws(), plan.unplanned(), this::isPromise);
    }

    /** The reel of a draw. */
    public Reel reel(ReelDraw draw) {
        Reel reel = byId.reels().get(draw.reel());
        if (reel == null) {
            throw new IllegalArgumentException("no reel " + draw.reel());
        }
        return reel;
    }

    /** Where the reel of a draw is; of one that is on order, month and day on which it comes: {@code coming 03-06}. */
    public String place(ReelDraw draw) {
        Arrival arrival = problem.arrivals().get(draw.reel());
        return arrival == null
                ? reel(draw).where().place()
                : "coming " + arrival.expected().toString().substring(YEAR);
    }

    /** The rope on the reel of a draw. */
    public Rope rope(ReelDraw draw) {
        return problem.ropeOn(reel(draw));
    }

    /** The first day after that of the plan for which it promises a reel that is in the house. */
    public Optional<LocalDate> nextDay() {
        return draws().stream()
                .filter(this::isPromise)
                .filter(draw -> !problem.isComing(draw.reel()))
                .map(byId.days()::of)
                .findFirst();
    }

    /** What of this reel is to be measured before anyone knows whether it is scrap. */
    public Optional<UncertainRest> uncertain(ReelDraw draw) {
        return UncertainRest.of(problem, reel(draw), draw);
    }

    /** All that is to be measured. */
    public List<UncertainRest> uncertain() {
        return draws().stream().flatMap(draw -> uncertain(draw).stream()).toList();
    }

    /** The rope that is probably left on them, by the ledger. */
    public Length probably() {
        return uncertain().stream().map(UncertainRest::byLedger).reduce(Length.ZERO, Length::plus);
    }

    /** Where its rope goes, what is probably there counted as left on the reel: the scrap in it is certain. */
    public LengthBook book(ReelDraw draw) {
        return uncertain(draw).map(rest -> draw.book().leaving(rest.byLedger())).orElse(draw.book());
    }

    /** The same of all reels. */
    public LengthBook book() {
        return draws().stream().map(this::book).reduce(LengthBook.EMPTY, LengthBook::plus);
    }

    /** The same of all reels of a plan for this day, whoever made it. */
    public LengthBook book(CutPlan other) {
        return other.book()
                .leaving(other.draws().stream()
                        .flatMap(draw -> uncertain(draw).stream())
                        .map(UncertainRest::byLedger)
                        .reduce(Length.ZERO, Length::plus));
    }

    /** The rows of its cutting table. */
    public List<Mark> marks(ReelDraw draw) {
        List<Mark> marks = CuttingTable.of(
                reel(draw),
                draw,
                rope(draw).cutting(),
                pieces(),
                beforeCut(draw).brief());
        return uncertain(draw).map(rest -> CuttingTable.measuring(rest, marks)).orElse(marks);
    }

    /** What to do at each mark of this reel. */
    public BeforeCut beforeCut(ReelDraw draw) {
        return beforeCut.getOrDefault(rope(draw).id(), BeforeCut.NOTHING);
    }

    /** What the counter shows at a true length from the clean end of this reel. */
    public FineLength reading(ReelDraw draw, Length length) {
        return beforeCut(draw).reading(length.fine());
    }

    /** What the counter shows at a mark on this reel; it is set to zero at the worn end for a lead trim, then at the clean end. */
    public FineLength reading(ReelDraw draw, Mark mark) {
        return mark.kind() == Mark.Kind.LEAD_TRIM
                ? reading(draw, mark.length())
                : beforeCut(draw).reading(mark.exactlyAt());
    }

    /** The length of a piece off this reel, as it is to be cut. */
    public FineLength exactly(ReelDraw draw, Length cut) {
        return rope(draw).cutting().exactly(cut);
    }

    /** The length beside a mark on this reel. */
    public FineLength length(ReelDraw draw, Mark mark) {
        return mark.kind() == Mark.Kind.CUT
                ? exactly(draw, mark.length())
                : mark.length().fine();
    }

    /** What a length off this reel would cost to buy again; nothing when the rope is a customer's own. */
    Cost worth(ReelDraw draw, Length length) {
        return reel(draw).custody().isCustomersOwn()
                ? Cost.ZERO
                : rope(draw).price().of(length);
    }

    /** Part of the rope of all reels at replacement price; a customer's own rope counts nothing. */
    Cost worth(Function<LengthBook, Length> part) {
        return draws().stream().map(draw -> worth(draw, part.apply(book(draw)))).reduce(Cost.ZERO, Cost::plus);
    }

    /** How many pieces have a reel that is shown. */
    public int planned() {
        return draws().stream().mapToInt(draw -> draw.cuts().size()).sum();
    }
}
