package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.EndWork;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.quoting.PartPrices;
import bitterend.quoting.QuotePolicy;
import bitterend.quoting.WasteBasis;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How prices are made, as shop.json states it, and what docs/file-formats.md tells of requests. */
final class QuoteFormatsTest {
    private static final Money LABOUR = new Money(4800);

    private final Findings findings = new Findings();

    private QuotePolicy policy(String quote) {
        InputFile file = new InputFile("shop.json", "{\"format\": \"f/1\", \"quote\": " + quote + "}", "");
        QuotePolicyJson policy = new QuotePolicyJson(new MoneyText("EUR", 2), LABOUR);
        return JsonDocument.read(file, "f/1", findings, shop -> policy.read(shop.object("quote")))
                .orElseThrow();
    }

    @Test
    void everyMemberAndColumn_isExplained() throws IOException {
        String page = Files.readString(Path.of("docs/file-formats.md"));
        policy("{\"zebra\": 1}");
        String known = findings.sorted().get(0).expected();
        List<String> members = List.of(known.substring(known.indexOf(':') + 2).split(", "));
        assertEquals(10, members.size(), known);
        members.forEach(name -> assertTrue(page.contains("`" + name + "`"), name));
        QuoteRequestFile.OWN.forEach(name -> assertTrue(page.contains("`" + name + "`"), name));
    }

    @Test
    void policyThatStatesNothing_isTheUsualOne() {
        assertEquals(QuotePolicy.usual(LABOUR), policy("{}"));
        assertEquals(0, findings.size());
    }

    @Test
    void policy_isReadAsStated() {
        QuotePolicy policy = policy(
                """
                {"waste": "marginal", "floorAtRope": "yes", "settingUp": "12 min", "spoilage": "3 %",
                 "packing": "1.20 EUR", "overhead": "0.1", "margin": "25 %", "minimum": "40 EUR", "validDays": 14,
                 "parts": [{"item": "wire rope clip", "rope": "1/2 in", "price": "1.10 EUR"}]}""");
        assertEquals(
                new QuotePolicy(
                        WasteBasis.MARGINAL,
                        true,
                        new QuotePolicy.Work(LABOUR, 12, Ratio.percent(3), new Money(120)),
                        new QuotePolicy.Surcharges(Ratio.percent(10), Ratio.percent(25), new Money(4000)),
                        new PartPrices(
                                List.of(new PartPrices.Row("wire rope clip", new Diameter(127_000), new Money(110)))),
                        14),
                policy);
        assertEquals(0, findings.size());
    }

    /** The row that says more of the name holds, then the one that states the size. */
    @Test
    void priceOfAPart_isTheClosestRow() {
        PartPrices prices = policy(
                        """
                        {"parts": [{"item": "whipping twine", "price": "0.35 EUR"},
                                   {"item": "whipping twine", "rope": "20 mm", "price": "0.50 EUR"},
                                   {"item": "whipping twine, lock stitch", "price": "0.20 EUR"}]}""")
                .parts();
        assertEquals(0, findings.size());
        assertEquals(new Money(35), each(prices, "whipping twine, whipping", 12));
        assertEquals(new Money(50), each(prices, "whipping twine, whipping", 20));
        assertEquals(new Money(20), each(prices, "whipping twine, lock stitch", 20));
        assertTrue(prices.each(new EndWork.Picked("whipping twines", Diameter.ofMillimetres(20), 1))
                .isEmpty());
    }

    private static Money each(PartPrices prices, String item, int mm) {
        return prices.each(new EndWork.Picked(item, Diameter.ofMillimetres(mm), 1))
                .orElseThrow();
    }

    @Test
    void faultsOfPartPrices_areTold() {
        policy(
                """
                {"parts": [{"item": "clip", "price": "-1 EUR"}, {"rope": "thick", "price": "1 EUR"},
                           {"item": "sleeve", "price": "1 EUR"}, {"item": "sleeve", "price": "2 EUR", "colour": "red"}]}""");
        assertEquals(
                List.of("/quote/parts/0", "/quote/parts/1", "/quote/parts/1", "/quote/parts/3", "/quote/parts/3"),
                findings.sorted().stream().map(Finding::place).toList());
    }

    @Test
    void everyFaultOfAPolicy_isTold() {
        policy(
                """
                {"waste": "some", "settingUp": "10", "spoilage": "-1 %", "packing": "-1 EUR", "margin": "100 %",
                 "validDays": 0, "colour": "red"}""");
        assertEquals(7, findings.size());
        findings.sorted().forEach(finding -> assertEquals("/quote", finding.place()));
    }
}
