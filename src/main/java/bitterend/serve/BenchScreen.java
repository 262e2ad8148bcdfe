package bitterend.serve;

import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.PlanPart;
import bitterend.report.PlanView;
import bitterend.report.sheet.ReelSheet;
import bitterend.report.sheet.Row;
import bitterend.report.sheet.Segment;
import bitterend.report.sheet.SheetMaker;
import bitterend.stock.Movement;
import bitterend.work.Plans;
import bitterend.work.ReelDays;
import bitterend.work.Remark;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.AskMates;
import bitterend.work.plans.PostedPieces;
import bitterend.work.rack.AskRack;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One reel a screen for who cuts: the next cut large, a button for what happened, all that is cut already below. */
final class BenchScreen implements Screen {
    static final String PATH = "/bench/reel?id=";

    private final Loft loft;
    private final Site site;

    BenchScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/bench", this::reels);
        config.routes.get("/bench/reel", this::reel);
    }

    private record Plan(
            ShopNow now,
            Verdict.Passed passed,
            List<Remark> remarks,
            ReelDays days,
            PlanView view,
            Figures figures,
            Set<String> cut) {
        /** Whether something has changed of a reel so that nothing is booked off it by this plan. */
        boolean isBarred(String reel) {
            return remarks.stream()
                    .anyMatch(remark -> remark.bars() && remark.reel().equals(reel));
        }

        /** The sheet of a reel; nothing where the plan does not cut it. */
        Optional<ReelSheet> sheet(String reel) {
            PlanPart alone = new PlanPart(false, Set.of(reel), view.plan().day());
            return new SheetMaker(view.only(alone), figures, List.of())
                    .sheet("").reels().stream().findFirst();
        }

        /** The cuts that are still to be made of a reel. */
        List<NextCut> still(String reel, List<Row> rows, CutCards cards) {
            return new CutsToMake(view, figures, new AskMates(now, passed, cut), cards).of(reel, rows, cut);
        }

        /** What this plan takes off a reel. */
        Optional<ReelDraw> draw(String reel) {
            return view.draws().stream()
                    .filter(draw -> draw.reel().equals(reel))
                    .findFirst();
        }

        /** The reading of the counter at each cut that comes elsewhere than planned, as printed, by its piece. */
        Map<String, String> moved(String reel, List<Row> rows, List<Movement> history) {
            Map<String, String> readings = new HashMap<>();
            draw(reel).ifPresent(draw -> {
                Map<String, Length> moved = MovedReadings.of(draw, cut, history);
                rows.forEach(row -> Optional.ofNullable(moved.get(row.mark().piece()))
                        .ifPresent(by -> readings.put(
                                row.mark().piece(),
                                figures.bare(view.reading(draw, row.mark()).plus(view.reading(draw, by))))));
            });
            return readings;
        }
    }

    private Optional<Plan> plan() {
        return loft.now().flatMap(now -> loft.inForce(now)
                .flatMap(verdict -> verdict.passed().map(passed -> {
                    Figures figures = loft.figures(now);
                    Plans plans = now.at().plans(new Findings());
                    ReelDays days = ReelDays.of(passed.kept().document(), plans);
                    PlanMark mark = new PlanMark(
                            passed.number(),
                            false,
                            changes(verdict, CommandWord.of(now.at().named())),
                            CommandWord.of(now.at().named()),
                            days.out());
                    PlanView view = loft.view(now, passed, mark);
                    return new Plan(now, passed, verdict.remarks(), days, view, figures, cut(now, plans, passed));
                })));
    }

    /** What is cut by now off any reel, and what was cut by this plan and spoiled since. */
    private static Set<String> cut(ShopNow now, Plans plans, Verdict.Passed passed) {
        Set<String> cut = new HashSet<>(PostedPieces.of(now, plans, passed.kept()));
        now.rack().ifPresent(rack -> cut.addAll(rack.cut().keySet()));
        return cut;
    }

    /** What befell a reel, where a ledger is kept. */
    private List<Movement> history(String reel) {
        boolean kept = loft.access().keepsLedger();
        return kept && new AskRack(loft.access()).history(reel) instanceof AskRack.Found.History history
                ? history.movements()
                : List.of();
    }

    /** That the ledger has less left of a reel than the next cut takes; empty where it has enough, or none is to be made. */
    private static String ended(Plan plan, String reel, Optional<LastBooked> last) {
        List<Cut> still = plan.draw(reel).stream()
                .flatMap(draw -> draw.cuts().stream())
                .filter(cut -> !plan.cut().contains(cut.piece()))
                .toList();
        return last.map(LastBooked::left)
                .filter(left ->
                        !still.isEmpty() && left.isShorterThan(still.get(0).length()))
                .map(left -> (left.isPositive()
                                ? "By the ledger no more than "
                                        + plan.figures().length(left)
                                        + " is left of this reel, too little for the next cut"
                                : "By the ledger this reel has ended")
                        + "; not cut: " + still.size() + (still.size() == 1 ? " piece" : " pieces") + ". Plan again.")
                .orElse("");
    }

    /** The piece that was cut last of a reel; empty while none is. */
    private static String lastCut(List<Row> rows, Set<String> cut) {
        return rows.stream()
                .filter(Row::isCut)
                .map(row -> row.mark().piece())
                .filter(cut::contains)
                .reduce("", (first, later) -> later);
    }

    /** What changed since the plan was made; how far it is cut is seen on the screen itself. */
    private static List<PlanMark.Change> changes(Verdict verdict, String shop) {
        return Remark.toldOnce(verdict.remarks(), shop).stream()
                .filter(remark -> !remark.isPosted())
                .map(remark -> new PlanMark.Change(remark.reel(), remark.sentence()))
                .toList();
    }

    private void reels(Context request) {
        Plan plan = plan().orElse(null);
        if (plan == null) {
            site.tell(request, "No plan is in force that can be cut by.");
            return;
        }
        Set<String> cut = plan.cut();
        Set<String> atHand = plan.days().atHand();
        List<ReelToCut> reels = plan.view().draws().stream()
                .filter(draw -> atHand.contains(draw.reel()))
                .map(draw -> new ReelToCut(
                        draw.reel(),
                        plan.view().rope(draw).name(),
                        plan.view().reel(draw).where().place(),
                        PATH + Sent.path(draw.reel()),
                        (int) draw.cuts().stream()
                                .filter(each -> cut.contains(each.piece()))
                                .count(),
                        draw.cuts().size(),
                        plan.view().isPromise(draw),
                        sheet(plan, draw.reel()),
                        isPlannedAgain(plan, draw)))
                .toList();
        site.show(
                request,
                "Bench",
                "serve/bench.jte",
                Map.of("reels", reels, "plan", plan.passed().number()));
    }

    /** Whether its sheet is out, and of which plan where that is another one. */
    private static String sheet(Plan plan, String reel) {
        return Optional.ofNullable(plan.days().sheets().get(reel))
                .map(number ->
                        number == plan.passed().number() ? "sheet issued" : "sheet of plan " + number + " issued")
                .orElse("");
    }

    /** Whether what is not cut of a reel is not to be cut off it any more. Before its first cut it cannot have ended. */
    private boolean isPlannedAgain(Plan plan, ReelDraw draw) {
        long cut = draw.cuts().stream()
                .filter(each -> plan.cut().contains(each.piece()))
                .count();
        if (cut == draw.cuts().size()) {
            return false;
        }
        return plan.isBarred(draw.reel())
                || (cut > 0
                        && !ended(plan, draw.reel(), LastBooked.of(history(draw.reel())))
                                .isEmpty());
    }

    private void reel(Context request) {
        Plan plan = plan().orElseThrow(() -> new NotFoundResponse("No plan is in force that can be cut by."));
        String id = Sent.asked(request, "id");
        ReelSheet sheet =
                plan.sheet(id).orElseThrow(() -> new NotFoundResponse("The plan in force does not cut that reel."));
        Set<String> cut = plan.cut();
        List<Row> rows = sheet.segments().stream()
                .map(Segment::rows)
                .flatMap(List::stream)
                .toList();
        Map<String, Object> values = new HashMap<>();
        values.put("sheet", sheet);
        values.put("rows", rows);
        values.put("segments", sheet.segments());
        values.put("cut", cut);
        CutCards cards = CutCards.of(plan.now(), plan.view(), plan.figures(), id);
        values.put("cards", cards.cards());
        values.put("still", plan.still(id, rows, cards));
        values.put("unit", plan.figures().unit());
        values.put("bare", loft.unit());
        values.put("plan", plan.passed().number());
        values.put("barred", plan.isBarred(id));
        List<Movement> history = history(id);
        Optional<LastBooked> last = LastBooked.of(history);
        values.put("moved", plan.moved(id, rows, history));
        values.put("ended", ended(plan, id, last));
        values.put(
                "last", last.filter(LastBooked::isBench).map(LastBooked::event).orElse(0L));
        values.put("lastWords", last.map(LastBooked::words).orElse(""));
        values.put("lastCut", lastCut(rows, cut));
        values.put("kept", loft.access().keepsLedger());
        values.put("booking", Keys.random());
        values.put("path", "/bench/reel");
        site.show(request, "Reel " + id, "serve/cutting.jte", values);
    }
}
