package bitterend.work.quotes;

import bitterend.catalogue.Rope;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.Moments;
import bitterend.measure.UnitPrice;
import bitterend.packing.Cut;
import bitterend.packing.LengthBook;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.quoting.after.ThatDay;
import bitterend.stock.Event;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.stock.Standing;
import bitterend.stock.StockValue;
import bitterend.work.CoilCurves;
import bitterend.work.Gate;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What held on the day of a cut. Of a piece of a plan the file of that plan says it. Off plan it is the curve of the plan that was
 * in force, with the coils that were on the rack that morning by the ledger; before any plan the past orders and the usual reel
 * with these coils. The files of plans are never written again and the ledger only grows, so that it stays as it is.
 */
final class WorthThen implements ThatDay {
    private final ShopNow now;
    private final Plans plans;
    private final List<Movement> movements;
    /** By which the ledger was begun. */
    private final Set<Long> begun;
    /** By which plans were put in force, and by which that was taken back. */
    private final List<Event> ofPlans;

    private final Map<Integer, Optional<Kept>> read = new HashMap<>();
    private final Map<List<Object>, Terms> known = new HashMap<>();

    /**
     * @param movements all of the ledger
     * @param events all of the ledger
     */
    WorthThen(ShopNow now, List<Movement> movements, List<Event> events) {
        this.now = now;
        this.movements = movements;
        begun = numbers(events, Event.Kind.OPENED);
        Set<Long> putInForce = numbers(events, Event.Kind.IN_FORCE);
        ofPlans = events.stream()
                .filter(event -> putInForce.contains(event.number())
                        || putInForce.contains(event.act().undoes()))
                .toList();
        plans = now.at().plans(new Findings());
    }

    private static Set<Long> numbers(List<Event> events, Event.Kind kind) {
        return events.stream()
                .filter(event -> event.act().kind() == kind)
                .map(Event::number)
                .collect(Collectors.toSet());
    }

    @Override
    public Terms of(Movement cut) {
        String rope = cut.entry().after().rope();
        String plan = cut.entry().origin().plan();
        Optional<PackingProblem> asked =
                plan(plan).flatMap(kept -> kept.document().question());
        LocalDate day = Moments.day(cut.at());
        return asked.isPresent()
                ? known.computeIfAbsent(List.of(plan, rope), key -> planned(rope, asked.get()))
                : offPlan(rope, day, inForce(cut));
    }

    private Terms planned(String rope, PackingProblem question) {
        Rope then = question.ropes().get(rope);
        return terms(
                then == null ? new UnitPrice(0) : then.price(),
                question.values().getOrDefault(rope, StockValue.NOTHING),
                question);
    }

    private static Terms terms(UnitPrice list, StockValue value, PackingProblem question) {
        return new Terms(
                list, value, question.prices().opening(), question.prices().changing());
    }

    private Terms offPlan(String rope, LocalDate day, Optional<Kept> inForce) {
        String plan = inForce.map(Gate::name).orElse("");
        return known.computeIfAbsent(List.of(day, plan, rope), key -> inForce.flatMap(
                        kept -> kept.document().question())
                .filter(question ->
                        question.ropes().containsKey(rope) && question.values().containsKey(rope))
                .map(question -> since(rope, day, question))
                .orElseGet(() -> without(rope, day)));
    }

    /** By the plan that was in force; on another day than its own with the coils of that morning. */
    private Terms since(String rope, LocalDate day, PackingProblem question) {
        StockValue value = question.values().getOrDefault(rope, StockValue.NOTHING);
        Rope then = question.rope(rope);
        return terms(
                then.price(), question.day().equals(day) ? value : curves(day).value(then, value), question);
    }

    private Terms without(String rope, LocalDate day) {
        Optional<Rope> there = now.shop().catalogue().findRope(rope);
        return new Terms(
                there.map(Rope::price).orElse(new UnitPrice(0)),
                there.map(curves(day)::value).orElse(StockValue.NOTHING),
                now.shop().settings().prices().opening(),
                now.shop().settings().prices().changing());
    }

    private CoilCurves curves(LocalDate day) {
        return CoilCurves.earlier(now.shop(), day, rack(day));
    }

    /** The rack of a morning, by what stood in the ledger then; where it was begun that day, as it was begun. */
    private List<Reel> rack(LocalDate day) {
        List<Movement> before = movements.stream()
                .filter(movement -> begun.contains(movement.event())
                        || Moments.day(movement.at()).isBefore(day))
                .toList();
        Map<String, Movement> last = new LinkedHashMap<>();
        Standing.movements(before).stream()
                .filter(movement -> !movement.entry().kind().isOfPieceAlone())
                .forEach(movement -> last.put(movement.entry().reel(), movement));
        return last.values().stream()
                .map(Movement::entry)
                .filter(entry -> !entry.gone())
                .map(Movement.Entry::after)
                .toList();
    }

    /** The plan that was in force when something was cut. */
    private Optional<Kept> inForce(Movement cut) {
        List<Event> before =
                ofPlans.stream().filter(event -> event.number() < cut.event()).toList();
        return Standing.events(before).stream()
                .reduce((earlier, later) -> later)
                .flatMap(event -> read((int) event.number("number")));
    }

    @Override
    public Optional<PlannedDraw> planned(String plan, String reel) {
        return plan(plan)
                .flatMap(kept -> kept.document().question().flatMap(question -> kept.document().plan().draws().stream()
                        .filter(draw -> draw.reel().equals(reel))
                        .findFirst()
                        .map(draw -> planned(draw, question.reel(reel).full()))));
    }

    private static PlannedDraw planned(ReelDraw draw, boolean full) {
        LengthBook book = draw.book();
        Length left = draw.leftOnReel().isPositive() ? book.left().plus(book.innerWraps()) : Length.ZERO;
        Length taken = book.pieces().plus(book.cutLoss());
        List<Length> kept = draw.runs().stream()
                .filter(run -> run.rest() == RunDraw.Rest.REMNANT)
                .map(RunDraw::left)
                .toList();
        List<Cut> cuts = draw.cuts();
        return new PlannedDraw(
                cuts.get(cuts.size() - 1).piece(),
                taken,
                new Draw(
                        full,
                        book.before(),
                        book.before().minus(taken).minus(book.kept()).minus(left),
                        left,
                        kept));
    }

    private Optional<Kept> plan(String name) {
        return Gate.number(name).flatMap(this::read).filter(kept -> Gate.name(kept)
                .equals(name));
    }

    /** A plan whose file is not there, or cannot be read, says nothing. */
    private Optional<Kept> read(int number) {
        return read.computeIfAbsent(number, key -> plans.read(key, new Findings()));
    }
}
