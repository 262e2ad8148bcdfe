package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quote drawn up from lines that are pasted, looked at, priced behind the page and printed. */
final class QuotesScreenTest {
    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.copy("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen sent(String what, String number, String customer, String paste) {
        return loft.ada()
                .post(
                        "/quotes",
                        Map.of("what", what, "number", number, "customer", customer, "accept", "Ada", "paste", paste));
    }

    private Seen over() throws InterruptedException {
        for (int i = 0; i < 300; i++) {
            Seen seen = loft.ada().get("/quotes/run");
            if (seen.page().contains("data-done")) {
                return seen;
            }
            Thread.sleep(100);
        }
        throw new AssertionError("not over: " + loft.ada().get("/quotes/run").text());
    }

    private static String path(Seen page, String beginning) {
        Matcher way = Pattern.compile("href=\"(" + Pattern.quote(beginning) + "[^\"]*)\"")
                .matcher(page.page());
        assertTrue(way.find(), page.page());
        return way.group(1).replace("&amp;", "&");
    }

    /** The row above need not name every column: without one for the line it is still no line itself. */
    @Test
    void rowOfNamesWithoutTheLine_isStillRead() {
        Seen look = sent("look", "Q-7", "", "rope\tlength\tquantity\nLAID-14\t6 m\t2\n");
        assertFalse(look.text().contains("found \"length\""), look.text());
        assertTrue(look.page().contains("name=\"c1.1\" value=\"LAID-14\""), look.page());
        assertTrue(look.page().contains("name=\"c1.5\" value=\"2\""), look.page());
    }

    /** The customer's page has no figure of the shop's own; the inside page has; both are kept and printed. */
    @Test
    void pastedLines_becomeAQuote() throws Exception {
        String lines =
                "line\trope\tlength\tend a\tquantity\n1\tLAID-14\t6 m\tthree-strand-eye length 300 mm\t2\n2\tBRAID-12\t8 m\t\t1\n";
        Seen look = sent("look", "Q-7", "Port Pilots", lines);
        assertTrue(look.page().contains("value=\"three-strand-eye length 300 mm\""), look.page());
        assertTrue(look.text().matches(".*cut length .*6\\.[0-9]+ m.*"), look.text());
        assertTrue(loft.ada().get("/quotes/run").text().contains("Draw up"), "looked at, and no more");
        sent("draw", "Q-7", "Port Pilots", lines);
        Seen customer = over();
        assertTrue(customer.text().contains("Quote Q-7") && customer.text().contains("for Port Pilots"));
        assertTrue(customer.text().contains("total before tax"), customer.text());
        assertFalse(customer.text().toLowerCase(java.util.Locale.ROOT).contains("margin"), customer.text());
        Seen kept = loft.ada().get(path(loft.ada().get("/quotes"), "/quotes/kept?id="));
        Seen file = loft.ada().get(path(kept, "/quotes/kept?id="));
        assertTrue(file.text().toLowerCase(java.util.Locale.ROOT).contains("margin"), file.text());
        Seen print = loft.ada().get(path(file, "/quotes/kept/print"));
        assertTrue(print.page().contains("<style>"));
        assertTrue(print.text().toLowerCase(java.util.Locale.ROOT).contains("margin"), "the page that was looked at");
        assertTrue(loft.ada().get(path(kept, "/quotes/kept/pdf")).page().startsWith("%PDF"));
    }

    /** Kept once however often it is sent, revised from its own lines, and another is drawn up from it. */
    @Test
    void typedRequest_isKept_revised_andDrawnUpFrom() throws Exception {
        Map<String, String> form = new HashMap<>(Map.of("what", "keep", "number", "Q-7", "customer", "Port Pilots"));
        form.putAll(Map.of("accept", "Ada", "note", "by telephone", "booking", "keep-once-7"));
        form.put("paste", "line\trope\tlength\tquantity\n1\tLAID-14\t6.5 m\t2\n");
        loft.ada().post("/quotes", form);
        Seen over = over();
        assertTrue(over.text().contains("Kept as quote Q-7"), over.text());
        assertTrue(Files.exists(loft.file("quotes").resolve("Q-7.1.json")));
        assertTrue(loft.ada().post("/quotes", form).text().contains("This was done already"));
        assertFalse(Files.exists(loft.file("quotes").resolve("Q-2601.1.json")), "no second one");
        String one = loft.ada().get("/quotes/book/one?id=Q-7").text();
        assertTrue(one.contains("for Port Pilots") && one.contains("Ada: by telephone"), one);
        assertTrue(one.contains("Nothing yet: it is drawn up."), one);
        Seen revise = loft.ada().get("/quotes?revise=Q-7");
        assertTrue(revise.page().contains("value=\"6.5 m\""), revise.page());
        assertTrue(revise.text().contains("becomes the next revision of quote Q-7"), revise.text());
        Map<String, String> revised = new HashMap<>(Map.of("what", "keep", "earlier", "Q-7", "revised", "yes"));
        revised.putAll(Map.of("number", "Q-7", "customer", "Port Pilots", "accept", "Ada", "paste", ""));
        revised.putAll(Map.of("c1.0", "1", "c1.1", "LAID-14", "c1.2", "6.5 m", "c1.5", "3"));
        loft.ada().post("/quotes", revised);
        over();
        one = loft.ada().get("/quotes/book/one?id=Q-7").text();
        assertTrue(one.contains("What changed in revision 2"), one);
        assertTrue(one.contains("quantity"), one);
        Map<String, String> other =
                new HashMap<>(Map.of("what", "keep", "earlier", "Q-7", "number", "", "accept", "Ada"));
        other.putAll(Map.of("paste", "1,LAID-14,6.5 m"));
        loft.ada().post("/quotes", other);
        over();
        String list = loft.ada().get("/quotes/book").text();
        String number = list.replaceAll("(?s).*(Q-26[0-9]{2}).*", "$1");
        assertTrue(
                loft.ada().get("/quotes/book/one?id=" + number).text().contains("It was drawn up from quote Q-7."),
                list);
    }

    @Test
    void errors_areSaidAtTheirRows_andNothingIsDrawnUp() {
        Seen page = sent("draw", "Q-8", "", "1,LAID-14,6 m\n2,NOSUCH,7 m\n3,LAID-14,far\n");
        assertTrue(page.text().contains("rope: found \"NOSUCH\""), page.text());
        assertTrue(page.text().contains("length: found \"far\""), page.text());
        assertTrue(page.page().contains("name=\"c3.2\" value=\"far\""), "what was typed stays: " + page.page());
        Map<String, String> mended = new HashMap<>(Map.of("what", "draw", "number", "Q-8", "paste", ""));
        mended.putAll(Map.of("c1.0", "1", "c1.1", "LAID-14", "c1.2", "6 m"));
        Seen begun = loft.ada().post("/quotes", mended);
        assertTrue(begun.page().contains("/quotes/run") || begun.page().contains("data-done"), begun.text());
    }

    @Test
    void whatCannotBeMeant_isSaidInASentence() {
        assertTrue(sent("draw", "", "", "").text().contains("Type or paste at least one line."));
        Seen column = sent("draw", "", "", "line,length,rope,colour\n1,6 m,LAID-14,blue\n");
        assertTrue(column.text().contains("A request has no column colour"), column.text());
        Seen number = sent("draw", "../up", "", "1,LAID-14,6 m\n");
        assertTrue(number.text().contains("found \"../up\""), number.text());
        Seen order = loft.ada().post("/quotes", Map.of("what", "order", "order", "<i>9</i>"));
        assertTrue(order.text().contains("There is no order"), order.text());
        assertFalse(order.page().contains("<i>9"), "harmless");
        Seen typed = sent("look", "\"><b>", "<script>x</script>", "1,LAID-14,\"<u>\n\"\"\"\n");
        assertFalse(typed.page().contains("<script>x")
                || typed.page().contains("<u>")
                || typed.page().contains("\"><b>"));
        assertEquals(404, loft.ada().get("/quotes/kept?id=" + "x".repeat(300)).status());
        StringBuilder many = new StringBuilder();
        for (int line = 1; line <= 501; line++) {
            many.append(line).append(",LAID-14,1 m\n");
        }
        assertTrue(sent("look", "", "", many.toString()).text().contains("at most 500 lines"));
    }

    @Test
    void orderOfTheBook_isQuoted_andNothingIsWritten() throws Exception {
        Seen page = loft.ada().post("/quotes", Map.of("what", "order", "order", "E-32"));
        assertEquals(200, page.status());
        assertTrue(over().text().contains("No page for the customer yet"), over().text());
        assertTrue(over().text().contains("none for 3-strand eye splice"), over().text());
        loft.ada().post("/quotes", Map.of("what", "order", "order", "E-32", "accept", "Ada"));
        assertTrue(over().text().contains("Quote E-32"), over().text());
        assertFalse(Files.exists(loft.file("plans")));
    }

    /** Longer than any reel that is bought: said on its page, with its row. */
    @Test
    void lineThatNoReelHolds_isSaid() throws Exception {
        sent("draw", "Q-9", "", "1,LAID-14,5000 m\n");
        assertTrue(over().text().contains("Request Q-9 cannot be priced"), over().text());
        assertTrue(over().text().contains("row 2"), over().text());
    }
}
