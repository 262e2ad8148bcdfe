package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** 100,000 rows, good and bad. The limits are loose: a busy machine must not fail them, a quadratic reader must. */
final class ManyRowsTest {
    private static final int ROWS = 100_000;
    private static final Duration LIMIT = Duration.ofSeconds(60);

    @Test
    void goodRows_areRead(@TempDir Path folder) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, folder);
        write(folder, "orders.csv", "order,line,rope,length,end a\n", "G-%1$d,1,DB12,%2$d mm,sealed\n");
        write(folder, "reels.csv", "reel,rope,length,flaws\n", "R-%1$d,DB12,200 m,20 m +/- %2$d mm\n");
        write(folder, "pins.csv", "piece,reel\n", "G-%1$d/1.1,R-%1$d\n");
        Shop shop = assertTimeout(LIMIT, () -> ShopFolder.read(folder).shop().orElseThrow());
        assertEquals(ROWS, shop.pieces().size());
        assertEquals(ROWS, shop.reels().size());
        assertEquals(ROWS, shop.pins().size());
    }

    @Test
    void badRows_areAllTold(@TempDir Path folder) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, folder);
        write(folder, "orders.csv", "order,line,rope,length\n", "G-%1$d,1,DB13,%2$d\n");
        write(folder, "reels.csv", "reel,rope,length\n", "R-1,DB12,%2$d m\n");
        int findings =
                assertTimeout(LIMIT, () -> ShopFolder.read(folder).findings().size());
        assertEquals(2 * ROWS + ROWS - 1, findings);
    }

    private static void write(Path folder, String name, String header, String row) throws IOException {
        StringBuilder text = new StringBuilder(header);
        for (int i = 0; i < ROWS; i++) {
            text.append(String.format(java.util.Locale.ROOT, row, i, 1000 + i % 5000));
        }
        Files.writeString(folder.resolve(name), text);
    }
}
