package bitterend.packing.check;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.check.BestLoads.Kind;
import bitterend.packing.check.SoundRope.Stretch;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The bound that integer duals prove. For duals pi, weights U left undone at the prices mu by class, and the best that each reel r can
 * earn, Z_r = max(0, greatest pi of what it gives less scale times what the draw costs), no plan costs less than
 * {@code (sum pi - mu U - sum Z_r) / scale}: the general form of the safe bound of Farley (1990). Matched sets, split
 * orders and moved pieces are left out; they can only make plans dearer. Everything but the last division is counted in
 * units of a dual.
 */
final class RootBound {
    private static final long NEVER = Long.MIN_VALUE;

    private final BoundClaim claim;
    private final Facts facts;
    private final long scale;
    private final boolean limited;
    private final Map<List<Kind>, BestLoads> loads = new HashMap<>();
    private final Map<Object, Long> earnings = new HashMap<>();
    private final Map<String, List<Kind>> kindsOfReel = new HashMap<>();
    private final Map<Alike, Group> groups = new HashMap<>();
    private long work;

    /**
     * The bound of a claim.
     *
     * @param limited whether duals are cut off at the price of leaving undone; when anything is, they must be
     * @param work states that may be looked at
     */
    RootBound(BoundClaim claim, boolean limited, long work) {
        if (!limited && !claim.bound().undone().isNone()) {
            throw new IllegalArgumentException(
                    "duals are limited when " + claim.bound().undone() + " is undone");
        }
        this.claim = claim;
        this.limited = limited;
        this.facts = claim.facts();
        scale = claim.bound().scale();
        this.work = work;
    }

    /** The greatest that the duals prove; empty when it would take more work than allowed. */
    static Optional<Cost> greatest(BoundClaim claim, long work) {
        boolean allPlanned = claim.bound().undone().isNone();
        Optional<Cost> root = new RootBound(claim, !allPlanned, work).compute();
        boolean falling = root.isPresent() && root.get().compareTo(claim.bound().root()) < 0;
        return falling && allPlanned && claim.hasPrices() ? new RootBound(claim, true, work).compute() : root;
    }

    /** Pieces that the same reels are open to, as long and of the same dual. */
    private record Alike(
            List<Piece.RopeChoice> choices,
            String certificate,
            boolean ownRope,
            String order,
            String pin,
            List<String> waitsFor,
            Piece.Bond bond,
            List<CutMate> begun,
            long dual) {}

    private record Group(Piece first, long count) {}

    private void group() {
        Set<String> ordersWithReels = new HashSet<>();
        claim.reels().forEach(reel -> ordersWithReels.add(reel.custody().order()));
        for (Piece piece : claim.pieces()) {
            Alike alike = new Alike(
                    piece.choices(),
                    piece.certificate(),
                    piece.ownRope(),
                    ordersWithReels.contains(piece.order()) ? piece.order() : "",
                    facts.pin(piece),
                    facts.waitsFor(piece),
                    piece.matching().bond(),
                    piece.matching().begun(),
                    claim.dual(piece, limited));
            groups.merge(alike, new Group(piece, 1), (known, one) -> new Group(known.first(), known.count() + 1));
        }
    }

    /** The bound, rounded up to the next 1/1000 minor unit; empty when it would take more work than allowed. */
    Optional<Cost> compute() {
        long bound = Math.negateExact(claim.chargeForUndone());
        for (Piece piece : claim.pieces()) {
            bound = Math.addExact(bound, claim.dual(piece, limited));
        }
        group();
        Map<List<Kind>, List<Reel>> alike = new HashMap<>();
        for (Reel reel : claim.reels()) {
            alike.computeIfAbsent(kinds(reel), kinds -> new ArrayList<>()).add(reel);
        }
        for (Map.Entry<List<Kind>, List<Reel>> group : alike.entrySet()) {
            Optional<BestLoads> best = BestLoads.of(group.getKey(), longest(group.getValue()), work);
            if (best.isEmpty()) {
                return Optional.empty();
            }
            work -= best.get().work();
            loads.put(group.getKey(), best.get());
        }
        for (Reel reel : claim.reels()) {
            bound = Math.subtractExact(bound, earning(reel));
        }
        return Optional.of(new Cost(-Math.floorDiv(Math.negateExact(bound), scale)));
    }

    /**
     * The pieces that may come off a reel, those of one length and dual together, with the loss of their cut. The longest
     * come first: so there are the fewest states on the way.
     */
    private List<Kind> kinds(Reel reel) {
        return kindsOfReel.computeIfAbsent(reel.id(), id -> kindsOf(reel));
    }

    private List<Kind> kindsOf(Reel reel) {
        long loss = facts.problem().ropeOn(reel).cutting().loss().mm();
        Map<Long, Map<Long, Long>> counts = new TreeMap<>(Comparator.reverseOrder());
        groups.forEach((alike, group) -> {
            Optional<Length> cut = group.first().lengthOn(reel.rope());
            if (cut.isPresent() && facts.broken(group.first(), reel).isEmpty()) {
                counts.computeIfAbsent(Math.addExact(cut.get().mm(), loss), size -> new TreeMap<>())
                        .merge(alike.dual(), group.count(), Long::sum);
            }
        });
        List<Kind> kinds = new ArrayList<>();
        counts.forEach((size, byDual) -> byDual.forEach((dual, count) -> kinds.add(new Kind(size, dual, count))));
        return kinds;
    }

    private long longest(List<Reel> reels) {
        return reels.stream()
                .flatMap(reel -> facts.runs(reel).stream().map(run -> room(reel, run)))
                .max(Long::compare)
                .orElse(0L);
    }

    private long room(Reel reel, Stretch run) {
        return Math.addExact(
                run.length().mm(), facts.problem().ropeOn(reel).cutting().loss().mm());
    }

    private long earning(Reel reel) {
        List<Kind> kinds = kinds(reel);
        long fetching = scaled(DerivedDraw.fetching(facts, reel));
        List<Length> runs = facts.runs(reel).stream().map(Stretch::length).toList();
        Object sameDraws =
                List.of(kinds, runs, fetching, reel.rope(), reel.custody().isCustomersOwn());
        return earnings.computeIfAbsent(sameDraws, any -> earning(reel, kinds, fetching));
    }

    /** The best over the last run that is cut; runs before it are cut too or cut off whole. */
    private long earning(Reel reel, List<Kind> kinds, long fetching) {
        StockValue value = facts.problem().valueOn(reel);
        long handling = scaled(facts.problem().prices().handling());
        long best = 0;
        long before = -fetching;
        for (Stretch run : facts.runs(reel)) {
            long here = earning(reel, kinds, value, run);
            if (here != NEVER) {
                best = Math.max(best, Math.addExact(before, here));
            }
            before = Math.addExact(before, Math.max(here, -handling));
        }
        return best;
    }

    /** The most that a run earns with at least one piece; {@link #NEVER} when no piece fits. */
    private long earning(Reel reel, List<Kind> kinds, StockValue value, Stretch run) {
        BestLoads best = loads.get(kinds);
        if (best == null) {
            throw new IllegalArgumentException("no loads for reel " + reel.id());
        }
        long length = run.length().mm();
        long most = best.most(room(reel, run), size -> scaled(value.of(new Length(Math.max(0, length - size)))));
        return most == NEVER ? NEVER : Math.subtractExact(most, scaled(value.of(run.length())));
    }

    private long scaled(Cost cost) {
        return Math.multiplyExact(cost.millis(), scale);
    }
}
