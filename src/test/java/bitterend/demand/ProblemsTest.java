package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.demand.Assembly.Origin;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is wrong with an order line is told at its place, with what would do. */
final class ProblemsTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope SLIPPERY = rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
    private static final Rope LAID = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
    private static final Terms LIFTING = new Terms(Piece.Matching.NONE, "", false, Use.LIFTING);
    private static final Origin ROW = new Origin("orders.csv", "row 2");

    /** A refusal quotes what somebody wrote; a warning is about what was worked out. */
    @Test
    void refusal_isOfWhatWasTypedAndAWarningOfWhatWasWorkedOut() {
        Problems problems = new Problems(ROW);
        problems.error("End A", "no-such-eye", "the id of a termination");
        problems.warning("length", "a piece weighs 43 kg", "two people");
        problems.remark("accept", "", "who accepts it");
        assertEquals(
                List.of(true, false),
                problems.findings().stream().map(Finding::typed).toList());
        assertFalse(problems.remarks().get(0).typed());
        assertEquals("end a", problems.findings().get(0).field());
        assertEquals("row 2", problems.findings().get(0).place());
        assertTrue(problems.hasErrors());
    }

    @Test
    void warnings_areNoErrors() {
        Problems problems = new Problems(ROW);
        problems.tell(false, "end A", Sentence.of("short"), Sentence.of("longer"));
        assertFalse(problems.hasErrors());
        problems.tell(true, "end A", Sentence.of("short"), Sentence.of("longer"));
        assertTrue(problems.hasErrors());
    }

    @Test
    void substitute_isLeftOutForItsErrorsAlone() {
        Problems problems = new Problems(ROW);
        problems.warning("length", "heavy", "two people");
        problems.error("end A", "bury-eye", "rope that is hollow");
        List<Finding> warnings = problems.asWarningsAbout("L12");
        assertEquals(1, warnings.size());
        assertFalse(warnings.get(0).isError());
        assertEquals(
                "rope that is hollow; substitute L12 is left out",
                warnings.get(0).expected());
    }

    /** An end that is refused for another reason, and is dangerous on this rope as well, tells both. */
    @Test
    void refusal_tellsTheDangerToo() {
        String told = refusals(SLIPPERY, "bowline").get(0);
        Termination bowline = row("bowline");
        String danger = bowline.work().dangers().get(0).words();
        assertTrue(told.startsWith(bowline.work().notForLifting() + "; " + danger), told);
    }

    /** Where the danger is the reason, it is told once. */
    @Test
    void refusal_forItsDangerTellsThatOnce() {
        String danger = row("tuck-eye").work().dangers().get(0).words();
        assertEquals(List.of(danger), refusals(SLIPPERY, "tuck-eye"));
    }

    @Test
    void refusal_withoutDangerTellsNone() {
        String told = refusals(LAID, "bowline").get(0);
        assertTrue(told.startsWith(row("bowline").work().notForLifting() + "; on R does: "), told);
    }

    private static Termination row(String id) {
        return BOOK.findTermination(id, LAID).orElseThrow();
    }

    private static List<String> refusals(Rope rope, String id) {
        return model(BOOK, rope)
                .pieces(order(
                        1, 1, make(Length.ofMetres(10), EndSpec.of(id, flat(300)), EndSpec.of("plain")), LIFTING, "R"))
                .findings()
                .stream()
                .filter(Finding::isError)
                .map(Finding::expected)
                .toList();
    }
}
