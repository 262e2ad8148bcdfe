package bitterend.shops;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.util.ArrayList;
import java.util.List;

/** The ropes of a random shop and what a run of each is worth. */
final class RandomRopes {
    private final Dice dice;

    RandomRopes(Dice dice) {
        this.dice = dice;
    }

    List<Rope> ropes(int count) {
        List<Rope> ropes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            ropes.add(rope(i));
        }
        return ropes;
    }

    private Rope rope(int number) {
        RopeIdentity identity = new RopeIdentity(
                Kinds.DOUBLE_BRAID,
                Kinds.POLYESTER,
                "",
                "",
                Diameter.ofMillimetres(4 + 2L * number),
                Lay.NONE,
                "",
                "white",
                "");
        Length keepFrom = dice.length(200, 2_500);
        Length asGoodAsNew = dice.chance(15) ? keepFrom : keepFrom.plus(dice.length(1, 12_000));
        return new Rope(
                "R" + number,
                "Rope " + number,
                identity,
                new LinearMass(100_000),
                new UnitPrice(dice.between(20_000, 900_000)),
                new Rope.Cutting(loss(), new Length(10)),
                new Rope.Worth(keepFrom, asGoodAsNew),
                new Length(200_000));
    }

    private Length loss() {
        return dice.pick(List.of(Length.ZERO, new Length(10), new Length(20), dice.lengthOrNone(0, 45)));
    }

    /** Five kinds of curve; none falls, and none makes two coils worth more than one of both lengths. */
    static StockValue value(Dice dice, Rope rope) {
        return switch (dice.between(0, 9)) {
            case 0 -> StockValue.NOTHING;
            case 1 -> straight(rope);
            case 2 -> steps(rope);
            case 4, 5 -> coils(dice, rope);
            case 3 -> new RisingValue(rope.price(), rope.worth(), Ratio.ONE, dice.cost(100_000));
            default -> new RisingValue(rope.price(), rope.worth(), Ratio.percent(15), dice.cost(40_000));
        };
    }

    /** By the work of a past that never was. */
    private static StockValue coils(Dice dice, Rope rope) {
        List<Length> past = new ArrayList<>();
        for (int piece = dice.between(1, 12); piece > 0; piece--) {
            past.add(dice.length(500, 20_000));
        }
        PastCuts cuts = PastCuts.of(past, rope.cutting().loss(), dice.between(1, 9), PastCuts.Source.HISTORY);
        CoilTerms.Holding holding =
                new CoilTerms.Holding(Ratio.percent(dice.between(1, 20)), dice.cost(20_000), Length.ZERO);
        CoilTerms terms = CoilTerms.of(rope.price(), rope.usualReel(), rope.usualReel(), holding);
        return CoilValue.of(cuts, terms, dice.lengthOrNone(30, 400_000));
    }

    private static StockValue straight(Rope rope) {
        return length -> rope.price().of(length);
    }

    private static StockValue steps(Rope rope) {
        Length step = rope.worth().keepFrom();
        Cost each = rope.price().of(step);
        return length -> each.times(length.mm() / step.mm());
    }
}
