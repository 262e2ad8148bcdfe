package bitterend.bench;

import bitterend.bench.WeekRope.Ordered;
import bitterend.buying.RackWorth;
import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Brake;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Horizon;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.ReelDraw;
import bitterend.packing.ShopCalendar;
import bitterend.packing.WorkingDays;
import bitterend.packing.order.CuttingOrder;
import bitterend.packing.strategy.AheadPlanner;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FullStrategy;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** A shop with one rope from day to day: every day is planned by the program, and what the plan cuts that day is cut. */
final class WeekShop {
    private static final LocalDate FIRST = LocalDate.of(2029, 1, 1);
    private static final WorkingDays WORKING = new WorkingDays(ShopCalendar.USUAL);
    private static final Duration AGES = Duration.ofDays(365);
    private static final int USUAL = 5;
    private static final int DAYS_OF_A_WEEK = 5;
    private static final Cost MOVED_PIECE = new Cost(37_500);

    private final WeekRope rope;
    private final Rope sold;
    private final Length rushADay;
    private final RackWorth worth;
    private final WeekRack rack;
    private final long work;
    private final boolean checked;
    private final WeekBench bench;
    private final Packer packer = FullStrategy.patternsAlone();
    private final Prices prices =
            new Prices(SteadyRack.OPENING, SteadyRack.CHANGING, Cost.ZERO, Cost.ZERO, MOVED_PIECE, Cost.ZERO);
    private final Map<String, Ordered> open = new TreeMap<>();
    private Map<String, String> promised = new TreeMap<>();
    private final List<Piece> cutToday = new ArrayList<>();
    private int fetched;

    /**
     * How each day is planned.
     *
     * @param work for each piece, in the engine's own units
     * @param checked whether the checker looks at every plan; it takes most of the time then
     * @param bench minutes a day at the bench; 0 where nobody counts them
     */
    record Planning(long work, boolean checked, int bench) {}

    WeekShop(WeekRope rope, List<Ordered> past, int weeks, WeekRack rack, Planning planning) {
        this.rope = rope;
        this.rack = rack;
        work = planning.work();
        checked = planning.checked();
        bench = new WeekBench(planning.bench());
        sold = rope.rope();
        long rush = past.stream()
                .filter(Ordered::rush)
                .mapToLong(each -> each.cut().mm())
                .sum();
        rushADay = new Length(-Math.floorDiv(-rush, weeks * (long) DAYS_OF_A_WEEK));
        CoilTerms.Holding holding =
                new CoilTerms.Holding(Ratio.percent(SteadyRack.INTEREST_PERCENT), SteadyRack.ROOM, rope.shortest());
        worth = RackWorth.of(CoilValue.of(
                PastCuts.of(past.stream().map(Ordered::cut).toList(), WeekRope.LOSS, weeks, PastCuts.Source.HISTORY),
                CoilTerms.of(rope.price(), rope.usual(), rope.usual(), holding),
                Length.ZERO));
    }

    WeekRack rack() {
        return rack;
    }

    /** What the coils that are left would save. */
    long worthOfCoils() {
        return worth.of(rack.coils()).millis();
    }

    /** One day: newcomers, a plan, what it cuts today, the evening. */
    void day(int day, List<Ordered> newcomers, WeekPolicy policy) {
        rack.morning(day);
        newcomers.forEach(each -> open.put("P" + each.number(), each));
        fetched = 0;
        cutToday.clear();
        if (!open.isEmpty()) {
            cut(day, policy);
        }
        rack.count().spliceLate += bench.day(date(day), fetched, cutToday);
        for (Ordered each : open.values()) {
            if (each.cutBy() <= day) {
                rack.count().lateDays++;
                rack.count().late += each.cutBy() == day ? 1 : 0;
                rack.count().lateFirst += each.cutBy() == day && each.rush() ? 1 : 0;
            }
        }
        rack.evening();
    }

    private void cut(int day, WeekPolicy policy) {
        PackingProblem all = question(day, policy);
        PackingProblem near = Horizon.near(all, date(day + policy.horizon()), Set.of());
        if (near.pieces().isEmpty()) {
            return;
        }
        Map<String, LocalDate> more = Map.of(WeekRope.ID, date(rack.more(day)));
        Brake brake = new Brake(all, new Brake.Terms(policy.brake(), Map.of(WeekRope.ID, rushADay), more));
        PackingProblem held = brake.held(near, Set.of());
        AheadPlanner.Planned planned =
                new AheadPlanner((problem, quarters) -> plan(problem)).plan(near, held, Set.of());
        CutPlan best = planned.checked().plan();
        CutPlan plan = policy.asked() ? best : bench.spread(planned.problem(), held.horizon(), best);
        CutDays days = new CutDays(planned.problem());
        promised = new TreeMap<>();
        for (ReelDraw draw : plan.draws()) {
            if (days.isToday(draw)) {
                rack.cut(draw, day);
                fetched++;
                draw.cuts().forEach(cut -> done(cut, day));
            } else {
                draw.cuts().forEach(cut -> promised.put(cut.piece(), draw.reel()));
            }
        }
    }

    private DayPlanner.Checked plan(PackingProblem problem) {
        long most = work * problem.pieces().size();
        Effort effort = new Effort(AGES, most, 1, 1, () -> false, progress -> {});
        return checked
                ? new DayPlanner(packer).checked(problem, effort)
                : new DayPlanner.Checked(
                        new CuttingOrder(problem)
                                .numbered(packer.pack(problem, effort).packing()),
                        List.of(),
                        List.of());
    }

    private void done(Cut cut, int day) {
        Ordered piece = open.remove(cut.piece());
        if (piece != null) {
            rack.lies(piece.cut(), Math.max(0, piece.cutBy() - day));
            cutToday.add(piece(cut.piece(), piece));
        }
    }

    private PackingProblem question(int day, WeekPolicy policy) {
        List<Piece> pieces = new ArrayList<>();
        open.forEach((id, each) -> pieces.add(piece(id, each)));
        long metres = open.values().stream()
                .mapToLong(each -> each.cut().mm() + WeekRope.LOSS.mm())
                .sum();
        int most = (int) Math.min(pieces.size(), 2 * (metres / rope.usual().mm() + 1) + 1);
        return new PackingProblem(
                date(day),
                Map.of(WeekRope.ID, sold),
                pieces,
                rack.reels(most),
                Map.of(WeekRope.ID, worth.on(rack.coilMetres())),
                prices,
                List.of(),
                policy.fresh() ? Map.of() : promised,
                ShopCalendar.USUAL,
                Horizon.ALL);
    }

    private static Piece piece(String id, Ordered each) {
        return new Piece(
                id,
                new Piece.Source("order", "1", date(each.cutBy()), each.rush() ? 1 : USUAL, 0, WeekBench.SPLICING),
                List.of(new Piece.RopeChoice(WeekRope.ID, each.cut())),
                Piece.Matching.NONE,
                "",
                false,
                each.cut(),
                "");
    }

    private static LocalDate date(int day) {
        return WORKING.after(FIRST, day);
    }
}
