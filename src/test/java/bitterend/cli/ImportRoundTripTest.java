package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.TableText;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table of the shop that was sent out comes back: what nobody changed stays letter by letter, in whatever order its rows are. */
final class ImportRoundTripTest {
    private static final int ROUNDS = 2;

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({"gannet-loft,orders.csv", "gannet-loft,reels.csv", "eider-shed,orders.csv", "eider-shed,reels.csv"})
    void whatWasSentOut_changesNothing(String loft, String table) throws IOException {
        Path shop = DemoShop.copy(loft, folder);
        String before = Files.readString(shop.resolve(table));
        Random dice = new Random(7);
        for (int round = 0; round < ROUNDS; round++) {
            List<List<String>> rows = shuffled(before, dice);
            Path sheet = folder.resolve("out" + round + (round % 2 == 0 ? ".xlsx" : ".csv"));
            write(rows, sheet);
            Run run = Run.of("import", "" + shop, "" + sheet, "--accept");
            assertEquals(0, run.code(), run.out() + run.err());
            String told = (run.out() + run.err()).replaceAll("\\s+", " ");
            assertTrue(
                    told.contains("Rows: 0 new, 0 changed, " + (rows.size() - 1) + " as they are, 0 with a mistake."),
                    told);
            assertEquals(before, Files.readString(shop.resolve(table)));
        }
    }

    @ParameterizedTest
    @CsvSource({"gannet-loft,G-2102", "eider-shed,E-31"})
    void oneChangedCell_isTheOneChange(String loft, String order) throws IOException {
        Path shop = DemoShop.copy(loft, folder);
        List<List<String>> rows = new ArrayList<>();
        TableText table = TableText.of(Files.readString(shop.resolve("orders.csv")));
        for (int row = 0; row < table.rows().size(); row++) {
            rows.add(new ArrayList<>(table.cells(row)));
        }
        int note = rows.get(0).indexOf("note");
        List<String> changed = rows.stream()
                .filter(row -> row.get(rows.get(0).indexOf("order")).equals(order))
                .findFirst()
                .orElseThrow();
        changed.set(note, "to the door");
        Path sheet = folder.resolve("own.csv");
        write(rows, sheet);
        Run run = Run.of("import", "" + shop, "" + sheet);
        assertTrue(run.out().contains(" -> to the door"), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("Rows: 0 new, 1 changed,"), run.out());
    }

    private static List<List<String>> shuffled(String text, Random dice) {
        TableText table = TableText.of(text);
        List<List<String>> rows = new ArrayList<>();
        for (int row = 1; row < table.rows().size(); row++) {
            if (!table.isBlank(row)) {
                rows.add(table.cells(row));
            }
        }
        Collections.shuffle(rows, dice);
        List<List<String>> some = new ArrayList<>(rows.subList(0, 1 + dice.nextInt(rows.size())));
        some.add(0, table.header());
        return some;
    }

    private static void write(List<List<String>> rows, Path file) throws IOException {
        if (file.toString().endsWith(".csv")) {
            TableText table = TableText.of(String.join(";", rows.get(0)) + "\n");
            for (List<String> row : rows.subList(1, rows.size())) {
                table = table.plus(row);
            }
            Files.writeString(file, table.text());
            return;
        }
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "test", "1.0")) {
            Worksheet sheet = book.newWorksheet("Orders");
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                    sheet.value(row, column, rows.get(row).get(column));
                }
            }
        }
    }
}
