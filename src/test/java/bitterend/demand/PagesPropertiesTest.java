package bitterend.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.demand.MarksPropertiesTest.Wanted;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.exchange.AnswerJson;
import bitterend.exchange.OrderLine;
import bitterend.exchange.SplicesJson;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.report.Figures;
import bitterend.report.LengthsPage;
import bitterend.report.page.Block;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * What the pages print equals what {@code lengths --json} holds: over every row and random sizes, on a bench in millimetres
 * and on one in inches, each mark is the nearest step of the tape, and the lines of the derivation add up on paper.
 */
final class PagesPropertiesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final FineLength HALF_INCH = new FineLength(127_000);
    /** Measured on the finished first eye, and told in a sentence of its own. */
    static final String OUTSIDE_THE_TABLE = "throat, measured";

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void pageInMillimetres_holdsWhatTheJsonHolds(@ForAll("wanted") Wanted wanted) throws Exception {
        agree(wanted, Units.METRIC);
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void pageInInches_holdsWhatTheJsonHolds(@ForAll("wanted") Wanted wanted) throws Exception {
        agree(inInches(wanted), Units.IMPERIAL);
    }

    /** The same on rope that is cut to the half inch. */
    static Wanted inInches(Wanted wanted) {
        Rope rope = wanted.rope();
        Rope inInches = new Rope(
                rope.id(),
                rope.name(),
                rope.identity(),
                rope.mass(),
                rope.price(),
                new Rope.Cutting(rope.cutting().loss(), HALF_INCH),
                rope.worth(),
                rope.usualReel(),
                rope.layLength());
        return new Wanted(wanted.row(), inInches, wanted.eye(), wanted.both(), wanted.more());
    }

    /** A page whose marks are moved by one step of the tape is found out. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void markMovedByAStep_isFound(@ForAll("wanted") Wanted wanted) throws Exception {
        Optional<OrderLine> line = MarksPropertiesTest.ordered(wanted);
        if (line.isEmpty()
                || line.get().demanded().layouts().stream()
                        .allMatch(layout -> layout.marks().isEmpty())) {
            return;
        }
        Demanded sound = line.get().demanded();
        List<SpliceLayout> moved =
                sound.layouts().stream().map(PagesPropertiesTest::moved).toList();
        Demanded mutant = new Demanded(
                sound.pieces(),
                sound.derivations(),
                sound.work(),
                BenchPapers.of(moved, sound.findCard().orElse(null)),
                sound.findings(),
                sound.remarks());
        Page page = new Page(wanted.rope(), Units.METRIC);
        assertFalse(page.differences(new OrderLine(line.get().assembly(), mutant), json(line.get()))
                .isEmpty());
    }

    static SpliceLayout moved(SpliceLayout layout) {
        FineLength step = FineLength.ofMillimetres(1);
        List<Mark> marks = layout.marks().stream()
                .map(mark -> new Mark(
                        mark.name(),
                        mark.on(),
                        mark.from(),
                        mark.distance().plus(step),
                        mark.findFromCutEnd().map(step::plus).orElse(null),
                        mark.purpose()))
                .toList();
        return new SpliceLayout(layout.end(), layout.name(), marks, layout.counts(), layout.caution());
    }

    private static void agree(Wanted wanted, Units units) throws Exception {
        Optional<OrderLine> line = MarksPropertiesTest.ordered(wanted);
        if (line.isPresent()) {
            Page page = new Page(wanted.rope(), units);
            assertEquals(
                    List.of(),
                    page.differences(line.get(), json(line.get())),
                    wanted.row().id());
        }
    }

    static JsonNode json(OrderLine line) throws Exception {
        return JSON.readTree(AnswerJson.lengths(List.of(line), Units.METRIC))
                .get("lines")
                .get(0);
    }

    /** The page of a rope in one system of units. */
    private record Page(Rope rope, Units units) {
        List<String> differences(OrderLine printed, JsonNode held) {
            Catalogue catalogue = new Catalogue(List.of(rope), SplicesJson.builtIn());
            Tape tape = new Tape(units);
            List<Block.Table> tables = new LengthsPage(new Figures(units, new MoneyText("EUR", 2)))
                            .derivation(printed.assembly(), printed.demanded(), catalogue, new Block.Picture("", ""))
                            .blocks()
                            .stream()
                            .filter(Block.Table.class::isInstance)
                            .map(Block.Table.class::cast)
                            .toList();
            List<String> differences = new ArrayList<>(
                    derivation(tables.get(0).rows(), held.get("derivations").get(0)));
            List<List<String[]>> layouts = layouts(tables);
            for (JsonNode layout : held.get("layouts")) {
                List<JsonNode> marks = new ArrayList<>();
                layout.get("marks").forEach(marks::add);
                marks.removeIf(mark -> mark.get("mark").asText().equals(OUTSIDE_THE_TABLE));
                if (!marks.isEmpty() && layouts.stream().noneMatch(rows -> tape.isSame(rows, marks))) {
                    differences.add("no such marks: " + layout.get("marks"));
                }
            }
            return differences;
        }

        /** Lines to the nearest tenth of a millimetre or step of an inch; all of them together the cut length, which rounded up is the one held. */
        private List<String> derivation(List<List<String>> rows, JsonNode held) {
            Tape tape = new Tape(units);
            List<String> differences = new ArrayList<>();
            List<Long> printed = rows.subList(0, rows.size() - 2).stream()
                    .map(row -> Tape.exact(row.get(1).strip() + unit()).units())
                    .toList();
            List<String> cut = rows.get(rows.size() - 1);
            assertEquals("cut length", cut.get(0));
            long sum = Tape.exact(cut.get(1).strip() + unit()).units();
            if (printed.stream().mapToLong(Long::longValue).sum() != sum) {
                differences.add(printed + " do not add up to " + sum);
            }
            Length whole = new FineLength(sum).roundedUp();
            if (!LengthText.exact(whole).equals(held.get("cut").asText())
                    || !Tape.exact(cut.get(2).substring(2)).roundedUp().equals(whole)) {
                differences.add("cut " + cut + ": " + held.get("cut"));
            }
            for (int i = 0; i < held.get("lines").size() - 1; i++) {
                long amount = Tape.exact(held.get("lines").get(i).get("amount").asText())
                        .units();
                if (units == Units.METRIC
                        ? printed.get(i) != nearestTenth(amount)
                        : tape.steps(printed.get(i)) != tape.steps(amount)) {
                    differences.add("line " + i + ": " + printed.get(i) + " for " + amount);
                }
            }
            return differences;
        }

        /** A tenth of a millimetre is a thousand of the units lengths are held in. */
        private static long nearestTenth(long amount) {
            return Math.floorDiv(amount + 500, 1000) * 1000;
        }

        /** What each mark is called, and where it is set: from what, how far, and how far from the cut end. */
        private List<List<String[]>> layouts(List<Block.Table> tables) {
            return tables.stream()
                    .filter(table -> table.columns().get(0).title().equals("mark"))
                    .map(table -> table.rows().stream()
                            .filter(row -> !row.get(0).equals(OUTSIDE_THE_TABLE))
                            .map(row -> new String[] {row.get(0), with(row.get(2)), row.get(3), with(row.get(4))})
                            .toList())
                    .toList();
        }

        private String with(String figure) {
            return figure.isEmpty() ? "" : figure.strip() + unit();
        }

        private String unit() {
            return units == Units.METRIC ? " mm" : " in";
        }
    }

    @Provide
    Arbitrary<Wanted> wanted() {
        return MarksPropertiesTest.rows();
    }
}
