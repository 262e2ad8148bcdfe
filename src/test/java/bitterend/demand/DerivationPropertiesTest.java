package bitterend.demand;

import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Measuring.Between;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;

/** What holds for every rope, eye and way of measuring. */
final class DerivationPropertiesTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    /** Four roundings of at most a unit each, twice grown by a few per cent. */
    private static final long TOLERANCE = 5;
    /** A diameter of a ring is rounded to a unit; 22 of them are taken. */
    private static final long OF_A_DIAMETER = 22 + TOLERANCE;

    /**
     * How much rope a ring takes for each unit of its round. Published handbook [1], no. 2864: three rounds, and [3],
     * p. 21: three and a half where that is more; [1], no. 2866: 22 times the diameter of a wire grommet of six
     * rounds; [2], p. 94: 9 times for one of three strands.
     */
    private static final Map<String, Rounds> ROUNDS = Map.of(
            "fibre-grommet", new Rounds(3, 3.5),
            "wire-grommet", new Rounds(22 / Math.PI, 22 / Math.PI),
            "wire-grommet-three-strand", new Rounds(9 / Math.PI, 9 / Math.PI),
            "soft-shackle", new Rounds(2, 2),
            "endless-loop-hmpe", new Rounds(1, 1),
            "prusik-loop", new Rounds(1, 1));

    /** The fewest and the most rounds of rope in a ring. */
    record Rounds(double fewest, double most) {}

    /** A rope and a leg that can be ordered on it. */
    record Wanted(Rope rope, Make make) {}

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void derivation_addsUpToTheCutLength(@ForAll("wanted") Wanted wanted) {
        Demanded demanded = model(BOOK, wanted.rope()).pieces(one(wanted.make()));
        if (demanded.pieces().isEmpty()) {
            assertTrue(demanded.findings().stream().anyMatch(Finding::isError));
            return;
        }
        Derivation derivation = demanded.derivations().get(0);
        FineLength sum = FineLength.ZERO;
        for (Derivation.Line line : derivation.lines()) {
            sum = sum.plus(line.amount());
        }
        assertEquals(derivation.cut().fine(), sum);
        Derivation.Line last = derivation.lines().get(derivation.lines().size() - 1);
        assertEquals("rounding up", last.label());
        assertFalse(last.amount().isNegative());
        FineLength step = wanted.rope().cutting().toNearest();
        assertTrue(last.amount().compareTo(step) < 0);
        assertEquals(0, derivation.cut().fine().units() % step.units());
        assertEquals(derivation.cut(), demanded.pieces().get(0).cut());
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void cutLength_growsWithTheFinishedLength(
            @ForAll("wanted") Wanted wanted, @ForAll @LongRange(min = 1, max = 5_000) long more) {
        Make make = wanted.make();
        Make longer = new Make(
                Written.worked(new Length(make.finished().roundedUp().mm() + more)),
                make.measuring(),
                make.endA(),
                make.endB(),
                make.extras());
        DemandModel model = model(BOOK, wanted.rope());
        Demanded first = model.pieces(one(make));
        Demanded second = model.pieces(one(longer));
        if (first.pieces().isEmpty()) {
            return;
        }
        assertEquals(1, second.pieces().size(), () -> second.findings().toString());
        FineLength grown = unrounded(second).minus(unrounded(first));
        assertTrue(grown.isPositive());
        if (make.measuring().extension().equals(Ratio.ZERO)
                && make.measuring().shrinkage().equals(Ratio.ZERO)) {
            assertGrown(make, more, grown);
        }
        assertFalse(
                second.pieces().get(0).cut().isShorterThan(first.pieces().get(0).cut()));
    }

    /** What the splicer gets out of the cut length is the finished length: the way back, told independently. */
    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void cutLength_givesTheFinishedLengthBack(@ForAll("wanted") Wanted wanted) {
        Demanded demanded = model(BOOK, wanted.rope()).pieces(one(wanted.make()));
        if (demanded.pieces().isEmpty()) {
            return;
        }
        Derivation derivation = demanded.derivations().get(0);
        FineLength used = FineLength.ZERO;
        FineLength bearings = FineLength.ZERO;
        for (Derivation.Line line : derivation.lines()) {
            boolean ofAnEnd = line.label().startsWith("end ");
            if (ofAnEnd && line.amount().isNegative()) {
                bearings = bearings.minus(line.amount());
            } else if (ofAnEnd
                    || line.label().equals("rounding up")
                    || line.label().equals("the other half of the ring")
                    || line.label().equals("spare")) {
                used = used.plus(line.amount());
            }
        }
        FineLength slack = derivation.cut().fine().minus(used).plus(bearings);
        Measuring measuring = wanted.make().measuring();
        FineLength stated =
                slack.times(Ratio.ONE.minus(measuring.shrinkage())).times(Ratio.ONE.plus(measuring.extension()));
        long difference = stated.units() - wanted.make().finished().exact().units();
        assertTrue(Math.abs(difference) <= TOLERANCE, () -> difference + " units off");
    }

    /**
     * A line grows by what its finished length grows; a ring by the rounds it is laid, of a ring that is twice as
     * long where its length is told laid flat.
     */
    private static void assertGrown(Make make, long more, FineLength grown) {
        Rounds rounds = ROUNDS.get(make.endA().termination());
        if (rounds == null) {
            assertEquals(FineLength.ofMillimetres(more), grown);
            return;
        }
        boolean twice = make.measuring().between() == Between.FLAT;
        long round = FineLength.ofMillimetres(twice ? 2 * more : more).units();
        assertTrue(grown.units() >= rounds.fewest() * round - OF_A_DIAMETER, () -> grown + " of " + round);
        assertTrue(grown.units() <= rounds.most() * round + OF_A_DIAMETER, () -> grown + " of " + round);
    }

    private static FineLength unrounded(Demanded demanded) {
        Derivation derivation = demanded.derivations().get(0);
        return derivation.cut().fine().minus(Bench.amount(derivation, "rounding up"));
    }

    @Provide
    Arbitrary<Wanted> wanted() {
        Arbitrary<Rope> ropes = Combinators.combine(
                        Arbitraries.of(Kinds.constructions()),
                        Arbitraries.of(Kinds.fibres()),
                        Arbitraries.longs().between(40_000, 600_000),
                        Arbitraries.of(1L, 5L, 10L, 13L))
                .as(DerivationPropertiesTest::cutToNearest);
        return ropes.flatMap(rope -> makes(rope).map(make -> new Wanted(rope, make)));
    }

    private static Rope cutToNearest(Construction construction, Fibre fibre, long diameter, long nearest) {
        Fibre sound = construction.equals(Kinds.WIRE) ? Kinds.STEEL : fibre;
        Rope rope = rope(construction, sound, new Diameter(diameter));
        return new Rope(
                rope.id(),
                rope.name(),
                rope.identity(),
                rope.mass(),
                rope.price(),
                new Rope.Cutting(rope.cutting().loss(), new Length(nearest)),
                rope.worth(),
                rope.usualReel());
    }

    private static Arbitrary<Make> makes(Rope rope) {
        Arbitrary<EndSpec> ends = ends(rope);
        return Combinators.combine(
                        Arbitraries.longs().between(500, 60_000),
                        measurings(),
                        ends,
                        ends,
                        Arbitraries.longs().between(0, 200))
                .as((finished, measuring, a, b, spare) -> new Make(
                        Written.worked(new Length(finished)),
                        measuring,
                        a,
                        b,
                        new Extras(Written.worked(new Length(spare)), Written.NOTHING)));
    }

    private static Arbitrary<Measuring> measurings() {
        return Combinators.combine(
                        Arbitraries.of(Between.values()),
                        Arbitraries.integers().between(0, 5),
                        Arbitraries.integers().between(0, 8))
                .as((between, extension, shrinkage) -> new Measuring(
                        between,
                        between == Between.ON_PINS ? Bench.mm(60) : Diameter.NONE,
                        Ratio.percent(extension),
                        Ratio.percent(shrinkage)));
    }

    private static Arbitrary<EndSpec> ends(Rope rope) {
        Arbitrary<String> suited = Arbitraries.of(BOOK.terminations().stream()
                .filter(row -> row.suits().admits(rope))
                .map(row -> row.id())
                .toList());
        return Combinators.combine(suited, eyes(), Arbitraries.longs().between(20, 150))
                .as(DerivationPropertiesTest::end);
    }

    private static EndSpec end(String id, EyeSpec eye, long bore) {
        return switch (BOOK.terminations().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow()
                .kind()) {
            case EYE, LOOP -> EndSpec.of(id, eye);
            case FITTING -> new EndSpec(
                    id, EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(bore)), EndSpec.Options.NONE);
            default -> EndSpec.of(id);
        };
    }

    private static Arbitrary<EyeSpec> eyes() {
        Arbitrary<FineLength> sizes =
                Arbitraries.longs().between(500_000, 20_000_000).map(FineLength::new);
        Arbitrary<Diameter> pins = Arbitraries.longs().between(0, 2_000_000).map(Diameter::new);
        Arbitrary<Diameter> somePins =
                Arbitraries.longs().between(100_000, 3_000_000).map(Diameter::new);
        return Arbitraries.oneOf(
                Combinators.combine(sizes, pins).as(EyeSpec.FlatLength::new),
                Combinators.combine(sizes, pins).as(EyeSpec.Perimeter::new),
                Combinators.combine(sizes, pins).as(EyeSpec.RoundEye::new),
                Combinators.combine(Arbitraries.integers().between(110, 900), somePins)
                        .as((hundredths, pin) -> new EyeSpec.PinRatio(new Ratio(hundredths, 100), pin)));
    }
}
