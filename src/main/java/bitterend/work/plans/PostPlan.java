package bitterend.work.plans;

import bitterend.day.OrderBook;
import bitterend.day.Part;
import bitterend.day.Posting;
import bitterend.day.RecordedPlan;
import bitterend.day.SameSteps;
import bitterend.day.ShopFacts;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.StockValue;
import bitterend.work.Booking;
import bitterend.work.BookingRules;
import bitterend.work.Gate;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.ReelDays;
import bitterend.work.Remark;
import bitterend.work.SamePlans;
import bitterend.work.SheetsOut;
import bitterend.work.ShopNow;
import bitterend.work.ShopToday;
import bitterend.work.Verdict;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Books what was cut of a plan; a second time does nothing. Which plan that is {@link bitterend.work.WhichPlan} knows. */
public final class PostPlan {
    private final ShopNow shop;
    private final Plans plans;

    public PostPlan(ShopNow shop, Plans plans) {
        this.shop = shop;
        this.plans = plans;
    }

    /**
     * What is booked.
     *
     * @param plan the plan it was cut by
     * @param part which part of it, where nothing is named the sheets that are out, or where none is
     *     the work at hand, and what was found at the bench
     * @param caller puts into an act who does it, and under which id
     */
    public record Request(Kept plan, Part part, UnaryOperator<Event.Act> caller) {}

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is in the ledger.
         *
         * @param part the part of the plan
         * @param posted what was booked
         * @param asPlanned cuts booked as they were planned though their pieces are not ordered like that any more; one that no
         *     order asks for is a spare piece
         */
        record Posted(PostedPart part, Posting.Posted posted, List<Movement> asPlanned) implements Result {
            public Posted {
                asPlanned = List.copyOf(asPlanned);
            }
        }

        /** The gate does not let the plan through. */
        record NotLetThrough(Verdict.Refused why) implements Result {}

        /** The plan goes, but something has changed of what is meant of it; nothing was booked. */
        record Barred(PostedPart part, List<Remark> bars) implements Result {
            public Barred {
                bars = List.copyOf(bars);
            }
        }

        /**
         * Nothing is named, no sheet of the plan is out, and its day is not here yet; nothing was booked.
         *
         * @param plan its number
         * @param day its day
         * @param today the day that is worked on
         */
        record NotYet(int plan, LocalDate day, LocalDate today) implements Result {}

        /** The ledger or a rule refuses it; nothing was booked. */
        record NotBooked(PostedPart part, Booking.Refused why) implements Result {}
    }

    /** Books all of the part or nothing. */
    public Result post(Request request) {
        Verdict verdict = new PlanGate(shop, plans).verdict(request.plan());
        if (verdict instanceof Verdict.Refused refused) {
            return new Result.NotLetThrough(refused);
        }
        Verdict.Passed passed = verdict.passed().orElseThrow();
        ShopToday.Rack rack = shop.at().reading(ShopToday.Rack::of);
        Set<String> out = new SheetsOut(plans, rack, shop.stillOpen()).reels(request.plan());
        LocalDate day = passed.plan().day();
        if (request.part().isAll() && out.isEmpty() && day.isAfter(shop.today())) {
            return new Result.NotYet(passed.number(), day, shop.today());
        }
        Part part = request.part()
                .orElse(
                        out.isEmpty()
                                ? ReelDays.of(passed.kept().document(), plans).atHand()
                                : out);
        return held(new Request(request.plan(), part, request.caller()), passed, verdict.remarks(), rack);
    }

    private Result held(Request request, Verdict.Passed passed, List<Remark> remarks, ShopToday.Rack rack) {
        SameSteps same = SamePlans.of(passed.kept(), plans, rack);
        Part part = request.part();
        PostedPart posted = new PostedPart(passed, part, rack, same);
        List<Remark> bars = remarks.stream()
                .filter(posted::isBarredBy)
                .filter(remark -> !(part.found().isBeforeTheCount() && remark.isCount()))
                .toList();
        if (!bars.isEmpty()) {
            return new Result.Barred(posted, bars);
        }
        RecordedPlan recorded = new RecordedPlan(
                Gate.name(passed.kept()),
                passed.number(),
                passed.plan(),
                passed.kept().document().facts().movements(),
                facts(passed.problem(), same, part));
        BookingRules rules = new BookingRules(passed, shop.shop().pieces(), posted.pieces(), part.found());
        try {
            Posting.Posted booked =
                    shop.at().writing(ledger -> new Posting(ledger, request.caller()).post(recorded, part, rules));
            return new Result.Posted(posted, booked, asPlanned(booked, part));
        } catch (LedgerException fault) {
            return new Result.NotBooked(posted, Booking.Refused.of(fault));
        }
    }

    private static List<Movement> asPlanned(Posting.Posted booked, Part part) {
        return booked.written().stream()
                .filter(movement -> movement.entry().kind() == Movement.Kind.CUT)
                .filter(movement ->
                        part.found().wasCut(movement.entry().origin().piece()))
                .toList();
    }

    /** What is worth keeping is what the plan says is; what was cut all the same was ordered as the plan says. */
    private ShopFacts facts(PackingProblem problem, SameSteps same, Part part) {
        Map<String, Length> keepFrom = new TreeMap<>();
        problem.values()
                .forEach((rope, value) ->
                        keepFrom.put(rope, value.keepFrom().orElse(new Length(StockValue.LONGEST_MM))));
        OrderBook book = shop.book();
        Map<String, Ordered> ordered = new TreeMap<>(book.ordered());
        problem.pieces().stream()
                .filter(piece -> part.found().wasCut(piece.id()))
                .forEach(piece -> ordered.put(piece.id(), book.planned(piece)));
        return new ShopFacts(ordered, keepFrom, heldFor(problem), same);
    }

    private static Map<String, String> heldFor(PackingProblem problem) {
        Map<String, String> whom = new TreeMap<>();
        problem.pins().stream().filter(Pin::isOfHeldRope).forEach(pin -> whom.put(pin.piece(), pin.heldFor()));
        return whom;
    }
}
