package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Folders;
import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The kept quotes in the browser: listed, printed as they were filed, answered, and taken back by the verbs of the command. */
final class QuoteBookScreenTest {
    private static final String BOOK = "/quotes/book";

    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.copy("gannet-loft", folder);
        Folders.copy(Path.of("demo-data", "gannet-loft", "quotes"), loft.file("quotes"));
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen does(String what, String... more) {
        Map<String, String> form = new HashMap<>(Map.of("quote", "Q-2600", "what", what));
        for (int i = 0; i < more.length; i += 2) {
            form.put(more[i], more[i + 1]);
        }
        return loft.ada().post(BOOK, form);
    }

    @Test
    void keptQuotes_areListedAndAnswered() throws IOException {
        Seen list = loft.ada().get(BOOK);
        assertTrue(list.text().contains("Q-2600, Corncrake crane yard"), list.text());
        assertTrue(list.text().contains("accepted on 2026-02-25, order G-2105"), list.text());
        Seen customer = loft.ada().get(BOOK + "/page?id=Q-2600&page=customer");
        assertTrue(customer.text().contains("total with tax"), customer.text());
        assertFalse(customer.text().contains("margin"), customer.text());
        assertTrue(loft.ada().get(BOOK + "/page?id=Q-2600&page=file").text().contains("margin"));
        does("back");
        assertTrue(loft.ada().get(BOOK).text().contains("sent on 2026-02-20"));
        Path orders = loft.file("orders.csv");
        assertFalse(Files.readString(orders).contains("G-2105"), "its lines are out of the order book");
        assertTrue(does("accept", "due", "soon").text().contains("could not be read"));
        does("accept", "order", "G-2190", "due", "2026-03-20");
        assertTrue(Files.readString(orders).contains("Q-2600/1/4"));
        assertTrue(loft.ada().get(BOOK).text().contains("order G-2190"));
        assertTrue(does("decline").text().contains("is accepted already; take that step back first"));
    }

    @Test
    void list_hasItsSums() {
        String text = loft.ada().get(BOOK).text();
        assertTrue(text.contains("Sums"), text);
        assertTrue(
                text.contains("Sums are before tax, of the accepted revision of each quote, else of its last."), text);
    }

    /** What follows from an answer is said: what is in the order book, and a day that is earlier than the quote promised. */
    @Test
    void oneQuote_hasItsLife_andIsAnsweredThere() {
        String one = loft.ada().get(BOOK + "/one?id=Q-2600").text();
        assertTrue(one.contains("2026-02-20, revision 1: sent, booked by"), one);
        assertTrue(one.contains("2026-02-25, revision 1: accepted, order G-2105, booked by"), one);
        assertTrue(one.contains("Hold it against what was cut"), one);
        assertFalse(one.contains("Revise it"), "not once it is accepted");
        String revise = loft.ada().get("/quotes?revise=Q-2600").text();
        assertTrue(revise.contains("Quote Q-2600 is accepted; take that step back first."), revise);
        assertFalse(revise.contains("next revision"), revise);
        does("back", "where", "one");
        assertTrue(loft.ada().get(BOOK + "/one?id=Q-2600").text().contains("Revise it"));
        String told = does("accept", "order", "G-2191", "where", "one").text();
        assertTrue(told.contains("Order G-2191 is in orders.csv"), told);
        assertTrue(told.contains("Quote Q-2600"), "on its own page");
        assertTrue(loft.ada().get(BOOK + "/one?id=nobody").text().contains("There is no such quote"));
        String page = loft.ada().get(BOOK + "/page?id=Q-2600&page=file&rev=1").text();
        assertTrue(page.contains("margin"), page);
    }

    @Test
    void quoteIsHeldAgainstWhatWasCut_andWhatJobsTeachIsShown() {
        String nothing = loft.ada().get(BOOK + "/compare?id=Q-2600").text();
        assertTrue(nothing.contains("there is nothing to compare"), nothing);
        assertTrue(loft.ada().get(BOOK + "/compare?id=nobody").text().contains("There is no kept quote nobody."));
        assertTrue(loft.ada().get(BOOK + "/learn").text().contains("What jobs teach the next quote: 0 jobs"));
    }
}
