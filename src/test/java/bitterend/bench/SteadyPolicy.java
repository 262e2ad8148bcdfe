package bitterend.bench;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.RunLoad;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A way to choose what a week's pieces come off. */
interface SteadyPolicy {
    Length LOSS = new Length(10);

    /** Cuts a week; the pieces for which there is no rope, which are late. */
    List<Length> cut(SteadyRack rack, List<Length> pieces);

    /** By the coil curve. */
    static SteadyPolicy ours(SteadyRope rope, List<List<Length>> past) {
        List<Length> cuts = past.stream().flatMap(List::stream).toList();
        CoilTerms.Holding holding =
                new CoilTerms.Holding(Ratio.percent(SteadyRack.INTEREST_PERCENT), SteadyRack.ROOM, Length.ZERO);
        CoilValue value = CoilValue.of(
                PastCuts.of(cuts, LOSS, past.size(), PastCuts.Source.HISTORY),
                CoilTerms.of(rope.price(), rope.usual(), rope.usual(), holding),
                Length.ZERO);
        bitterend.buying.RackWorth worth = bitterend.buying.RackWorth.of(value);
        return new Packed(rope, rack -> worth.on(rack.metres()), SteadyRack.OPENING);
    }

    /** As few reels as can be opened, then by the older curve; packed exactly. */
    static SteadyPolicy coilsFirst(SteadyRope rope) {
        Cost dear = rope.paid(rope.reels().size() - 1).times(20);
        return new Packed(rope, rack -> older(rope), dear);
    }

    /** By the curve that grew from 15 % to the full price. */
    static SteadyPolicy olderCurve(SteadyRope rope) {
        return new Packed(rope, rack -> older(rope), SteadyRack.OPENING);
    }

    private static StockValue older(SteadyRope rope) {
        return new RisingValue(rope.price(), rope.rope().worth(), Ratio.percent(15), new Cost(75_000));
    }

    /** The longest piece first, each off the shortest coil that holds it; else off the cheapest reel by the metre. */
    static SteadyPolicy plainRule(SteadyRope rope) {
        return (rack, pieces) -> new Tightest(rope, rack).cut(SteadyRope.longestFirst(pieces));
    }

    /** Pieces as they were ordered, each off the shortest coil that holds it. */
    static SteadyPolicy bestFit(SteadyRope rope) {
        return (rack, pieces) -> new Tightest(rope, rack).cut(pieces);
    }

    /** Coils and reels while pieces are cut off them one by one. */
    final class Tightest {
        private final SteadyRope rope;
        private final SteadyRack rack;
        private final List<long[]> there = new ArrayList<>();
        private final int[] opened;

        Tightest(SteadyRope rope, SteadyRack rack) {
            this.rope = rope;
            this.rack = rack;
            opened = new int[rope.reels().size()];
            rack.coils().forEach(coil -> there.add(new long[] {coil.mm(), 0}));
        }

        List<Length> cut(List<Length> pieces) {
            List<Length> late = new ArrayList<>();
            for (Length piece : pieces) {
                there.stream()
                        .filter(each -> each[0] >= piece.mm())
                        .min(Comparator.comparingLong(each -> each[0]))
                        .or(() -> open(piece))
                        .ifPresentOrElse(coil -> take(coil, piece), () -> late.add(piece));
            }
            int fetched = (int) there.stream().filter(each -> each[1] == 1).count();
            List<Length> left = there.stream()
                    .filter(each -> each[0] >= rope.rope().worth().keepFrom().mm())
                    .map(each -> new Length(each[0]))
                    .toList();
            rack.after(left, opened, fetched);
            return late;
        }

        private static void take(long[] coil, Length piece) {
            coil[0] = Math.max(0, coil[0] - piece.mm() - LOSS.mm());
            coil[1] = 1;
        }

        /** The size that is cheapest by the metre, of those that are there and hold the piece. */
        private Optional<long[]> open(Length piece) {
            for (int size = rope.reels().size() - 1; size >= 0; size--) {
                if (opened[size] < rack.available(size) && rope.reels().get(size) * 1000L >= piece.mm()) {
                    opened[size]++;
                    long[] reel = {rope.reels().get(size) * 1000L, 0};
                    there.add(reel);
                    return Optional.of(reel);
                }
            }
            return Optional.empty();
        }
    }

    /** Packed by the pattern engine, at most so much work a week. */
    final class Packed implements SteadyPolicy {
        private static final long WORK = 100_000;
        private static final Duration AGES = Duration.ofDays(365);
        private static final LocalDate SOME_DAY = LocalDate.EPOCH;

        private final SteadyRope rope;
        private final java.util.function.Function<SteadyRack, StockValue> worth;
        private final Prices prices;

        Packed(SteadyRope rope, java.util.function.Function<SteadyRack, StockValue> worth, Cost opening) {
            this.rope = rope;
            this.worth = worth;
            prices = new Prices(opening, SteadyRack.CHANGING, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO);
        }

        @Override
        public List<Length> cut(SteadyRack rack, List<Length> pieces) {
            if (pieces.isEmpty()) {
                rack.after(rack.coils(), new int[rope.reels().size()], 0);
                return List.of();
            }
            StockValue today = worth.apply(rack);
            PackingProblem problem = problem(rack, pieces, today);
            Effort effort = new Effort(AGES, WORK, 1, 1, () -> false, progress -> {});
            var packing = new StudyStrategy().pack(problem, effort).packing();
            List<Length> late = problem.pieces().stream()
                    .filter(piece -> !packing.places().containsKey(piece.id()))
                    .map(piece -> piece.finished().roundedDown())
                    .toList();
            Map<String, RunLoad[]> loads = new PlanPrice(problem).loads(packing);
            List<Length> left = new ArrayList<>();
            int[] opened = new int[rope.reels().size()];
            int fetched = 0;
            for (Reel reel : problem.reels()) {
                RunLoad[] load = loads.get(reel.id());
                if (load == null) {
                    if (!reel.full()) {
                        left.add(reel.length());
                    }
                    continue;
                }
                fetched++;
                opened[reel.full() ? Integer.parseInt(reel.rope()) : 0] += reel.full() ? 1 : 0;
                Length rest = load[0].leftOf(reel.length(), LOSS);
                if (today.of(rest).millis() > 0) {
                    left.add(rest);
                }
            }
            rack.after(left, opened, fetched);
            return late;
        }

        private PackingProblem problem(SteadyRack rack, List<Length> pieces, StockValue today) {
            Map<String, bitterend.catalogue.Rope> ropes = new HashMap<>(Map.of(SteadyRope.ID, rope.rope()));
            Map<String, StockValue> values = new HashMap<>(Map.of(SteadyRope.ID, today));
            List<Reel> reels = new ArrayList<>();
            for (Length coil : rack.coils()) {
                reels.add(reel("coil " + reels.size(), SteadyRope.ID, coil, false));
            }
            for (int size = 0; size < rope.reels().size(); size++) {
                String mark = Integer.toString(size);
                ropes.put(mark, rope.rope().named(mark));
                Length whole = Length.ofMetres(rope.reels().get(size));
                Cost paid = rope.paid(size);
                values.put(
                        mark, left -> left.isShorterThan(whole) ? min(today.of(left), share(paid, left, whole)) : paid);
                long sum =
                        pieces.stream().mapToLong(each -> each.mm() + LOSS.mm()).sum();
                long most = Math.min(pieces.size(), 2 * (sum / whole.mm() + 1) + 1);
                for (long n = Math.min(rack.available(size), most); n > 0; n--) {
                    reels.add(reel(mark + " no. " + n, mark, whole, true));
                }
            }
            return new PackingProblem(SOME_DAY, ropes, pieces(pieces), reels, values, prices, List.of(), Map.of());
        }

        private static Cost min(Cost a, Cost b) {
            return a.compareTo(b) < 0 ? a : b;
        }

        private static Cost share(Cost paid, Length left, Length whole) {
            return new Cost(paid.millis() * left.mm() / whole.mm());
        }

        private List<Piece> pieces(List<Length> lengths) {
            Piece.Source source = new Piece.Source("week", "1", LocalDate.MAX, 5);
            List<Piece> pieces = new ArrayList<>();
            for (Length length : lengths) {
                List<Piece.RopeChoice> choices = new ArrayList<>(List.of(new Piece.RopeChoice(SteadyRope.ID, length)));
                for (int size = 0; size < rope.reels().size(); size++) {
                    choices.add(new Piece.RopeChoice(Integer.toString(size), length));
                }
                pieces.add(new Piece(
                        "piece " + pieces.size(), source, choices, Piece.Matching.NONE, "", false, length, ""));
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
    }
}
