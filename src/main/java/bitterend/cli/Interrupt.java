package bitterend.cli;

import bitterend.report.page.Wording;
import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;

/**
 * Ctrl-C in the course of a command. Before the command has anything, the process ends at once and says so. From then on the
 * engines are told to stop, and the process stays until the command is through with what it has, as it said when it
 * began; a second Ctrl-C ends it at once.
 */
final class Interrupt implements AutoCloseable {
    private static final long LAST_WORD_MILLIS = 500;
    private static final long SHORT_SECONDS = 2;
    private static final long PATIENCE_SECONDS = 20;
    private static final String STOPPED = "stopped, by Ctrl-C or by the system, ";
    private static final String WHOLE = "each thing that it writes or books is there whole, or not at all.";
    private static final String MIDST = STOPPED + "in the midst of the command: " + WHOLE;

    /** The innermost first: its words are said, those of the command where it has one before those of the program. */
    private static final Deque<Interrupt> OPEN = new ConcurrentLinkedDeque<>();

    private final Terminal terminal;
    private final AtomicBoolean asked = new AtomicBoolean();
    private final Object lock = new Object();
    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread hook = new Thread(this::onShutdown, "keep-best");
    private volatile String early;
    private volatile String late = "";
    private boolean begun;
    private boolean over;

    private Interrupt(Terminal terminal, String early) {
        this.terminal = terminal;
        this.early = STOPPED + early;
        OPEN.push(this);
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /**
     * Listens until closed, for a command that writes nothing before it has {@link #begin begun}.
     *
     * @param before what there is not when it is stopped before that, such as "there was a plan"
     */
    static Interrupt listening(Terminal terminal, String before) {
        return new Interrupt(
                terminal, "before " + before + ": nothing was kept or written; the same command begins anew.");
    }

    /** From now on some command is at work that may write at any time, and has no words of its own. */
    void underWay() {
        early = STOPPED + "before the command was through: " + WHOLE;
    }

    /**
     * From now on there is something to keep or to show: who stops the command waits for that.
     *
     * @param stopped what becomes of it then, such as "the best plan so far is checked and kept"
     */
    void begin(String stopped) {
        late = "stopping: " + stopped + ". Ctrl-C once more ends it at once.";
        SecondPress.listen(() -> sayInPassing(MIDST));
        synchronized (lock) {
            begun = true;
            while (over) {
                LockSupport.park(this);
            }
        }
    }

    /** Whether the engines should stop. */
    boolean isAsked() {
        return asked.get();
    }

    /** Says that the work was broken off, where it was. */
    void tell(String what) {
        if (isAsked()) {
            say("stopped: " + what);
        }
    }

    private void say(String sentence) {
        terminal.err().println(Wording.sentence(sentence));
    }

    /** Says it as the process ends, which does not wait for a reader that takes nothing more. */
    private void sayInPassing(String sentence) {
        Thread saying = new Thread(() -> say(sentence), "last-word");
        saying.setDaemon(true);
        saying.start();
        try {
            saying.join(LAST_WORD_MILLIS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        finished.countDown();
        OPEN.remove(this);
        if (!asked.get()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException alreadyEnding) {
                asked.set(true);
            }
        }
    }

    private void onShutdown() {
        if (!equals(OPEN.peek())) {
            return;
        }
        boolean nothingYet;
        synchronized (lock) {
            asked.set(true);
            over = !begun;
            nothingYet = over;
        }
        if (nothingYet) {
            sayInPassing(early);
        } else if (!isFinished(SHORT_SECONDS)) {
            sayInPassing(late);
            if (!isFinished(PATIENCE_SECONDS - SHORT_SECONDS)) {
                sayInPassing(MIDST);
            }
        }
    }

    private boolean isFinished(long seconds) {
        try {
            return finished.await(seconds, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return true;
        }
    }
}
