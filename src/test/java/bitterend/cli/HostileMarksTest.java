package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ids, lots and certificates with characters that nobody sees, and words that a spreadsheet would run or that turn what is behind them. */
final class HostileMarksTest {
    private static final String HIDDEN = "\u00A0\u2007\u202F\u3000";
    private final Path folder;

    HostileMarksTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** Two pieces that must be of one lot and of a certificate find it however blanks and marks of no width were typed. */
    @Test
    void blanksThatDoNotBreakAndMarksWithoutWidth_makeNoOtherLotOrCertificate() throws IOException {
        Path shop = TestShop.in(folder).path();
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,quantity,set,match,certificate
                1,1,boat,DB12,100 m,1,pair,lot,3.1\u00A0mill
                1,2,boat,DB12,100 m,1,pair,lot,3.1 mill
                """);
        Files.writeString(
                shop.resolve("reels.csv"),
                """
                reel,rope,lot,length,certificate
                R\u00A0104,DB12,P 22,110 m,3.1 mill
                R-105,DB12,P\u202F22\u200B,110 m,3.1\u2007mill\uFEFF
                """);
        Run check = Run.of("check", shop.toString());
        assertEquals(0, check.code(), check.out());
        assertTrue(check.out().contains("22[U+200B]\""), check.out());
        Run plan = Run.of("plan", shop.toString(), "--time", "1s", "--json");
        assertEquals(0, plan.code(), plan.err());
        assertTrue(plan.out().contains("\"R 104\""), plan.out());
        for (char each : (HIDDEN + "\u200B\uFEFF").toCharArray()) {
            assertEquals(-1, plan.out().indexOf(each), Integer.toHexString(each));
        }
    }

    @Test
    void lotTypedAtTheRack_isWithoutWhatNobodySees() throws IOException {
        Path shop = TestShop.in(folder).path();
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        Run came = Run.of(
                "stock",
                "receive",
                shop.toString(),
                "R-200",
                "DB12",
                "50 m",
                "--lot",
                "P22\u200B-\u202E118\u00A0",
                "--certificate-number",
                "K22\u200B-0113");
        assertEquals(0, came.code(), came.err());
        String list = Run.of("stock", "export", shop.toString()).out();
        assertTrue(list.contains(",P22-118,"), list);
    }

    /** What goes out as CSV or as a workbook: guarded where a spreadsheet would run it, and nothing turns what is behind it. */
    @Test
    void tables_areGuardedAndTurnNothing() throws IOException {
        Path shop = TestShop.in(folder).path();
        String hostile = "=HYPERLINK(1)\u202Eboat";
        Files.writeString(
                shop.resolve("orders.csv"),
                "order,line,customer,rope,length\n1,1," + hostile
                        + ",DB12,12 m\n2,1,@run,DB12,9 m\n3,1,- 2 m,DB12,9 m\n");
        Files.writeString(shop.resolve("reels.csv"), "reel,rope,lot,length,place,note\nR-1,DB12,+L1,110 m,=1+1,-cmd\n");
        Run check = Run.of("check", shop.toString());
        assertEquals(0, check.code(), check.out());
        for (String place : List.of(
                "orders.csv, row 2, customer",
                "orders.csv, row 3, customer",
                "reels.csv, row 2, lot",
                "reels.csv, row 2, place")) {
            assertTrue(check.out().contains(place + ": found \""), check.out());
        }
        assertTrue(check.out().contains("words that no spreadsheet would run"), check.out());
        assertFalse(check.out().contains("found \"- 2 m\""), check.out());
        assertEquals(0, Run.of("plan", shop.toString(), "--time", "500ms").code());
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        for (String words : List.of("orders", "show", "stock list")) {
            Path csv = folder.resolve(words.replace(' ', '-') + ".csv");
            Path book = folder.resolve(words.replace(' ', '-') + ".xlsx");
            Run run = Run.of((words + " " + shop + " --csv " + csv + " --xlsx " + book)
                    .split(" (?=" + shop + "|--|" + folder + ")|(?<=stock) "));
            assertEquals(0, run.code(), words + run.err());
            assertGuarded(Files.readString(csv));
            assertFalse(turns(unpacked(book)), words);
        }
        assertEquals(0, Run.of("sheet", shop.toString(), "--csv").code());
        assertGuarded(Files.readString(shop.resolve("sheet.csv")));
        assertGuarded(Run.of("stock", "count", shop.toString(), "--sheet").out());
        String export = Run.of("stock", "export", shop.toString()).out();
        assertGuarded(export);
        assertTrue(export.contains(",'+L1,") && export.contains(",'=1+1,") && export.contains(",'-cmd"), export);
        // What was guarded comes back as it was.
        Files.delete(shop.resolve("stock.db"));
        Files.writeString(shop.resolve("reels.csv"), export);
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        assertEquals(export, Run.of("stock", "export", shop.toString()).out());
    }

    private static void assertGuarded(String csv) {
        assertFalse(turns(csv), csv);
        for (String line : csv.split("\\R")) {
            for (String cell : line.replace("\ufeff", "").split(",")) {
                String inner = cell.replaceFirst("^\"", "");
                assertFalse(inner.matches("[=@].*|[+-][^0-9 ].*"), csv);
            }
        }
    }

    private static String unpacked(Path book) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipFile zip = new ZipFile(book.toFile())) {
            for (ZipEntry part : Collections.list(zip.entries())) {
                all.append(new String(zip.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        assertFalse(all.toString().contains("<f>"), "a formula");
        return all.toString();
    }

    private static boolean turns(String text) {
        return text.codePoints()
                .anyMatch(each -> (each >= 0x202A && each <= 0x202E)
                        || (each >= 0x2066 && each <= 0x2069)
                        || each == 0x200E
                        || each == 0x200F);
    }
}
