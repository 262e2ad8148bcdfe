package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to buy where the rack holds nothing. */
final class BuyEmptyRackTest {
    private final Path shop;

    BuyEmptyRackTest(@TempDir Path folder) throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
    }

    private String page(int code, String... rows) throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"), "order,line,rope,length,quantity,due\n" + String.join("\n", rows) + "\n");
        Run run = Run.of("buy", shop.toString(), "--time", "2s");
        assertEquals(code, run.code(), run.out() + run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    private void emptyRack() throws IOException {
        Path reels = shop.resolve("reels.csv");
        Files.writeString(reels, Files.readAllLines(reels).get(0) + "\n");
    }

    private void offers(String... rows) throws IOException {
        Files.writeString(
                shop.resolve("offers.csv"),
                "offer,supplier,rope,length,price,supply,valid until\n" + String.join("\n", rows) + "\n");
    }

    /** Nobody is told that all is well where pieces stay without rope. */
    @Test
    void nothingOnOffer_isSaidFirst_withHowManyStayWithoutRope() throws IOException {
        emptyRack();
        offers("OVER,Ropewalk,BRAID-12,200 m,350.00 EUR,,2025-01-31");
        String page = page(4, "E-40,1,BRAID-12,60 m,6,2026-03-20", "E-40,2,LAID-14,20 m,2,");
        assertTrue(
                page.contains("Nothing can be bought: 8 pieces stay without rope, and no offer would do for them. "),
                page);
        assertFalse(page.contains("Buy nothing") || page.contains("every other piece"), page);
    }

    @Test
    void pieceThatNothingHolds_besideOthersOffTheRack_isSaidFirst() throws IOException {
        String page = page(4, "E-40,1,BRAID-12,6 m,2,2026-03-20", "E-40,2,LAID-14,230 m,1,");
        assertTrue(
                page.contains("Nothing can be bought: 1 piece stays without rope, and no offer would do for it."
                        + " The rack and the rope on order hold every other piece."),
                page);
    }

    /** Of two suppliers one sends freight paid: the rows of the ropes and the other freight add up to what is paid. */
    @Test
    void ropeByRope_addsUpToWhatIsPaid_whereASupplierWaivesFreight() throws IOException {
        emptyRack();
        Files.writeString(
                shop.resolve("offers.csv"),
                """
                offer,supplier,rope,length,price,freight
                B12-200,Northquay Cordage,BRAID-12,200 m,370.00 EUR,15.00 EUR
                L14-220,Longreach Ropeworks,LAID-14,220 m,319.00 EUR,
                """);
        Files.writeString(
                shop.resolve("suppliers.csv"),
                """
                supplier,freight by order,freight by weight,free freight from
                Northquay Cordage,6.50 EUR,,300.00 EUR
                Longreach Ropeworks,9.00 EUR,0.18 EUR/kg,
                """);
        String page = page(0, "E-40,1,BRAID-12,60 m,3,", "E-40,2,LAID-14,20 m,2,");
        assertTrue(page.contains("(L14-220) for 703.63 EUR"), page);
        assertTrue(page.contains(" BRAID-12 1 x B12-200 370.00 "), page);
        assertTrue(page.contains(" LAID-14 1 x L14-220 324.62 "), page);
        assertTrue(page.contains(" other freight 9.01 "), "370.00 + 324.62 + 9.01 = 703.63: " + page);
    }
}
