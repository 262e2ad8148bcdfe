package bitterend.cli;

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

/** Begun sets, changed orders and spare pieces on the demo shops, as docs/orders.md tells them. */
final class DemoOrdersTest {
    private static final Path PAGE = Path.of("docs", "orders.md");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private final Path folder;

    DemoOrdersTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void commandsOfThePage_sayWhatItSays() throws IOException {
        sayWhatThePageSays("eider-shed");
    }

    @Test
    void commandsAtTheBench_sayWhatThePageSays() throws IOException {
        sayWhatThePageSays("gannet-loft");
    }

    private void sayWhatThePageSays(String loft) throws IOException {
        Path shop = DemoShop.copy(loft, folder);
        Files.deleteIfExists(shop.resolve("plan.json"));
        String page = Files.readString(PAGE);
        int begin = page.indexOf("```\n$ bitterend stock open demo-data/" + loft) + 4;
        String script = page.substring(begin, page.indexOf("```", begin));
        for (String step : script.split("(?m)^\\$ ")) {
            if (!step.isBlank()) {
                List<String> lines = List.of(step.split("\n"));
                String said = flat(run(words(lines.get(0)), shop, lines.size() > 1))
                        .replace(shop.toString(), "demo-data/" + loft);
                for (String line : paragraphs(lines.subList(1, lines.size()))) {
                    assertTrue(said.contains(flat(line)), lines.get(0) + "\n" + line + "\n" + said);
                }
            }
        }
    }

    /** What a command says; one that is refused must say so on the page. */
    private static String run(List<String> words, Path shop, boolean shown) throws IOException {
        List<String> here = words.stream()
                .map(word -> word.replace("demo-data/" + shop.getFileName(), shop.toString()))
                .toList();
        if (here.get(0).equals("sed")) {
            edit(here.get(2), Path.of(here.get(3)));
            return "";
        }
        Run run = Run.of(here.subList(1, here.size()).toArray(String[]::new));
        boolean refused = run.code() == 3 && shown;
        assertTrue(run.code() == 0 || run.code() == 4 || refused, () -> String.join(" ", here) + "\n" + run.err());
        return refused ? run.err() : run.out();
    }

    /** The two forms of sed that the page uses. */
    private static void edit(String script, Path file) throws IOException {
        String text = Files.readString(file);
        if (script.startsWith("$ a ")) {
            Files.writeString(file, text + script.substring(4) + "\n");
            return;
        }
        String[] parts = script.split("/");
        String changed = text.replace(parts[1], parts[2]);
        assertTrue(!changed.equals(text), script);
        Files.writeString(file, changed);
    }

    /** Lines that go on in the next one are one. */
    private static List<String> paragraphs(List<String> lines) {
        List<String> whole = new ArrayList<>();
        for (String line : lines) {
            boolean goesOn = !whole.isEmpty() && whole.get(whole.size() - 1).endsWith(",");
            if (goesOn) {
                whole.set(whole.size() - 1, whole.get(whole.size() - 1) + " " + line);
            } else {
                whole.add(line);
            }
        }
        return whole;
    }

    private static List<String> words(String command) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        return words;
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
