package bitterend.demand;

import static bitterend.demand.Bench.model;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination.Kind;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.WantedMark;
import bitterend.demand.MarksPropertiesTest.Amounts;
import bitterend.demand.MarksPropertiesTest.Wanted;
import bitterend.exchange.OrderLine;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Units;
import bitterend.stock.Reel;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * The paper of random days, several pieces of several lines off several reels, holds what {@code lengths --json} holds: each
 * card its marks and lengths, marks along the piece where the derivation puts them, and the counter what was cut before.
 */
final class PaperDayPropertiesTest {
    private static final int REELS = 4;

    /**
     * Some lines of an order.
     *
     * @param lines what is made in each, on a rope of its own
     * @param pieces how many of each
     * @param spare millimetres that each reel holds beyond two pieces
     */
    record Day(List<Wanted> lines, int pieces, long spare) {}

    /** The lines that can be made, their ropes and the reels. */
    private record Shop(List<OrderLine> lines, Map<String, Rope> ropes, List<Reel> reels) {
        static Shop of(Day day, Units units) {
            List<OrderLine> lines = new ArrayList<>();
            Map<String, Rope> ropes = new TreeMap<>();
            List<Reel> reels = new ArrayList<>();
            for (Wanted plain : day.lines()) {
                Wanted wanted = units == Units.IMPERIAL ? PagesPropertiesTest.inInches(plain) : plain;
                String number = Integer.toString(lines.size() + 1);
                Rope rope = wanted.rope().named("R" + number);
                Optional<OrderLine> made = MarksPropertiesTest.ordered(wanted)
                        .flatMap(one -> line(one.assembly().make(), rope, number, day.pieces()));
                made.ifPresent(line -> {
                    lines.add(line);
                    ropes.put(rope.id(), rope);
                    Length two = line.demanded().pieces().get(0).cut().times(2).plus(new Length(20 + day.spare()));
                    for (int reel = 1; reel <= REELS; reel++) {
                        reels.add(Paper.reel("REEL-" + number + "-" + reel, rope, two));
                    }
                });
            }
            return new Shop(lines, ropes, reels);
        }

        /** Marked in the middle where there is one. */
        private static Optional<OrderLine> line(Make make, Rope rope, String number, int pieces) {
            boolean ring = MarksPropertiesTest.BOOK.terminations().stream()
                    .anyMatch(row -> row.id().equals(make.endA().termination()) && row.kind() == Kind.GROMMET);
            Asked asked = new Asked(
                    Tolerance.NONE,
                    Tolerance.NONE,
                    Tolerance.NONE,
                    ring ? List.of() : List.of(new WantedMark("middle", new Ratio(1, 2), FineLength.ZERO)));
            Assembly assembly = new Assembly(
                    new Assembly.Origin("orders.csv", "row " + number),
                    new Assembly.Ordered(new Piece.Source("100", number, LocalDate.MAX, 5), "", "", pieces, 1),
                    List.of(rope.id()),
                    new Make(make.finished(), make.measuring(), make.endA(), make.endB(), make.extras(), asked),
                    Assembly.Terms.USUAL);
            Demanded made = model(MarksPropertiesTest.BOOK, rope).pieces(assembly);
            return made.pieces().isEmpty() ? Optional.empty() : Optional.of(new OrderLine(assembly, made));
        }
    }

    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    void dayInMillimetres_holdsWhatTheJsonHolds(@ForAll("days") Day day) throws Exception {
        agree(day, Units.METRIC);
    }

    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    void dayInInches_holdsWhatTheJsonHolds(@ForAll("days") Day day) throws Exception {
        agree(day, Units.IMPERIAL);
    }

    private static void agree(Day day, Units units) throws Exception {
        Shop shop = Shop.of(day, units);
        if (shop.lines().isEmpty()) {
            return;
        }
        Paper paper = Paper.of(shop.lines(), shop.ropes(), shop.reels(), units);
        Map<String, Length> cuts = new TreeMap<>();
        for (OrderLine line : shop.lines()) {
            JsonNode held = PagesPropertiesTest.json(line);
            Paper own = paper.ofLine(line.assembly().ordered().source().line());
            assertEquals(List.of(), own.cardDifferences(held), line.assembly().toString());
            assertEquals(List.of(), own.sheetDifferences(held), line.assembly().toString());
            line.demanded().pieces().forEach(piece -> cuts.put(piece.id(), piece.cut()));
            assertEquals(
                    line.demanded().pieces().stream().map(Piece::id).sorted().toList(),
                    own.cuts().keySet().stream().sorted().toList());
            middle(line);
        }
        assertEquals(List.of(), counterFaults(paper, cuts));
    }

    /** Half of the finished length from the bearing point of end A: tail, eye and take-up of that end lie before. */
    private static void middle(OrderLine line) {
        Amounts amounts = new Amounts(line.demanded().derivations().get(0));
        line.demanded().layouts().stream()
                .filter(layout -> layout.end().equals("along the piece"))
                .flatMap(layout -> layout.marks().stream())
                .forEach(mark -> {
                    FineLength place = amounts.toThroat("end A")
                            .plus(amounts.of("end A", "take-up"))
                            .plus(amounts.named("finished length").times(new Ratio(1, 2)))
                            .plus(amounts.of("end A", "throat to bearing point"));
                    long off = mark.findFromCutEnd().orElseThrow().minus(place).units();
                    assertTrue(Math.abs(off) <= 1, line.assembly() + ": middle " + mark + ", not " + place);
                });
    }

    /** Every piece once, as long as it is; the counter goes on by the piece and the loss of the cut before it. */
    private static List<String> counterFaults(Paper paper, Map<String, Length> cuts) {
        List<String> faults = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (List<Paper.CutRow> reel : paper.reels()) {
            long counted = 0;
            for (int i = 0; i < reel.size(); i++) {
                Paper.CutRow row = reel.get(i);
                Length cut = cuts.getOrDefault(row.piece(), Length.ZERO);
                long loss = i == 0 ? 0 : 10 * FineLength.UNITS_PER_MM;
                counted += loss + cut.fine().units();
                long slack = paper.tape().units() == Units.METRIC
                        ? 0
                        : paper.tape().step() + (i + 1) * FineLength.UNITS_PER_MM;
                boolean right = seen.add(row.piece())
                        && Math.abs(row.at().units() - counted) <= slack
                        && Math.abs(row.length().units() - cut.fine().units()) <= slack;
                if (!right) {
                    faults.add(row + ", counted " + counted);
                }
            }
        }
        if (!seen.equals(cuts.keySet())) {
            faults.add("on the sheet " + seen + ", ordered " + cuts.keySet());
        }
        return faults;
    }

    /** A counter that forgets a cut, a piece of another length, and a piece that is missing are each found out. */
    @Property(tries = 10, edgeCases = EdgeCasesMode.NONE)
    void counterThatForgets_isFound(@ForAll("days") Day day) {
        Shop shop = Shop.of(day, Units.METRIC);
        if (shop.lines().isEmpty()) {
            return;
        }
        Paper paper = Paper.of(shop.lines(), shop.ropes(), shop.reels(), Units.METRIC);
        Map<String, Length> cuts = new TreeMap<>();
        shop.lines().forEach(line -> line.demanded().pieces().forEach(piece -> cuts.put(piece.id(), piece.cut())));
        assertEquals(List.of(), counterFaults(paper, cuts));
        Paper forgetful = new Paper(
                paper.card(),
                paper.sheet().replaceFirst("(<tr class=\"cut\"(?s:.)*?<td class=\"c-at\">)", "$1" + 7),
                paper.tape());
        assertFalse(counterFaults(forgetful, cuts).isEmpty());
        Map<String, Length> other = new TreeMap<>(cuts);
        Map.Entry<String, Length> first = cuts.entrySet().iterator().next();
        other.put(first.getKey(), first.getValue().plus(new Length(1)));
        assertFalse(counterFaults(paper, other).isEmpty());
        other.put("100/99.1", new Length(1));
        other.put(first.getKey(), first.getValue());
        assertFalse(counterFaults(paper, other).isEmpty());
    }

    @Provide
    Arbitrary<Day> days() {
        return Combinators.combine(
                        MarksPropertiesTest.rows().list().ofMinSize(2).ofMaxSize(4),
                        Arbitraries.integers().between(2, 6),
                        Arbitraries.longs().between(0, 3_000))
                .as(Day::new);
    }
}
