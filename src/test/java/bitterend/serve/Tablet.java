package bitterend.serve;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.WaitUntilState;
import java.util.ArrayList;
import java.util.List;

/** One device in the loft and who holds it: taps, types and reads as a person does. */
final class Tablet implements AutoCloseable {
    private static final int MOST_TRIES = 5;
    private static final double ANSWER_MILLIS = 500;
    private static final double PATIENCE_MILLIS = 20_000;

    private final BrowserContext context;
    private final Page page;
    private final String url;
    private final int width;
    private final List<String> faults = new ArrayList<>();

    Tablet(BrowserContext context, String url, int width) {
        this.context = context;
        this.url = url.substring(0, url.length() - 1);
        this.width = width;
        context.setDefaultTimeout(PATIENCE_MILLIS);
        context.onResponse(answer -> {
            if (answer.status() >= 500) {
                faults.add(answer.status() + " from " + answer.url());
            }
        });
        page = context.newPage();
        page.onPageError(fault -> faults.add("script: " + fault));
        page.onDialog(dialog -> {
            faults.add("dialog: " + dialog.message());
            dialog.dismiss();
        });
    }

    Page page() {
        return page;
    }

    BrowserContext context() {
        return context;
    }

    int width() {
        return width;
    }

    /**
     * The events of the page never end: a page is there when its document is. An answer that is still on its way to the page
     * before comes first.
     */
    Tablet open(String path) {
        for (int tries = 0; ; tries++) {
            try {
                page.navigate(url + path, new Page.NavigateOptions().setWaitUntil(WaitUntilState.DOMCONTENTLOADED));
                return this;
            } catch (PlaywrightException fault) {
                if (tries == MOST_TRIES || !String.valueOf(fault.getMessage()).contains("interrupted by another")) {
                    throw fault;
                }
                page.waitForTimeout(ANSWER_MILLIS);
            }
        }
    }

    Tablet isHeldBy(String name) {
        page.getByLabel("Who you are").fill(name);
        tap("That is me");
        assertThat(page.getByLabel("Who you are")).hasValue(name);
        return this;
    }

    Locator button(String words) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words).setExact(true));
    }

    /** Plans the day, looks at the plan and puts it in force. */
    void plans() {
        open("/");
        tap("Plan the day");
        tap("Put it in force");
        reads("Cutting plan");
    }

    void tap(String words) {
        button(words).first().click();
    }

    /** What a person reads. */
    String text() {
        return page.locator("body").innerText();
    }

    boolean shows(String words) {
        return text().contains(words);
    }

    /** Waits until it is there to be read. */
    void reads(String words) {
        assertThat(page.locator("body")).containsText(words);
    }

    /** The id that the page gives to what is booked on it. */
    String booking() {
        return page.locator("main input[name=booking]").first().getAttribute("value");
    }

    /** Taps, and waits until the answer is there and the page behind it, too. */
    void book(String words) {
        String before = booking();
        page.waitForResponse(answer -> answer.request().method().equals("POST"), () -> tap(words));
        page.waitForCondition(() -> waiting() == 0 && !booking().equals(before));
    }

    /** Taps the next cut that is shown, and waits until the one behind it is, or that all are cut: whether it is sent or not. */
    void ticks() {
        String piece = next();
        tap("Cut");
        page.waitForCondition(() -> !next().equals(piece));
    }

    /** Waits until a piece is the one to be cut next: what the page itself works out comes a moment behind its text. */
    void isNext(String piece) {
        page.waitForCondition(() -> piece.equals(next()));
        assertEquals(piece, next());
    }

    /** The piece that is to be cut next; empty when none is. */
    String next() {
        Object piece = page.evaluate(
                "() => { const cut = document.querySelector('.nextcut:not([hidden])'); return cut ? cut.dataset.piece : ''; }");
        return String.valueOf(piece);
    }

    /** Waits until nothing waits to be sent any more. */
    void sendsAll() {
        page.waitForCondition(() -> waiting() == 0);
    }

    /** How many bookings are written down here and not yet answered. */
    int waiting() {
        return (Integer) page.evaluate(
                "JSON.parse(localStorage.getItem(document.body.dataset.instance + '-outbox') || '[]').length");
    }

    /** No fault of the server, of a script, and no script of somebody else. */
    void isWell() {
        assertEquals(List.of(), faults);
    }

    List<String> faults() {
        return faults;
    }

    @Override
    public void close() {
        context.close();
    }
}
