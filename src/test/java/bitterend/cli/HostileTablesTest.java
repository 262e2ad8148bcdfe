package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the order book is, the shop is told where what is wrong, soon, and never a trace of the program. */
final class HostileTablesTest {
    private static final Path GOOD = Path.of("src/test/resources/good");

    @TestFactory
    Stream<DynamicTest> everyTable_isToldWithItsPlace(@TempDir Path shop) throws IOException {
        for (String name : new String[] {"shop.json", "ropes.json", "reels.csv"}) {
            Files.copy(GOOD.resolve(name), shop.resolve(name));
        }
        return HostileTables.all().entrySet().stream()
                .map(table -> DynamicTest.dynamicTest(table.getKey(), () -> told(shop, table)));
    }

    @Test
    void tables_areManyOfBothKinds() {
        assertTrue(HostileTables.all().size() >= 50, () -> HostileTables.all().size() + " tables");
        assertTrue(HostileTables.all().keySet().stream()
                        .filter(name -> name.startsWith("csv"))
                        .count()
                >= 15);
    }

    private static void told(Path shop, Map.Entry<String, byte[]> table) throws IOException {
        String name = table.getKey().startsWith("xlsx") ? "orders.xlsx" : "orders.csv";
        Files.deleteIfExists(shop.resolve("orders.csv"));
        Files.deleteIfExists(shop.resolve("orders.xlsx"));
        Files.write(shop.resolve(name), table.getValue());
        Run run = assertTimeout(Duration.ofSeconds(20), () -> Run.of("check", shop.toString()));
        String all = run.out() + run.err();
        assertTrue(run.code() == 3 || run.code() == 4, () -> run.code() + ": " + all);
        assertTrue(all.contains(name), all);
        assertFalse(all.contains("Exception") || all.contains("\tat ") || all.contains("null"), all);
        assertEquals(
                -1,
                all.chars()
                        .filter(letter -> letter < ' ' && letter != '\n')
                        .findFirst()
                        .orElse(-1),
                all);
        assertTrue(all.length() < 20_000, () -> all.length() + " characters");
    }
}
