package bitterend.buying;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Bound;
import bitterend.packing.DrawPrice;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A rack that is lived from week after week: coils are carried on, reels of the option are bought when they are opened. */
final class SimulatedRack {
    private static final LocalDate SOME_DAY = LocalDate.EPOCH;

    private final Study study;
    private final Curves curves;
    private final Option option;
    private final Packer packer;
    private final Effort effort;
    private final List<Length> coils;
    private Cost spent = Cost.ZERO;
    private Cost avoidable = Cost.ZERO;
    private Length bought = Length.ZERO;
    private Length cut = Length.ZERO;
    private int reels;

    SimulatedRack(Study study, Curves curves, Option option, List<Length> coils, Packer packer, Effort effort) {
        this.study = study;
        this.curves = curves;
        this.option = option;
        this.coils = new ArrayList<>(coils);
        this.packer = packer;
        this.effort = effort;
    }

    /** Cuts a week's pieces. */
    void cut(List<Length> week) {
        if (week.isEmpty()) {
            return;
        }
        Curves.OfRack today = curves.on(sum(coils));
        PackingProblem problem = problem(week, today);
        Packer.Result result = packer.pack(problem, effort);
        if (result.packing().places().size() < week.size()) {
            throw new IllegalStateException("a reel of the option holds every piece, but "
                    + (week.size() - result.packing().places().size()) + " were left out");
        }
        take(problem, today, new PlanPrice(problem).loads(result.packing()));
        week.forEach(length -> cut = cut.plus(length));
        Cost bound = result.bounds().stream().map(Bound::best).reduce(Cost.ZERO, Cost::plus);
        avoidable = avoidable.plus(result.cost().minus(bound));
    }

    /** What it all came to; what was on the rack at first is neither cost nor waste. */
    Outcome outcome(List<Length> atFirst) {
        Length waste = bought.plus(sum(atFirst)).minus(cut).minus(sum(coils));
        Cost cost = spent.plus(study.worth().of(atFirst)).minus(study.worth().of(coils));
        return new Outcome(cost, waste, coils.size(), reels, avoidable);
    }

    /** What an empty rack cost to live from when what is on it at the end is valued another way. */
    Cost costValuedBy(RackWorth other) {
        return spent.minus(other.of(coils));
    }

    private void take(PackingProblem problem, Curves.OfRack today, Map<String, RunLoad[]> loads) {
        List<Length> rest = new ArrayList<>();
        for (int i = 0; i < problem.reels().size(); i++) {
            Reel reel = problem.reels().get(i);
            boolean old = i < coils.size();
            RunLoad[] load = loads.get(reel.id());
            if (load == null) {
                if (old) {
                    rest.add(reel.length());
                }
                continue;
            }
            spent = spent.plus(DrawPrice.fixedCost(problem, reel));
            Length left = load[0].leftOf(reel.length(), study.rope().cutting().loss());
            if (today.rack().of(left).millis() > 0) {
                rest.add(left);
            }
            if (!old) {
                buy(reel);
            }
        }
        coils.clear();
        coils.addAll(rest);
    }

    private void buy(Reel reel) {
        Offer offer = option.offers().stream()
                .filter(each -> each.marking().equals(reel.rope()))
                .findFirst()
                .orElseThrow();
        spent = spent.plus(offer.paid());
        bought = bought.plus(offer.usable());
        reels++;
    }

    /** The coils first, in the order of the list. */
    private PackingProblem problem(List<Length> week, Curves.OfRack today) {
        Rope rope = study.rope();
        Map<String, Rope> ropes = new HashMap<>(Map.of(rope.id(), rope));
        Map<String, StockValue> values = new HashMap<>(Map.of(rope.id(), today.rack()));
        List<Reel> there = new ArrayList<>();
        coils.sort(Comparator.reverseOrder());
        for (int i = 0; i < coils.size(); i++) {
            there.add(reel("coil " + i, rope.id(), coils.get(i), false));
        }
        for (Offer offer : option.offers()) {
            ropes.put(offer.marking(), rope);
            values.put(offer.marking(), today.of(offer));
            for (int i = 0; i < enough(offer, week); i++) {
                there.add(reel(offer.marking() + " no. " + i, offer.marking(), offer.usable(), true));
            }
        }
        return new PackingProblem(SOME_DAY, ropes, pieces(week), there, values, study.prices(), List.of(), Map.of());
    }

    /** Twice what the pieces fill, and one more; more only when pieces take a reel each. */
    private int enough(Offer offer, List<Length> week) {
        long takers = week.stream()
                .filter(length -> !length.isLongerThan(offer.usable()))
                .count();
        Length loss = study.rope().cutting().loss();
        long sum = sum(week).plus(loss.times(week.size())).mm();
        return (int) Math.min(takers, 2 * (sum / offer.usable().mm() + 1) + 1);
    }

    private List<Piece> pieces(List<Length> week) {
        Piece.Source source = new Piece.Source("week", "1", LocalDate.MAX, 5);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < week.size(); i++) {
            Length length = week.get(i);
            List<Piece.RopeChoice> choices = new ArrayList<>();
            choices.add(new Piece.RopeChoice(study.rope().id(), length));
            option.offers().forEach(offer -> choices.add(new Piece.RopeChoice(offer.marking(), length)));
            pieces.add(new Piece("piece " + i, source, choices, Piece.Matching.NONE, "", false, length, ""));
        }
        return pieces;
    }

    private static Reel reel(String id, String rope, Length length, boolean full) {
        return new Reel(
                id,
                rope,
                "",
                new Reel.Contents(length, Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                full,
                Reel.Where.UNKNOWN);
    }

    private static Length sum(List<Length> lengths) {
        return lengths.stream().reduce(Length.ZERO, Length::plus);
    }
}
