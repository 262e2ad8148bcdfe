package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines of a request that cannot be priced: each is told once, with what is wrong, and the others are priced. */
class LinesWithoutPriceTest {
    private static final String COLUMNS = "line,rope,length,end a,end b,quantity,minutes,instead of,note\n";

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
    }

    private String page(String rows, String... more) throws IOException {
        Path request = folder.resolve("asked.csv");
        Files.writeString(request, COLUMNS + rows);
        List<String> args = new ArrayList<>(List.of("quote", shop.toString(), request.toString(), "--time", "50ms"));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(4, run.code(), run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    private static void says(String page, String words) {
        assertTrue(page.contains(words), words + " is not in " + page);
    }

    @Test
    void lineInsteadOfItself_isLeftOut() throws IOException {
        for (String[] more : new String[][] {{}, {"--customer"}}) {
            String page = page("1,DB12,5 m,sealed,sealed,3,5 min,,\n2,DB12,6 m,sealed,sealed,2,5 min,2,\n", more);
            assertEquals(
                    more.length == 0,
                    page.contains("asked.csv, row 3, instead of: found \"2\", expected a line of this request"),
                    page);
            says(page, "Caution: line 2 (6 m");
            assertFalse(page.contains("What you could have instead"), page);
        }
    }

    @Test
    void lineInsteadOfAnAlternativeOrOfALineLeftOut_isLeftOut() throws IOException {
        String page = page(
                """
                1,DB12,5 m,sealed,sealed,3,5 min,,
                2,DB12,6 m,sealed,sealed,2,5 min,1,
                3,DB12,7 m,sealed,sealed,2,5 min,2,
                4,NOSUCH,7 m,sealed,sealed,2,5 min,,
                5,DB12,7 m,sealed,sealed,2,5 min,4,
                """,
                "--customer");
        says(page, "Caution: line 3 (7 m) is not priced");
        says(page, "Caution: line 4 (7 m) is not priced");
        says(page, "Caution: line 5 (7 m) is not priced");
        says(page, "in place of what");
    }

    /** The page for the file says what is wrong, where; the customer's names no file. */
    @Test
    void numberMetTwice_leavesOutItsSecondRowByWhatThatAsksFor() throws IOException {
        String rows =
                """
        1,DB12,5 m,sealed,sealed,3,5 min,,
        1,DB12,6 m,sealed,sealed,2,5 min,,sail ties
        2,DB12,7 m,sealed,sealed,2,5 min,,
        """;
        String customer = page(rows, "--customer");
        says(customer, "Caution: another line 1 (sail ties, 6 m) is not priced and not in the total");
        assertFalse(customer.contains("asked.csv"), customer);
        says(
                page(rows),
                "Caution: another line 1 (sail ties, 6 m, DB12) is not priced: it cannot be priced as it is written"
                        + " (asked.csv, row 3, line: found \"1\", expected an id of its own; this one is in row 2).");
    }

    @Test
    void linesWithoutPrice_areToldInTheirOrder() throws IOException {
        String page = page(
                """
                1,DB12,5 m,sealed,sealed,3,5 min,,
                2,NOSUCH,6 m,sealed,sealed,2,5 min,,
                3,DB12,900 m,sealed,sealed,2,5 min,,
                4,NOSUCH,6 m,sealed,sealed,2,5 min,,
                """,
                "--customer");
        int second = page.indexOf("Caution: line 2");
        int third = page.indexOf("Caution: line 3");
        assertTrue(0 < second && second < third && third < page.indexOf("Caution: line 4"), page);
    }
}
