package bitterend.quoting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.quoting.QuotedWork.Drawn;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Reel;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A quote held against movements written down by hand. */
final class QuoteComparisonTest {
    private static final UnitPrice CENT_PER_MM = new UnitPrice(1_000_000);

    private final List<Movement> movements = new ArrayList<>();

    private void move(String reel, String rope, Kind kind, long mm, Origin origin) {
        Reel after = new Reel(
                reel,
                rope,
                "",
                new Reel.Contents(new Length(50_000), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
        long number = movements.size() + 1L;
        movements.add(new Movement(
                number, 1, Instant.EPOCH, "Ada", new Entry(kind, after, false, "", origin), number, new Length(-mm)));
    }

    private List<QuoteComparison.Row> rows(Drawn... quoted) {
        return new QuoteComparison("1041", movements, Map.of("A", CENT_PER_MM, "B", CENT_PER_MM))
                .rows(new QuotedWork("Q", List.of(quoted), List.of()));
    }

    private static Drawn drawn(String rope, int pieces, long taken, long drawn) {
        return new Drawn(rope, pieces, new Length(taken), new Length(drawn), new Cost(drawn * Cost.MILLIS_PER_MINOR));
    }

    /** 6 m of 10 m cut by the plan are ours, so 600 mm of 1 m of scrap; another order and another plan count nothing. */
    @Test
    void scrap_fallsToTheOrdersOfThePlanByWhatTheyTook() {
        move("R1", "A", Kind.CUT, 3_000, Origin.ofCut("p", "1041/1.1"));
        move("R1", "A", Kind.CUT, 3_000, Origin.ofCut("p", "1041/1.2"));
        move("R1", "A", Kind.CUT, 4_000, Origin.ofCut("p", "1042/1.1"));
        move("R1", "A", Kind.SCRAPPED, 1_000, Origin.ofStep("p", "rest"));
        move("R1", "A", Kind.SCRAPPED, 5_000, Origin.ofStep("later", "rest"));
        Drawn quoted = drawn("A", 2, 6_000, 6_000);
        assertEquals(List.of(new QuoteComparison.Row(quoted, drawn("A", 2, 6_000, 6_600))), rows(quoted));
    }

    @Test
    void pieceCutTwice_countsOnceButDrawsTwice() {
        move("R1", "A", Kind.CUT, 3_000, Origin.ofCut("p", "1041/1.1"));
        move("R2", "A", Kind.CUT, 3_000, Origin.ofCut("q", "1041/1.1"));
        assertEquals(
                drawn("A", 1, 6_000, 6_000),
                rows(drawn("A", 1, 3_000, 3_000)).get(0).posted());
    }

    @Test
    void substitute_showsAsARopeThatWasNotQuoted() {
        move("R1", "B", Kind.CUT, 3_000, Origin.ofCut("p", "1041/1.1"));
        List<QuoteComparison.Row> rows = rows(drawn("A", 1, 3_000, 3_000));
        assertEquals(Drawn.nothing("A"), rows.get(0).posted());
        assertEquals(Drawn.nothing("B"), rows.get(1).quoted());
        assertEquals(drawn("B", 1, 3_000, 3_000), rows.get(1).posted());
    }

    @Test
    void orderWhoseNumberBeginsAlike_isAnotherOrder() {
        move("R1", "A", Kind.CUT, 3_000, Origin.ofCut("p", "10411/1.1"));
        assertEquals(List.of(), rows());
    }
}
