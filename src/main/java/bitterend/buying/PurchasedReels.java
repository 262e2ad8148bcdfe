package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.WorkingDays;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The reels that a packing cuts at each price, the order of reels that follows from it, and what it comes to. */
final class PurchasedReels {
    private final Orders orders;
    private final PurchaseProblem market;
    private final PackingProblem problem;
    private final Packing packing;
    private final ReelSet committed;
    private final Map<String, Tier> tiers = new TreeMap<>(NaturalOrder.IDS);
    private final Map<String, List<Reel>> cut = new HashMap<>();

    /**
     * @param market the problem's own prices, nothing weighed
     * @param problem what is packed
     * @param packing where the pieces lie
     * @param offered what could be bought, and {@code committed} what is bought whatever happens, by id of its tier
     */
    PurchasedReels(
            Orders orders,
            PurchaseProblem market,
            PackingProblem problem,
            Packing packing,
            List<Tier> offered,
            ReelSet committed) {
        this.orders = orders;
        this.market = market;
        this.problem = problem;
        this.packing = packing;
        this.committed = committed;
        offered.forEach(tier -> tiers.put(tier.id(), tier));
        Map<String, Reel> reels = new HashMap<>();
        problem.reels().forEach(reel -> reels.put(reel.id(), reel));
        packing.places().values().stream()
                .map(RunId::reel)
                .distinct()
                .sorted(NaturalOrder.IDS)
                .map(reels::get)
                .forEach(reel -> market.tierOf(reel)
                        .ifPresent(tier -> cut.computeIfAbsent(tier.id(), id -> new ArrayList<>())
                                .add(reel)));
    }

    /** How many reels are bought at each price: those committed to, and the others that are cut. */
    ReelSet byTier() {
        ReelSet set = committed;
        for (Map.Entry<String, List<Reel>> entry : cut.entrySet()) {
            long free = entry.getValue().stream()
                    .filter(reel -> !PurchaseProblem.isCommitted(reel))
                    .count();
            set = set.with(entry.getKey(), committed.of(entry.getKey()) + (int) free);
        }
        return set;
    }

    /** The purchase in true figures. Every coil is worth what it is behind those that are shorter. */
    Purchase purchase() {
        ReelSet set = byTier();
        Map<String, List<Rest>> rests = rests(set);
        Cost flat = Cost.ZERO;
        Left left = Left.NONE;
        for (Map.Entry<String, List<Rest>> rope : rests.entrySet()) {
            left = left.plus(left(rope.getKey(), rope.getValue()));
            flat = rope.getValue().stream().map(Rest::alone).reduce(flat, Cost::plus);
        }
        Cost cost = new PlanPrice(problem).of(packing).plus(sunk()).plus(flat).minus(left.worth());
        return new Purchase(inOffers(set), cost, Cost.ZERO, paid(set), left, unplanned(), lines(set));
    }

    /** What is left of one reel, and what that is worth on the rack as it is. */
    private record Rest(Tier tier, PaidValue value, Length length) {
        Cost alone() {
            return value.of(length);
        }
    }

    private Map<String, List<Rest>> rests(ReelSet set) {
        Map<String, RunLoad[]> loads = new PlanPrice(problem).loads(packing);
        Map<String, List<Rest>> rests = new TreeMap<>(NaturalOrder.IDS);
        set.counts().forEach((id, count) -> {
            Tier tier = tier(id);
            Offer offer = tier.offer();
            List<Rest> ofRope = rests.computeIfAbsent(offer.rope(), rope -> new ArrayList<>());
            PaidValue value = market.value(tier, true);
            for (Reel reel : reelsOf(id)) {
                Length loss = problem.ropeOn(reel).cutting().loss();
                RunLoad[] load = loads.getOrDefault(reel.id(), new RunLoad[] {RunLoad.NONE});
                ofRope.add(new Rest(tier, value, load[0].leftOf(offer.usable(), loss)));
            }
            for (int whole = reelsOf(id).size(); whole < count; whole++) {
                ofRope.add(new Rest(tier, value, offer.usable()));
            }
        });
        return rests;
    }

    private Left left(String rope, List<Rest> rests) {
        StackedWorth worth = orders.stacked(rope);
        Length before = Length.ZERO;
        Left left = Left.NONE;
        for (Rest rest :
                rests.stream().sorted(Comparator.comparing(Rest::length)).toList()) {
            Cost each = rest.value().capped(worth.of(rest.length(), before), rest.length());
            if (each.millis() > 0) {
                left = left.plus(new Left(each, rest.length(), 1));
                before = before.plus(rest.length());
            }
        }
        return left;
    }

    /** What reels bought whatever happens lose on the way to the rack: the price paid above their value there. */
    private Cost sunk() {
        return committed.counts().entrySet().stream()
                .map(entry -> {
                    Tier tier = tier(entry.getKey());
                    Cost whole = market.value(tier, true).of(tier.offer().usable());
                    return tier.each().minus(whole).times(entry.getValue());
                })
                .reduce(Cost.ZERO, Cost::plus);
    }

    private Paid paid(ReelSet set) {
        Cost all = Cost.ZERO;
        Cost freight = Cost.ZERO;
        for (Map.Entry<String, Integer> entry : set.counts().entrySet()) {
            Tier tier = tier(entry.getKey());
            all = all.plus(tier.each().times(entry.getValue()));
            freight = freight.plus(tier.freight().times(entry.getValue()));
        }
        return new Paid(all.minus(freight), freight);
    }

    private ReelSet inOffers(ReelSet set) {
        ReelSet offers = ReelSet.EMPTY;
        for (Map.Entry<String, Integer> entry : set.counts().entrySet()) {
            String offer = tier(entry.getKey()).offer().id();
            offers = offers.with(offer, offers.of(offer) + entry.getValue());
        }
        return offers;
    }

    /** A line for each offer at each price. */
    private List<ReelLine> lines(ReelSet set) {
        List<ReelLine> lines = new ArrayList<>();
        set.counts().forEach((id, count) -> {
            Tier tier = tier(id);
            List<Piece> pieces = piecesOf(id);
            Mass mass = orders.day()
                    .rope(tier.offer().rope())
                    .mass()
                    .of(tier.offer().made().length().times(count));
            boolean matched = pieces.stream().anyMatch(Piece::isMatched);
            Need need = Need.of(
                    pieces.stream().map(Piece::id).sorted(NaturalOrder.IDS).toList());
            lines.add(new ReelLine(
                    tier.offer(),
                    count,
                    tier.price(),
                    tier.freight(),
                    orderBy(tier.offer(), pieces),
                    mass,
                    matched,
                    need));
        });
        return lines;
    }

    private Tier tier(String id) {
        Tier tier = tiers.get(id);
        if (tier == null) {
            throw new IllegalArgumentException("nothing offered as " + id);
        }
        return tier;
    }

    private List<Reel> reelsOf(String tier) {
        return cut.getOrDefault(tier, List.of());
    }

    private List<Piece> piecesOf(String tier) {
        java.util.Set<String> reels = new java.util.HashSet<>();
        reelsOf(tier).forEach(reel -> reels.add(reel.id()));
        return problem.pieces().stream()
                .filter(piece -> packing.placeOf(piece.id())
                        .filter(place -> reels.contains(place.reel()))
                        .isPresent())
                .toList();
    }

    private LocalDate orderBy(Offer offer, List<Piece> pieces) {
        WorkingDays working = new WorkingDays(problem.calendar());
        LocalDate cutBy =
                pieces.stream().map(working::cutBy).min(LocalDate::compareTo).orElse(LocalDate.MAX);
        return cutBy.equals(LocalDate.MAX) ? cutBy : orders.orderBy(offer, cutBy);
    }

    private List<String> unplanned() {
        return problem.pieces().stream()
                .map(Piece::id)
                .filter(id -> packing.placeOf(id).isEmpty())
                .sorted(NaturalOrder.IDS)
                .toList();
    }
}
