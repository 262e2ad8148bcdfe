package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.quoting.PartPrices;
import bitterend.quoting.QuotePolicy;
import bitterend.quoting.WasteBasis;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the member {@code quote} of {@code shop.json}: how a price is made. Everything in it may be left out. */
final class QuotePolicyJson {
    private static final Pattern MINUTES = Pattern.compile("([0-9]{1,4}) *min");
    private static final Reading<WasteBasis> WASTE = Readings.word(WasteBasis.values(), WasteBasis::word);

    private final MoneyText money;
    private final Money labour;

    QuotePolicyJson(MoneyText money, Money labour) {
        this.money = money;
        this.labour = labour;
    }

    QuotePolicy read(JsonObject quote) {
        Fields fields = quote.fields();
        QuotePolicy usual = QuotePolicy.usual(labour);
        return new QuotePolicy(
                fields.optional("waste", WASTE, usual.waste()),
                fields.optional("floorAtRope", Readings::yesOrNo, usual.floorAtRope()),
                new QuotePolicy.Work(
                        labour,
                        fields.optional(
                                "settingUp",
                                QuotePolicyJson::minutes,
                                usual.work().setUpMinutes()),
                        fields.optional(
                                "spoilage", share(Ratio.ONE), usual.work().spoilage()),
                        fields.optional("packing", this::amount, usual.work().packing())),
                new QuotePolicy.Surcharges(
                        fields.optional(
                                "overhead",
                                share(Ratio.of(10)),
                                usual.surcharges().overhead()),
                        fields.optional(
                                "margin",
                                share(Ratio.percent(95)),
                                usual.surcharges().margin()),
                        fields.optional(
                                "minimum", this::amount, usual.surcharges().minimum())),
                parts(quote.objects("parts")),
                fields.optional("validDays", Readings.whole(1, 999), usual.validDays()));
    }

    private PartPrices parts(List<JsonObject> rows) {
        List<PartPrices.Row> parts = new ArrayList<>();
        Map<String, String> places = new HashMap<>();
        for (JsonObject row : rows) {
            row.mayHave("note");
            Fields fields = row.fields();
            String item = fields.require("item", Readings::text, "?");
            Diameter rope = fields.optional("rope", DiameterText::parse, Diameter.NONE);
            Money each = fields.require("price", this::amount, Money.ZERO);
            fields.once("item", item + " " + rope.units(), places);
            parts.add(new PartPrices.Row(item, rope, each));
        }
        return new PartPrices(parts);
    }

    static Parsed<Integer> minutes(String text) {
        Matcher minutes = MINUTES.matcher(text);
        return minutes.matches()
                ? Parsed.of(Integer.parseInt(minutes.group(1)))
                : Parsed.refused("minutes of labour such as 10 min");
    }

    /** A price that is not negative. */
    Parsed<Money> amount(String text) {
        Optional<Money> amount = ShopJson.moneyFor(text, money).parse(text).value();
        return amount.isPresent() && amount.get().minor() >= 0
                ? Parsed.of(amount.get())
                : Parsed.refused(
                        "an amount of money such as " + money.print(new Money(1250)) + "; at most " + money.most());
    }

    private static Reading<Ratio> share(Ratio most) {
        return text -> RatioText.parse(text)
                .then(ratio -> ratio.isNegative() || ratio.compareTo(most) > 0
                        ? Parsed.refused("a share from 0 to " + RatioText.percent(most))
                        : Parsed.of(ratio));
    }
}
