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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** So many metres of a reel for an order or a customer until a day. R-104 has 120 m, R-105 is a full reel of 220 m. */
final class StockHeldTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    private Path files = Path.of("");
    private String shop = "";

    @BeforeEach
    void aRack() throws IOException {
        files = TestShop.in(folder).path();
        shop = files.toString();
        run(0, "stock", "open", shop);
    }

    @Test
    void heldRope_isToldOnEveryPage_andReadsBack() throws IOException {
        String booked =
                stock("reserve", "R-104", "1001", "--length", "50 m", "--until", "2026-03-06", "--note", "as agreed");
        String held = "50.000 m held for order 1001 until 2026-03-06";
        assertTrue(flat(booked).contains("50.000 m held for order 1001 until"), booked);
        assertTrue(flat(stock("list")).matches(".*50.000 m held for.*2026-03-06 \\(as agreed\\).*"), stock("list"));
        assertTrue(flat(stock("history", "R-104")).contains("held for order 1001"));
        JsonNode json = reel("R-104").get("held").get(0);
        assertEquals("50000 mm", json.get("length").asText());
        assertEquals("1001", json.get("order").asText());
        assertEquals("2026-03-06", json.get("until").asText());
        plan(0);
        assertTrue(flat(run(0, "show", shop, "R-104").out()).contains(held), "the page of the reel");
        assertTrue(flat(run(0, "plan", shop, "--explain", "R-104").out()).contains(held), "the answer about the reel");
        assertTrue(run(0, "plan", shop, "--explain", "R-104", "--json").out().contains("held for order 1001"));
        String rack = run(0, "stock", "export", shop).out();
        Files.delete(files.resolve("stock.db"));
        Files.writeString(files.resolve("reels.csv"), rack);
        run(0, "stock", "open", shop);
        assertEquals(rack, run(0, "stock", "export", shop).out());
        assertTrue(rack.contains("50000 mm for order 1001 until 2026-03-06: as agreed"), rack);
    }

    @Test
    void heldRope_isTakenBackWhole_andReleasedByAWord() throws IOException {
        String before = run(0, "stock", "export", shop).out();
        hold("R-104", "1001", "50 m");
        long event = reelEvent("R-104");
        assertTrue(stock("undo", "" + event).contains("undone"));
        assertEquals(before, run(0, "stock", "export", shop).out());
        hold("R-104", "1001", "50 m");
        stock("reserve", "R-104", "--customer", "Port Pilots", "--length", "20 m", "--until", "2026-03-06");
        assertTrue(run(3, "stock", "release", shop, "R-104").err().contains("say whose is released with --for"));
        stock("release", "R-104", "--for", "1001");
        assertEquals(
                "Port Pilots", reel("R-104").get("held").get(0).get("customer").asText());
        assertTrue(
                run(3, "stock", "release", shop, "R-104", "--for", "1001").err().contains("is held for 1001"));
        stock("release", "R-104");
        assertEquals(before, run(0, "stock", "export", shop).out());
        assertSound();
    }

    @Test
    void holdSaidAgain_countsAnew() throws IOException {
        hold("R-104", "1001", "50 m");
        hold("R-104", "1001", "60 m");
        assertEquals(1, reel("R-104").get("held").size());
        assertEquals("60000 mm", reel("R-104").get("held").get(0).get("length").asText());
    }

    @Test
    void wrongInput_isRefusedInASentence() {
        refused(3, "no order 9999 in orders.csv", "R-104", "9999", "--length", "50 m", "--until", "2026-03-06");
        refused(
                3,
                "120.000 m cannot be held: reel R-104 has 116.600 m",
                "R-104",
                "1001",
                "--length",
                "120 m",
                "--until",
                "2026-03-06");
        refused(2, "2026-03-01 has passed on 2026-03-02", "R-104", "1001", "--length", "50 m", "--until", "2026-03-01");
        refused(2, "--until", "R-104", "1001", "--length", "50 m");
        refused(2, "an ORDER, or --customer", "R-104", "--length", "50 m", "--until", "2026-03-06");
        refused(2, "add --length", "R-104", "--customer", "Port Pilots");
        refused(2, "add --length", "R-104", "1001", "--until", "2026-03-06");
        refused(2, "expected a length above 0", "R-104", "1001", "--length", "0 m", "--until", "2026-03-06");
        refused(3, "there is no reel R-1", "R-1", "1001", "--length", "50 m", "--until", "2026-03-06");
        refused(2, "without a semicolon", "R-104", "--customer", "a; b", "--length", "5 m", "--until", "2026-03-06");
        run(0, "stock", "hold", shop, "R-104");
        refused(3, "R-104 is on hold", "R-104", "1001", "--length", "50 m", "--until", "2026-03-06");
        run(0, "stock", "reserve", shop, "R-105", "1002");
        refused(
                3,
                "all of reel R-105 is kept for order 1002",
                "R-105",
                "1001",
                "--length",
                "5 m",
                "--until",
                "2026-03-06");
    }

    @Test
    void pieceThatTakesMoreThanIsHeld_isToldAtOnce() {
        String told = stock("reserve", "R-104", "1001", "--length", "31 m", "--until", "2026-03-06");
        assertTrue(told.contains("1001/2.1 takes 31.") || !told.contains("takes"), told);
        String tooLittle = stock("reserve", "R-104", "1001", "--length", "20 m", "--until", "2026-03-06");
        assertTrue(flat(tooLittle).contains("1001/2.1 takes"), tooLittle);
        String nobody = stock("reserve", "R-104", "--customer", "Pilots", "--length", "5 m", "--until", "2026-03-06");
        assertTrue(nobody.contains("no order in hand is for customer Pilots"), nobody);
    }

    @Test
    void plan_cutsWhatIsHeldForItsOrderAlone() throws IOException {
        stock("condemn", "R-105");
        hold("R-104", "1002", "60 m");
        String plan = plan(4);
        assertEquals(6, pieces("1002"), "all six of 9.2 m");
        assertTrue(pieces("1001") < 5, plan);
        String reasons = flat(run(0, "show", shop, "reasons").out());
        assertTrue(reasons.contains("of reel R-104 60.000 m held for order 1002 until 2026-03-06"), reasons);
    }

    @Test
    void whatIsCutForIt_isHeldNoLonger_alsoWhenThatIsTakenBack() throws IOException {
        stock("condemn", "R-105");
        hold("R-104", "1002", "60 m");
        plan(4);
        stock("post", "--all");
        assertEquals(
                "4740 mm",
                reel("R-104").get("held").get(0).get("length").asText(),
                "60 m less six of 9.2 m with their cuts");
        stock("undo", "" + reelEvent("R-104"));
        assertEquals("60000 mm", reel("R-104").get("held").get(0).get("length").asText());
        assertSound();
    }

    /** Ten metres cover one of the customer's six pieces; the other five come off the same reel, and no rope is held for them. */
    @Test
    void pieceOfTheSameCustomer_thatNoRopeIsHeldFor_leavesTheRestHeld() throws IOException {
        stock("condemn", "R-105");
        stock("reserve", "R-104", "--customer", "Port Pilots", "--length", "10 m", "--until", "2026-03-06");
        plan(4, 0);
        assertTrue(pieces("1002") > 1, "several off the one reel");
        stock("post", "--all");
        assertEquals("790 mm", reel("R-104").get("held").get(0).get("length").asText(), "10 m less one of 9.2 m");
    }

    @Test
    void planMadeBeforeRopeWasHeld_isNotPostedOffThatReel() throws IOException {
        stock("condemn", "R-105");
        plan(0, 4);
        hold("R-104", "1002", "100 m");
        Run refused = Run.of("stock", "post", shop, "--all");
        assertFalse(refused.code() == 0, refused.out());
        assertTrue(flat(refused.err()).contains("100.000 m held for order 1002"), refused.err());
    }

    @Test
    void heldRope_isNotSoldNorCutForAnother_butForItsCustomer() throws IOException {
        stock("reserve", "R-104", "--customer", "Port Pilots", "--length", "100 m", "--until", "2026-03-06");
        String stranger = run(3, "stock", "cut", shop, "R-104", "30 m", "--for", "A stranger")
                .err();
        assertTrue(flat(stranger).contains("100.000 m is held for customer Port Pilots until 2026-03-06"), stranger);
        run(3, "stock", "sell", shop, "R-104");
        stock("cut", "R-104", "5 m", "--for", "A stranger");
        stock("cut", "R-104", "30 m", "--for", "Port Pilots");
        assertEquals("69990 mm", reel("R-104").get("held").get(0).get("length").asText());
        assertSound();
    }

    /** 120 m by the ledger, 0.8 m of it uncertain and 2 m inner wraps: 117.2 m are there for certain. */
    @Test
    void cutThatMayReachIntoWhatIsHeld_sinceTheLengthIsUncertain_isRefused() throws IOException {
        stock("reserve", "R-104", "--customer", "Port Pilots", "--length", "100 m", "--until", "2026-03-06");
        String stranger = run(3, "stock", "cut", shop, "R-104", "17.5 m", "--for", "A stranger")
                .err();
        assertTrue(flat(stranger).contains("this cut leaves 99.690 m for certain"), stranger);
        stock("cut", "R-104", "17.19 m", "--for", "A stranger");
        assertSound();
    }

    @Test
    void reelThatComesShort_tellsWhatIsLeftOfWhatIsHeld() throws IOException {
        hold("R-104", "1001", "100 m");
        String counted = stock("count", "R-104", "60 m");
        assertTrue(
                flat(counted)
                        .contains(
                                "of the 100.000 m of reel R-104 held for order 1001 until 2026-03-06, only 57.400 m is there"),
                counted);
        String split = stock("split", "R-104", "59 m", "R-106");
        assertTrue(flat(split).contains("held for order 1001 until 2026-03-06, nothing is there"), split);
        assertEquals(0, reel("R-106").get("held").size(), "what is held stays on its reel");
        plan(0, 4);
        assertTrue(flat(stock("condemn", "R-104")).contains("nothing is there for certain"));
        assertSound();
    }

    @Test
    void dayThatPasses_releases() throws IOException {
        hold("R-104", "1002", "110 m");
        stock("condemn", "R-105");
        plan(4);
        Run later = Run.of("plan", shop, "--time", "200ms", "--day", "2026-03-09", "--json");
        assertTrue(later.out().contains("1001/2.1"), later.out());
        assertFalse(later.out().contains("held for order"), later.out());
    }

    @Test
    void shopWithoutLedger_holdsRopeInItsFile() throws IOException {
        Files.delete(files.resolve("stock.db"));
        Files.writeString(
                files.resolve("reels.csv"),
                """
                reel,rope,length,held
                W1,DB12,70 m,60 m for order 1002 until 2026-03-06: the pilots'
                """);
        plan(4);
        assertEquals(6, pieces("1002"));
        Files.writeString(files.resolve("reels.csv"), "reel,rope,length,held\nW1,DB12,70 m,60 m for somebody\n");
        assertTrue(run(3, "check", shop).out().contains("held"));
        Files.writeString(
                files.resolve("reels.csv"),
                "reel,rope,length,held\nW1,DB12,70 m,80 m for order 1002 until 2026-03-06\n");
        String check = flat(Run.of("check", shop).out());
        assertTrue(check.contains("more than the reel has"), check);
    }

    private void hold(String reel, String order, String length) {
        stock("reserve", reel, order, "--length", length, "--until", "2026-03-06");
    }

    private void refused(int code, String sentence, String... words) {
        List<String> line = new ArrayList<>(List.of("stock", "reserve", shop));
        line.addAll(List.of(words));
        String err = flat(run(code, line.toArray(String[]::new)).err());
        assertTrue(err.contains(sentence), err);
    }

    private long pieces(String order) throws IOException {
        String plan = Files.readString(files.resolve("plans/1.json"));
        long found = 0;
        for (JsonNode draw : JSON.readTree(plan).get("draws")) {
            for (JsonNode run : draw.get("runs")) {
                for (JsonNode cut : run.get("cuts")) {
                    found += cut.get("piece").asText().startsWith(order + "/") ? 1 : 0;
                }
            }
        }
        return found;
    }

    private String plan(int... codes) {
        Run run = Run.of("plan", shop, "--time", "200ms");
        assertTrue(
                java.util.Arrays.stream(codes).anyMatch(code -> code == run.code()),
                run.code() + run.err() + run.out());
        return run.out();
    }

    private String stock(String verb, String... words) {
        List<String> line = new ArrayList<>(List.of("stock", verb, shop));
        line.addAll(List.of(words));
        return run(0, line.toArray(String[]::new)).out();
    }

    private JsonNode reel(String id) throws IOException {
        for (JsonNode reel : JSON.readTree(
                        run(0, "stock", "list", shop, "--all", "--json").out())
                .get("reels")) {
            if (reel.get("reel").asText().equals(id)) {
                return reel;
            }
        }
        throw new AssertionError("no reel " + id);
    }

    private long reelEvent(String reel) throws IOException {
        JsonNode movements = JSON.readTree(
                        run(0, "stock", "history", shop, reel, "--json").out())
                .get("movements");
        return movements.get(movements.size() - 1).get("event").asLong();
    }

    private void assertSound() {
        assertTrue(flat(run(0, "stock", "verify", shop).out()).contains("the ledger is sound"));
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err() + run.out());
        return run;
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }
}
