package bitterend.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.LimitsPage;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** However many problems a file has, and however long what is in it: what a reader is told stays short. */
final class ToldLimitsTest {
    @Test
    void whatWasFound_isRepeatedAsFarAsItIsNeeded() {
        int most = (int) LimitsPage.most("characters of what a finding found");
        String within = "x".repeat(most);
        assertEquals(
                within,
                Finding.error("reels.csv", "row 2", "reel", within, "an id").found());
        assertEquals(
                "x".repeat(60) + "... (" + (most + 1) + " characters)",
                Finding.error("reels.csv", "row 2", "reel", within + "x", "an id")
                        .found());
        String pairs = "\uD83E\uDEA2".repeat(most);
        assertEquals(
                "\uD83E\uDEA2".repeat(60) + "... (" + 2 * most + " characters)",
                Finding.warning("reels.csv", "row 2", "reel", pairs, "an id").found());
    }

    @Test
    void causes_areListedUpToSoMany() {
        int most = (int) LimitsPage.most("causes of findings that are listed");
        List<Finding> all = IntStream.range(0, 2 * most)
                .mapToObj(number -> Finding.error("reels.csv", "row " + number, "x" + number, "?", "a length"))
                .toList();
        ByCause told = ByCause.of(all);
        assertEquals(most, told.alike().size());
        assertEquals(most, told.others());
    }

    @Test
    void hundredThousandOfOneCause_areThreeAndTheirRows() {
        ByCause told = ByCause.of(IntStream.rangeClosed(2, 100_001)
                .mapToObj(number -> Finding.error("reels.csv", "row " + number, "length", "?", "a length"))
                .toList());
        assertEquals(1, told.alike().size());
        assertEquals(3, told.alike().get(0).told().size());
        assertEquals(99_997, told.alike().get(0).more());
        assertEquals("rows 5 to 100001", told.alike().get(0).where());
    }
}
