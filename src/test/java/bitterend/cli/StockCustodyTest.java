package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose rope it is and whether it may be cut, whatever order things happen in. Order 9001 wants two pieces of 4 m. */
final class StockCustodyTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    private Path files = Path.of("");
    private String shop = "";

    @BeforeEach
    void aRack() throws IOException {
        files = TestShop.in(folder).path();
        shop = files.toString();
        orders("9001,1,Harbour Board,DB12,4 m,plain,plain,2,2026-03-05,,");
        Files.writeString(
                files.resolve("reels.csv"),
                """
                reel,rope,lot,length,flaws,owner,for order,note
                W1,DB12,S1,20 m,,,,smells of tar
                W3,DB12,S2,20 m,15 m to 16 m: join,,,
                W2,DB12,S3,20 m,,Port Pilots,9002,
                """);
        run(0, "stock", "open", shop);
    }

    @Test
    void heldReelThatIsReserved_staysOnHold_andIsKeptWhenTheHoldEnds() throws IOException {
        stock("hold", "W1", "--note", "looks worn");
        assertTrue(stock("reserve", "W1", "9001").contains("reel W1 is still on hold"));
        assertEquals("on hold", reel("W1").get("state").asText());
        run(3, "stock", "cut", shop, "W1", "4 m", "--piece", "9001/1.1");
        assertTrue(stock("release", "W1").contains("reel W1 is still kept for order 9001"));
        assertEquals("reserved", reel("W1").get("state").asText());
        stock("cut", "W1", "4 m", "--piece", "9001/1.1");
        stock("release", "W1");
        assertEquals("", reel("W1").get("forOrder").asText());
        assertSound();
    }

    @Test
    void reservedReelOnHold_isPlannedAround_andThePlanReadsBack() throws IOException {
        stock("reserve", "W1", "9001");
        stock("hold", "W1");
        assertEquals("on hold", reel("W1").get("state").asText());
        assertEquals("9001", reel("W1").get("forOrder").asText());
        plan(0);
        run(0, "sheet", shop, "--csv");
        stock("post", "--all");
        String cut = stock("trace", "9001/1.1");
        assertTrue(cut.contains("W3") && !cut.contains("W1"), cut);
        assertSound();
    }

    @Test
    void reservationForNoOrder_isRefused() {
        Run refused = Run.of("stock", "reserve", shop, "W3", "");
        assertTrue(refused.code() == 2 || refused.code() == 3, refused.err());
        assertFalse(run(0, "stock", "history", shop, "W3").out().contains("reserved"));
    }

    @Test
    void countShorterThanAFlaw_dropsTheFlawWithAWord() throws IOException {
        stock("count", "W3", "12 m");
        assertTrue(history("W3").contains("flaw at 15.000 m to 16.000 m is behind the end: dropped"));
        assertEquals(0, reel("W3").get("flaws").size());
        assertSound();
    }

    @Test
    void countInsideAFlaw_endsTheFlawWithTheRope() throws IOException {
        stock("count", "W3", "15.4 m");
        assertTrue(history("W3").contains("flaw at 15.000 m to 16.000 m ends with the rope"));
        assertEquals("15400 mm", reel("W3").get("flaws").get(0).get("to").asText());
        assertSound();
    }

    @Test
    void restMeasuredShorterThanAFlaw_dropsTheFlaw() throws IOException {
        stock("condemn", "W1");
        plan(0);
        String told = stock("post", "--piece", "9001/1.1", "--left", "W3=3 m", "--sure");
        assertTrue(history("W3").contains("is behind the end: dropped"), told);
        assertSound();
    }

    @Test
    void ropeThatComesBack_isWhatItsReelIsToday() throws IOException {
        stock("cut", "W1", "4 m", "--piece", "9001/1.1");
        stock("cut", "W1", "4 m", "--piece", "9001/1.2");
        stock("correct", "W1", "--lot", "S7", "--certificate", "3.1");
        stock("hold", "W1", "--note", "the maker called");
        stock("spoil", "9001/1.1", "--back", "3 m");
        run(0, "orders", "spare", shop, "9001/1.2");
        run(0, "orders", "back", shop, "9001/1.2");
        for (String coil : List.of("W1-1", "W1-2")) {
            assertEquals("S7", reel(coil).get("lot").asText());
            assertEquals("on hold", reel(coil).get("state").asText());
            assertEquals("3.1", reel(coil).get("certificate").asText());
        }
        assertSound();
    }

    @Test
    void ropeOfACondemnedReelThatComesBack_isOnHold() throws IOException {
        stock("cut", "W1", "4 m", "--piece", "9001/1.1");
        stock("condemn", "W1", "--note", "wet");
        stock("spoil", "9001/1.1", "--back", "3 m");
        assertEquals("on hold", reel("W1-1").get("state").asText());
    }

    @Test
    void begunSet_goesOnOffItsReel_whenTheLotIsCorrected() throws IOException {
        matchedLegs();
        stock("cut", "W1", "4 m", "--piece", "9001/1.1-1");
        stock("correct", "W1", "--lot", "S7");
        stock("correct", "W3", "--lot", "S1");
        plan(0);
        stock("post", "--all");
        String cut = stock("trace", "9001/1.1-2");
        assertTrue(cut.contains("W1") && !cut.contains("W3"), cut);
    }

    @Test
    void begunSet_isNotFinishedOffTheLotThatItsReelNeverWasOf() throws IOException {
        matchedLegs();
        stock("cut", "W1", "4 m", "--piece", "9001/1.1-1");
        stock("correct", "W1", "--lot", "S7");
        stock("correct", "W3", "--lot", "S1");
        stock("condemn", "W1");
        assertTrue(flat(plan(4).out()).contains("cut off lot S7, and no rope on the rack matches"));
    }

    @Test
    void movedReel_keepsItsNote() throws IOException {
        stock("move", "W1", "bay 4");
        assertEquals("smells of tar", reel("W1").get("note").asText());
        assertEquals("bay 4", reel("W1").get("place").asText());
    }

    @Test
    void ropeThatIsNotForSale_isNotSold() {
        stock("reserve", "W1", "9001");
        for (String reel : List.of("W1", "W2")) {
            Run cut = run(3, "stock", "cut", shop, reel, "5 m", "--for", "A stranger");
            Run whole = run(3, "stock", "sell", shop, reel);
            assertTrue((cut.err() + whole.err()).contains(reel.equals("W1") ? "kept for order 9001" : "own rope"));
        }
        stock("release", "W1");
        stock("cut", "W1", "5 m", "--for", "A stranger");
    }

    @Test
    void planThatWasNeverPutInForce_doesNotPassTheGate() throws IOException {
        plan(0);
        String made = Files.readString(files.resolve("plans/1.json"));
        Files.writeString(files.resolve("plans/7.json"), made.replace("\"number\": 1,", "\"number\": 7,"));
        Run refused = run(3, "stock", "post", shop, "--all", "--plan", "7");
        assertTrue(refused.err().contains("was never put in force here"), refused.err());
        stock("post", "--all", "--plan", "1");
    }

    @Test
    void planMadeBeforeTheLedgerWasBegun_isStillKnownAfterTheNextOne() throws IOException {
        Files.delete(files.resolve("stock.db"));
        plan(0);
        run(0, "sheet", shop, "--all", "--issue");
        stock("open");
        Run second = run(0, "plan", shop, "--effort", "reproducible", "--seed", "3");
        assertTrue(second.err().contains("issued and not posted"), second.err());
        run(0, "sheet", shop, "--plan", "1", "--csv");
    }

    /** What the rack holds can be read back as a shop of its own, and says the same again. */
    private void assertSound() throws IOException {
        String told = run(0, "stock", "verify", shop).out();
        assertTrue(flat(told).contains("the ledger is sound"), told);
        String rack = run(0, "stock", "export", shop).out();
        Path other = Files.createDirectory(folder.resolve("read back"));
        for (String name : List.of("shop.json", "ropes.json", "orders.csv")) {
            Files.copy(files.resolve(name), other.resolve(name));
        }
        Files.writeString(other.resolve("reels.csv"), rack);
        run(0, "check", other.toString());
        run(0, "stock", "open", other.toString());
        assertEquals(rack, run(0, "stock", "export", other.toString()).out());
    }

    private void orders(String row) throws IOException {
        Files.writeString(
                files.resolve("orders.csv"),
                "order,line,customer,rope,length,end a,end b,quantity,due,legs,match\n" + row + "\n");
    }

    private void matchedLegs() throws IOException {
        orders("9001,1,Harbour Board,DB12,4 m,plain,plain,1,2026-03-05,2,lot");
    }

    private JsonNode reel(String id) throws IOException {
        JsonNode rack = JSON.readTree(run(0, "stock", "list", shop, "--json").out());
        return StreamSupport.stream(rack.get("reels").spliterator(), false)
                .filter(each -> each.get("reel").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private String history(String reel) {
        return stock("history", reel, "--json");
    }

    private Run plan(int code) {
        return run(code, "plan", shop, "--effort", "reproducible").withParts(shop);
    }

    private String stock(String verb, String... words) {
        List<String> all = new ArrayList<>(List.of("stock", verb, shop));
        all.addAll(List.of(words));
        return flat(run(0, all.toArray(String[]::new)).out());
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), String.join(" ", args) + "\n" + run.err() + run.out());
        return run;
    }
}
