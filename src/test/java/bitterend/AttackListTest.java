package bitterend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What docs/attacks.md says was tried against the page is tried by the test that it names. */
final class AttackListTest {
    private static final Pattern NAMED = Pattern.compile("`([A-Za-z]+(?:Test|IT))[.]([A-Za-z_]+)`");

    @Test
    void eachRow_namesATestThatIsThere() throws IOException {
        List<String> missing = new ArrayList<>();
        int rows = 0;
        for (String line : Files.readAllLines(Path.of("docs/attacks.md"))) {
            boolean isRow = line.startsWith("| ") && !line.startsWith("| tried");
            Matcher test = NAMED.matcher(line);
            if (isRow && !(test.find() && isThere(test.group(1), test.group(2)))) {
                missing.add(line);
            }
            rows += isRow ? 1 : 0;
        }
        assertEquals(List.of(), missing);
        assertTrue(rows > 20, () -> "rows are read");
    }

    private static boolean isThere(String type, String method) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src/test/java/bitterend"))) {
            Path file = all.filter(each -> each.endsWith(type + ".java"))
                    .findFirst()
                    .orElseThrow();
            return Files.readString(file).contains(" void " + method + "(");
        }
    }
}
