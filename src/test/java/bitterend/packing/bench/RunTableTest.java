package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import bitterend.packing.ReelSketch;
import bitterend.packing.Sketch;
import org.junit.jupiter.api.Test;

final class RunTableTest {
    @Test
    void runsOfReelsThatAreAlike_areAlikePlaceByPlace() {
        Workbench bench = new Workbench(new Sketch()
                .with(ReelSketch.reel("A", 9_000).flaw(4_000, 4_100))
                .with(ReelSketch.reel("B", 9_000).flaw(5_000, 5_100))
                .with(ReelSketch.reel("C", 9_000).flaw(4_000, 4_100))
                .problem());
        int[] alike = bench.runTable.alike;
        assertEquals(6, alike.length);
        assertEquals(alike[0], alike[4]);
        assertEquals(alike[1], alike[5]);
        assertNotEquals(alike[0], alike[1]);
        assertNotEquals(alike[0], alike[2]);
    }

    /** Were every run told apart by all runs of its reel, these would fill some 2 GB. */
    @Test
    void reelOfManyFlaws_fitsIntoMemory() {
        ReelSketch reel = ReelSketch.reel("A", 20_000_000);
        for (long at = 500; at < 20_000_000; at += 1_000) {
            reel.flaw(at, at + 10);
        }
        int[] alike = new Workbench(new Sketch().with(reel).problem()).runTable.alike;
        assertEquals(20_001, alike.length);
        assertNotEquals(alike[3], alike[20_000]);
    }
}
