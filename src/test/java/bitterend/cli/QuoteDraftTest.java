package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a request is called before it has a number, and whom it is for. */
final class QuoteDraftTest {
    private static final String HEAD = "order,line,customer,rope,length,end a,minutes,quantity,tax,instead of,note\n";

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyDemo() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
    }

    private Run quote(String lines, String... more) throws IOException {
        Path request = folder.resolve("halyards.csv");
        Files.writeString(request, HEAD + lines);
        return quote(request, "300ms", more);
    }

    private Run quote(Path request, String time, String... more) {
        String[] args = new String[more.length + 5];
        System.arraycopy(new String[] {"quote", shop.toString(), request.toString(), "--time", time}, 0, args, 0, 5);
        System.arraycopy(more, 0, args, 5, more.length);
        return Run.of(args);
    }

    @Test
    void requestWithoutANumber_isADraft() throws IOException {
        String page = quote(",1,yacht Tern,DB12,5 m,whipped,30 min,1,,,\n", "--customer")
                .out();
        assertTrue(page.startsWith("Quote draft, Gannet Loft\n"), page);
        assertTrue(page.contains("draft, not numbered yet"), page);
        assertFalse(page.contains("halyards"), page);
        String numbered = quote("H-7,1,yacht Tern,DB12,5 m,whipped,30 min,1,,,\n", "--customer")
                .out();
        assertTrue(numbered.contains("H-7, revision 1"), numbered);
        String kept = quote(",1,yacht Tern,DB12,5 m,whipped,30 min,1,,,\n", "--customer", "--keep")
                .out();
        assertTrue(kept.contains("Q-2601, revision 1"), kept);
    }

    @Test
    void twoCustomersInOneRequest_areRefused() throws IOException {
        Run run = quote(
                ",1,yacht Tern,DB12,5 m,whipped,30 min,1,,,\n,2,Corncrake crane yard,DB12,5 m,whipped,30 min,1,,,\n");
        assertEquals(3, run.code(), run.out());
        assertEquals("", run.out());
        assertTrue(
                run.err()
                        .contains(
                                "halyards.csv, row 3, customer: found \"Corncrake crane yard\", expected \"yacht Tern\","
                                        + " as in the lines before it: what another customer asks for is a request of its own"),
                run.err());
    }

    @Test
    void figureBelowNothing_isToldWithItsOption() throws IOException {
        Run run = quote(",1,yacht Tern,DB12,5 m,whipped,30 min,1,,,\n", "--quantities", "-1");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--quantities: found \"-1\", expected no figure below nothing"), run.err());
    }

    @Test
    void customersJson_saysTheTaxOfALineAndAlternativesInWords() throws IOException {
        JsonNode json = new JsonMapper()
                .readTree(quote(
                                """
                                ,1,yacht Tern,DB12,5 m,whipped,30 min,1,reduced sales tax,,halyard
                                ,1a,yacht Tern,DN20,5 m,whipped,30 min,1,,1,the same in nylon
                                """,
                                "--customer",
                                "--json")
                        .out());
        assertEquals("reduced sales tax", json.at("/lines/0/tax").asText());
        assertEquals("", json.path("number").asText());
        assertEquals("instead", json.at("/variations/0/kind").asText());
        assertEquals("the same in nylon", json.at("/variations/0/note").asText());
        assertEquals("DN20", json.at("/variations/0/rope").asText());
        assertTrue(json.at("/variations/0/ends").asText().contains("whipped"), json.toString());
    }

    /** What the time ended may come out otherwise next time: whoever sends it keeps it. */
    @Test
    void pricesThatTheTimeCutShort_saySoOnBothPagesAndWhereTheyAreKept() throws IOException {
        Path request = Files.writeString(
                folder.resolve("W6.csv"),
                """
                line,customer,rope,length,end a,end b,quantity
                1,ketch Sandpiper,W6,13.2 m,swaged fork-6,swaged stud-6,9
                2,ketch Sandpiper,W6,10.9 m,swaged fork-6,swaged stud-6,5
                3,ketch Sandpiper,W6,44 ft 6 in,swaged fork-6,swaged stud-6,9
                4,ketch Sandpiper,W6,16.2 m,swaged fork-6,swaged stud-6,9
                5,ketch Sandpiper,W6,5.5 m,swaged fork-6,swaged stud-6,1
                """);
        String ofDraft = "prices of this draft are not worked out to the end and may still change a little";
        String page = brief(request);
        assertTrue(
                page.contains("worked out as far as the time went: drawn up again, or with more time, a line"), page);
        assertTrue(page.contains("keep the quote that is sent"), page);
        assertTrue(brief(request, "--customer").contains(ofDraft), page);
        assertTrue(brief(request, "--json").contains("\"cutShort\": true"));
        assertFalse(brief(request, "--customer", "--keep").contains(ofDraft));
        assertTrue(Files.readString(shop.resolve("quotes/Q-2601.1.json")).contains("\"cutShort\": true"));
    }

    private String brief(Path request, String... more) {
        return quote(request, "1ms", more).out().replaceAll("\\s+", " ");
    }

    /** Done in time, nothing is said of it, though a split is not known to be stable. */
    @Test
    void pricesThatAreWorkedOut_sayNothingOfTime() throws IOException {
        Path request =
                Files.writeString(folder.resolve("tern.csv"), HEAD + ",1,yacht Tern,DB12,5 m,whipped,30 min,1,,,\n");
        String json = quote(request, "5m", "--json").out();
        assertTrue(json.contains("\"cutShort\": false"), json);
        String page = quote(request, "5m").out();
        assertFalse(page.contains("as far as the time"), page);
    }
}
