package bitterend.serve;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The Chromium that the system property {@code browser} names, driven without a window; nothing is fetched for it. */
final class Browsers implements AutoCloseable {
    private final Playwright driver;
    private final Browser browser;

    Browsers() {
        driver = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = driver.chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program())
                        .setArgs(List.of("--disable-gpu", "--disable-background-networking")));
    }

    private static Path program() {
        String named = System.getProperty("browser", "");
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder).resolve(named))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("there is no browser " + named));
    }

    /** A device of its own, with cookies of its own. */
    Tablet tablet(String url) {
        return tablet(url, 1024, 768);
    }

    Tablet tablet(String url, int width, int height) {
        return new Tablet(
                browser.newContext(new Browser.NewContextOptions().setViewportSize(width, height)), url, width);
    }

    @Override
    public void close() {
        browser.close();
        driver.close();
    }
}
