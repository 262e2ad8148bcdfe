package bitterend.cli;

import bitterend.Folders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The shops of the demo data, copied so that a test may write into them. */
final class DemoShop {
    private DemoShop() {}

    /** Copies a shop into a folder; the copy. */
    static Path copy(String name, Path into) throws IOException {
        Path copy = into.resolve(name);
        Folders.copy(Path.of("demo-data", name), copy);
        return copy;
    }

    /** Adds a row to the orders of a shop, blank in the columns behind its last. */
    static void order(Path shop, String row) throws IOException {
        Path orders = shop.resolve("orders.csv");
        long columns = Files.readAllLines(orders)
                .get(0)
                .chars()
                .filter(letter -> letter == ',')
                .count();
        long there = row.chars().filter(letter -> letter == ',').count();
        Files.writeString(orders, row + ",".repeat((int) (columns - there)) + "\n", StandardOpenOption.APPEND);
    }
}
