package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The length of a reel reads as it was typed until something is cut from it. 101 ft are 30,784.8 mm (the foot of 304.8 mm is
 * exact: NIST Handbook 44, appendix C, from memory), booked as 30,784 mm, which a tape in sixteenths would call 100 ft
 * 11 15/16 in.
 */
final class TypedReelTest {
    @TempDir
    private Path shop = Path.of("");

    @BeforeEach
    void begin() throws IOException {
        write(
                "shop.json",
                "{\"format\": \"bitterend/shop/1\", \"name\": \"A loft\", \"currency\": \"EUR\", \"labour\": \"45 EUR/h\"}");
        write(
                "ropes.json",
                """
                {"format": "bitterend/ropes/1", "ropes": [
                  {"id": "DB16", "name": "White braid 16 mm", "construction": "double braid", "fibre": "polyester",
                   "diameter": "16 mm", "price": "3 EUR/m", "usualReel": "200 m"}]}
                """);
        write("orders.csv", "order,line,rope,length,end a,end b,quantity\n7001,1,DB16,20 ft,sealed,sealed,1\n");
        write("reels.csv", "reel,rope,lot,length,full\nR1,DB16,L1,101  ft,yes\nR2,DB16,L1,30784 mm,no\n");
    }

    @Test
    void lengthOfAReel_readsAsItWasTyped_onEveryPage() throws IOException {
        run("stock", "open", "" + shop);
        run("stock", "receive", "" + shop, "R3", "DB16", "503 ft", "--lot", "L2");
        assertTrue(ofReel("R1").contains(" 101 ft"), ofReel("R1"));
        assertTrue(ofReel("R2").contains(" 100 ft 11 15/16 in"), ofReel("R2"));
        assertTrue(ofReel("R3").contains(" 503 ft"), ofReel("R3"));
        assertTrue(flat(run("stock", "list", "" + shop, "--units", "metric")).contains(" 101 ft (30.785 m)"));
        assertTrue(imperial("stock", "history", "" + shop, "R1").contains(" 101 ft"));
        String json = run("stock", "list", "" + shop, "--json");
        assertTrue(json.contains("\"length\": \"30784 mm\",\n      \"written\": \"101 ft\""), json);
        run("stock", "rewind", "" + shop, "R3");
        run("stock", "move", "" + shop, "R3", "bay 2");
        run("stock", "split", "" + shop, "R2", "31 ft", "R2b");
        run("stock", "count", "" + shop, "R2", "70 ft 1/2 in");
        assertTrue(ofReel("R3").contains(" 503 ft"), ofReel("R3"));
        assertTrue(ofReel("R2b").contains(" 31 ft"), ofReel("R2b"));
        assertTrue(ofReel("R2").contains(" 70 ft 1/2 in"), ofReel("R2"));
        run("stock", "verify", "" + shop);
    }

    /** On the sheet of the plan, read back from its file, and in the table that is exported and begun with anew. */
    @Test
    void planSheetAndExport_keepWhatWasTyped() throws IOException {
        run("stock", "open", "" + shop);
        run("stock", "sell", "" + shop, "R2");
        plan();
        assertTrue(sheet().contains("101 ft metered"), sheet());
        Path csv = shop.resolve("out.csv");
        Files.writeString(csv, run("stock", "export", "" + shop));
        assertTrue(Files.readString(csv).contains("R1,DB16,101 ft,"), Files.readString(csv));
        Files.move(csv, shop.resolve("reels.csv"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Files.delete(shop.resolve("stock.db"));
        run("stock", "open", "" + shop);
        assertTrue(ofReel("R1").contains(" 101 ft"), ofReel("R1"));
    }

    @Test
    void lengthThatIsCutFrom_isWorkedOut_andAsTypedAgainWhenTheCutIsTakenBack() {
        run("stock", "open", "" + shop);
        String cut = run("stock", "cut", "" + shop, "R1", "1 ft", "--for", "a walk-in", "--json");
        assertFalse(ofReel("R1").contains("101 ft"), ofReel("R1"));
        assertTrue(ofReel("R1").contains(" 99 ft 11"), ofReel("R1"));
        run("stock", "undo", "" + shop, cut.replaceAll("(?s).*\"event\": (\\d+).*", "$1"));
        assertTrue(ofReel("R1").contains(" 101 ft"), ofReel("R1"));
    }

    /** A plan that was made before lengths were kept as typed says the same millimetres: nothing was changed. */
    @Test
    void sameMillimetresWrittenOtherwise_areNoChangeOfTheReel() throws IOException {
        write("reels.csv", "reel,rope,lot,length,full\nR1,DB16,L1,30784 mm,yes\n");
        plan();
        write("reels.csv", "reel,rope,lot,length,full\nR1,DB16,L1,101 ft,yes\n");
        assertFalse(sheet().contains("was changed"), sheet());
        write("reels.csv", "reel,rope,lot,length,full\nR1,DB16,L2,101 ft,yes\n");
        assertTrue(sheet().contains("reel R1 was changed"), sheet());
    }

    /** 503 ft are 153,314.4 mm. */
    @Test
    void lengthOnOrder_readsAsItWasTyped_whereverAReelThatIsComingIsNamed() throws IOException {
        write("on-order.csv", "number,rope,length,quantity,expected\nB-7,DB16,503  ft,1,2026-03-09\n");
        write("orders.csv", "order,line,rope,length,end a,end b,quantity\n7001,1,DB16,200 ft,sealed,sealed,1\n");
        Run plan = Run.of("plan", "" + shop, "--time", "300ms");
        assertEquals(4, plan.code(), plan::err);
        String[] why = {"plan", "" + shop, "--explain", "7001/1.1"};
        assertTrue(flat(run(why)).contains("Order B-7 would do for 7001/1.1: 503 ft (153.314 m) of DB16"), run(why));
        assertTrue(flat(imperial(why)).contains("Order B-7 would do for 7001/1.1: 503 ft of DB16"), imperial(why));
        assertTrue(run("plan", "" + shop, "--explain", "7001/1.1", "--json").contains("503 ft of DB16"));
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private String sheet() throws IOException {
        run("sheet", "" + shop, "--units", "imperial");
        return PageText.of(shop.resolve("sheet.html"))
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    private void plan() {
        run("plan", "" + shop, "--time", "300ms");
    }

    private String ofReel(String reel) {
        return imperial("stock", "list", "" + shop)
                .lines()
                .filter(line -> line.startsWith(reel + " "))
                .findFirst()
                .orElseThrow();
    }

    private static String imperial(String... args) {
        String[] more = Arrays.copyOf(args, args.length + 2);
        more[args.length] = "--units";
        more[args.length + 1] = "imperial";
        return run(more);
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(shop.resolve(file), text);
    }

    private static String run(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), () -> String.join(" ", args) + "\n" + run.out() + run.err());
        return run.out();
    }
}
