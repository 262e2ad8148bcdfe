package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitUntilState;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every screen to which a link of another leads, at four sizes: axe-core finds nothing serious, nothing scrolls sideways, every
 * target is large enough for a finger. The pictures are in {@code target/pictures}, to be looked at.
 */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class ScreensIT {
    private static final Path PICTURES = Path.of("target", "pictures");
    private static final int[][] SIZES = {{1280, 800}, {1024, 768}, {800, 1280}, {390, 844}};
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)\"");
    /** Screens that nothing links to until somebody has asked for them. */
    private static final List<String> BEGINNINGS = List.of("/", "/pair", "/find?what=G-2101");

    /** Targets below the size that fingers need; those inside a sentence have their line. */
    private static final String SMALL =
            """
            () => Array.from(document.querySelectorAll("a[href], button, select, textarea, summary, input:not([type=hidden])"))
              .filter(each => !each.closest("p, li > span, td > span") || each.matches("button, .button"))
              .filter(each => !each.matches(".skip"))
              .map(each => ({ each: each, box: (each.type === "checkbox" ? each.closest("label") : each).getBoundingClientRect() }))
              .filter(one => one.box.width > 0 && one.box.height > 0)
              .filter(one => one.box.height < (one.each.closest(".bench, body:has(.bench) .bar") ? 56 : 44) - 0.5 || one.box.width < 44 - 0.5)
              .map(one => one.each.tagName + " '" + (one.each.innerText || one.each.name) + "' "
                + Math.round(one.box.width) + "x" + Math.round(one.box.height))
              .slice(0, 5).join("; ")
            """;

    /** Columns of words that are narrower than a word or two. */
    private static final String NARROW =
            """
            () => Array.from(document.querySelectorAll(".rack td"))
              .filter(each => each.innerText.trim().length > 24 && each.getBoundingClientRect().width < 160)
              .map(each => "'" + each.innerText + "' " + Math.round(each.getBoundingClientRect().width))
              .slice(0, 5).join("; ")
            """;

    private static final String AUDIT =
            """
            async () => { const found = await axe.run(document, { resultTypes: ["violations"] });
              return found.violations.filter(rule => ["serious", "critical"].includes(rule.impact)).map(rule =>
                rule.id + ": " + rule.nodes.slice(0, 3).map(node => node.target).join(", ")).join("; "); }
            """;

    private final List<String> faults = new ArrayList<>();

    @Test
    void screens_areFitForFingersAndReaders(@TempDir Path folder) throws IOException, InterruptedException {
        try (ServedLoft loft =
                        new ServedLoft("gannet-loft", folder).withLedger().start();
                Browsers browsers = new Browsers();
                Tablet first = browsers.tablet(loft.url())) {
            first.open("/").isHeldBy("Ada");
            first.plans();
            first.open("/bench");
            first.page().locator("a.reeltile").first().click();
            first.ticks();
            first.sendsAll();
            Map<String, String> screens = screens(new Visitor(loft.url()));
            assertTrue(screens.size() > 15, screens.toString());
            for (int[] size : SIZES) {
                try (Tablet tablet = browsers.tablet(loft.url(), size[0], size[1])) {
                    tablet.open("/").isHeldBy("Ada");
                    for (Map.Entry<String, String> screen : screens.entrySet()) {
                        look(tablet, screen.getKey(), screen.getValue());
                    }
                    look(tablet, "import-sheet", brought(tablet));
                    tablet.isWell();
                }
            }
        }
        assertEquals("", String.join("\n", faults));
    }

    /** A sheet that is looked at: where it is shown. */
    private static String brought(Tablet tablet) {
        Page page = tablet.open("/import").page();
        page.locator("input[type=file]").setInputFiles(Path.of("demo-data", "whimbrel.xlsx"));
        page.locator("main form button.strong").click();
        page.waitForURL(
                "**/import/sheet?id=*", new Page.WaitForURLOptions().setWaitUntil(WaitUntilState.DOMCONTENTLOADED));
        URI shown = URI.create(page.url());
        return shown.getPath() + "?" + shown.getQuery();
    }

    private void look(Tablet tablet, String name, String path) throws IOException {
        Page page = tablet.open(path).page();
        String where = path + " at " + tablet.width() + ": ";
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + "-" + tablet.width() + ".png"))
                .setFullPage(true));
        boolean isScreen = page.locator("#main").count() > 0;
        if (tablet.width() == 1280 || tablet.width() == 390) {
            page.evaluate(axe());
            note(where, String.valueOf(page.evaluate(AUDIT)));
        }
        if (isScreen) {
            note(where + "too small: ", String.valueOf(page.evaluate(SMALL)));
            note(where + "too narrow: ", String.valueOf(page.evaluate(NARROW)));
            int over = (Integer) page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
            note(where, over > 0 ? "scrolls sideways by " + over : "");
        }
    }

    private void note(String where, String what) {
        if (!what.isEmpty()) {
            faults.add(where + what);
        }
    }

    /** A screen of each kind that links lead to, by a name for its picture. */
    private static Map<String, String> screens(Visitor visitor) {
        Map<String, String> screens = new TreeMap<>();
        Deque<String> paths = new ArrayDeque<>(BEGINNINGS);
        while (!paths.isEmpty()) {
            String path = paths.remove();
            String name = path.replaceAll("[?].*", "")
                    .replaceAll("^/$", "/today")
                    .substring(1)
                    .replace('/', '-');
            boolean isPage = !path.startsWith(Assets.PATH)
                    && !path.startsWith("/workbook/")
                    && !path.endsWith(".pdf")
                    && !path.contains(".csv");
            if (!isPage || screens.putIfAbsent(name, path) != null) {
                continue;
            }
            Visitor.Seen seen = visitor.get(path);
            assertEquals(200, seen.status(), path);
            Matcher link = LINK.matcher(seen.page());
            while (link.find()) {
                paths.add(link.group(1).replace("&amp;", "&"));
            }
        }
        return screens;
    }

    private static String axe() throws IOException {
        try (InputStream script = ScreensIT.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
