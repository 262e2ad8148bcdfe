package bitterend.packing.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rows of cells against every number of copies by itself. */
final class PassesTest {
    @Test
    void copies_areTheBestOfEachNumber_withinTheLimits() {
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            int cells = 1 + random.nextInt(60);
            Passes passes = new Passes();
            passes.cells(cells);
            int[] from = passes.emptyRow();
            for (int c = 0; c < cells; c++) {
                from[c] = random.nextInt(3) == 0 ? Passes.NEVER : random.nextInt(1000) - 500;
            }
            int size = 1 + random.nextInt(20);
            int price = random.nextInt(200) - 60;
            int least = random.nextInt(3);
            int most = least + random.nextInt(9);
            int[] next = passes.copies(from.clone(), size, price, least, most);
            for (int c = 0; c < cells; c++) {
                int best = Passes.NEVER;
                for (int q = least; q <= most && q * size <= c; q++) {
                    best = Math.max(best, Math.max(Passes.NEVER, from[c - q * size] + q * price));
                }
                assertEquals(best > -1_000_000 ? best : -1, next[c] > -1_000_000 ? next[c] : -1, "seed " + seed);
            }
        }
    }

    @Test
    void noCopies_areTheSameRow_andRowsAreUsedAgain() {
        Passes passes = new Passes();
        passes.cells(5);
        int[] row = passes.emptyRow();
        assertSame(row, passes.copies(row, 2, 1, 0, 0));
        passes.giveBack(row);
        assertSame(row, passes.row());
    }
}
