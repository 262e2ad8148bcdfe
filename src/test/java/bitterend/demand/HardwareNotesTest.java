package bitterend.demand;

import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static bitterend.demand.Rigging.BOOK;
import static bitterend.demand.Rigging.EYE;
import static bitterend.demand.Rigging.MASTER_LINK;
import static bitterend.demand.Rigging.SHACKLE;
import static bitterend.demand.Rigging.TURNBUCKLE;
import static bitterend.demand.Rigging.between;
import static bitterend.demand.Rigging.eyeWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Rope;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Terms;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.Written;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A derivation says what hangs on its ends, how far that may be off, and what the assembly weighs. */
final class HardwareNotesTest {
    private static final Length TEN_METRES = Length.ofMetres(10);
    private static final Make BARE = between("", "", TEN_METRES, EYE, EYE);

    @Test
    void bareEnds_haveNoSuchNote() {
        assertEquals(List.of(), notes(Rigging.BRAID, 1, BARE));
    }

    /** Half of a travel from 260 to 400 mm: 330 mm, 70 mm either way. */
    @Test
    void hardware_isNamedFromTheRopeOutwards() {
        Make over = between("SB12", "end", TEN_METRES, eyeWith(SHACKLE, TURNBUCKLE), EYE);
        assertEquals(
                "hung on end A, from the rope outwards: shackle SB12, inside 48 mm; turnbuckle TB12, half open,"
                        + " inside 330 mm (70 mm to take up, 70 mm to let out), beyond the finished length",
                notes(Rigging.BRAID, 1, over).get(0));
    }

    /** The shackle may be off by 1 mm; the turnbuckle by 2 mm, where the length runs over it. */
    @Test
    void band_isThatOfTheHardwareInTheLength() {
        EndSpec both = eyeWith(SHACKLE, TURNBUCKLE);
        assertEquals(
                "over its hardware: the hardware alone may be off by 1 mm, either way",
                notes(Rigging.BRAID, 1, between("SB12", "end", TEN_METRES, both, EYE))
                        .get(1));
        assertEquals(
                "over its hardware: the hardware alone may be off by 3 mm, either way",
                notes(Rigging.BRAID, 1, between("over all", "end", TEN_METRES, both, EYE))
                        .get(1));
        assertTrue(notes(Rigging.BRAID, 1, between("end", "end", TEN_METRES, both, EYE)).stream()
                .noneMatch(note -> note.startsWith("over its hardware")));
    }

    @Test
    void band_addsToTheToleranceOfTheOrder() {
        Make over = between("SB12", "end", TEN_METRES, eyeWith(SHACKLE), EYE);
        Asked asked = new Asked(
                new Tolerance(Written.worked(new Length(150)), Ratio.ZERO), Tolerance.NONE, Tolerance.NONE, List.of());
        Make within = new Make(over.finished(), over.measuring(), over.endA(), over.endB(), over.extras(), asked);
        assertTrue(
                notes(Rigging.BRAID, 1, within)
                        .contains("over its hardware: within 151 mm, 150 mm of the rope as ordered and 1 mm that the"
                                + " hardware may be off"),
                () -> notes(Rigging.BRAID, 1, within).toString());
    }

    /** Two legs are weighed as they are cut, rope of 100 g/m, and with the 380 g of a shackle each. */
    @Test
    void mass_isOfAllLegsAndTheirHardware() {
        Make over = between("SB12", "end", TEN_METRES, eyeWith(SHACKLE), EYE);
        long rope = 2 * Rigging.BRAID.mass().of(cut(over)).grams();
        assertEquals(
                "a finished assembly weighs about " + kilograms(rope + 760) + ", rope " + kilograms(rope)
                        + " and hardware 0.76 kg",
                last(notes(Rigging.BRAID, 2, over)));
    }

    @Test
    void unknownMass_isNamed() {
        Make over = between("over all", "end", TEN_METRES, eyeWith(SHACKLE, MASTER_LINK), EYE);
        assertEquals(
                "a finished assembly weighs about 0.38 kg, rope 0 kg and hardware 0.38 kg; without the rope, master"
                        + " link ML16, of unknown mass",
                last(notes(Rigging.weighing(0), 1, over)));
    }

    private static String kilograms(long grams) {
        return Sentence.NONE.and(new Mass(grams)).exact();
    }

    private static Length cut(Make make) {
        return model(BOOK, Rigging.BRAID)
                .pieces(order(1, 2, make, Terms.USUAL, "R"))
                .pieces()
                .get(0)
                .cut();
    }

    private static String last(List<String> notes) {
        return notes.get(notes.size() - 1);
    }

    /** The notes below a derivation from the first on that is about hardware. */
    private static List<String> notes(Rope rope, int legs, Make make) {
        return model(BOOK, rope).pieces(order(1, legs, make, Terms.USUAL, "R")).derivations().get(0).notes().stream()
                .map(Sentence::exact)
                .dropWhile(note -> !note.startsWith(HardwareNotes.HANGS))
                .toList();
    }
}
