package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The code of the region on the command line: set for the shop, overridden in an order, named on every page. */
final class CodeInForceTest {
    private static final String HEAD = "order,line,customer,rope,length,end a,end b,quantity,use,code\n";
    private static final String TUCKED = "wire-tucked-eye length 200 mm";
    private final Path shop;

    CodeInForceTest(@TempDir Path folder) throws IOException {
        shop = CardShop.in(folder);
    }

    private void orders(String... rows) throws IOException {
        Files.writeString(shop.resolve("orders.csv"), HEAD + String.join("\n", rows) + "\n");
    }

    private void state(String code) throws IOException {
        Path file = shop.resolve("shop.json");
        Files.writeString(
                file, Files.readString(file).replace("\"currency\"", "\"code\": \"" + code + "\", \"currency\""));
    }

    private static String sling(int line, String length, String use, String code) {
        return "1," + line + ",Harbour Board,W12," + length + "," + TUCKED + "," + TUCKED + ",1," + use + "," + code;
    }

    private Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err() + run.out());
        return run;
    }

    private String page(String... options) throws IOException {
        String[] args = new String[options.length + 3];
        args[0] = "sheet";
        args[2] = "--all";
        args[1] = shop.toString();
        System.arraycopy(options, 0, args, 3, options.length);
        return PageText.of(Path.of(run(0, args).out().strip())).replaceAll("(?s)<style>.*?</style>", "");
    }

    @Test
    void noCodeStated_isToldOnceADay() throws IOException {
        orders(sling(1, "3 m", "lifting", ""), sling(2, "4 m", "lifting", ""), sling(3, "5 m", "", ""));
        String told = run(0, "check", shop.toString()).out();
        assertEquals(1, told.split("where none is stated, the larger", -1).length - 1, told);
        run(0, "plan", shop.toString(), "--time", "1s");
        String plan = run(0, "show", shop.toString(), "tables").out().replaceAll("\\s+", " ");
        assertEquals(1, plan.split("where none is stated, the larger", -1).length - 1, plan);
        state("en");
        assertFalse(run(0, "check", shop.toString()).out().contains("where none is stated"));
        assertFalse(run(0, "plan", shop.toString(), "--time", "1s")
                .withParts(shop.toString())
                .out()
                .replaceAll("\\s+", " ")
                .contains("where none is stated"));
    }

    /** 12 mm wire, two tails of 36 D and two eyes of 200 mm: with 10 D between (8 CCR 5045(b)) 1,384 mm, with 15 D 1,444 mm. */
    @Test
    void order_mayStateAnotherCode() throws IOException {
        state("en");
        orders(
                sling(1, "1.384 m", "lifting", "us"),
                sling(2, "1.384 m", "lifting", ""),
                sling(3, "3 m", "lifting", ""));
        Run check = run(4, "check", shop.toString());
        assertTrue(check.out().contains("1.444 m"), check.out());
        assertTrue(run(0, "lengths", shop.toString(), "1/1")
                .out()
                .replaceAll("\\s+", " ")
                .contains("code us (8 CCR"));
    }

    @Test
    void code_isNamedOnCardSheetAndQuote() throws IOException {
        state("en");
        orders(sling(1, "3 m", "lifting", "us"), sling(2, "4 m", "lifting", ""), sling(3, "5 m", "", ""));
        run(0, "plan", shop.toString(), "--time", "1s");
        String cards = page("--cards");
        assertTrue(cards.contains("<span class=\"label\">code</span> <b>us</b>"), cards);
        assertTrue(cards.contains("<span class=\"label\">code</span> <b>en</b>"), cards);
        assertEquals(2, cards.split("<span class=\"label\">code</span>", -1).length - 1);
        assertTrue(cards.contains("at least 120 mm: code us (8 CCR 5045(b))"), cards);
        String sheet = page();
        assertTrue(sheet.contains("Slings and lifting, code us (1/1)."), sheet);
        assertTrue(sheet.contains("Slings and lifting, code en (1/2)."), sheet);
        Path request = shop.resolve("Q-1.csv");
        Files.writeString(
                request,
                "line,rope,length,end a,end b,quantity,minutes,use,code\n1,W12,3 m," + TUCKED + "," + TUCKED
                        + ",2,30 min,lifting,us\n");
        String quote = run(0, "quote", shop.toString(), request.toString(), "--time", "1s")
                .out();
        assertTrue(quote.contains("Slings and lifting, code us (line 1)."), quote);
        String json = run(0, "quote", shop.toString(), request.toString(), "--time", "1s", "--json")
                .out();
        assertTrue(json.contains("\"code\": \"us\""), json);
    }

    @Test
    void code_ofTheShopsOwn_isData() throws IOException {
        Files.writeString(
                shop.resolve("codes.json"),
                """
                {"format": "bitterend/codes/1", "codes": [{"id": "harbour", "rules": [
                  {"rule": "clear rope", "constructions": ["wire"], "is": "25 diameters", "source": "harbour rules 4"},
                  {"rule": "tucks", "constructions": ["wire"], "count": 4, "source": "harbour rules 5"}]}]}
                """);
        orders(
                sling(1, "3 m", "lifting", "harbour"),
                "1,2,Harbour Board,W12,3 m,wire-tucked-eye-four-one length 200 mm,plain,1,lifting,harbour",
                sling(3, "3 m", "lifting", "us"));
        String told = run(4, "check", shop.toString()).out();
        assertTrue(told.contains("at least 4 full tucks in steel: code harbour (harbour rules 5)"), told);
        assertFalse(told.contains("row 3"), told);
    }

    @Test
    void codeThatIsNotKnown_leavesItsOrderOut() throws IOException {
        state("us");
        orders(sling(1, "3 m", "lifting", "mars"), sling(2, "3 m", "lifting", ""));
        String told = run(4, "check", shop.toString()).out();
        assertTrue(told.contains("left out: orders.csv, row 2, code"), told);
        assertTrue(told.contains("the id of a code: us, en"), told);
    }
}
