package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A shop with a rope of which 20 m a week are cut, 30 m of it there; one of which 5 m a week are, and one without a past. */
final class ReorderShop {
    static final LocalDate DAY = LocalDate.parse("2026-03-02");

    final Path folder;
    final Path shop;

    ReorderShop(Path folder) throws IOException {
        this.folder = folder;
        shop = DemoShop.copy("eider-shed", folder);
        StringBuilder history = new StringBuilder("order,line,placed,rope,quantity,length,end a,end b\n");
        for (int week = 1; week <= 30; week++) {
            LocalDate monday = DAY.minusWeeks(week);
            history.append("H-" + week + ",1," + monday + ",BRAID-12,2,9.8 m,sealed,sealed\n");
            history.append("H-" + week + ",2," + monday + ",LAID-14,1,4.9 m,sealed,sealed\n");
        }
        write("history.csv", history.toString());
        write("orders.csv", "order,line,rope,quantity,length,end a,end b,due\n");
        reels("R1,BRAID-12,30 m", "R2,LAID-14,60 m");
        offers("B,Hawser Yard,BRAID-12,100 m,190 EUR,,2 %,7,1", "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        write(
                "suppliers.csv",
                """
                supplier,address,contact,freight by order,free freight from,minimum order
                Hawser Yard,"3 Capstan Lane, Eider",yard office,20 EUR,600 EUR,
                """);
    }

    void write(String file, String text) throws IOException {
        Files.writeString(shop.resolve(file), text);
    }

    void reels(String... rows) throws IOException {
        write("reels.csv", "reel,rope,length\n" + String.join("\n", rows) + "\n");
    }

    void offers(String... rows) throws IOException {
        write(
                "offers.csv",
                "offer,supplier,rope,length,price,breaks,tolerance,lead days,minimum\n" + String.join("\n", rows)
                        + "\n");
    }

    Run run(int code, String... words) {
        List<String> args = new ArrayList<>();
        for (String word : words) {
            args.add(word.equals("SHOP") ? shop.toString() : word);
        }
        if (words[0].equals("reorder")
                || (words.length > 3 && words[1].equals("order") && !words[3].equals("--back"))) {
            args.addAll(List.of("--day", "" + DAY));
        }
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(code, run.code(), run.out() + run.err());
        return run;
    }

    static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    String onOrder() throws IOException {
        return Files.readString(shop.resolve("on-order.csv"));
    }
}
