package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class RopeGroupsTest {
    private static final int SHOPS = Integer.getInteger("shops", 200);

    @Test
    void parts_holdEveryPieceOnceWithEveryRopeItMayComeFrom() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            List<PackingProblem> parts = RopeGroups.of(shop);
            assertEquals(
                    shop.pieces().size(),
                    parts.stream().mapToInt(part -> part.pieces().size()).sum());
            for (PackingProblem part : parts) {
                Set<String> choices = part.pieces().stream()
                        .flatMap(piece -> piece.choices().stream())
                        .map(Piece.RopeChoice::rope)
                        .collect(Collectors.toSet());
                assertTrue(part.ropes().keySet().containsAll(choices), "seed " + seed);
            }
        }
    }

    @Test
    void costs_ofThePartsAddUpToTheCostOfTheDay() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Cost sum = Cost.ZERO;
            List<Packing> packings = new java.util.ArrayList<>();
            for (PackingProblem part : RopeGroups.of(shop)) {
                Packing packing = new GreedyPacker(part).best();
                sum = sum.plus(new PlanPrice(part).of(packing));
                packings.add(packing);
            }
            assertEquals(new PlanPrice(shop).of(RopeGroups.together(packings)), sum, "seed " + seed);
        }
    }
}
