package bitterend.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.exchange.SplicesJson;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks and cards cannot contradict the length that they belong to: all rows, random sizes. */
final class CardDerivationTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final int TRIES = Integer.getInteger("shops", 200);

    /** A leg and what it asks of the bench. */
    private record Made(Make make, Rope rope, Demanded demanded) {
        Derivation derivation() {
            return demanded.derivations().get(0);
        }

        FineLength line(String label) {
            return derivation().lines().stream()
                    .filter(line -> line.label().equals(label))
                    .map(Derivation.Line::amount)
                    .reduce(FineLength.ZERO, FineLength::plus);
        }

        SpliceCard card() {
            return demanded.findCard().orElseThrow();
        }
    }

    /** Legs with eyes of every row that has eyes, as far as they can be made. */
    private static List<Made> legs(long seed) {
        Random random = new Random(seed);
        List<Made> legs = new ArrayList<>();
        for (Termination row : BOOK.terminations()) {
            if (row.kind() != Termination.Kind.EYE && row.kind() != Termination.Kind.LOOP) {
                continue;
            }
            for (int i = 0; i < Math.max(1, TRIES / 20); i++) {
                leg(row, random).ifPresent(legs::add);
            }
        }
        return legs;
    }

    private static java.util.Optional<Made> leg(Termination row, Random random) {
        Construction construction = pick(
                List.copyOf(row.suits().constructions()), Kinds.constructions().toArray(new Construction[0]), random);
        Fibre fibre = construction.equals(Kinds.WIRE)
                ? Kinds.STEEL
                : pick(List.copyOf(row.suits().fibres()), Kinds.fibres().toArray(new Fibre[0]), random);
        Rope rope = Bench.rope(construction, fibre, Diameter.ofMillimetres(4 + random.nextInt(24)));
        EndSpec eye = EndSpec.of(
                row.id(), new EyeSpec.FlatLength(FineLength.ofMillimetres(60 + random.nextInt(900)), Diameter.NONE));
        EndSpec other = random.nextBoolean() ? eye : EndSpec.of("plain");
        Make make = new Make(
                Written.worked(new Length(500 + random.nextInt(20_000))),
                measuring(random),
                eye,
                other,
                new Extras(Written.worked(new Length(random.nextInt(200))), Written.NOTHING),
                new Asked(
                        new Tolerance(Written.worked(new Length(20)), Ratio.ZERO),
                        Tolerance.NONE,
                        Tolerance.NONE,
                        List.of()));
        Demanded demanded = Bench.model(BOOK, rope).pieces(Bench.one(make));
        return demanded.pieces().isEmpty()
                ? java.util.Optional.empty()
                : java.util.Optional.of(new Made(make, rope, demanded));
    }

    private static <T> T pick(List<T> suited, T[] any, Random random) {
        return suited.isEmpty() ? any[random.nextInt(any.length)] : suited.get(random.nextInt(suited.size()));
    }

    private static Measuring measuring(Random random) {
        Ratio extension = random.nextBoolean() ? Ratio.ZERO : Ratio.percent(1 + random.nextInt(3));
        Ratio shrinkage = random.nextBoolean() ? Ratio.ZERO : Ratio.percent(1 + random.nextInt(5));
        Measuring.Between between = random.nextBoolean() ? Measuring.Between.BEARING_POINTS : Measuring.Between.FLAT;
        return new Measuring(between, Diameter.NONE, extension, shrinkage, Ratio.ZERO);
    }

    private static FineLength fromCutEnd(SpliceLayout layout, String mark) {
        return layout.marks().stream()
                .filter(each -> each.name().equals(mark))
                .findFirst()
                .flatMap(Mark::findFromCutEnd)
                .orElseThrow(() -> new AssertionError(mark + " of " + layout.name()));
    }

    /** The tail mark is the tail line, the throat mark a rope round the eye further, on every row that has both. */
    @Test
    void marks_areTheLinesOfTheDerivation() {
        int compared = 0;
        for (Made leg : legs(7)) {
            for (SpliceLayout layout : leg.demanded().layouts()) {
                FineLength tail = leg.line(layout.end() + ": trim").plus(leg.line(layout.end() + ": tail"));
                boolean throat = layout.marks().stream()
                        .anyMatch(mark -> mark.name().equals("throat mark")
                                && mark.findFromCutEnd().isPresent());
                if (throat && tail.isPositive()) {
                    compared++;
                    assertEquals(tail, fromCutEnd(layout, "tail mark"), layout.toString());
                    assertEquals(
                            tail.plus(leg.line(layout.end() + ": round the eye")),
                            fromCutEnd(layout, "throat mark"),
                            layout.toString());
                }
            }
        }
        assertTrue(compared > 10, "only " + compared + " compared");
    }

    /** Tail, eye, clear rope, take-up and what is left over: all of the cut length, and nothing else. */
    @Test
    void card_addsUpToTheCutLength() {
        for (Made leg : legs(8)) {
            FineLength sum = leg.card().clear();
            for (SpliceCard.End end : leg.card().ends()) {
                sum = sum.plus(end.tail()).plus(end.eye().round()).plus(end.takeUp());
                sum = sum.plus(leg.line(end.name() + ": margin of the take-up"));
            }
            sum = sum.plus(leg.line("spare"))
                    .plus(leg.line("tolerance of the cut"))
                    .plus(leg.line("rounding up"));
            assertEquals(leg.derivation().cut().fine(), sum, leg.derivation().toString());
        }
    }

    /** No mark lies outside the piece, and none at end A beyond the throat of end B before that is made. */
    @Test
    void marks_lieOnRopeThatIsThere() {
        for (Made leg : legs(9)) {
            FineLength cut = leg.derivation().cut().fine();
            for (SpliceLayout layout : leg.demanded().layouts()) {
                for (Mark mark : layout.marks()) {
                    mark.findFromCutEnd().ifPresent(place -> {
                        assertTrue(!place.isNegative() && place.compareTo(cut) <= 0, layout + " on " + cut);
                    });
                }
            }
        }
    }

    /** What a tape finds on the floor is the clear rope and both eyes laid flat; the second throat is that less its own eye. */
    @Test
    void floorAndSecondThroat_areOneLength() {
        int throats = 0;
        for (Made leg : legs(10)) {
            SpliceCard card = leg.card();
            FineLength floor = card.clear();
            for (SpliceCard.End end : card.ends()) {
                floor = floor.plus(end.eye().flat());
            }
            assertEquals(floor, card.floor().length(), leg.make().toString());
            assertTrue(card.find(How.SLACK).orElseThrow().passes(floor));
            for (SpliceLayout layout : leg.demanded().layouts()) {
                for (Mark mark : layout.marks()) {
                    if (mark.name().equals("throat, measured")) {
                        throats++;
                        SpliceCard.End a = card.ends().get(0);
                        SpliceCard.End b = card.ends().get(1);
                        assertEquals(card.clear().plus(a.eye().flat()).plus(b.takeUp()), mark.distance());
                    }
                }
            }
        }
        assertTrue(throats > 5, "only " + throats);
    }
}
