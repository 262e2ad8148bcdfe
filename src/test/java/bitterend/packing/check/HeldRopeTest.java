package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.HeldPieces;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** No plan cuts rope that is held for another, and the checker finds one that does. {@code -Dshops=N} sets how many shops. */
final class HeldRopeTest {
    private static final long SHOPS = Long.getLong("shops", 200);

    @Test
    void quickStarts_leaveWhatIsHeldForOthers() {
        long served = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = HeldPieces.pinned(holding(seed), HeldRopeTest::customer);
            CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(shop, Effort.of(Duration.ofSeconds(1)));
            assertLeft(seed, shop, plan);
            served += shop.pins().stream().filter(Pin::isOfHeldRope).count();
        }
        assertTrue(served > SHOPS / 4, "hardly any rope is held for a piece: " + served);
    }

    @Test
    void allEngines_leaveWhatIsHeldForOthers_andNoneIsUnsound() {
        for (long seed = 0; seed < SHOPS / 20; seed++) {
            PackingProblem shop = HeldPieces.pinned(holding(seed), HeldRopeTest::customer);
            Effort effort = new Effort(Duration.ofMillis(300), Long.MAX_VALUE, seed, 1, () -> false, progress -> {});
            DayPlanner.Checked checked = new DayPlanner(FullStrategy.at(EffortLevel.QUICK)).checked(shop, effort);
            assertLeft(seed, shop, checked.plan());
            assertEquals(List.of(), checked.unsound(), "shop " + seed);
        }
    }

    @Test
    void planThatCutsWhatIsHeld_isFound() {
        int found = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem held = holding(seed);
            PackingProblem free = without(held);
            CutPlan careless = new DayPlanner(new GreedyStrategy()).plan(free, Effort.of(Duration.ofSeconds(1)));
            if (careless.draws().stream().anyMatch(draw -> isIntoWhatIsHeld(held, draw))) {
                assertFalse(PlanChecker.check(held, careless).isEmpty(), "shop " + seed);
                found++;
            }
        }
        assertTrue(found > SHOPS / 20, "hardly any careless plan: " + found);
    }

    @Test
    void pieceThatIsServedThoughNothingIsHeldForIt_isFound() {
        int found = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = without(holding(seed));
            CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(shop, Effort.of(Duration.ofSeconds(1)));
            for (ReelDraw draw : plan.draws().stream().limit(1).toList()) {
                Set<String> pinned = new HashSet<>();
                shop.pins().forEach(pin -> pinned.add(pin.piece()));
                String piece = draw.cuts().get(0).piece();
                List<Pin> pins = new ArrayList<>(shop.pins());
                pins.add(new Pin(piece, draw.reel()).ofHeldRope("order nobody"));
                if (!pinned.contains(piece)) {
                    assertTrue(
                            PlanChecker.check(shop.withPins(pins), plan).stream()
                                    .anyMatch(fault -> fault.check() == Check.RESERVED),
                            "shop " + seed);
                    found++;
                }
            }
        }
        assertTrue(found > SHOPS / 4, "hardly any: " + found);
    }

    /** The plan stays as it is; only whose the order is that is served changes. */
    @Test
    void pieceOfAnotherCustomer_thatIsGivenWhatIsHeldForOne_isFound() {
        int found = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = HeldPieces.pinned(holding(seed), HeldRopeTest::customer);
            CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(shop, Effort.of(Duration.ofSeconds(1)));
            for (Pin pin : shop.pins()) {
                boolean cut = plan.draws().stream()
                        .flatMap(draw -> draw.cuts().stream())
                        .anyMatch(each -> each.piece().equals(pin.piece()));
                if (cut && pin.heldFor().startsWith("customer ")) {
                    String order = shop.pieces().stream()
                            .filter(piece -> piece.id().equals(pin.piece()))
                            .map(Piece::order)
                            .findFirst()
                            .orElseThrow();
                    Map<String, String> others = new TreeMap<>(shop.customers());
                    others.put(order, "somebody else");
                    assertTrue(
                            PlanChecker.check(shop.ofCustomers(others), plan).stream()
                                    .anyMatch(fault -> fault.check() == Check.RESERVED),
                            "shop " + seed);
                    assertFalse(
                            PlanChecker.check(shop.ofCustomers(Map.of()), plan).isEmpty(), "shop " + seed);
                    found++;
                }
            }
        }
        assertTrue(found > SHOPS / 10, "hardly any: " + found);
    }

    private static void assertLeft(long seed, PackingProblem shop, CutPlan plan) {
        assertEquals(List.of(), PlanChecker.check(shop, plan), "shop " + seed);
        for (ReelDraw draw : plan.draws()) {
            assertFalse(isIntoWhatIsHeld(shop, draw), "shop " + seed + ", " + draw.reel());
        }
    }

    /** Whether the last cut of a reel leaves less certain rope than is held for those that are not served by the draw. */
    private static boolean isIntoWhatIsHeld(PackingProblem shop, ReelDraw draw) {
        Reel reel = shop.reel(draw.reel());
        Length end = draw.cuts().stream().map(Cut::to).reduce(Length.ZERO, Length::max);
        Length left =
                reel.contents().certainEnd().minus(reel.contents().leadTrim()).minus(end);
        Length room = reel.contents().certainEnd().minus(reel.contents().leadTrim());
        Length loss = shop.ropeOn(reel).cutting().loss();
        Length kept = Length.ZERO;
        for (Held held : reel.custody().heldOn(shop.day())) {
            Length there = Length.max(Length.ZERO, Length.min(held.length(), room));
            room = room.minus(there);
            Length served = draw.cuts().stream()
                    .filter(cut -> shop.pins().stream()
                            .anyMatch(pin -> pin.piece().equals(cut.piece())
                                    && pin.heldFor().equals(held.whom())))
                    .map(cut -> cut.length().plus(loss))
                    .reduce(Length.ZERO, Length::plus);
            kept = kept.plus(Length.max(Length.ZERO, there.minus(served)));
        }
        return kept.isPositive() && left.isShorterThan(kept);
    }

    /** A random shop in which rope of some reels is held for orders, for customers, and for orders that want nothing of it. */
    private static PackingProblem holding(long seed) {
        PackingProblem shop = RandomShop.of(seed, seed % 4 == 1 ? ShopSize.TINY : ShopSize.SMALL);
        Random random = new Random(seed);
        List<Reel> reels = new ArrayList<>();
        for (Reel reel : shop.reels()) {
            List<Held> all = new ArrayList<>();
            while (random.nextInt(3) > 0 && all.size() < 3) {
                long mm = 1 + (long) (random.nextDouble() * reel.length().mm());
                Piece piece = shop.pieces().isEmpty()
                        ? null
                        : shop.pieces().get(random.nextInt(shop.pieces().size()));
                String order = piece == null || random.nextInt(4) == 0 ? "nobody" : piece.order();
                boolean forOrder = random.nextBoolean();
                String name = forOrder ? order : customer(order);
                if (all.stream().noneMatch(each -> each.name().equals(name))) {
                    all.add(new Held(
                            new Length(mm),
                            forOrder ? Held.For.ORDER : Held.For.CUSTOMER,
                            name,
                            shop.day().plusDays(random.nextInt(5) - 1),
                            ""));
                }
            }
            reels.add(reel.withCustody(reel.custody().holding(all)));
        }
        return shop.withRack(shop.ropes(), shop.values(), reels);
    }

    private static PackingProblem without(PackingProblem shop) {
        return shop.withRack(
                shop.ropes(),
                shop.values(),
                shop.reels().stream()
                        .map(reel -> reel.holding(Length.ZERO)
                                .withCustody(reel.custody().holding(List.of())))
                        .toList());
    }

    private static String customer(String order) {
        return "customer of " + order;
    }
}
