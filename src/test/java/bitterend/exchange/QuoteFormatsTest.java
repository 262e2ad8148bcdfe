package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Findings;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.quoting.QuotePolicy;
import bitterend.quoting.WasteBasis;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** How prices are made, as shop.json states it, and what docs/file-formats.md tells of requests. */
final class QuoteFormatsTest {
    private static final Money LABOUR = new Money(4800);

    private final Findings findings = new Findings();

    private QuotePolicy policy(String quote) {
        InputFile file = new InputFile("shop.json", "{\"format\": \"f/1\", \"quote\": " + quote + "}", "");
        JsonObject shop = JsonDocument.open(file, "f/1", findings).orElseThrow();
        return new QuotePolicyJson(new MoneyText("EUR", 2), LABOUR).read(shop.object("quote"));
    }

    @Test
    void everyMemberAndColumn_isExplained() throws IOException {
        String page = Files.readString(Path.of("docs/file-formats.md"));
        QuotePolicyJson.MEMBERS.forEach(name -> assertTrue(page.contains("`" + name + "`"), name));
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
                 "packing": "1.20 EUR", "overhead": "0.1", "margin": "25 %", "minimum": "40 EUR", "validDays": 14}""");
        assertEquals(
                new QuotePolicy(
                        WasteBasis.MARGINAL,
                        true,
                        new QuotePolicy.Work(LABOUR, 12, Ratio.percent(3), new Money(120)),
                        new QuotePolicy.Surcharges(Ratio.percent(10), Ratio.percent(25), new Money(4000)),
                        14),
                policy);
        assertEquals(0, findings.size());
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
