package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes, thimbles and sockets that do not fit: one located sentence each, and the other orders go on. */
final class BadFittingsTest {
    private final Path shop;

    BadFittingsTest(@TempDir Path folder) throws IOException {
        shop = CardShop.in(folder);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "W12,2 m,wire-tucked-eye length 200 mm,lifting,mars | row 2, code: found \"mars\" | the id of a code: us, en",
                "DB12,5 m,double-braid-eye thimble light-10,, | row 2, end a: found \"thimble light-10 on 12 mm\" | rope from 8 mm to 10 mm",
                "DB12,5 m,double-braid-eye thimble light-13,, | row 2, end a: found \"light-13\" | the id of a thimble in thimbles.json",
                "DB12,5 m,wedge-socket bore 80 mm,, | row 2, end a: found \"wedge-socket on DB12, | rope that is wire",
                "HM8,5 m,bury-eye-hmpe length 200 mm tail 71 diameters,, | row 2, end a: found \"bury-eye-hmpe with a tail of 71 diameters\" | at least 576 mm",
            })
    void oneSentence_andTheOthersGoOn(String cells, String found, String expected) throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                "order,line,customer,rope,length,end a,use,code\n1,1,Harbour Board," + cells
                        + "\n1,2,Harbour Board,DB12,4 m,double-braid-eye length 300 mm,,\n");
        Run check = Run.of("check", shop.toString());
        assertEquals(4, check.code(), check.err());
        String told = check.out() + check.err();
        assertEquals(1, told.split("left out: ", -1).length - 1, told);
        assertTrue(told.contains("left out: orders.csv, " + found), told);
        assertTrue(told.contains(expected), told);
        Run plan = Run.of("plan", shop.toString(), "--time", "300ms").withParts(shop.toString());
        assertEquals(4, plan.code(), plan.err());
        assertTrue(plan.out().contains("1/2.1"), plan.out());
    }

    @Test
    void impossibleLineOfARequest_leavesTheOthersPriced() throws IOException {
        Path request = shop.resolve("Q-1.csv");
        Files.writeString(
                request,
                """
                line,rope,length,end a,end b,quantity,minutes
                1,DB12,0.5 m,double-braid-eye length 300 mm,double-braid-eye length 300 mm,1,20 min
                2,DB12,5 m,double-braid-eye length 300 mm,sealed,1,20 min
                """);
        Run quote = Run.of("quote", shop.toString(), request.toString(), "--time", "1s");
        assertEquals(4, quote.code(), quote.err());
        assertTrue(quote.out().contains("Line 2: 1 at"), quote.out());
        assertTrue(quote.err().contains("Q-1.csv, row 2, length"), quote.err());
    }
}
