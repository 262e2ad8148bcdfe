package bitterend.cli;

import bitterend.exchange.StockText;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Paid;
import org.jspecify.annotations.Nullable;

/** Money that was typed behind {@code --paid} and {@code --freight}: it is read once the shop is, for that has the currency. */
final class TypedMoney {
    private TypedMoney() {}

    /**
     * What was paid; what was not typed is null in it.
     *
     * @param length of the reel as it came, for a price by length
     */
    static Paid paid(@Nullable String paid, @Nullable String freight, Length length, MoneyText money) {
        return new Paid(
                paid == null ? null : read("--paid", paid, StockText.paid(paid, length, money)),
                freight(freight, money));
    }

    /** What bringing a delivery cost; null where it was not typed. */
    static @Nullable Money freight(@Nullable String freight, MoneyText money) {
        return freight == null ? null : read("--freight", freight, StockText.amount(freight, money));
    }

    private static Money read(String option, String text, Parsed<Money> amount) {
        return amount.value()
                .orElseThrow(() -> new Contradictory(option + ": found \"" + text + "\", expected "
                        + amount.refusal().orElse("an amount of money")));
    }
}
