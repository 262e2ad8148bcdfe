package bitterend.cli;

import bitterend.report.page.Wording;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C while a plan is being made: the engines are told to stop, and the process stays until the best plan so far is
 * checked, written and shown.
 */
final class Interrupt implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 20;

    private final AtomicBoolean asked = new AtomicBoolean();
    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread hook = new Thread(this::onShutdown, "keep-best");

    /** Listens until closed. */
    static Interrupt listening() {
        Interrupt keepBest = new Interrupt();
        Runtime.getRuntime().addShutdownHook(keepBest.hook);
        return keepBest;
    }

    /** Whether the engines should stop. */
    boolean isAsked() {
        return asked.get();
    }

    /** Says that the work was broken off, where it was. */
    void tell(Terminal terminal, String what) {
        if (isAsked()) {
            terminal.err().println(Wording.sentence("stopped: " + what));
        }
    }

    @Override
    public void close() {
        finished.countDown();
        if (!asked.get()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException alreadyEnding) {
                asked.set(true);
            }
        }
    }

    private void onShutdown() {
        asked.set(true);
        try {
            finished.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
