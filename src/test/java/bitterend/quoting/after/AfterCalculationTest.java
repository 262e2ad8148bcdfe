package bitterend.quoting.after;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.quoting.BuildUp.Item;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.FreightWithin;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.QuotedWork;
import bitterend.quoting.after.RopePrice.Source;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.Paid;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A job settled by movements written down by hand: rope at 1.00 a metre in the catalogue, cut losses of nothing. */
final class AfterCalculationTest {
    private static final UnitPrice ONE = new UnitPrice(100_000);

    private final List<Movement> movements = new ArrayList<>();
    private final Map<String, Long> left = new HashMap<>();
    private final Map<String, Long> minutes = new HashMap<>();
    private final Map<String, Paid.OfReel> paid = new HashMap<>();
    private Length sample = Length.ZERO;
    private Optional<FreightWithin> within = Optional.empty();
    private final Map<String, ThatDay.PlannedDraw> plans = new HashMap<>();
    private final Set<String> good = new HashSet<>();
    private long event;

    private static Reel reel(String id, String rope, long mm, boolean full) {
        return new Reel(
                id,
                rope,
                "",
                new Reel.Contents(
                        new Length(Math.max(1, mm)), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                full,
                Reel.Where.UNKNOWN);
    }

    private void move(String reel, String rope, Movement.Kind kind, long mm, Origin origin, PieceCut piece) {
        long now = left.getOrDefault(reel, 0L) + mm;
        left.put(reel, now);
        Entry entry =
                new Entry(kind, reel(reel, rope, now, kind == Movement.Kind.RECEIVED), now == 0, "", origin, piece);
        long number = movements.size() + 1L;
        movements.add(new Movement(number, event, Instant.EPOCH, "Ada", entry, number, new Length(mm)));
    }

    private void received(String reel, long mm) {
        event++;
        move(reel, "A", Movement.Kind.RECEIVED, mm, Origin.NONE, PieceCut.NONE);
    }

    private void cut(String reel, String plan, String piece, long mm) {
        event++;
        move(reel, "A", Movement.Kind.CUT, -mm, Origin.ofCut(plan, piece), new PieceCut(new Length(mm), Ordered.NONE));
        good.add(piece);
    }

    private void scrapped(String reel, String plan, long mm) {
        event++;
        move(reel, "A", Movement.Kind.SCRAPPED, -mm, Origin.ofStep(plan, "rest"), PieceCut.NONE);
    }

    private void spoiled(String reel, String plan, String piece, long back) {
        event++;
        move(reel, "A", Movement.Kind.SPOILED, 0, Origin.ofPiece(plan, piece), PieceCut.NONE);
        good.remove(piece);
        if (back > 0) {
            move(reel + "-1", "A", Movement.Kind.KEPT, back, Origin.off(reel, plan), PieceCut.NONE);
        }
    }

    private AfterCalculation after(int quantity) {
        QuotedLine line = new QuotedLine(
                "2",
                new QuotedLine.What("A", "3 m", "whipped / whipped", 1, quantity, false, sample),
                new Length(3_000L * quantity),
                new Length(3_000L * quantity),
                20,
                List.of(new QuotedLine.End("whipped", 0), new QuotedLine.End("sealed", 0)),
                within,
                List.of(
                        new Item(Kind.ROPE, new Money(300L * quantity)),
                        new Item(Kind.WASTE, new Money(100)),
                        new Item(Kind.FREIGHT, new Money(40)),
                        new Item(Kind.SPOILAGE, new Money(30)),
                        new Item(Kind.HARDWARE, new Money(50)),
                        new Item(Kind.LABOUR, new Money(1_000)),
                        new Item(Kind.OVERHEAD, new Money(70)),
                        new Item(Kind.MARGIN, new Money(500))),
                new Money(300L * quantity + 1_790));
        QuotedWork work = new QuotedWork("Q", List.of(), List.of(line));
        JobBooks.Rates rates =
                new JobBooks.Rates(Map.of("A", new RopePrice(ONE, Source.OFFER)), paid, new Money(6_000));
        return AfterCalculation.of(
                "Q/1",
                work,
                Map.of("1041/7", "2"),
                Map.of(),
                new JobBooks(movements, good, minutes, rates, new Then(plans)));
    }

    /** Every day is alike: rope is worth its price, opening is 0.50 and fetching 0.20. */
    private record Then(Map<String, PlannedDraw> plans) implements ThatDay {
        @Override
        public Terms of(Movement cut) {
            return new Terms(ONE, ONE::of, new Cost(50_000), new Cost(20_000));
        }

        @Override
        public Optional<PlannedDraw> planned(String plan, String reel) {
            return Optional.ofNullable(plans.get(plan + " " + reel));
        }
    }

    /** Two pieces of one plan, one of them of another job: what ours took is the same before the other is cut and after. */
    @Test
    void drawThatIsNotCutWhole_countsAsPlanned_soThatTheJobStaysAsItWasSettled() {
        plans.put(
                "p R1",
                new ThatDay.PlannedDraw(
                        "1042/1.1",
                        new Length(7_000),
                        new ThatDay.Draw(true, new Length(8_000), new Length(1_000), Length.ZERO, List.of())));
        received("R1", 8_000);
        cut("R1", "p", "1041/7.1", 3_000);
        AfterCalculation before = after(1);
        assertEquals(List.of("R1"), before.asPlanned());
        assertEquals(new Length(428), before.lines().get(0).rope().scrap());
        assertEquals(
                new Money(300 + 43 + 30),
                before.lines().get(0).rope().all().rounded(),
                "three sevenths of 8.00 and of 0.70");
        cut("R1", "p", "1042/1.1", 4_000);
        scrapped("R1", "p", 1_000);
        AfterCalculation whole = after(1);
        assertEquals(List.of(), whole.asPlanned());
        assertEquals(before.lines(), whole.lines());
    }

    /** What another job takes off the reel between two cuts of a plan is none of the draw. */
    @Test
    void whatOthersTakeInBetween_isNotOfTheDraw() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        AfterLine alone = after(1).lines().get(0);
        cut("R1", "", "1043/1.1", 10_000);
        cut("R1", "p", "1041/7.2", 3_000);
        AfterLine both = after(2).lines().get(0);
        assertEquals(
                alone.rope().all().times(2).minus(new Cost(70_000)), both.rope().all());
    }

    /** The reel is fetched once for a row of cuts off plan; another job's cut between them ends the row. */
    @Test
    void cutsOffPlanInARow_areOneDraw() {
        received("R1", 50_000);
        cut("R1", "", "1041/7.1", 3_000);
        Cost alone = after(1).lines().get(0).rope().all();
        cut("R1", "", "1041/7.2", 3_000);
        Cost row = after(2).lines().get(0).rope().all();
        assertEquals(alone.times(2).minus(new Cost(70_000)), row, "opened and fetched once");
        cut("R1", "", "1043/1.1", 10_000);
        assertEquals(row, after(2).lines().get(0).rope().all(), "what comes later is none of it");
        cut("R1", "", "1041/7.3", 3_000);
        Cost fetchedAgain = new Cost(300_000 + 20_000);
        assertEquals(row.plus(fetchedAgain), after(3).lines().get(0).rope().all());
    }

    /** 6 m of 10 m cut by the plan are ours, so 600 mm of 1 m of scrap, and six tenths of opening and fetching. */
    @Test
    void scrapAndHandling_fallToTheCutsOfThePlanByWhatTheyTook() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        cut("R1", "p", "1041/7.2", 3_000);
        cut("R1", "p", "1042/1.1", 4_000);
        scrapped("R1", "p", 1_000);
        scrapped("R1", "later", 5_000);
        AfterLine line = after(2).lines().get(0);
        assertTrue(line.pieces().isWhole());
        assertEquals(new Length(600), line.rope().scrap());
        assertEquals(new Money(600), line.posted().get(Kind.ROPE));
        assertEquals(new Money(60 + 42), line.posted().get(Kind.WASTE));
        assertEquals(line.quotedMargin().minus(line.earned()), line.postedCost().minus(line.quotedCost()));
    }

    @Test
    void rope_isCountedAtWhatItsReelWasPaidFor() {
        received("R1", 50_000);
        paid.put("R1", new Paid.OfReel("R1", Paid.of(new Money(10_000)), new Length(50_000)));
        cut("R1", "", "1041/7.1", 3_000);
        AfterCalculation after = after(1);
        assertEquals(Set.of(Source.PAID), after.sources());
        assertEquals(new Money(600), after.lines().get(0).posted().get(Kind.ROPE));
    }

    /** Price 20.90, costs 15.50, freight by order 0.40: the margin of 5.00 has no freight in it. */
    @Test
    void freightByOrder_isNoMargin_andCountsAsQuotedWhereNobodyBookedIt() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        AfterLine line = after(1).lines().get(0);
        assertEquals(new Money(40), line.freight());
        assertEquals(new Money(500), line.quotedMargin());
        assertEquals(new Money(40), line.posted().get(Kind.FREIGHT));
    }

    /** 10.00 for bringing 50 m: 3 m of it came for 0.60. The other piece is off a reel of which nothing is booked. */
    @Test
    void freightThatWasBooked_countsByTheLengthDrawn_theRestAsQuoted() {
        received("R1", 50_000);
        received("R2", 50_000);
        paid.put("R1", new Paid.OfReel("R1", new Paid(new Money(10_000), new Money(1_000)), new Length(50_000)));
        cut("R1", "", "1041/7.1", 3_000);
        AfterLine one = after(1).lines().get(0);
        assertEquals(new Money(60), one.posted().get(Kind.FREIGHT));
        assertEquals(new Money(600), one.posted().get(Kind.ROPE), "freight is not in the rope");
        cut("R2", "", "1041/7.2", 3_000);
        assertEquals(new Money(60 + 20), after(2).lines().get(0).posted().get(Kind.FREIGHT));
    }

    /** A metre of the piece is a sample, whose rope is counted with the samples as quoted: 2.00 for the rest, waste as it is. */
    @Test
    void ropeOfASample_isNotCountedTwice() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        Money waste = after(1).lines().get(0).posted().get(Kind.WASTE);
        sample = new Length(1_000);
        Map<Kind, Money> posted = after(1).lines().get(0).posted();
        assertEquals(new Money(200), posted.get(Kind.ROPE));
        assertEquals(waste, posted.get(Kind.WASTE));
    }

    /** Of 3.00 for rope 0.24 was for bringing it and of 1.00 of waste 0.08; by order 0.40: 0.72 in all. */
    @Test
    void freightInQuotedRope_isFreightToo_andCountsAsQuotedWhereNobodyBookedIt() {
        within = Optional.of(new FreightWithin(new Money(24), new Money(8)));
        received("R1", 50_000);
        paid.put("R1", new Paid.OfReel("R1", Paid.of(new Money(4_600)), new Length(50_000)));
        cut("R1", "p", "1041/7.1", 3_000);
        AfterCalculation after = after(1);
        AfterLine line = after.lines().get(0);
        assertTrue(after.tellsFreight());
        assertEquals(new Money(276), line.quoted(Kind.ROPE));
        assertEquals(new Money(92), line.quoted(Kind.WASTE));
        assertEquals(new Money(72), line.freight());
        assertEquals(new Money(276), line.posted().get(Kind.ROPE));
        assertEquals(new Money(72), line.posted().get(Kind.FREIGHT));
        assertEquals(new Money(500), line.quotedMargin(), "the sum is as it was");
    }

    /** Waste of 0.70 on rope of 3.00 is 233 thousandths, spoiled rope apart; 1.00 quoted is 333. */
    @Test
    void learnedWaste_hasNoSpoiledRopeInIt_onEitherSide() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        spoiled("R1", "p", "1041/7.1", 2_000);
        cut("R1", "q", "1041/7.1", 3_000);
        Learned.OfRope rope = Learned.of(List.of(after(1)), Map.of("whipped", "whipping"))
                .ropes()
                .get(0);
        assertEquals(new Money(30), rope.quoted().spoilage());
        assertEquals(new Money(170), rope.posted().spoilage());
        assertEquals(333, rope.quoted().wastePerMille());
        assertEquals(
                rope.posted().waste(), after(1).lines().get(0).posted().get(Kind.WASTE), "spoiled rope is not in it");
        assertEquals(
                667, new Learned.Bill(new Money(300), new Money(200), Money.ZERO).wastePerMille(), "to the nearest");
    }

    @Test
    void spoiledPiece_isSpoilage_lessWhatCameBack() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        spoiled("R1", "p", "1041/7.1", 2_000);
        cut("R1", "q", "1041/7.1", 3_000);
        AfterLine line = after(1).lines().get(0);
        assertEquals(1, line.pieces().spoiled());
        assertEquals(new Length(3_000), line.rope().taken());
        assertEquals(new Cost(300_000 + 70_000 - 200_000), line.rope().spoiled());
        assertEquals(new Length(4_000), after(1).ropes().get(0).taken().posted());
    }

    /** 31 minutes for a piece of two ends: 16 and 15, not twice 15. */
    @Test
    void minutesOfItsEnds_addUpToWhatWasBooked() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        minutes.put("1041/7.1", 31L);
        List<Learned.OfEnd> ends =
                Learned.of(List.of(after(1)), Map.of("whipped", "whipping")).ends();
        assertEquals(
                List.of("sealed", "whipped"),
                ends.stream().map(Learned.OfEnd::end).toList());
        assertEquals(
                List.of("", "whipping"),
                ends.stream().map(Learned.OfEnd::termination).toList());
        assertEquals(List.of(15L, 16L), ends.stream().map(Learned.OfEnd::posted).toList());
        assertEquals(List.of(10L, 10L), ends.stream().map(Learned.OfEnd::quoted).toList());
    }

    @Test
    void minutesOfPiecesWithoutAny_countAsQuoted() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        cut("R1", "p", "1041/7.2", 3_000);
        minutes.put("1041/7.1", 45L);
        minutes.put("1041/8.1", 500L);
        AfterLine line = after(2).lines().get(0);
        assertEquals(1, line.pieces().timed());
        assertEquals(45 + 20, line.work().minutes());
        assertEquals(new Money(6_500), line.work().labour());
    }

    @Test
    void lineThatIsNotCutWhole_isNotCompared_andAnotherOrderThatBeginsAlikeIsNone() {
        received("R1", 50_000);
        cut("R1", "p", "1041/7.1", 3_000);
        cut("R1", "p", "10411/7.2", 3_000);
        cut("R1", "p", "1041/71.2", 3_000);
        AfterCalculation after = after(2);
        assertEquals(1, after.lines().get(0).pieces().good());
        assertFalse(after.lines().get(0).pieces().isWhole());
        assertEquals(List.of(), after.whole());
    }

    @Test
    void partsAndLegs_areOfTheirLine() {
        Map<String, String> lineOf = Map.of("1041/7", "2");
        assertEquals("2", PieceLine.of("1041/7.1-3", lineOf));
        assertEquals("2 tail", PieceLine.of("1041/7.1-tail", lineOf));
        assertEquals("2 tail", PieceLine.of("1041/7.12-tail-2", lineOf));
        assertEquals("", PieceLine.of("rope for the sloop", lineOf));
    }
}
