package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a proposal over the edited order to what came of it: short, late, in parts; and back. */
final class ReorderWalkTest {
    private final ReorderShop at;

    ReorderWalkTest(@TempDir Path folder) throws IOException {
        at = new ReorderShop(folder);
    }

    @Test
    void wholeWay_fromTheProposalToTheClaim_andBack() throws IOException {
        at.run(0, "stock", "open", "SHOP");
        Path proposal = at.folder.resolve("proposal.csv");
        Run told = at.run(0, "reorder", "SHOP", "--out", "" + proposal);
        assertTrue(
                ReorderShop.flat(told).contains("BRAID-12 B 1 100.0 190.00 190.00 2026-03-02 2026-03-09"), told.out());
        assertTrue(ReorderShop.flat(told).contains("30.0 m free, nothing booked: 30.0 m left"), told.out());
        assertTrue(
                ReorderShop.flat(told).contains("Reels 190.00 EUR, freight 20.00 EUR; together 210.00 EUR."),
                told.out());
        String text = Files.readString(proposal);
        assertTrue(text.contains("B,BRAID-12,Hawser Yard,100 m,1,2026-03-09,190.00 EUR,"), text);
        assertTrue(text.contains("L,LAID-14,Hawser Yard,100 m,0,"), "what is not due is there to be ordered: " + text);

        Files.writeString(proposal, text.replace("100 m,1,2026-03-09,190.00 EUR", "100 m,3,2026-03-10,180.00 EUR"));
        Run looked = at.run(0, "stock", "order", "SHOP", "" + proposal);
        assertTrue(ReorderShop.flat(looked).contains("P-1 "), looked.out());
        assertTrue(ReorderShop.flat(looked).contains("3 Capstan Lane, Eider"), looked.out());
        assertTrue(
                ReorderShop.flat(looked).contains("a reel may come shorter by 2 %, 2.000 m, and no more"),
                looked.out());
        assertFalse(Files.exists(at.shop.resolve("on-order.csv")), "looking writes nothing");
        at.run(0, "stock", "order", "SHOP", "" + proposal, "--accept", "--who", "Ada");
        assertTrue(at.onOrder().contains("P-1,BRAID-12,100 m,3,2026-03-10,,Hawser Yard,180.00 EUR,"), at.onOrder());
        Run again = at.run(0, "reorder", "SHOP");
        assertTrue(
                ReorderShop.flat(again).contains("Nothing is to be ordered today"),
                "what comes in time counts: " + again.out());

        receive("E1", "100 m", "2026-03-10");
        receive("E2", "95 m", "2026-03-12");
        assertTrue(at.onOrder().contains("P-1,"), "the third is still to come");
        String claims = ReorderShop.flat(at.run(0, "stock", "claims", "SHOP"));
        assertTrue(claims.contains("P-1 E2 BRAID-12 2026-03-12 100.000 95.000 5.000 3.000 5.40 "), claims);
        assertTrue(claims.contains("P-1 BRAID-12 2026-03-10 2026-03-12 2 1"), claims);

        assertTrue(at.run(3, "stock", "order", "SHOP", "--back").err().contains("a reel of order P-1 came"));
        at.run(0, "stock", "undo", "SHOP", "3");
        at.run(0, "stock", "undo", "SHOP", "2");
        assertTrue(ReorderShop.flat(at.run(0, "stock", "claims", "SHOP")).contains("No reel came"));
        assertTrue(
                ReorderShop.flat(at.run(0, "stock", "order", "SHOP", "--back")).contains("Taken back: P-1."));
        assertFalse(Files.exists(at.shop.resolve("on-order.csv")), "there was none before");
        at.run(0, "stock", "order", "SHOP", "" + proposal, "--accept");
        assertTrue(at.onOrder().contains("P-2,") && !at.onOrder().contains("P-1,"), "no number twice: " + at.onOrder());
        at.run(0, "stock", "verify", "SHOP");
    }

    private void receive(String reel, String length, String day) {
        at.run(0, "stock", "receive", "SHOP", reel, "BRAID-12", length, "--on-order", "P-1", "--received", day);
    }

    @Test
    void wrongRows_areNamed_andNothingIsWritten() throws IOException {
        Path proposal = Files.writeString(
                at.folder.resolve("p.csv"),
                """
                offer,rope,supplier,length,quantity,expected,price,note
                X,BRAID-12,Hawser Yard,100 m,1,2026-03-09,190.00 EUR,
                B,LAID-14,Hawser Yard,100 m,1,2026-03-09,190.00 EUR,
                B,BRAID-12,Hawser Yard,90 m,1,2026-03-09,190.00 EUR,
                B,BRAID-12,Hawser Yard,100 m,some,2026-03-09,190.00 EUR,
                ,BRAID-12,Hawser Yard,100 m,1,,190.00 EUR,
                B,BRAID-12,Hawser Yard,100 m,1,2026-03-09,much,
                """);
        String err =
                at.run(3, "stock", "order", "SHOP", "" + proposal, "--accept").err();
        for (String wrong : List.of(
                "row 2, offer: found \"X\"",
                "row 3, rope: found \"LAID-14\"",
                "row 4, length: found \"90 m\"",
                "row 5, quantity: found \"some\"",
                "row 6, expected",
                "row 7, price: found \"much\"")) {
            assertTrue(err.contains(wrong), wrong + "\n" + err);
        }
        assertFalse(Files.exists(at.shop.resolve("on-order.csv")));
    }

    @Test
    void oddRows_areWarnedOf_andLookedAt() throws IOException {
        at.offers(
                "B,Hawser Yard,BRAID-12,100 m,190 EUR,4: 150 EUR,2 %,7,1", "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        Path proposal = Files.writeString(
                at.folder.resolve("p.csv"),
                """
                offer,quantity,expected,price
                B,3,2026-03-09,150.00 EUR
                B,2,2026-02-27,190.00 EUR
                L,1,2026-03-09,140.00 EUR
                """);
        Run run = at.run(0, "stock", "order", "SHOP", "" + proposal);
        String err = run.err().replaceAll("\\s+", " ");
        assertTrue(err.contains("190.00 EUR each, the price of 3 reels of B; 150.00 EUR is the price from 4 on"), err);
        assertTrue(err.contains("row 3, expected: found \"2026-02-27\", expected a day from 2026-03-02 on"), err);
        assertTrue(
                err.contains("with those above it is 5 reels, and in one order of so many each costs 150.00 EUR"), err);
        assertFalse(err.contains("row 4"), "a price that was agreed: " + err);
    }

    @Test
    void sameOrderAgainToday_isWarnedOf() throws IOException {
        Path proposal = Files.writeString(at.folder.resolve("p.csv"), "offer,quantity\nB,2\n");
        assertFalse(at.run(0, "stock", "order", "SHOP", "" + proposal, "--accept")
                .err()
                .contains("already"));
        Path other = Files.writeString(at.folder.resolve("o.csv"), "offer,quantity\nL,1\n");
        assertFalse(at.run(0, "stock", "order", "SHOP", "" + other).err().contains("already"));
        for (String[] more : new String[][] {{}, {"--accept"}}) {
            List<String> args = new ArrayList<>(List.of("stock", "order", "SHOP", "" + proposal));
            args.addAll(List.of(more));
            String err = at.run(0, args.toArray(String[]::new)).err();
            assertTrue(err.contains("warning: the same was ordered today already: P-1."), err);
        }
        at.run(0, "stock", "order", "SHOP", "--back");
        at.run(0, "stock", "order", "SHOP", "--back");
        assertFalse(at.run(0, "stock", "order", "SHOP", "" + proposal).err().contains("already"));
    }

    @Test
    void order_goesBelowWhatIsThere_cellByCell_underTheNextNumber() throws IOException {
        String before =
                "number;rope;length;expected;supplier;mine\r\nA 9;BRAID-12;50 m;2026-03-04;\"Hawser Yard\";x\r\n";
        at.write("on-order.csv", before.replace(";mine", "").replace(";x", ""));
        String kept = at.onOrder();
        Path proposal = Files.writeString(
                at.folder.resolve("p.csv"),
                "offer,quantity,certificate,note\nB,2,works certificate,\nB,0,,\n,,,\nL,1,,\"ask for Ida, please\"\n");
        Run run = at.run(0, "stock", "order", "SHOP", "" + proposal, "--accept");
        assertTrue(at.onOrder().contains("A 10;BRAID-12;100 m;2026-03-09;"), at.onOrder());
        assertTrue(at.onOrder().contains("A 11;LAID-14;100 m;2026-03-09;"), at.onOrder());
        assertTrue(ReorderShop.flat(run).contains("with certificate: works certificate, its number"), run.out());
        assertTrue(ReorderShop.flat(run).contains("ask for Ida, please"), run.out());
        at.run(0, "stock", "order", "SHOP", "--back");
        assertEquals(kept, at.onOrder());
        at.run(0, "stock", "order", "SHOP", "" + proposal, "--accept");
        Files.writeString(at.shop.resolve("on-order.csv"), at.onOrder().replace("A 12", "A 99"));
        assertTrue(at.run(3, "stock", "order", "SHOP", "--back").err().contains("somebody changed on-order.csv"));
    }
}
