package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may not happen to a quote, on the command line. */
final class QuoteRefusedTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyShed() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(shop.resolve("asks.csv"), "line,customer,rope,length\n1,tug,LAID-14,5 m\n");
    }

    private Run run(int code, String words) {
        String[] typed = words.split(" ");
        for (int i = 0; i < typed.length; i++) {
            typed[i] = typed[i].replace("_", " ").replace("SHOP", "" + shop);
        }
        Run run = Run.of(typed);
        assertEquals(code, run.code(), words + "\n" + run.out() + run.err());
        return run;
    }

    /** Ends without minutes: the shop would work for nothing. */
    private void keepWithoutMinutes() throws IOException {
        Files.writeString(
                shop.resolve("lacks.csv"),
                "line,customer,rope,length,end a,quantity\n1,tug,LAID-14,5 m,three-strand-eye length 20 cm,1\n");
        run(0, "quote SHOP SHOP/lacks.csv --keep --time 100ms");
    }

    @Test
    void quoteWithoutACustomersPage_isNeitherSentNorAccepted_untilSomebodyAcceptsWhatItLacks() throws IOException {
        keepWithoutMinutes();
        String orders = Files.readString(shop.resolve("orders.csv"));
        for (String words : List.of("sent SHOP Q-2601", "accept SHOP Q-2601", "show SHOP Q-2601 --customer --json")) {
            Run refused = run(3, "quote " + words);
            assertEquals("", refused.out());
            String why = refused.err().replaceAll("\\s+", " ");
            assertTrue(why.contains("minutes: found \"none for 3-strand eye splice\""), why);
            assertTrue(why.contains("quote revise with --accept NAME"), why);
        }
        assertEquals(orders, Files.readString(shop.resolve("orders.csv")));
        run(0, "quote revise SHOP Q-2601 --accept Ada --time 100ms");
        run(0, "quote sent SHOP Q-2601");
        assertTrue(run(0, "quote show SHOP Q-2601 --customer --json").out().contains("\"total\""));
    }

    @Test
    void fileOfAQuote_isNotWrittenOver() throws IOException {
        Path filed = folder.resolve("filed.json");
        Files.writeString(filed, "mine");
        Run refused = Run.of("quote", "" + shop, shop + "/asks.csv", "--time", "100ms", "--out", "" + filed);
        assertEquals(3, refused.code(), refused.err());
        assertTrue(refused.err().replaceAll("\\s+", " ").contains("which is there already"), refused.err());
        assertEquals("mine", Files.readString(filed));
    }

    @Test
    void revisionThatWasSent_isTheOneAccepted_andTheOneThatNeverWentOutIsNot() throws IOException {
        run(0, "quote SHOP SHOP/asks.csv --keep --time 50ms");
        run(0, "quote sent SHOP Q-2601");
        run(0, "quote revise SHOP Q-2601 --time 50ms");
        String told = run(0, "quote accept SHOP Q-2601 --order E-60").out().replaceAll("\\s+", " ");
        assertTrue(told.contains("revision 1, which was sent; revision 2 never went out"), told);
        assertTrue(Files.readString(shop.resolve("orders.csv")).contains("Q-2601/1/1"));
        assertTrue(run(0, "quote list SHOP").out().contains("accepted"));
        run(3, "quote accept SHOP Q-2601 --order E-61");
        run(3, "quote revise SHOP Q-2601 --time 50ms");
        run(0, "quote back SHOP Q-2601");
        run(0, "quote sent SHOP Q-2601");
        run(0, "quote accept SHOP Q-2601 --order E-60");
        assertTrue(Files.readString(shop.resolve("orders.csv")).contains("Q-2601/2/1"));
    }

    @Test
    void orderIsNotDueBeforeItIsAccepted_elseWhenTheQuoteSaysItIsMade() throws IOException {
        run(0, "quote SHOP SHOP/asks.csv --keep --time 50ms");
        Path kept = shop.resolve("quotes/Q-2601.1.json");
        Files.writeString(
                kept,
                Files.readString(kept)
                        .replaceAll(
                                "(\"made\" *: *)\"[^\"]*\"", "$1\"made by 2026-03-18 if it is ordered on the day\""));
        String why = run(3, "quote accept SHOP Q-2601 --due 2026-03-01").err().replaceAll("\\s+", " ");
        assertTrue(why.contains("due on 2026-03-01, before the day it is accepted, 2026-03-02"), why);
        String told = run(0, "quote accept SHOP Q-2601").out().replaceAll("\\s+", " ");
        assertTrue(told.contains("due on 2026-03-18, as the quote says"), told);
        assertTrue(Files.readString(shop.resolve("orders.csv")).contains(",2026-03-18"), told);
    }
}
