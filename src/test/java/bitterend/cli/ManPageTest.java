package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The manual page is made of what the commands say of themselves. */
final class ManPageTest {
    private final Run run = Run.of("--man");

    @Test
    void everyCommandAndOption_isOnIt() {
        assertEquals(0, run.code());
        EveryCommand.byWords().forEach((words, command) -> {
            assertTrue(run.out().contains("\n.SS \"bitterend " + words.replace("-", "\\-") + "\"\n"), words);
            command.getCommandSpec().options().stream()
                    .filter(option -> !option.hidden())
                    .forEach(option -> assertTrue(
                            run.out().contains(option.longestName().replace("-", "\\-")),
                            words + " " + option.longestName()));
        });
    }

    /** Nothing but the macros of a manual page begins with a point, and no variable of the help is left. */
    @Test
    void itIsPlainForTheReaderOfManualPages() {
        Set<String> macros = run.out()
                .lines()
                .filter(line -> line.startsWith("."))
                .map(line -> line.split(" ")[0])
                .collect(Collectors.toSet());
        assertEquals(Set.of(".TH", ".SH", ".SS", ".PP", ".TP"), macros);
        assertTrue(run.out().startsWith(".TH \"BITTEREND\" \"1\""), run.out().substring(0, 60));
        assertEquals(-1, run.out().indexOf("${"));
        assertEquals(-1, run.out().indexOf("@|"));
    }
}
