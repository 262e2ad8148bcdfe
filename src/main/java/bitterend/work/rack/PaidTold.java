package bitterend.work.rack;

import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.stock.CameIn;
import bitterend.stock.LedgerException;
import bitterend.stock.Paid;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is booked of the price of reels that came, and of bringing them. */
final class PaidTold {
    private PaidTold() {}

    /** Of one reel, in a sentence; nothing where nothing was said. */
    static List<String> of(CameIn came, MoneyText money) {
        Money price = came.paid().price();
        Money freight = came.paid().freight();
        String paid = came.price().map(money::print).orElse("")
                + (price == null && freight != null ? ", the price of its order," : "");
        return price == null && freight == null
                ? List.of()
                : List.of(paid + " was paid for reel " + came.reel().id()
                        + (freight == null ? "" : ", and " + money.print(freight) + " for bringing it"));
    }

    /** What is counted with now, and what it was, in a sentence; nothing where it is not known. */
    static List<String> corrected(Paid before, Optional<Paid.OfReel> now, MoneyText money) {
        return now.map(is -> {
                    Money freight = is.paid().freight();
                    return List.of(money.print(orNothing(is.paid().price()))
                            + was(before.price(), is.paid().price(), money)
                            + " was paid for reel " + is.reel()
                            + (freight == null
                                    ? ""
                                    : ", and " + money.print(freight) + was(before.freight(), freight, money)
                                            + " for bringing it"));
                })
                .orElse(List.of());
    }

    private static String was(@Nullable Money before, @Nullable Money now, MoneyText money) {
        return before == null || before.equals(now) ? "" : ", not " + money.print(before) + ",";
    }

    /** How the freight of a list falls on its reels, in a sentence. */
    static List<String> shares(List<CameIn> booked, @Nullable Money freight, MoneyText money) {
        if (freight == null || booked.isEmpty()) {
            return List.of();
        }
        try {
            return List.of("Of " + money.print(freight) + " for bringing them, by what was paid for each: "
                    + Paid.shared(booked, freight).stream()
                            .map(came -> money.print(orNothing(came.paid().freight())) + " on "
                                    + came.reel().id())
                            .collect(Collectors.joining(", ")));
        } catch (LedgerException.Refused refused) {
            String why = refused.sentence();
            return List.of(why.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + why.substring(1));
        }
    }

    private static Money orNothing(@Nullable Money share) {
        return share == null ? Money.ZERO : share;
    }
}
