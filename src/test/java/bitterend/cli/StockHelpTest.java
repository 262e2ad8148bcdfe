package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The help of every stock command there is; the command line itself says which. */
final class StockHelpTest {
    static Stream<String> commands() {
        Terminal terminal = new Terminal(System.out, System.err, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN);
        return StockCommand.command(terminal, name -> false).getSubcommands().keySet().stream()
                .sorted();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void help_readsAsTheGoldenFileWithinEightyColumns(String command) {
        Run run = Run.of("stock", command, "--help");
        assertEquals(0, run.code(), run.err());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        Golden.check("cli/stock" + command + "-help.txt", run.out());
    }

    /** A line that is too wide would be broken behind its last word. */
    @Test
    void whatACommandDoes_isWrittenInLinesThatAreNotBroken() {
        EveryCommand.byWords().forEach((words, command) -> {
            for (String line : command.getCommandSpec().usageMessage().description()) {
                String told = line.replace("%%", "%");
                assertTrue(told.length() <= 80, words + ": " + told);
            }
        });
    }

    @Test
    void commands_areListedInTheOrderOfADay() {
        Terminal terminal = new Terminal(System.out, System.err, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN);
        assertEquals(
                StockCommand.IN_THE_DAY,
                List.copyOf(StockCommand.command(terminal, name -> false)
                        .getSubcommands()
                        .keySet()));
    }

    @Test
    void stockAlone_saysHowItIsCalledAndWhatThereIs() {
        Run alone = Run.of("stock");
        assertEquals(2, alone.code());
        assertEquals(Run.of("stock", "--help").out(), alone.err());
        assertTrue(alone.err().contains("Usage: bitterend stock "), alone.err());
    }
}
