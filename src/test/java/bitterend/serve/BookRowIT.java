package bitterend.serve;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Somebody types in the order book: cut length, derivation and mistakes appear beside the row without a tap. */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class BookRowIT {
    @Test
    void cutLengthAndItsDerivation_appearAsOneTypes(@TempDir Path folder) throws IOException {
        try (ServedLoft loft = new ServedLoft("eider-shed", folder).withLedger().start();
                Browsers browsers = new Browsers()) {
            Page page = browsers.tablet(loft.url(), 1280, 800).open("/book").page();
            page.getByLabel("length, row 2").fill("29 m");
            assertThat(page.locator("#typed summary")).hasText("Row 2: cut length 29.640 m");
            assertThat(page.locator("#cut-1")).hasText("29.640 m");
            page.locator("#typed summary").click();
            assertThat(page.locator("#typed")).containsText("worked out");
            page.screenshot(new Page.ScreenshotOptions().setPath(Path.of("target/pictures/book-row.png")));
            page.getByLabel("length, row 2").fill("29 cubits");
            assertThat(page.locator("#typed")).containsText("expected a length with its unit");
        }
    }
}
