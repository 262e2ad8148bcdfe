package bitterend.packing.bench;

import bitterend.measure.Length;
import bitterend.packing.RunLoad;
import java.util.Arrays;
import java.util.BitSet;

/** What is cut from each run, and what that costs reel by reel, in 1/1000 minor unit. */
final class Draws {
    private final Workbench bench;
    private final RunLoad[][] loads;
    /** The last run of each reel that is cut, from zero, or -1. */
    private final int[] deepest;

    private final Quotes quotes;
    /** What each draw costs unless it is stale, and all of them together. */
    private final long[] millis;

    private long all;
    private final BitSet stale = new BitSet();

    /** Nothing is cut. */
    Draws(Workbench bench) {
        this.bench = bench;
        loads = new RunLoad[bench.reels][];
        for (int r = 0; r < bench.reels; r++) {
            loads[r] = new RunLoad[bench.runTable.firstRun[r + 1] - bench.runTable.firstRun[r]];
            Arrays.fill(loads[r], RunLoad.NONE);
        }
        deepest = new int[bench.reels];
        Arrays.fill(deepest, -1);
        quotes = new Quotes(bench);
        millis = new long[bench.reels];
    }

    RunLoad load(int run) {
        int reel = bench.runTable.reelOf[run];
        return loads[reel][run - bench.runTable.firstRun[reel]];
    }

    void set(int run, RunLoad load) {
        int reel = bench.runTable.reelOf[run];
        int place = run - bench.runTable.firstRun[reel];
        loads[reel][place] = load;
        deepest[reel] = Math.max(deepest[reel], place);
        while (deepest[reel] >= 0 && loads[reel][deepest[reel]].isEmpty()) {
            deepest[reel]--;
        }
        quotes.forget(reel);
        stale.set(reel);
    }

    boolean isUntouched(int reel) {
        return deepest[reel] < 0;
    }

    /** What a draw costs more with one more piece; asked once for pieces that are alike while the reel stays as it is. */
    long added(int piece, int run) {
        int kind = bench.pieceTable.kindOf[piece];
        long known = quotes.of(kind, run);
        if (known != Quotes.UNKNOWN) {
            return known;
        }
        long price = growth(run, load(run).plus(new Length(bench.sizeOn(piece, run))));
        quotes.put(kind, run, price);
        return price;
    }

    /** What a draw costs more with more cut from one of its runs. */
    long growth(int run, RunLoad then) {
        int reel = bench.runTable.reelOf[run];
        return bench.runTable
                .draw[reel]
                .growth(loads[reel], deepest[reel], run - bench.runTable.firstRun[reel], then)
                .millis();
    }

    /** What the draw of a reel costs. */
    long millis(int reel) {
        if (stale.get(reel)) {
            long now = bench.runTable.draw[reel].of(loads[reel]).millis();
            all += now - millis[reel];
            millis[reel] = now;
            stale.clear(reel);
        }
        return millis[reel];
    }

    /** What all draws cost. */
    long millis() {
        for (int reel = stale.nextSetBit(0); reel >= 0; reel = stale.nextSetBit(reel)) {
            millis(reel);
        }
        return all;
    }

    /** How many runs lie whole before others that are cut. */
    long skipped() {
        long skipped = 0;
        for (int reel = 0; reel < bench.reels; reel++) {
            for (int run = 0; run < deepest[reel]; run++) {
                skipped += loads[reel][run].isEmpty() ? 1 : 0;
            }
        }
        return skipped;
    }
}
