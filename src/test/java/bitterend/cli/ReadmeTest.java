package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Holds the README to what the program does. */
final class ReadmeTest {
    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }

    @Test
    void readme_namesOnlyCommandsThatExist() throws IOException {
        Set<String> known =
                Main.commandLine(Terminal.standard()).getSubcommands().keySet();
        Matcher commands =
                Pattern.compile("java -jar target/bitterend.jar ([a-z]+)").matcher(readme());
        Set<String> named = new TreeSet<>();
        while (commands.find()) {
            named.add(commands.group(1));
        }
        assertTrue(named.size() >= 3, named.toString());
        named.removeAll(known);
        assertEquals(Set.of(), named);
    }
}
