package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceCard.Outcome;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Papers are known by what is in them, and are worked out when they are asked for and once. */
final class BenchPapersTest {
    private static final SpliceLayout LAYOUT = new SpliceLayout("end A", "eye splice", List.of(), List.of(), "");
    private static final SpliceCard CARD = card();

    @Test
    void papers_areEqualByWhatIsInThem() {
        BenchPapers there = BenchPapers.of(List.of(LAYOUT), CARD);
        BenchPapers workedOut = BenchPapers.of(() -> List.of(LAYOUT), () -> CARD);
        assertEquals(there, workedOut);
        assertEquals(there.hashCode(), workedOut.hashCode());
        for (BenchPapers other : List.of(BenchPapers.NONE, BenchPapers.of(List.of(), CARD))) {
            assertNotEquals(there, other);
            assertNotEquals(there.hashCode(), other.hashCode());
        }
    }

    @Test
    void papers_areWorkedOutOnce() {
        AtomicInteger asked = new AtomicInteger();
        BenchPapers papers = BenchPapers.of(
                () -> {
                    asked.incrementAndGet();
                    return List.of(LAYOUT);
                },
                () -> CARD);
        assertEquals(0, asked.get());
        assertEquals(List.of(LAYOUT), papers.layouts());
        assertEquals(Optional.of(CARD), papers.findCard());
        assertEquals(1, asked.get());
    }

    @Test
    void noPapers_areEmpty() {
        assertTrue(BenchPapers.NONE.layouts().isEmpty());
        assertEquals(Optional.empty(), BenchPapers.NONE.findCard());
    }

    private static SpliceCard card() {
        Outcome outcome = new Outcome(fine(10_000), Sentence.of("slack and dry"), FineLength.ZERO);
        return new SpliceCard(outcome, Map.of(How.SLACK, outcome), fine(9_000), List.of(), null);
    }
}
