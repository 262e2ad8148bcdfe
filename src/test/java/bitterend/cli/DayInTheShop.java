package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A shop with a ledger in the middle of its day, and what every command can be asked there. */
record DayInTheShop(Path shop, Path out, String note) {
    private static final String FEW = " --from-history --scenarios 20 --weeks 2";

    /** What each command that asks is asked; {@code SHOP} and {@code OUT} are folders, {@code NOTE} a delivery. */
    static final Map<String, List<String>> ASKS = new TreeMap<>(Map.ofEntries(
            Map.entry("check", List.of("check SHOP")),
            Map.entry("lengths", List.of("lengths SHOP", "lengths SHOP E-31/1")),
            Map.entry(
                    "plan",
                    List.of(
                            "plan SHOP --explain E-31/1.1",
                            "plan SHOP --explain E-32/1.1",
                            "plan SHOP --explain E7",
                            "plan SHOP --shares",
                            "plan SHOP --time 100ms --out OUT/plan.json")),
            Map.entry(
                    "show",
                    List.of(
                            "show SHOP",
                            "show SHOP tables",
                            "show SHOP week",
                            "show SHOP changes",
                            "show SHOP reasons",
                            "show SHOP money",
                            "show SHOP E7")),
            Map.entry("calibrate", List.of("calibrate SHOP")),
            Map.entry(
                    "quote",
                    List.of(
                            "quote SHOP --order E-31",
                            "quote SHOP --order E-31 --customer --accept Ada --apart --quantities 1,5")),
            Map.entry("quote list", List.of("quote list SHOP")),
            Map.entry("quote show", List.of("quote show SHOP Q-2601", "quote show SHOP Q-2601 --customer --rev 1")),
            Map.entry("quote learn", List.of("quote learn SHOP")),
            Map.entry("quote compare", List.of("quote compare SHOP OUT/filed.json")),
            Map.entry("orders", List.of("orders SHOP", "orders SHOP --by customer", "orders SHOP --by due")),
            Map.entry("orders note", List.of("orders note SHOP E-32", "orders note SHOP --delivery NOTE")),
            Map.entry("stock list", List.of("stock list SHOP", "stock list SHOP --all")),
            Map.entry("stock short", List.of("stock short SHOP --time 200ms")),
            Map.entry("stock claims", List.of("stock claims SHOP", "stock claims SHOP --since 2026-01-01")),
            Map.entry("stock idle", List.of("stock idle SHOP --weeks 2")),
            Map.entry("stock history", List.of("stock history SHOP E7")),
            Map.entry("stock export", List.of("stock export SHOP")),
            Map.entry("stock verify", List.of("stock verify SHOP")),
            Map.entry("stock trace", List.of("stock trace SHOP E-32/1.1", "stock trace SHOP --lot 12")),
            Map.entry("stock backup", List.of("stock backup SHOP OUT/backup.db")),
            Map.entry(
                    "stock gauge",
                    List.of("stock gauge SHOP E7 --barrel 150mm --traverse 300mm --depth 120mm --flange 500mm")),
            Map.entry("buy", List.of("buy SHOP --time 200ms", "buy SHOP" + FEW, "buy SHOP" + FEW + " --from-rack")),
            Map.entry("reorder", List.of("reorder SHOP", "reorder SHOP --service 90 --budget 5")),
            Map.entry("value", List.of("value SHOP" + FEW))));

    /** What a supplier's list says that came in: one reel that can be booked, one that is hardly so, one that cannot be. */
    static final String CAME =
            "reel,rope,length,tolerance,place\nE11,LAID-14,110 m,1.5 %,shelf\nE12,LAID-14,2000 m,,\nE9,LAID-14,110 m,,\n";

    /** What books, begins, or writes the file that it is there for. */
    static final Set<String> WRITES = new TreeSet<>(Set.of(
            "init",
            "import",
            "serve",
            "sheet",
            "measure",
            "orders release",
            "orders again",
            "orders spare",
            "orders give",
            "orders back",
            "orders keep",
            "orders deliver",
            "quote revise",
            "quote sent",
            "quote accept",
            "quote decline",
            "quote back",
            "stock",
            "stock open",
            "stock restore",
            "stock move-ledger",
            "stock order",
            "stock receive",
            "stock post",
            "stock cut",
            "stock flaw",
            "stock correct",
            "stock spoil",
            "stock undo",
            "stock count",
            "stock hold",
            "stock release",
            "stock reserve",
            "stock move",
            "stock rewind",
            "stock split",
            "stock return",
            "stock sell",
            "stock condemn",
            "stock send",
            "stock arrive"));

    /** Planned, issued, cut, measured, delivered, quoted. */
    static DayInTheShop in(Path folder) throws IOException {
        DayInTheShop day = new DayInTheShop(DemoShop.copy("eider-shed", folder), folder.resolve("out"), "");
        Files.createDirectories(day.out);
        Files.writeString(day.shop.resolve("count.csv"), "reel,counted\nE9,196 m\nE10,not found\nE99,12 m\n");
        Files.writeString(
                day.shop.resolve("own.csv"),
                """
                        Order,Line,Boat,Rope,Length (m),End 1,Due,Salesman
                        E-31,1,sloop Redshank,BRAID-12,28,,3/3/2026,Bo
                        E-40,1,tug,LAID-14,3,eye 20 cm,20/3/2026,Bo
                        """);
        Files.writeString(day.shop.resolve("came.csv"), CAME);
        Files.writeString(day.shop.resolve("proposal.csv"), "offer,quantity\nB12-200,2\n");
        day.book("stock open SHOP");
        day.book("plan SHOP --time 300ms");
        day.book("sheet SHOP --all --issue");
        Files.delete(day.shop.resolve("sheet.html"));
        day.book("stock post SHOP --piece E-32/1.3 --piece E-32/1.4");
        for (String piece : List.of("E-32/1.1", "E-32/1.2", "E-32/1.3")) {
            day.book("measure SHOP " + piece + " --cut 6.72m --came-out 6m");
        }
        String note = day.book("orders deliver SHOP E-32 --piece E-32/1.1 --unpassed")
                .out()
                .replaceAll("(?s).*Delivery (\\d+).*", "$1");
        day.book("quote SHOP --order E-31 --out OUT/filed.json");
        Files.writeString(
                day.shop.resolve("asks.csv"),
                "line,customer,rope,length,end a,quantity\n1,sloop Redshank,LAID-14,5 m,whipped,2\n");
        day.book("quote SHOP SHOP/asks.csv --keep --accept Ada --time 200ms");
        return new DayInTheShop(day.shop, day.out, note);
    }

    /** What is typed, with the names of this shop in it; {@code _} is a blank. */
    String[] typed(String words) {
        String[] typed = words.split(" ");
        for (int i = 0; i < typed.length; i++) {
            typed[i] = typed[i].replace("_", " ")
                    .replace("SHOP", shop.toString())
                    .replace("OUT", out.toString())
                    .replace("NOTE", note);
        }
        return typed;
    }

    /** Done, and it went well. */
    Run book(String words) {
        Run run = Run.of(typed(words));
        assertEquals(0, run.code(), words + "\n" + run.err());
        return run;
    }
}
