package bitterend.demand;

import static bitterend.demand.Bench.order;
import static bitterend.demand.Rigging.EYE;
import static bitterend.demand.Rigging.MASTER_LINK;
import static bitterend.demand.Rigging.SHACKLE;
import static bitterend.demand.Rigging.between;
import static bitterend.demand.Rigging.demanded;
import static bitterend.demand.Rigging.eyeWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Assembly.Membership;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.EndWork.Picked;
import bitterend.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is picked counts by the piece, and what the legs of an assembly share by the assembly. */
final class PickListTest {
    /** A leg with a shackle, under a link that all legs share; a tag for each assembly comes with its product. */
    private static final Assembly SLINGS = sling(3, 2, new Picked("tag", 1));

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 2", "4, 2", "6, 3"})
    void begunAssembly_takesItsSharedPartsToo(int pieces, int assemblies) {
        PickList picks = new PickList();
        picks.add(SLINGS, demanded(SLINGS), pieces);
        assertEquals(
                Map.of("shackle SB12", pieces, "master link ML16", assemblies, "tag", assemblies), hardware(picks));
    }

    @Test
    void wholeLine_takesWhatAllItsPiecesAsk() {
        PickList picks = new PickList();
        picks.add(SLINGS, demanded(SLINGS));
        assertEquals(Map.of("shackle SB12", 6, "master link ML16", 3, "tag", 3), hardware(picks));
    }

    @Test
    void lines_addUpByItem() {
        Assembly tagged = sling(1, 4, new Picked("tag", 2));
        PickList picks = new PickList();
        picks.add(SLINGS, demanded(SLINGS));
        picks.add(tagged, demanded(tagged));
        assertEquals(Map.of("shackle SB12", 10, "master link ML16", 4, "tag", 5), hardware(picks));
    }

    @Test
    void noPiece_asksForNothing() {
        PickList picks = new PickList();
        picks.add(SLINGS, demanded(SLINGS), 0);
        assertEquals(List.of(), picks.items());
    }

    @Test
    void assembly_thatCannotBeMadeAsksForNothing() {
        PickList picks = new PickList();
        picks.add(SLINGS, Demanded.refused(List.of()));
        assertEquals(List.of(), picks.items());
    }

    /** What the legs share is no part of one leg, and the other way round. */
    @Test
    void end_keepsSharedPartsAndItsOwnApart() {
        EndWork end = demanded(SLINGS).work().get(0);
        assertEquals(List.of(new Picked("master link ML16", 1)), end.shared(2));
        assertEquals(List.of("shackle SB12"), named(end.parts()));
        assertEquals(List.of(), demanded(SLINGS).work().get(1).shared(2));
    }

    /** A link that another line counts is measured here and picked there. */
    @Test
    void partOfAnotherLine_isNotPickedTwice() {
        HardwareSpec.Row link = new HardwareSpec.Row(MASTER_LINK.id(), HardwareSpec.Setting.NOT_STATED);
        EndSpec.Options options =
                new EndSpec.Options(0, false, "", "", EYE.options().tail(), List.of(new HardwareSpec(link, true)));
        EndSpec under = new EndSpec(EYE.termination(), EYE.eye(), EYE.fitting(), options);
        Demanded demanded =
                demanded(order(1, 2, between("over all", "end", Length.ofMetres(10), under, EYE), Terms.USUAL, "R"));
        assertEquals(List.of(), demanded.work().get(0).shared(2));
        assertEquals(2, demanded.pieces().size());
    }

    @Test
    void labour_isKnownWhereMinutesAreStatedOrNothingIsMade() {
        assertTrue(end("three-strand-eye", 20).isTimed());
        assertTrue(end("plain", 0).isTimed());
        assertFalse(end("three-strand-eye", 0).isTimed());
    }

    private static EndWork end(String id, int minutes) {
        return new EndWork("end A", id, id, minutes, List.of(), "", true, "", List.of());
    }

    private static Map<String, Integer> hardware(PickList picks) {
        return picks.items().stream()
                .filter(each -> isHardware(each.item()))
                .collect(Collectors.toMap(Picked::item, Picked::count));
    }

    private static List<String> named(List<Picked> parts) {
        return parts.stream().map(Picked::item).filter(PickListTest::isHardware).toList();
    }

    private static boolean isHardware(String item) {
        return item.startsWith("shackle") || item.startsWith("master link") || item.equals("tag");
    }

    private static Assembly sling(int quantity, int legs, Picked ofProduct) {
        Assembly line = order(
                quantity,
                legs,
                between("over all", "end", Length.ofMetres(10), eyeWith(SHACKLE, MASTER_LINK), EYE),
                Terms.USUAL,
                "R");
        return new Assembly(
                line.origin(),
                line.ordered(),
                line.ropes(),
                line.make(),
                line.terms(),
                new Membership("", List.of(ofProduct), List.of()));
    }
}
