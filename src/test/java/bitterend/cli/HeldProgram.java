package bitterend.cli;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.locks.LockSupport;

/** The program, which goes no further once it has told its first words: whoever stops it there knows how far it was. */
final class HeldProgram {
    /** The property with which it is held as by a reader who takes no more: nobody else can write then. */
    static final String READER = "held.by.reader";

    private HeldProgram() {}

    private static void hold(Thread thread) {
        while (Thread.currentThread().equals(thread)) {
            LockSupport.park();
        }
    }

    /** Runs the command of the arguments. */
    public static void main(String[] args) {
        PrintStream err = Boolean.getBoolean(READER)
                ? new PrintStream(new Held(new FileOutputStream(FileDescriptor.err)), true, StandardCharsets.UTF_8)
                : new HeldAfterwards();
        System.exit(
                Main.runStoppable(args, new Terminal(System.out, err, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN)));
    }

    /** Holds the first thread that writes; others write on. */
    private static final class Held extends FilterOutputStream {
        private final Thread first = Thread.currentThread();

        Held(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
            hold(first);
        }
    }

    /** Holds the first thread once it has printed; others print on. */
    private static final class HeldAfterwards extends PrintStream {
        private final Thread first = Thread.currentThread();

        HeldAfterwards() {
            super(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        }

        @Override
        public void print(String text) {
            super.print(text);
            if (!text.isEmpty()) {
                hold(first);
            }
        }

        @Override
        public void println(String text) {
            print(text + System.lineSeparator());
        }
    }
}
