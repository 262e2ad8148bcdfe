package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine;

/** The commands that the command line itself knows. */
final class EveryCommand {
    private EveryCommand() {}

    /** By its words, without the program's. */
    static Map<String, CommandLine> byWords() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        Terminal quiet = new Terminal(nowhere, nowhere, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN);
        Map<String, CommandLine> commands = new TreeMap<>();
        List<CommandLine> open =
                new ArrayList<>(Main.whole(quiet).getSubcommands().values());
        while (!open.isEmpty()) {
            CommandLine command = open.remove(0);
            open.addAll(command.getSubcommands().values());
            String words = command.getCommandSpec().qualifiedName(" ").replaceFirst("^bitterend ", "");
            assertFalse(commands.containsKey(words), words);
            commands.put(words, command);
        }
        return commands;
    }
}
