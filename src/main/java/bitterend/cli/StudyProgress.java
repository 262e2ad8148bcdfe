package bitterend.cli;

import bitterend.buying.Simulation;
import bitterend.front.ProgressWords;
import java.io.PrintStream;

/** Tells how far a study is, and how long it will still take, about once a second and on one line of a terminal. */
final class StudyProgress implements Simulation.Listener {
    private static final long EVERY_NANOS = 1_000_000_000L;

    private final PrintStream err;
    private final String rope;
    private final long begun = System.nanoTime();
    private long told = begun;

    StudyProgress(PrintStream err, String rope) {
        this.err = err;
        this.rope = rope;
    }

    @Override
    public synchronized void worked(int done, int all) {
        long now = System.nanoTime();
        if (now - told < EVERY_NANOS && done < all) {
            return;
        }
        told = now;
        long left = (now - begun) / done * (all - done) / EVERY_NANOS;
        err.println(ProgressWords.scenarios(rope, done, all)
                + (done < all ? ", about " + (left + 1) + " s left; Ctrl-C gives the answer so far" : ""));
    }
}
