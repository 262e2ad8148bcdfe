package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every kind of page in a real browser, audited by axe-core (rules of WCAG and best practice: contrast, header cells, words
 * for drawings, landmarks, order of headings): it finds nothing. Runs with {@code mvn verify -Pbrowser}.
 */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class AccessiblePagesIT {
    private static final Pattern VERDICT = Pattern.compile("AUDIT\\[(.*?)]TIDUA", Pattern.DOTALL);

    private final Path folder;

    AccessiblePagesIT(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void pages_areFoundAccessible() throws IOException, InterruptedException {
        Path shop = DemoShop.copy("gannet-loft", folder);
        String request = shop.resolve("requests/Q-2601.csv").toString();
        assertTrue(Run.of("plan", shop.toString(), "--time", "2s").code() <= 4);
        Map<String, List<String>> pages = new TreeMap<>(Map.of(
                "plan", List.of("show", shop.toString(), "tables"),
                "money", List.of("show", shop.toString(), "money"),
                "check", List.of("check", shop.toString()),
                "lengths", List.of("lengths", shop.toString(), "G-2101/1"),
                "orders", List.of("orders", shop.toString()),
                "value", List.of("value", shop.toString()),
                "quote", List.of("quote", shop.toString(), request),
                "customer", List.of("quote", shop.toString(), request, "--customer"),
                "study", List.of("buy", shop.toString(), "--from-history", "--rope", "TS14", "--scenarios", "4"),
                "stock", List.of("stock", "list", shop.toString())));
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        for (Map.Entry<String, List<String>> page : pages.entrySet()) {
            Path html = folder.resolve(page.getKey() + ".html");
            List<String> words = new ArrayList<>(page.getValue());
            words.addAll(List.of("--html", html.toString()));
            Run run = Run.of(words.toArray(String[]::new));
            assertTrue(run.code() == 0 || run.code() == 4, page.getKey() + run.err());
            audit(html);
        }
        for (String kind : List.of("sheet", "cards", "tags")) {
            Run run = kind.equals("sheet")
                    ? Run.of("sheet", shop.toString(), "--all")
                    : Run.of("sheet", shop.toString(), "--all", "--" + kind);
            assertEquals(0, run.code(), run.err());
            audit(shop.resolve(kind + ".html"));
        }
    }

    private void audit(Path page) throws IOException, InterruptedException {
        String script = "<script>" + axe().replace("</script", "<\\/script") + "</script><script>"
                + "axe.run(document, {resultTypes: ['violations']}).then(function (found) {"
                + " var said = document.createElement('pre');"
                + " said.textContent = 'AUDIT[' + found.violations.map(function (rule) {"
                + "   return rule.id + ': ' + rule.nodes.slice(0, 3).map(function (node) { return node.target; }).join(', ');"
                + " }).join('; ') + ']TIDUA';"
                + " document.body.appendChild(said); });</script></body>";
        Path audited = folder.resolve("audited.html");
        Files.writeString(audited, Files.readString(page).replace("</body>", script));
        String dom = Chromium.run(
                folder,
                "--dump-dom",
                "--virtual-time-budget=20000",
                audited.toUri().toString());
        Matcher verdict = VERDICT.matcher(dom.substring(dom.lastIndexOf("</script>")));
        assertTrue(verdict.find(), "no audit of " + page);
        assertEquals("", verdict.group(1), page.getFileName().toString());
    }

    private static String axe() throws IOException {
        try (InputStream script = AccessiblePagesIT.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
