package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.exchange.TableText;
import bitterend.exchange.TypedText;
import bitterend.finding.Finding;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells of the order book as they are typed where the shop is, and as they go into its file. */
final class LocalCellsTest {
    private static final Book BOOK =
            new Book(TableText.of("order,line,length,End A,due,note\nG-1,1,3.5 m,sealed,2026-03-05,\n"), "digest");

    @TempDir
    private Path folder = Path.of("");

    private TypedText typed(String locale) throws IOException {
        String settings = Files.readString(Path.of("demo-data/eider-shed/shop.json"));
        Files.writeString(
                folder.resolve("shop.json"),
                locale.isEmpty() ? settings : settings.replaceFirst("\\{", "{\n  \"locale\": \"" + locale + "\","));
        Clock clock = Clock.systemUTC();
        return new TypedText(new ShopAccess(folder, new SqliteLedgerPlace(folder, clock), clock)
                .settings()
                .orElseThrow());
    }

    /** Those that were typed alone are looked at; words for people and numbers of orders stay as they are. */
    @Test
    void cells_becomeThoseOfTheFileByWhatTheirColumnHolds() throws IOException {
        Edit edit = new Edit(
                BOOK,
                Map.of(1, Map.of(2, "23,45 m", 3, "bury-eye length 0,5 m pin 12,5 mm", 4, "6.3.26", 5, "about 1,5 m")),
                List.of(List.of("7.3.26", "1", "12,5", "sealed", "31.12.2026", "by 5.3.2026")));
        LocalCells cells = LocalCells.of(edit, typed("de-DE"));
        assertEquals(List.of(), cells.wrong());
        assertEquals(
                Map.of(
                        1,
                        Map.of(
                                2,
                                "23.45 m",
                                3,
                                "bury-eye length 0.5 m pin 12.5 mm",
                                4,
                                "2026-03-06",
                                5,
                                "about 1,5 m")),
                cells.edit().changed());
        assertEquals(
                List.of(List.of("7.3.26", "1", "12.5", "sealed", "2026-12-31", "by 5.3.2026")),
                cells.edit().added());
    }

    /** It stays as it was typed, with its row counted as in the file: the first one added is behind the last that is there. */
    @Test
    void cellThatCouldMeanTwoThings_staysAndIsAnErrorOfItsRow() throws IOException {
        Edit edit = new Edit(
                BOOK,
                Map.of(1, Map.of(2, "1.500 m", 4, "6.3.")),
                List.of(List.of("G-2", "1", "3 m", "bury-eye length 1.200 mm", "", "")));
        LocalCells cells = LocalCells.of(edit, typed("de-DE"));
        assertEquals(Map.of(1, Map.of(2, "1.500 m", 4, "6.3.")), cells.edit().changed());
        assertEquals(
                List.of("row 2, length: 1.500 m", "row 2, due: 6.3.", "row 3, End A: bury-eye length 1.200 mm"),
                cells.wrong().stream().map(LocalCellsTest::where).toList());
    }

    private static String where(Finding wrong) {
        return wrong.place() + ", " + wrong.field() + ": " + wrong.found();
    }

    /** By the columns of docs/file-formats.md: where lengths or shares may be, alone or among words. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "length;0,5 m;0.5 m",
                "Spare;0,5 m;0.5 m",
                "sample;0,5 m;0.5 m",
                "tolerance;0,5 %;0.5 %",
                "eye tolerance;2,5 mm;2.5 mm",
                "set tolerance;2,5 mm;2.5 mm",
                "extension;1,5 %;1.5 %",
                "shrinkage;1,5 %;1.5 %",
                "bedding;1,5 %;1.5 %",
                "measured;on pin 12,5 mm;on pin 12.5 mm",
                "with;eye = 0,5 m;eye = 0.5 m",
                "hang;spread 3,5 m by 4,2 m;spread 3.5 m by 4.2 m",
                "end a;swaged bore 45,5 mm;swaged bore 45.5 mm",
                "end b;bury-eye ratio 5,5 pin 30 mm;bury-eye ratio 5.5 pin 30 mm",
                "along;3 x butterfly-loop length 120,5 mm;3 x butterfly-loop length 120.5 mm",
                "marks;1,5 m;1.5 m",
                "customer;Berth 1,5;Berth 1,5",
                "accept;throat angle: Ada 1,5;throat angle: Ada 1,5"
            })
    void columns_takeTheDecimalSignOfThePlace(String column, String text, String file) throws IOException {
        assertEquals(file, typed("de-DE").cell(column, text).value().orElse("?"));
        assertEquals(text, typed("").cell(column, text).value().orElse("?"), "without a place");
    }
}
