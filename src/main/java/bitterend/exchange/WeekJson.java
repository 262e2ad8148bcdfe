package bitterend.exchange;

import bitterend.day.BenchDay;
import bitterend.demand.Piece;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.explain.CutWeek;
import bitterend.packing.explain.Rider;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The days ahead of a plan for programs: reels, pieces and minutes by day, rope that comes in, and what rides on it. */
public final class WeekJson {
    private final PackingProblem problem;
    private final CutWeek week;

    private WeekJson(PackingProblem problem, CutWeek week) {
        this.problem = problem;
        this.week = week;
    }

    /**
     * {@code {"format": "bitterend/week/1", ...}}.
     *
     * @param plan its number; 0 for none
     * @param hours what it asks of the bench, day by day; empty where the shop states no hours
     */
    public static String text(int plan, PackingProblem problem, CutWeek week, List<BenchDay> hours) {
        WeekJson json = new WeekJson(problem, week);
        return new JsonTree()
                .with("format", "bitterend/week/1")
                .with("plan", plan)
                .with("day", problem.day().toString())
                .with("days", json.days())
                .with("minutes", hours.stream().map(WeekJson::minutes).toList())
                .with("arrivals", json.arrivals())
                .with(
                        "risks",
                        Rider.of(problem, week.draws()).stream()
                                .map(WeekJson::risk)
                                .toList())
                .text();
    }

    private List<JsonTree> days() {
        return week.days().entrySet().stream().map(this::day).toList();
    }

    private JsonTree day(Map.Entry<LocalDate, CutWeek.Day> day) {
        CutWeek.Day cut = day.getValue();
        return new JsonTree()
                .with("day", day.getKey().toString())
                .with("pieces", cut.pieces())
                .with("ahead", cut.draws().stream().mapToInt(week::ahead).sum())
                .with("reels", cut.draws().stream().map(this::reel).toList())
                .with("undone", cut.undone().stream().map(WeekJson::undone).toList());
    }

    private JsonTree reel(ReelDraw draw) {
        return new JsonTree()
                .with("reel", draw.reel())
                .with("rope", problem.reel(draw.reel()).rope())
                .with("promised", week.isPromise(draw))
                .with("onOrder", problem.isComing(draw.reel()))
                .with("drawn", LengthText.exact(draw.book().drawn()))
                .with(
                        "pieces",
                        draw.cuts().stream()
                                .map(cut -> new JsonTree()
                                        .with("piece", cut.piece())
                                        .with("cut", LengthText.exact(cut.length()))
                                        .with("cutBy", week.lastFor(cut).toString()))
                                .toList());
    }

    private static JsonTree undone(Piece piece) {
        return new JsonTree()
                .with("piece", piece.id())
                .with("rope", piece.orderedRope())
                .with("cut", LengthText.exact(piece.cut()));
    }

    private static JsonTree minutes(BenchDay day) {
        return new JsonTree()
                .with("day", day.day().toString())
                .with("there", day.there())
                .with("fetching", day.fetching())
                .with("cutting", day.cutting())
                .with("splicing", day.splicing())
                .with("tooMuch", day.over())
                .with("late", (Object) day.late());
    }

    private List<JsonTree> arrivals() {
        return problem.arrivals().entrySet().stream()
                .map(coming -> new JsonTree()
                        .with("reel", coming.getKey())
                        .with("order", coming.getValue().order())
                        .with("rope", problem.reel(coming.getKey()).rope())
                        .with("expected", coming.getValue().expected().toString())
                        .with("countedOnFrom", coming.getValue().from().toString()))
                .toList();
    }

    private static JsonTree risk(Rider rider) {
        return new JsonTree()
                .with("order", rider.order())
                .with("pieces", (Object) rider.pieces())
                .with("onOrder", rider.arrival().order())
                .with("expected", rider.arrival().expected().toString())
                .with("cutBy", rider.cutBy().toString())
                .with("leewayDays", rider.leeway());
    }
}
