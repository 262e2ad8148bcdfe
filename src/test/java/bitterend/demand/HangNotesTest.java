package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.order;
import static bitterend.demand.Rigging.EYE;
import static bitterend.demand.Rigging.SHACKLE;
import static bitterend.demand.Rigging.between;
import static bitterend.demand.Rigging.demanded;
import static bitterend.demand.Rigging.eyeWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.Written;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the legs of a sling hang and are matched, as far as the order says it. */
final class HangNotesTest {
    /** 5 m long, 4 m high, 3 m out: 36.87 degrees from the vertical, 73.74 included; told rounded up to a tenth. */
    private static final Hang THREE_FOUR_FIVE = hang(36_870, false);

    private static final String TRIANGLE =
            "a leg hangs 36.9 degrees from the vertical, 53.1 from the horizontal, opposite legs alike 73.8 included:"
                    + " it spans 4000 mm and reaches 3000 mm out, opposite points 6000 mm apart";
    private static final String BY_ITSELF =
            "each leg is worked out by itself: that legs share a load is never taken for granted (NAVEDTRA 14080"
                    + " p. 3-24)";
    private static final String NOT_CHECKED =
            "angle of the legs not checked, no height and spread stated (hang): above 60 degrees from the vertical ask"
                    + " a qualified rigger";
    private static final String MATCHED =
            "matched at the bench: measure the first leg when it is made, bearing point to bearing point; set out the"
                    + " second throat of each other leg by what that one came out at; then hang all legs of the sling"
                    + " from one pin under the same light pull and compare each with its own ordered length";
    private static final String HOW_NEAR = "; how near they must come is not stated (set tolerance)";

    private static final Terms LIFTING = new Terms(Matching.NONE, "", false, Use.LIFTING);

    @Test
    void singleLeg_thatHangsStraightHasNoSuchNote() {
        assertEquals(List.of(), notes(1, Hang.NOT_STATED, LIFTING, Tolerance.NONE));
        assertEquals(List.of(), notes(1, Hang.NOT_STATED, Terms.USUAL, Tolerance.NONE));
    }

    @Test
    void twoLegs_areMatchedAndForLiftingTheirAngleIsAskedFor() {
        assertEquals(List.of(MATCHED + HOW_NEAR), notes(2, Hang.NOT_STATED, Terms.USUAL, Tolerance.NONE));
        assertEquals(List.of(NOT_CHECKED, MATCHED + HOW_NEAR), notes(2, Hang.NOT_STATED, LIFTING, Tolerance.NONE));
    }

    @Test
    void setTolerance_saysHowNearTheyMustCome() {
        assertEquals(List.of(MATCHED), notes(2, Hang.NOT_STATED, Terms.USUAL, millimetres(900)));
    }

    @Test
    void statedHang_isToldOfASingleLegToo() {
        assertEquals(List.of(TRIANGLE, BY_ITSELF), notes(1, THREE_FOUR_FIVE, LIFTING, Tolerance.NONE));
        assertEquals(
                List.of(TRIANGLE, BY_ITSELF, MATCHED + HOW_NEAR), notes(2, THREE_FOUR_FIVE, LIFTING, Tolerance.NONE));
    }

    /** A leg of its own line belongs to a sling where the order binds it to other legs. */
    @Test
    void singleLeg_ofASetIsMatched() {
        Terms bound = new Terms(new Matching("sling 1", Bond.ONE_LOT), "", false, Use.LIFTING);
        assertEquals(
                List.of(TRIANGLE, BY_ITSELF, MATCHED + HOW_NEAR), notes(1, THREE_FOUR_FIVE, bound, Tolerance.NONE));
        assertEquals(List.of(), notes(1, Hang.NOT_STATED, bound, Tolerance.NONE));
    }

    @Test
    void length_thatIsWorkedOutSaysFromWhat() {
        assertEquals(
                TRIANGLE + "; its length is worked out from height 4 m spread 6 m",
                notes(1, hang(36_870, true), LIFTING, Tolerance.NONE).get(0));
    }

    /** Above 60 degrees from the vertical a rigger is asked; at 60 nobody is. */
    @ParameterizedTest
    @CsvSource({"60000, 0", "60001, 1"})
    void wideLeg_asksForARigger(long millidegrees, long warnings) {
        assertEquals(
                warnings,
                findings(make(hang(millidegrees, false), EYE, Tolerance.NONE)).stream()
                        .filter(each -> each.expected().contains("ask a qualified rigger"))
                        .count());
    }

    @Test
    void hangingLeg_isMeasuredOverAllItsHardware() {
        Make over = withHang(between("over all", "end", Length.ofMetres(5), eyeWith(SHACKLE), EYE));
        Make rope = withHang(between("end", "end", Length.ofMetres(5), eyeWith(SHACKLE), EYE));
        assertEquals(List.of(), findings(over).stream().filter(Finding::isError).toList());
        assertEquals(
                List.of("a length over all its hardware, for height and spread run from its outermost bearing"),
                findings(rope).stream()
                        .filter(Finding::isError)
                        .map(Finding::expected)
                        .toList());
    }

    private static Hang hang(long millidegrees, boolean workedOut) {
        return new Hang(fine(4_000), fine(3_000), new LegAngle(millidegrees), "height 4 m spread 6 m", workedOut);
    }

    private static Tolerance millimetres(long mm) {
        return new Tolerance(Written.worked(new Length(mm)), Ratio.ZERO);
    }

    private static Make make(Hang hang, EndSpec endA, Tolerance set) {
        Asked asked = new Asked(Tolerance.NONE, Tolerance.NONE, set, List.of());
        Make plain = between("", "", Length.ofMetres(5), endA, EYE);
        return new Make(plain.finished(), plain.measuring(), endA, EYE, plain.extras(), asked, hang);
    }

    private static Make withHang(Make make) {
        return new Make(
                make.finished(),
                make.measuring(),
                make.endA(),
                make.endB(),
                make.extras(),
                make.asked(),
                THREE_FOUR_FIVE);
    }

    private static List<Finding> findings(Make make) {
        return demanded(one(make)).findings();
    }

    /** The notes of a sling that are about its legs. */
    private static List<String> notes(int legs, Hang hang, Terms terms, Tolerance set) {
        List<String> notes =
                demanded(order(1, legs, make(hang, EYE, set), terms, "R")).derivations().get(0).notes().stream()
                        .map(Sentence::exact)
                        .toList();
        return notes.stream()
                .filter(note -> note.startsWith("a leg hangs")
                        || note.startsWith("each leg")
                        || note.startsWith("angle of the legs")
                        || note.startsWith("matched at the bench"))
                .toList();
    }
}
