package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * 100,000 rows in each file, good and bad. Time is that of the processor, so that a busy machine does not fail; a reader
 * whose time grows with the square of the rows does.
 */
final class ManyRowsTest {
    private static final int ROWS = 100_000;
    private static final Duration LIMIT = Duration.ofSeconds(30);

    @Test
    void goodRows_areRead(@TempDir Path folder) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, folder);
        write(folder, "orders.csv", "order,line,rope,length,end a\n", "G-%1$d,1,DB12,%2$d mm,sealed\n");
        write(folder, "reels.csv", "reel,rope,length,flaws\n", "R-%1$d,DB12,200 m,20 m +/- %2$d mm\n");
        write(folder, "pins.csv", "piece,reel\n", "G-%1$d/1.1,R-%1$d\n");
        Shop shop = read(folder).shop().orElseThrow();
        assertEquals(ROWS, shop.pieces().size());
        assertEquals(ROWS, shop.reels().size());
        assertEquals(ROWS, shop.pins().size());
    }

    @Test
    void badRows_areAllTold(@TempDir Path folder) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, folder);
        write(folder, "orders.csv", "order,line,rope,length\n", "G-%1$d,1,DB13,%2$d\n");
        write(folder, "reels.csv", "reel,rope,length\n", "R-1,DB12,%2$d m\n");
        int findings = read(folder).findings().size();
        assertEquals(2 * ROWS + ROWS - 1, findings);
    }

    /** A program that asks is told as a person is: the first of each cause, and how many there are. */
    @Test
    void badRowsAsJson_areTheFirstFewOfEachCauseAndACount(@TempDir Path folder) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, folder);
        write(folder, "orders.csv", "order,line,rope,length\n", "G-%1$d,1,DB13,%2$d\n");
        JsonNode answer =
                new ObjectMapper().readTree(AnswerJson.findings(read(folder).findings()));
        int told = answer.get("findings").size();
        assertTrue(told <= 300, () -> told + " told");
        assertEquals(2 * ROWS, answer.get("count").asInt());
        int more = answer.get("others").asInt();
        for (JsonNode each : answer.get("more")) {
            assertEquals("orders.csv", each.get("file").asText());
            more += each.get("count").asInt();
        }
        assertEquals(2 * ROWS, told + more);
    }

    private static ShopReading read(Path folder) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        ShopReading reading = ShopFolder.read(folder);
        Duration taken = Duration.ofNanos(ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before);
        assertTrue(taken.compareTo(LIMIT) < 0, () -> "took " + taken);
        return reading;
    }

    private static void write(Path folder, String name, String header, String row) throws IOException {
        StringBuilder text = new StringBuilder(header);
        for (int i = 0; i < ROWS; i++) {
            text.append(String.format(Locale.ROOT, row, i, 1000 + i % 5000));
        }
        Files.writeString(folder.resolve(name), text);
    }
}
