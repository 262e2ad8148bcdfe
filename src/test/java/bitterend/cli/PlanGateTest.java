package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One gate before every use of a plan: none that is not sound, of another shop, or stale for a reel is printed or booked. */
final class PlanGateTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    /** Plans that were changed by hand: planted faults of every kind. Copies, so that no digest gives them away. */
    @Test
    void tamperedPlans_areNeitherPrintedNorBooked() throws IOException {
        Path loft = DemoShop.copy("gannet-loft", folder);
        String at = loft.toString();
        run(0, "stock", "open", at);
        run(4, "plan", at, "--time", "1s");
        JsonNode sound = JSON.readTree(loft.resolve("plans/1.json").toFile());
        String before = run(0, "stock", "export", at).out();
        for (Map.Entry<String, Consumer<ObjectNode>> fault : faults().entrySet()) {
            ObjectNode plan = sound.deepCopy();
            fault.getValue().accept(plan);
            assertFalse(plan.equals(sound), fault.getKey());
            Path file = folder.resolve("tampered.json");
            JSON.writeValue(file.toFile(), plan);
            Run sheet = Run.of("sheet", file.toString(), "--shop", at, "--csv");
            assertEquals(3, sheet.code(), fault.getKey() + ": " + sheet.err());
            Run post = Run.of("stock", "post", at, "--all", "--plan", file.toString());
            assertEquals(3, post.code(), fault.getKey() + ": " + post.err());
            assertFalse((sheet.err() + post.err()).contains("internal error"), fault.getKey() + post.err());
            assertFalse(Files.exists(folder.resolve("sheet.csv")), fault.getKey());
        }
        assertEquals(before, run(0, "stock", "export", at).out());
    }

    /** What is proven of a plan is counted alike as soon as it is made, when it is shown again, and on its sheets. */
    @Test
    void whatIsProven_isCountedAlikeOnEveryPage() throws IOException {
        Path loft = DemoShop.copy("gannet-loft", folder);
        String at = loft.toString();
        Path whole = folder.resolve("whole.html");
        run(4, "plan", at, "--effort", "reproducible", "--time", "2s", "--html", whole.toString());
        Path money = folder.resolve("money.html");
        run(0, "show", at, "money", "--html", money.toString());
        run(0, "sheet", at);
        String counted = counted(whole);
        assertTrue(counted.startsWith("Nothing better exists for "), counted);
        assertEquals(counted, counted(money));
        assertEquals(counted, counted(loft.resolve("sheet.html")));
        Path copy = Files.copy(loft.resolve("plans/1.json"), folder.resolve("copy.json"));
        run(0, "sheet", copy.toString(), "--shop", at);
        String proven = counted(folder.resolve("sheet.html"));
        assertFalse(proven.contains("by search"), "a file that anyone may have written: " + proven);
    }

    private static String counted(Path page) throws IOException {
        Matcher words =
                Pattern.compile("Nothing better exists[^<;,]*(?:\\([^)]*\\))?").matcher(Files.readString(page));
        assertTrue(words.find(), page.toString());
        return words.group();
    }

    private static Map<String, Consumer<ObjectNode>> faults() {
        Map<String, Consumer<ObjectNode>> faults = new LinkedHashMap<>();
        faults.put("a piece shorter by a metre", plan -> moveEnd(plan, -1_000));
        faults.put("a piece longer by 30 m", plan -> moveEnd(plan, 30_000));
        faults.put("a piece longer by 1000 km", plan -> moveEnd(plan, 1_000_000_000));
        faults.put("a piece that ends before it begins", plan -> cut(plan, 0).put("to", "-10 mm"));
        faults.put("a piece nobody ordered", plan -> cut(plan, 0).put("piece", "G-9999/1.1"));
        faults.put("a piece twice", plan -> cuts(plan, 0).add(cut(plan, 0).deepCopy()));
        faults.put("a piece dropped", plan -> cuts(plan, 0).remove(0));
        faults.put("pieces of two ropes exchanged", PlanGateTest::exchangeRopes);
        faults.put("a set torn", PlanGateTest::tearASet);
        faults.put("no run", plan -> draw(plan, 0).putArray("runs"));
        faults.put("another length before", plan -> ((ObjectNode) draw(plan, 0).get("book")).put("before", "3400 mm"));
        faults.put("another cost", plan -> plan.put("cost", "1 EUR"));
        faults.put("another day", plan -> plan.put("day", "2026-03-09"));
        faults.put("another ledger", plan -> ((ObjectNode) plan.at("/facts/ledger")).put("id", "0f".repeat(16)));
        faults.put("a bound above the cost", plan -> bound(plan).put("best", "999999 EUR"));
        faults.put("duals times seven", PlanGateTest::raiseDuals);
        faults.put("a root that its duals do not prove", plan -> {
            bound(plan).put("root", plan.get("cost").asText());
            bound(plan).put("best", plan.get("cost").asText());
        });
        faults.put("a reel longer than it was", plan -> ((ObjectNode) factOfReel(plan)).put("length", "19000000 mm"));
        return faults;
    }

    private static ObjectNode draw(ObjectNode plan, int index) {
        return (ObjectNode) plan.get("draws").get(index);
    }

    private static ArrayNode cuts(ObjectNode plan, int draw) {
        for (JsonNode run : draw(plan, draw).get("runs")) {
            if (!run.get("cuts").isEmpty()) {
                return (ArrayNode) run.get("cuts");
            }
        }
        throw new AssertionError("no cut on reel " + draw);
    }

    private static ObjectNode cut(ObjectNode plan, int draw) {
        return (ObjectNode) cuts(plan, draw).get(0);
    }

    private static void moveEnd(ObjectNode plan, long by) {
        long to = Long.parseLong(cut(plan, 0).get("to").asText().replace(" mm", ""));
        cut(plan, 0).put("to", (to + by) + " mm");
    }

    private static String ropeOf(ObjectNode plan, int draw) {
        String reel = draw(plan, draw).get("reel").asText();
        for (JsonNode each : plan.at("/facts/reels")) {
            if (each.get("reel").asText().equals(reel)) {
                return each.get("rope").asText();
            }
        }
        throw new AssertionError(reel);
    }

    private static JsonNode factOfReel(ObjectNode plan) {
        String reel = draw(plan, 0).get("reel").asText();
        for (JsonNode each : plan.at("/facts/reels")) {
            if (each.get("reel").asText().equals(reel)) {
                return each;
            }
        }
        throw new AssertionError(reel);
    }

    private static void exchangeRopes(ObjectNode plan) {
        for (int other = 1; other < plan.get("draws").size(); other++) {
            if (!ropeOf(plan, other).equals(ropeOf(plan, 0))) {
                String mine = cut(plan, 0).get("piece").asText();
                cut(plan, 0).put("piece", cut(plan, other).get("piece").asText());
                cut(plan, other).put("piece", mine);
                return;
            }
        }
        throw new AssertionError("one rope only");
    }

    /** A piece of a matched set is said to be undone, the others staying planned. */
    private static void tearASet(ObjectNode plan) {
        for (JsonNode group : plan.at("/facts/pieces")) {
            String first = group.get("ids").get(0).asText();
            for (int i = 0; group.has("set") && i < plan.get("draws").size(); i++) {
                ArrayNode cuts = cuts(plan, i);
                for (int j = 0; j < cuts.size(); j++) {
                    if (cuts.get(j).get("piece").asText().equals(first)) {
                        cuts.remove(j);
                        ObjectNode undone = JSON.createObjectNode()
                                .put("piece", first)
                                .put("rule", "planned")
                                .put("reason", "torn")
                                .put("help", "");
                        ((ArrayNode) plan.get("unplanned")).insert(0, undone);
                        return;
                    }
                }
            }
        }
        throw new AssertionError("no set");
    }

    private static ObjectNode bound(ObjectNode plan) {
        return (ObjectNode) plan.get("bounds").get(0);
    }

    private static void raiseDuals(ObjectNode plan) {
        for (JsonNode bound : plan.get("bounds")) {
            for (JsonNode dual : bound.get("duals")) {
                ((ObjectNode) dual).put("price", dual.get("price").asLong() * 7);
            }
            ObjectNode root = (ObjectNode) bound;
            root.put("root", root.get("best").asText());
        }
    }

    @Test
    void planOfAnotherShopWithTheSameReels_isRefused() throws IOException {
        TestShop one = TestShop.in(Files.createDirectory(folder.resolve("one")));
        TestShop two = TestShop.in(Files.createDirectory(folder.resolve("two")));
        for (TestShop shop : new TestShop[] {one, two}) {
            run(0, "stock", "open", shop.path().toString());
            run(0, "plan", shop.path().toString(), "--time", "1s");
        }
        String file = two.path().resolve("plans/1.json").toString();
        Run post = run(3, "stock", "post", one.path().toString(), "--all", "--plan", file);
        assertTrue(post.err().contains("another ledger"), post.err());
        run(3, "sheet", file, "--shop", one.path().toString());
        run(3, "plan", one.path().toString(), "--time", "1s", "--keep", file);
    }

    @Test
    void piecesOfACancelledOrder_areNotBookedAndTheOthersAre() throws IOException {
        TestShop shop = TestShop.in(folder)
                .with("orders.csv", "1003,1,Hollow Quay,LA14,6 m,plain,plain,2,2026-03-05,3")
                .with("reels.csv", "R-200,LA14,L-9,80 m,,,,counted,,no");
        Path ropes = shop.path().resolve("ropes.json");
        Files.writeString(
                ropes,
                Files.readString(ropes)
                        .replace(
                                "}]}",
                                "}, {\"id\": \"LA14\", \"construction\": \"3-strand\", \"lay\": \"right ordinary\","
                                        + " \"fibre\": \"polyester\", \"diameter\": \"14 mm\", \"price\": \"1.80 EUR/m\","
                                        + " \"usualReel\": \"110 m\"}]}"));
        String at = shop.path().toString();
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "1s");
        Path orders = shop.path().resolve("orders.csv");
        StringBuilder left = new StringBuilder();
        Files.readString(orders)
                .lines()
                .filter(line -> !line.startsWith("1002,"))
                .forEach(line -> left.append(line).append('\n'));
        Files.writeString(orders, left);
        Run refused = run(5, "stock", "post", at, "--all");
        assertTrue(refused.err().contains("1002/1.1 is not ordered any more"), refused.err());
        Set<Integer> codes = new TreeSet<>();
        for (JsonNode draw : new ObjectMapper()
                .readTree(shop.path().resolve("plans/1.json").toFile())
                .get("draws")) {
            String reel = draw.get("reel").asText();
            boolean hasCancelled = draw.toString().contains("\"1002/");
            assertFalse(
                    run(0, "stock", "history", at, reel, "--json").out().contains("\"cut\""), "nothing of the refused");
            Run posted = run(hasCancelled ? 5 : 0, "stock", "post", at, "--reel", reel);
            codes.add(posted.code());
            assertEquals(
                    !hasCancelled,
                    run(0, "stock", "history", at, reel, "--json").out().contains("\"cut\""),
                    reel + posted.out() + posted.err());
        }
        assertEquals(Set.of(0, 5), codes, "the day has reels of both kinds");
        run(0, "stock", "verify", at);
    }

    @Test
    void planFileChangedInItsPlace_isRefusedEverywhere() throws IOException {
        TestShop shop = TestShop.in(folder);
        String at = shop.path().toString();
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "1s");
        Path plan = shop.path().resolve("plans/1.json");
        Files.writeString(plan, Files.readString(plan).replace("\"seed\": 0", "\"seed\": 1"));
        for (String words : new String[] {
            "sheet SHOP",
            "sheet SHOP --tags",
            "sheet SHOP --issue",
            "stock post SHOP --all",
            "plan SHOP --explain 1001/1.1",
            "plan SHOP --shares",
            "plan SHOP --from 1",
            "plan SHOP --keep 1"
        }) {
            Run run = run(3, words.replace("SHOP", at).split(" "));
            assertTrue(run.err().contains("not as it was written"), words + run.err());
        }
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        return run;
    }
}
