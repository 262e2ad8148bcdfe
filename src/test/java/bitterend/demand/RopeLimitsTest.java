package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.DiameterLimit;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Need;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.catalogue.RopeLimits;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Suits;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.exchange.SplicesJson;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a rope can be decides what is made of it; rows are limited to ropes, sizes, make-ups and grades. */
final class RopeLimitsTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Terms LIFTING = new Terms(Piece.Matching.NONE, "", false, Use.LIFTING, "us");

    @ParameterizedTest
    @CsvSource({"1x19, 0", "7x7, 1", "7x19, 1", "6x36, 1"})
    void handTuckedEye_keepsOffASingleStrand(String makeUp, int pieces) {
        Demanded demanded = model(BOOK, wire(makeUp, ""))
                .pieces(order(
                        1,
                        1,
                        make(Length.ofMetres(5), EndSpec.of("wire-tucked-eye", flat(200)), EndSpec.of("plain")),
                        Terms.USUAL,
                        "R"));
        assertEquals(pieces, demanded.pieces().size());
        if (pieces == 0) {
            assertTrue(demanded.findings().get(0).expected().contains("rope that can be tucked"));
        }
    }

    /** A shop that has no use for a hand-tucked eye in thick wire, or in other make-ups and grades than its own. */
    @Test
    void row_isLimitedToRopesSizesMakeUpsAndGrades() {
        RopeLimits limits = new RopeLimits(
                Set.of("R"),
                mm(6),
                new DiameterLimit(mm(12), true),
                Set.of(Kinds.makeUp("6x36"), Kinds.makeUp("7x19")),
                Set.of("1770"));
        assertTrue(suits(limits).admits(wire("6x36", "1770")));
        assertRefused("wire made up 6x36 or 7x19", limits, wire("7x7", "1770"));
        assertRefused("rope of grade 1770", limits, wire("6x36", "1570"));
        assertRefused("rope R", limits, wire("6x36", "1770").named("S"));
        assertRefused("rope from 6 mm up to 12 mm", limits, wire("6x36", "1770", mm(13)));
        assertRefused("rope from 6 mm up to 12 mm", limits, wire("6x36", "1770", mm(5)));
    }

    private static void assertRefused(String expected, RopeLimits limits, Rope rope) {
        assertEquals(expected, suits(limits).refusal(rope).orElseThrow().exact());
    }

    private static Suits suits(RopeLimits limits) {
        return new Suits(Set.of(Kinds.WIRE), Set.of(), Map.of(), Set.of(Need.TUCKED), limits);
    }

    /** 29 CFR 1926.251(d): three full tucks in natural fibre, four in synthetics; a blend is no natural fibre. */
    @ParameterizedTest
    @CsvSource({"HEMP, 3", "COTTON, 3", "LIQUID_CRYSTAL, 4", "POLYETHYLENE, 4"})
    void tucks_followTheNatureOfTheFibre(@Kind Fibre fibre, int least) {
        assertEquals(
                least,
                BOOK.findTermination("three-strand-eye", Bench.rope(Kinds.THREE_STRAND, fibre, mm(12)))
                        .orElseThrow()
                        .tucking()
                        .least(fibre));
    }

    @ParameterizedTest
    @CsvSource({
        "bowline, SHOCK_CORD, POLYESTER, 1",
        "bowline, WEBBING, POLYESTER, 0",
        "whipped, SIXTEEN_PLAIT, COTTON, 1",
        "whipped, WEBBING, POLYESTER, 0",
        "sealed, HOLLOW_BRAID, POLYETHYLENE, 1",
        "sealed, HOLLOW_BRAID, LIQUID_CRYSTAL, 0",
        "sealed, FOUR_STRAND, HEMP, 0",
        "bury-eye, SIXTEEN_PLAIT, POLYESTER, 0",
    })
    void ends_askWhatARopeCanBe(String end, @Kind Construction construction, @Kind Fibre fibre, int pieces) {
        EndSpec spec = end.equals("bowline") || end.equals("bury-eye") ? EndSpec.of(end, flat(200)) : EndSpec.of(end);
        Rope rope = Bench.rope(construction, fibre, mm(10));
        assertEquals(
                pieces,
                model(BOOK, rope)
                        .pieces(order(1, 1, make(Length.ofMetres(5), spec, EndSpec.of("plain")), Terms.USUAL, "R"))
                        .pieces()
                        .size());
    }

    @Test
    void shockCord_isNoSling() {
        Rope cord = Bench.rope(Kinds.SHOCK_CORD, Kinds.POLYESTER, mm(10));
        EndSpec plain = EndSpec.of("plain");
        Demanded sling = model(BOOK, cord).pieces(order(1, 1, make(Length.ofMetres(5), plain, plain), LIFTING, "R"));
        assertEquals(0, sling.pieces().size());
        assertTrue(sling.findings().toString().contains("lifts nothing"));
    }

    @Test
    void differentMakeUps_areDifferentRopes() {
        assertTrue(!wire("7x7", "").identity().equals(wire("7x19", "").identity()));
    }

    private static Rope wire(String makeUp, String grade) {
        return wire(makeUp, grade, mm(8));
    }

    private static Rope wire(String makeUp, String grade, Diameter diameter) {
        return new Rope(
                "R",
                "a wire",
                new RopeIdentity(
                        Kinds.WIRE,
                        Kinds.STEEL,
                        "IWRC",
                        grade,
                        diameter,
                        Lay.RIGHT_ORDINARY,
                        "",
                        "",
                        "",
                        Kinds.makeUp(makeUp)),
                new LinearMass(0),
                new UnitPrice(1000),
                new Rope.Cutting(new Length(10), new Length(1)),
                new Rope.Worth(Length.ofMetres(1), Length.ofMetres(100)),
                Length.ofMetres(200));
    }
}
