package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.exchange.SplicesJson;
import bitterend.measure.FineLength;
import bitterend.measure.Written;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The slip knot of a cored end needs rope of its own: 10 diameters before the free rope ends (common practice, no source). */
final class SlipKnotTest {
    private static final Rope BRAID = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(10));
    private static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(60));
    private static final EndSpec SEALED = EndSpec.of("sealed");

    /** On every piece from the shortest up: clear of the other end, beyond the core marks, in whole millimetres. */
    @ParameterizedTest
    @ValueSource(longs = {450, 500, 600, 800, 1_000, 1_300, 1_600, 2_000})
    void knot_liesClearOfTheOtherEnd(long finished) {
        Demanded made = made(finished);
        long cut = made.derivations().get(0).cut().mm();
        Mark knot = knot(made).orElseThrow();
        long place = knot.findFromCutEnd().orElseThrow().units();
        assertTrue(place <= (cut - 100) * 10_000L, place + " of " + cut);
        boolean nearer = knot.purpose().exact().contains("100 mm, 10 diameters, before the free rope ends");
        assertEquals(
                nearer,
                knot.distance().compareTo(Bench.fine(1_260)) < 0,
                knot.purpose().exact());
        assertTrue(!nearer || place % 10_000 == 0, "rounded down: " + place);
    }

    /** 330 mm: less than 100 mm lie beyond the last mark of the core, and the core is held in another way. */
    @Test
    void knotWithoutRoom_isNoMarkAndTheCoreIsHeldAtTheEnd() {
        Demanded made = made(330);
        assertEquals(Optional.empty(), knot(made));
        String counts = made.layouts().get(0).counts().get(0).exact();
        assertTrue(counts.contains("no room for a slip knot") && counts.contains("hold the core at the end"), counts);
        assertTrue(
                made.findings().stream().anyMatch(each -> each.expected().contains("hold the core at the end")),
                made.findings()::toString);
    }

    /** The shortest that is made: the last core mark lies at the other end, so its core is held and not knotted. */
    @Test
    void leastLength_isMadeWithTheCoreHeld() {
        long least = 200;
        while (least < 1_000 && made(least).pieces().isEmpty()) {
            least++;
        }
        assertTrue(least > 200 && least < 1_000, least + " mm");
        assertEquals(Optional.empty(), knot(made(least)));
        assertTrue(made(least).layouts().get(0).counts().get(0).exact().contains("hold the core at the end"));
    }

    /**
     * The last core mark lies two short sections and a tail beyond the throat, and a knot on it is none beside it. The slack
     * rope, 0.7 fids longer than the clear rope of the finished leg, has room for the knot's 100 mm beyond that mark.
     */
    @Test
    void knot_onTheLastCoreMarkHasNoRoom() {
        long lastMark = made(2_000).layouts().get(0).marks().stream()
                .filter(mark -> mark.on().equals("core"))
                .mapToLong(mark -> mark.distance().units())
                .sum();
        // 60 mm of the eye and the knot's 100 mm, less 0.7 fids of 210 mm
        FineLength finished = new FineLength(lastMark).plus(Bench.fine(60 + 100 - 147));
        assertEquals(Optional.empty(), knot(made(finished)));
        assertTrue(knot(made(finished.plus(new FineLength(1)))).isPresent());
    }

    private static Demanded made(long finished) {
        return made(Bench.fine(finished));
    }

    private static Demanded made(FineLength finished) {
        Make make = new Make(Written.worked(finished), Measuring.USUAL, EYE, SEALED, Extras.NONE);
        return model(SplicesJson.builtIn(), BRAID).pieces(one(make));
    }

    private static Optional<Mark> knot(Demanded made) {
        return made.layouts().get(0).marks().stream()
                .filter(mark -> mark.name().equals("slip knot"))
                .findFirst();
    }
}
