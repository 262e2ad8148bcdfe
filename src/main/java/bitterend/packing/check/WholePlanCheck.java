package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Prices;
import bitterend.packing.ReelDraw;
import bitterend.packing.Unplanned;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks what holds across reels: every piece once, the order of the lists, the totals. */
final class WholePlanCheck {
    private final Facts facts;
    private final Faults faults;
    private final CutPlan plan;

    WholePlanCheck(Facts facts, Faults faults, CutPlan plan) {
        this.facts = facts;
        this.faults = faults;
        this.plan = plan;
    }

    void check() {
        checkListed("reels", plan.draws().stream().map(ReelDraw::reel).toList());
        checkListed(
                "unplanned pieces",
                plan.unplanned().stream().map(Unplanned::piece).toList());
        checkOnce();
        checkBook();
        faults.compare(Check.COST, "plan", "cost of the plan", plan.cost(), cost());
    }

    private void checkListed(String what, List<String> ids) {
        for (int i = 1; i < ids.size(); i++) {
            faults.unless(
                    NaturalOrder.IDS.compare(ids.get(i - 1), ids.get(i)) < 0,
                    Check.LISTED,
                    ids.get(i),
                    what + " are listed once, by id: " + ids.get(i) + " comes behind " + ids.get(i - 1));
        }
    }

    private void checkOnce() {
        Map<String, Integer> named = new HashMap<>();
        for (ReelDraw draw : plan.draws()) {
            draw.cuts().forEach(cut -> named.merge(cut.piece(), 1, Integer::sum));
        }
        for (Unplanned piece : plan.unplanned()) {
            named.merge(piece.piece(), 1, Integer::sum);
            faults.unless(
                    facts.findPiece(piece.piece()).isPresent(), Check.KNOWN, piece.piece(), "no such piece is wanted");
        }
        for (Piece piece : facts.problem().pieces()) {
            int times = named.getOrDefault(piece.id(), 0);
            faults.unless(times == 1, Check.ONCE, piece.id(), "the piece is " + times + " times in the plan, not once");
        }
    }

    private void checkBook() {
        LengthBook sum = LengthBook.EMPTY;
        for (ReelDraw draw : plan.draws()) {
            sum = sum.plus(draw.book());
        }
        faults.unless(
                plan.book().equals(sum),
                Check.BOOK,
                "plan",
                Faults.says("where the rope went", "" + plan.book(), "" + sum));
    }

    /** The draws as they are priced, every lot after the first of an order and rope, every piece moved. */
    private Cost cost() {
        Prices prices = facts.problem().prices();
        Cost cost = prices.splitOrder()
                .times(lotsBeyondTheFirst(placed()))
                .plus(prices.movedPiece().times(moved(facts, placed())));
        for (ReelDraw draw : plan.draws()) {
            cost = cost.plus(draw.cost());
        }
        return cost;
    }

    /** A piece and the reel it comes off. */
    record Placed(Piece piece, Reel reel) {}

    private List<Placed> placed() {
        List<Placed> placed = new ArrayList<>();
        for (ReelDraw draw : plan.draws()) {
            Optional<Reel> reel = facts.findReel(draw.reel());
            for (Cut cut : draw.cuts()) {
                facts.findPiece(cut.piece())
                        .ifPresent(piece -> reel.ifPresent(known -> placed.add(new Placed(piece, known))));
            }
        }
        return placed;
    }

    static long lotsBeyondTheFirst(List<Placed> placed) {
        Set<List<String>> orders = new HashSet<>();
        Set<List<String>> lots = new HashSet<>();
        for (Placed each : placed) {
            orders.add(List.of(each.piece().order(), each.reel().rope()));
            lots.add(List.of(each.piece().order(), each.reel().rope(), Facts.lot(each.reel())));
        }
        return lots.size() - (long) orders.size();
    }

    static long moved(Facts facts, List<Placed> placed) {
        return placed.stream()
                .filter(each -> {
                    String before = facts.problem().earlier().get(each.piece().id());
                    return before != null && !before.equals(each.reel().id());
                })
                .count();
    }
}
