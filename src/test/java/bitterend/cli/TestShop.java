package bitterend.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A small shop folder for one test.
 *
 * @param path the folder
 */
record TestShop(Path path) {
    static TestShop in(Path folder) throws IOException {
        Path shop = Files.createDirectory(folder.resolve("northgate"));
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h"}
                """);
        Files.writeString(
                shop.resolve("ropes.json"),
                """
                {"format": "bitterend/ropes/1", "ropes": [
                  {"id": "DB12", "name": "Polyester double braid 12 mm", "construction": "double braid",
                   "fibre": "polyester", "diameter": "12 mm", "colour": "white", "tracer": "blue",
                   "price": "2.45 EUR/m", "usualReel": "220 m"}]}
                """);
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity,due,priority
                1001,1,Harbour Board,DB12,12.345 m,plain,plain,4,2026-03-05,3
                1001,2,Harbour Board,DB12,31 m,plain,plain,1,2026-03-05,3
                1002,1,Port Pilots,DB12,9.2 m,plain,plain,6,2026-03-09,5
                """);
        Files.writeString(
                shop.resolve("reels.csv"),
                """
                reel,rope,lot,length,uncertainty,lead trim,inner wraps,known,flaws,full
                R-104,DB12,P22-118,120 m,0.8 m,0.6 m,2 m,counted,,no
                R-105,DB12,P22-119,220 m,,,2 m,nominal,,yes
                """);
        return new TestShop(shop);
    }

    /** The same shop with one more row. */
    TestShop with(String file, String row) throws IOException {
        Files.writeString(path.resolve(file), row + "\n", StandardOpenOption.APPEND);
        return this;
    }

    /** Gives a reel of a file without notes a note. */
    static void note(Path reels, String reel, String note) throws IOException {
        StringBuilder text = new StringBuilder();
        for (String row : Files.readAllLines(reels)) {
            String cell =
                    text.isEmpty() ? "note" : row.startsWith(reel + ",") ? '"' + note.replace("\"", "\"\"") + '"' : "";
            text.append(row).append(',').append(cell).append('\n');
        }
        Files.writeString(reels, text);
    }
}
