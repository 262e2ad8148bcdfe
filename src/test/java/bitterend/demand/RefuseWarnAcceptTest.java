package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Danger;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThroatAngle;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the line runs between what is refused, what is warned of and what somebody may accept: at its very boundaries. */
final class RefuseWarnAcceptTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final EndSpec PLAIN = EndSpec.of("plain");

    /** Two tails of 72 D, 864 mm each of 12 mm rope; slings keep 10 D between (from memory) besides. Eyes of 100 mm. */
    @ParameterizedTest
    @CsvSource({"GENERAL, 1928", "LIFTING, 2048"})
    void strop_isRefusedBelowBothTailsAndTheFreeRopeOfItsRule(Use use, long shortest) {
        Rope hollow = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
        EndSpec eye = EndSpec.of("bury-eye-hmpe", flat(100));
        assertEquals(1, demanded(hollow, shortest, eye, eye, use).pieces().size());
        Demanded refused = demanded(hollow, shortest - 1, eye, eye, use);
        assertEquals(List.of(), refused.pieces());
        String metres = shortest / 1000 + "." + String.format(java.util.Locale.ROOT, "%03d", shortest % 1000);
        assertTrue(said(refused, true).contains("a finished length of at least " + metres + " m"), said(refused, true));
    }

    /** The strops that lofts make daily: 8 mm with 1.2 m clear, 12 mm with 1.73 m. */
    @ParameterizedTest
    @CsvSource({"8, 1200", "12, 1730"})
    void dailyStrops_pass(long diameter, long clear) {
        Rope hollow = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(diameter));
        EndSpec eye = EndSpec.of("bury-eye-hmpe", flat(100));
        Demanded strop = demanded(hollow, clear + 200, eye, eye, Use.GENERAL);
        assertEquals(1, strop.pieces().size(), strop.findings()::toString);
        assertTrue(said(strop, false).contains("working room"), said(strop, false));
    }

    /** Only the working room can be accepted by name; both tails in it cannot be made to fit by a word. */
    @Test
    void workingRoom_isAcceptedByName() {
        Rope hollow = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
        EndSpec eye = EndSpec.of("bury-eye-hmpe", flat(100));
        Demanded strop = accepted(hollow, 1_930, eye);
        assertEquals(1, strop.pieces().size(), strop.findings()::toString);
        assertTrue(said(strop, false).contains("working room for the tools"), said(strop, false));
        assertTrue(said(strop, false).contains("; accepted by Jansen"), said(strop, false));
        assertEquals(List.of(), accepted(hollow, 1_927, eye).pieces());
    }

    private static Demanded accepted(Rope rope, long mm, EndSpec eye) {
        Assembly.Asked asked = new Assembly.Asked(
                Tolerance.NONE,
                Tolerance.NONE,
                Tolerance.NONE,
                List.of(),
                List.of(new Accepted(Accepted.WORKING_ROOM, "Jansen")));
        Assembly.Make plain = make(new Length(mm), eye, eye);
        return model(BOOK, rope)
                .pieces(order(
                        1,
                        1,
                        new Assembly.Make(plain.finished(), plain.measuring(), eye, eye, Assembly.Extras.NONE, asked),
                        Terms.USUAL,
                        "R"));
    }

    /** At the boundary the slack rope between the throats is both tails and both take-ups: 2 x (864 + 155.52) mm. */
    @Test
    void boundary_isTailAndTakeUpOnSlackRope() {
        Rope hollow = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
        EndSpec eye = EndSpec.of("bury-eye-hmpe", flat(100));
        String told = demanded(hollow, 1_928, eye, eye, Use.GENERAL).findings().stream()
                .filter(finding -> finding.expected().contains("working room"))
                .map(Finding::found)
                .findFirst()
                .orElseThrow();
        assertTrue(told.startsWith("only 2039.04 mm of slack rope"), told);
    }

    /**
     * Room of a double-braid eye: 1 fid and 2 short sections, 252 + 189 mm at 12 mm; two-fid form 3 fids and 2, 945 mm. On
     * slack rope, which its take-up of 176.4 or 352.8 mm will shorten; nearer, the cover would come out in the other end.
     */
    @ParameterizedTest
    @CsvSource({"double-braid-eye, 441, 565", "double-braid-eye-two-fid, 945, 893"})
    void doubleBraid_hasItsRoomOnSlackRope(String id, long room, long shortest) {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
        EndSpec eye = EndSpec.of(id, flat(300));
        Demanded made = demanded(braid, shortest, eye, PLAIN, Use.GENERAL);
        assertEquals(1, made.pieces().size(), made.findings()::toString);
        assertTrue(!said(made, false).contains("working room"), said(made, false));
        assertEquals(
                fine(room),
                made.layouts().get(0).marks().stream()
                        .filter(mark -> mark.on().equals("core"))
                        .map(SpliceLayout.Mark::distance)
                        .reduce(FineLength.ZERO, FineLength::plus));
        assertEquals(
                List.of(),
                demanded(braid, shortest - 1, eye, PLAIN, Use.GENERAL).pieces());
    }

    /** Take-up defaults that err long: 0.18 of the tail in HMPE, 0.23 in polyester and nylon; tucked splices 1.5 D. */
    @ParameterizedTest
    @CsvSource({
        "bury-eye, TWELVE_STRAND, HMPE, 1555200",
        "bury-eye, TWELVE_STRAND, POLYESTER, 662400",
        "bury-eye, TWELVE_STRAND, NYLON, 662400",
        "tuck-eye, TWELVE_STRAND, POLYESTER, 180000",
        "three-strand-eye, THREE_STRAND, MANILA, 180000",
        "eight-strand-eye, EIGHT_STRAND, NYLON, 180000",
        "wire-tucked-eye, WIRE, STEEL, 180000"
    })
    void takeUp_errsLong(String id, @Kind Construction construction, @Kind Fibre fibre, long units) {
        Demanded demanded = demanded(
                Bench.rope(construction, fibre, mm(12)), 20_000, EndSpec.of(id, flat(300)), PLAIN, Use.GENERAL);
        assertEquals(new FineLength(units), Bench.amount(demanded.derivations().get(0), "end A: take-up"));
    }

    /** An eye on a thimble goes by the thimble's row, not by the least soft eye of its rope. */
    @Test
    void eyeOnAThimble_goesByThatPartsRow() {
        Thimble small = new Thimble(
                "T", fine(90), fine(30), fine(3), ThroatAngle.ofDegrees(60), mm(10), mm(13), Provenance.ARITHMETIC);
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
        Terms lifting = new Terms(Piece.Matching.NONE, "", false, Use.LIFTING, "us");
        EndSpec lined = EndSpec.of("double-braid-eye", new EyeSpec.OnThimble("T", Diameter.NONE));
        Demanded demanded = model(Bench.withThimbles(BOOK, small), braid)
                .pieces(order(1, 1, make(Length.ofMetres(10), lined, PLAIN), lifting, "R"));
        assertEquals(1, demanded.pieces().size(), demanded.findings()::toString);
    }

    /** Whoever is refused an end is told which one does, or that none of these does. */
    @Test
    void everyRefusedEnd_namesOneThatDoes() {
        List<String> ids = BOOK.terminations().stream().map(Termination::id).toList();
        List<String> silent = new ArrayList<>();
        for (Termination row : BOOK.terminations()) {
            List<String> instead = new ArrayList<>(
                    row.work().dangers().stream().map(Danger::instead).toList());
            if (!row.work().notForLifting().isEmpty()) {
                instead.add(row.work().notForLifting());
            }
            instead.stream()
                    .filter(words -> ids.stream().noneMatch(words::contains)
                            && !words.matches(".*(none of these|splice|two-fid form|tucked|poured|thimble|maker).*"))
                    .forEach(words -> silent.add(row.id() + ": " + words));
        }
        assertEquals(List.of(), silent);
    }

    private static Demanded demanded(Rope rope, long mm, EndSpec endA, EndSpec endB, Use use) {
        Terms terms = new Terms(Piece.Matching.NONE, "", false, use, "us");
        return model(BOOK, rope).pieces(order(1, 1, make(new Length(mm), endA, endB), terms, "R"));
    }

    private static String said(Demanded demanded, boolean errors) {
        return demanded.findings().stream()
                .filter(finding -> finding.isError() == errors)
                .map(Finding::expected)
                .reduce("", (a, b) -> a + b + "\n");
    }
}
