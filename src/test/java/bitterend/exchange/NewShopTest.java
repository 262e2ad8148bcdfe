package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.exchange.form.InputFile;
import bitterend.finding.Findings;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a new shop begins with is what a shop that states nothing has. */
final class NewShopTest {

    @ParameterizedTest
    @EnumSource(Units.class)
    void settingsWrittenOut_areTheUsualOnes(Units units) {
        MoneyText money = new MoneyText("EUR", 2);
        Settings stated = settings(new NewShop(
                        "Mole End",
                        units,
                        money,
                        new Money(4500),
                        new NewBench(ShopJson.usualTools(units), List.of()),
                        "",
                        List.of(),
                        false)
                .settings());
        Settings usual = settings("{\"format\": \"bitterend/shop/1\", \"name\": \"Mole End\", \"units\": \""
                + units.name().toLowerCase(Locale.ROOT) + "\", \"currency\": \"EUR\", \"labour\": \"45 EUR/h\"}");
        assertEquals(usual, stated);
    }

    private static Settings settings(String text) {
        Findings findings = new Findings();
        Settings settings =
                ShopJson.read(new InputFile(ShopJson.NAME, text, ""), findings).orElseThrow();
        assertEquals(0, findings.size(), findings.sorted().toString());
        return settings;
    }
}
