package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whom quotes go to: a request names the customer, and customers.csv has the rest. */
final class CustomersFileTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("customers.csv"),
                """
                customer,number,address,contact,payment
                Port Pilots,P-7,Pilot House; Eider Quay,the coxswain,at once
                Harbour,P-8,,,
                """);
    }

    private static String run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.out() + run.err());
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    private String request(String head, String cells) throws IOException {
        return Files.writeString(
                        folder.resolve("asked.csv"),
                        "line,rope,length,minutes,customer" + head + "\n1,LAID-14,6 m,5 min," + cells + "\n")
                .toString();
    }

    @Test
    void requestThatNamesTheCustomer_hasAddressNumberAndTerms() throws IOException {
        String page = run(0, "quote", shop.toString(), request("", "Port Pilots"), "--customer");
        assertTrue(page.contains("Port Pilots Pilot House Eider Quay the coxswain"), page);
        assertTrue(page.contains("your number with us P-7"), page);
        assertTrue(page.contains("payment at once"), page);
        String json = run(0, "quote", shop.toString(), request("", "Port Pilots"), "--customer", "--json");
        assertTrue(json.contains("\"customerNumber\": \"P-7\""), json);
        assertTrue(json.contains("\"payment\": \"at once\""), json);
    }

    @Test
    void whatTheRequestStates_goesBefore_andNobodyElseHasIt() throws IOException {
        String page = run(0, "quote", shop.toString(), request(",contact", "Port Pilots,the clerk"), "--customer");
        assertTrue(page.contains("Eider Quay the clerk"), page);
        String other = run(0, "quote", shop.toString(), request("", "Port Pilot"), "--customer");
        assertFalse(other.contains("Pilot House"), other);
    }

    /** The address of that day is in its file, whatever the customer's is later. */
    @Test
    void keptQuote_holdsTheAddressOfItsDay() throws IOException {
        run(0, "quote", shop.toString(), request("", "Port Pilots"), "--keep");
        Files.writeString(shop.resolve("customers.csv"), "customer,address\nPort Pilots,Elsewhere\n");
        String shown = run(0, "quote", "show", shop.toString(), "Q-2601", "--customer");
        assertTrue(shown.contains("Pilot House"), shown);
    }

    /** 6 m are 19 ft 8 1/4 in. What the request says goes before the customer's row, and a word on the command line before both. */
    @Test
    void customersPage_isInTheUnitsOfTheCustomer_andThatForTheFileInThoseOfTheShop() throws IOException {
        Files.writeString(shop.resolve("customers.csv"), "customer,units\nPort Pilots,imperial\nHarbour,metric\n");
        String own = request("", "Port Pilots");
        assertTrue(run(0, "quote", shop.toString(), own, "--customer").contains("6 m (19 ft 8 1/4 in) finished"));
        assertFalse(run(0, "quote", shop.toString(), own).contains("19 ft"), "the shop's own page");
        assertFalse(run(0, "quote", shop.toString(), own, "--customer", "--units", "metric")
                .contains("19 ft"));
        String said = request(",customer units", "Port Pilots,metric");
        assertFalse(run(0, "quote", shop.toString(), said, "--customer").contains("19 ft"));
        assertTrue(run(0, "quote", shop.toString(), said, "--customer", "--units", "imperial")
                .contains("19 ft 8 1/4 in"));
        run(0, "quote", shop.toString(), request("", "Port Pilots"), "--keep");
        Files.writeString(shop.resolve("customers.csv"), "customer,units\nPort Pilots,metric\n");
        assertTrue(
                run(0, "quote", "show", shop.toString(), "Q-2601", "--customer").contains("(19 ft 8 1/4 in)"));
        run(0, "quote", "revise", shop.toString(), "Q-2601");
        String revised = run(0, "quote", "show", shop.toString(), "Q-2601", "--customer");
        assertTrue(revised.contains("(19 ft 8 1/4 in)"), "as the quote before it: " + revised);
        Run wrong = Run.of("quote", shop.toString(), request(",customer units", "Port Pilots,feet"));
        assertTrue(wrong.err().contains("customer units: found \"feet\", expected"), wrong.err());
    }

    @Test
    void faults_areFoundByTheCheck() throws IOException {
        Files.writeString(
                shop.resolve("customers.csv"),
                "customer,number,tax,units,colour\nPort Pilots,P-7,,,\nPort Pilots,P-7,much,feet,\n");
        String told = run(3, "check", shop.toString());
        assertTrue(told.contains("customers.csv, row 3, customer: found \"Port Pilots\""), told);
        assertTrue(told.contains("customers.csv, row 3, number: found \"P-7\""), told);
        assertTrue(told.contains("customers.csv, row 3, tax: found \"much\""), told);
        assertTrue(told.contains("customers.csv, row 3, units: found \"feet\""), told);
        assertTrue(told.contains("colour"), told);
    }
}
