package bitterend.packing.patterns.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The best pattern of all, and through each item, against all patterns there are. */
final class PatternTableTest {
    @Test
    void bestPatterns_areTheBestOfAll_withinTheLimits() {
        int groups = 0;
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            ReelQuestion question = Questions.drawn(random, 9);
            if (question.waste < 0) {
                continue;
            }
            List<Column> all = Questions.patterns(question);
            Limits limits = Questions.limits(question, random);
            int[] price = random.ints(question.items(), -40, 100).toArray();
            PatternTable table = new PatternTable(question);
            for (Limits.Group group : limits.groups()) {
                groups++;
                table.fill(price, group);
                List<Column> own = all.stream()
                        .filter(column -> group.allows(column)
                                && (group.leader == Limits.Group.ANY || group.leader == column.leader()))
                        .toList();
                long best = own.stream()
                        .mapToLong(column -> Questions.worth(column, price))
                        .max()
                        .orElse(-1_000);
                assertEquals(best, Math.max(-1_000, table.best()), "seed " + seed);
                for (int item = group.first(); item < price.length; item++) {
                    through(table, own, item, price, "seed " + seed + " item " + item);
                }
            }
        }
        assertTrue(groups > 300, "groups " + groups);
    }

    private static void through(PatternTable table, List<Column> own, int item, int[] price, String where) {
        long best = own.stream()
                .filter(column -> column.countOf(item) > 0)
                .mapToLong(column -> Questions.worth(column, price))
                .max()
                .orElse(-1_000);
        Optional<Column> found = table.through(item, -900);
        assertEquals(best > -900, found.isPresent(), where);
        found.ifPresent(column -> {
            assertEquals(best, Questions.worth(column, price), where);
            assertTrue(own.contains(column) && column.countOf(item) > 0, where);
        });
        assertTrue(table.through(item, (int) best).isEmpty(), where);
    }
}
