package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What nobody means is typed into every field of every form that a screen shows: nothing runs, nothing fails. */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class HostileIT {
    private static final String FORMS = "form[method=post]:has(button)";
    private static final String MARKUP = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>";
    private static final String TURNED = "\u202e\u2066abc\u0007\ufeff";
    private static final int LONG = 1_000_000;
    private static final double RUNS_MILLIS = 100;

    /** On a machine that is busy with something else; an answer that never comes fails then, too. */
    private static final double SLOWEST_MILLIS = 90_000;

    /**
     * Fills all that can be typed into, seen or not, and sends the form as a person would. It is found and sent in one go: a page
     * that is read again meanwhile has other forms, and one that is off the page sends nothing.
     */
    private static final String SENT =
            """
            ([forms, which, text]) => {
                const form = document.querySelectorAll(forms)[which];
                form.noValidate = true;
                for (const field of form.querySelectorAll('input:not([type=hidden]):not([type=checkbox]), textarea')) {
                    field.removeAttribute('maxlength');
                    field.value = text;
                }
                form.requestSubmit(form.querySelector('button'));
            }
            """;

    /** Sends each form of the page as a script does: with the text in all fields, and in one alone. An address stays short. */
    private static final String SENT_BEHIND_THE_PAGE =
            """
            async text => {
                const answers = [];
                for (const form of document.querySelectorAll('form')) {
                    const names = [...form.querySelectorAll('input:not([type=hidden]), textarea, select')].map(each => each.name);
                    const alone = text.length > 1000 ? names.slice(0, 1) : names;
                    for (const filled of [names, ...alone.map(name => [name])]) {
                        const sent = new URLSearchParams(new FormData(form));
                        filled.forEach(name => sent.set(name, form.method === 'post' ? text : text.slice(0, 1000)));
                        const where = form.getAttribute('action') || location.pathname;
                        const answer = form.method === 'post'
                            ? await fetch(where, { method: 'POST', body: sent })
                            : await fetch(where + '?' + sent);
                        answers.push(answer.status + ' ' + where + ' ' + filled + ': ' + await answer.text());
                    }
                }
                return answers;
            }
            """;

    private final Path folder;

    HostileIT(@TempDir Path folder) {
        this.folder = folder;
    }

    private interface Story {
        void on(Tablet tablet, String path);
    }

    private void onEachScreen(Story story) throws IOException {
        try (ServedLoft loft = new ServedLoft("eider-shed", folder).withLedger().start();
                Browsers browsers = new Browsers();
                Tablet tablet = browsers.tablet(loft.url())) {
            tablet.open("/").isHeldBy("Ada");
            tablet.plans();
            for (String path : new String[] {"/", "/book", "/bench/reel?id=E7", "/rack/reel?id=E7", "/rack/receive"}) {
                story.on(tablet.open(path), path);
            }
            assertEquals(List.of(), tablet.faults());
            assertTrue(tablet.open("/").shows("Cutting plan"), tablet.text());
        }
    }

    @Test
    void markupInEachField_runsNothing() throws IOException {
        onEachScreen((tablet, path) -> {
            Page page = tablet.page();
            int forms = page.locator(FORMS).count();
            assertTrue(forms > 1, path + " has " + forms);
            // what is sent may take a form away, such as that of what was booked last
            for (int form = 0; form < tablet.open(path).page().locator(FORMS).count(); form++) {
                List<?> which = List.of(FORMS, form, MARKUP);
                page.waitForResponse(
                        answer -> answer.request().method().equals("POST"),
                        new Page.WaitForResponseOptions().setTimeout(SLOWEST_MILLIS),
                        () -> page.evaluate(SENT, which));
                page.waitForTimeout(RUNS_MILLIS);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {TURNED, "long"})
    void fields_takeAnything(String typed) throws IOException {
        String text = typed.equals("long") ? "x".repeat(LONG) : typed;
        onEachScreen((tablet, path) -> {
            List<?> answers = (List<?>) tablet.page().evaluate(SENT_BEHIND_THE_PAGE, text);
            assertTrue(answers.size() > 2, path);
            for (Object answer : answers) {
                String page = String.valueOf(answer);
                // 404: the tag of a piece that is not there
                assertTrue(page.matches("(?s)((200|409|413|414|422) |404 /print/tag ).*"), page);
                assertFalse(page.contains("\u202e"), page);
            }
        });
    }
}
