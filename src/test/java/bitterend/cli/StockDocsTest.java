package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** docs/stock.md tells a day; every command of it is run, in its order, on a copy of the shop it speaks of. */
final class StockDocsTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void dayOfTheDocs_happensAsTold() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        List<String> commands = Files.readAllLines(Path.of("docs", "stock.md")).stream()
                .filter(line -> line.startsWith("$ bitterend "))
                .map(line -> line.substring("$ bitterend ".length()))
                .toList();
        assertTrue(commands.size() > 15, "only " + commands.size());
        for (String command : commands) {
            Run run = Run.of(words(command, shop));
            assertEquals(0, run.code(), command + "\n" + run.out() + run.err());
        }
    }

    private String[] words(String command, Path shop) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            String text = word.group(1) == null ? word.group(2) : word.group(1);
            words.add(text.equals("monday.db") ? folder.resolve(text).toString() : text);
        }
        words.replaceAll(each -> each.equals("demo-data/eider-shed") ? shop.toString() : each);
        if (words.get(0).equals("plan")) {
            words.addAll(List.of("--time", "1s"));
        }
        return words.toArray(String[]::new);
    }
}
