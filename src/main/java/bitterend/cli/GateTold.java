package bitterend.cli;

import bitterend.finding.CommandWord;
import bitterend.work.Verdict;
import java.nio.file.Path;

/** Tells the reader why a plan does not go through the gate. */
final class GateTold {
    private final Terminal terminal;
    private final Path folder;

    /** {@code folder} is the shop folder as it was typed. */
    GateTold(Terminal terminal, Path folder) {
        this.terminal = terminal;
        this.folder = folder;
    }

    /** Tells why it does not go; what the command ends with. */
    ExitCode tell(Verdict.Refused refused) {
        String start =
                switch (refused.why()) {
                    case UNSOUND -> "error: the plan is not sound: ";
                    case FOREIGN -> "error: the plan is not of this shop: ";
                    case STALE -> "error: since this was planned, ";
                };
        refused.reasons().forEach(reason -> terminal.err().println(start + reason));
        if (refused.why() == Verdict.Why.STALE) {
            terminal.err().println("Plan again: bitterend plan " + CommandWord.of(folder.toString()));
            return ExitCode.STOCK_CHANGED;
        }
        return ExitCode.BAD_INPUT;
    }
}
