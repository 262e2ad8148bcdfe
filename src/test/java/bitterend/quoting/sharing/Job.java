package bitterend.quoting.sharing;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Prices;
import bitterend.stock.RisingValue;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A job on new reels, built line by line; lengths in millimetres, money in whole minor units. */
final class Job {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final List<NewReel> reels = new ArrayList<>();
    private final List<Party> parties = new ArrayList<>();
    private final long loss;
    private final long keepFrom;
    private Prices prices = Prices.NONE;

    private Job(long loss, long keepFrom) {
        this.loss = loss;
        this.keepFrom = keepFrom;
    }

    /** Nothing is lost at a cut, and no offcut is worth anything. */
    static Job classical() {
        return new Job(0, 1_000_000);
    }

    /** Rope at 1 minor unit per millimetre, offcuts worth as much from {@code keepFrom}. */
    static Job of(long loss, long keepFrom) {
        return new Job(loss, keepFrom);
    }

    Job reel(long length, long price) {
        reels.add(new NewReel(new Length(length), new Cost(price * Cost.MILLIS_PER_MINOR)));
        return this;
    }

    Job opening(long price) {
        Cost opening = new Cost(price * Cost.MILLIS_PER_MINOR);
        prices = new Prices(opening, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO);
        return this;
    }

    /** A party with so many pieces of a length. */
    Job party(String name, long cut, int count) {
        List<Piece> pieces = IntStream.rangeClosed(1, count)
                .mapToObj(n -> new Piece(
                        name + "/1." + n,
                        new Piece.Source(name, "1", DAY.plusDays(30), 5),
                        List.of(new Piece.RopeChoice("R", new Length(cut))),
                        Piece.Matching.NONE,
                        "",
                        false,
                        new Length(cut),
                        "plain / plain"))
                .toList();
        parties.add(new Party(name, pieces));
        return this;
    }

    List<Party> parties() {
        return List.copyOf(parties);
    }

    NewRope rope() {
        Rope rope = new Rope(
                "R",
                "plain rope",
                new RopeIdentity(
                        Kinds.THREE_STRAND,
                        Kinds.POLYESTER,
                        "",
                        "",
                        Diameter.ofMillimetres(12),
                        Lay.RIGHT_ORDINARY,
                        "",
                        "white",
                        ""),
                new LinearMass(0),
                new UnitPrice(1_000_000),
                new Rope.Cutting(new Length(loss), new Length(1).fine()),
                new Rope.Worth(new Length(keepFrom), new Length(keepFrom)),
                Length.ofMetres(200));
        return new NewRope(rope, new RisingValue(rope.price(), rope.worth(), Ratio.ONE, Cost.ZERO), prices, reels);
    }

    RopeShares shared(Packer packer) {
        Effort effort = Effort.of(Duration.ofSeconds(2));
        return new Sharing(packer, effort, effort, DAY).share(rope(), parties());
    }

    /** What a group would pay alone, by the exact table. */
    CostRange alone(Packer packer, int... members) {
        int bits = IntStream.of(members).map(member -> 1 << member).sum();
        GroupCosts costs = new GroupCosts(
                rope(), parties(), new GroupCosts.Fallback(packer, Effort.of(Duration.ofSeconds(2)), DAY));
        return costs.of(new Group(bits));
    }
}
