package bitterend.stock;

import bitterend.measure.Coins;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What a reel was paid for, as the event says that brought it, or one that put it right later.
 *
 * @param price of the reel, without freight; null where nobody said so
 * @param freight its share of what bringing its delivery cost; null where nobody said so
 */
public record Paid(@Nullable Money price, @Nullable Money freight) {
    /** Where nobody said anything. */
    public static final Paid NOT_SAID = new Paid(null, null);

    /** Why a price is refused. */
    public static final String CUSTOMERS_OWN = "the shop pays nothing for a customer's own rope";

    /** Why freight without a price is refused. */
    public static final String FREIGHT_ALONE =
            "freight counts with what was paid for the reel, and that is not known: say --paid, too";

    private static final String PRICE = "paid";
    private static final String FREIGHT = "freight of";
    private static final BigInteger METRE = BigInteger.valueOf(1000);

    /** A price alone. */
    public static Paid of(Money price) {
        return new Paid(price, null);
    }

    /** The same with a share of the freight. */
    public Paid with(Money share) {
        return new Paid(price, share);
    }

    /** The price; another where nobody said so. */
    Money priceOr(Money other) {
        return price == null ? other : price;
    }

    /** Of what is said here, what is not the same there. */
    Paid otherThan(Paid before) {
        return new Paid(
                Objects.equals(price, before.price) ? null : price,
                Objects.equals(freight, before.freight) ? null : freight);
    }

    /** The same where a later event says nothing else. */
    private Paid then(Paid later) {
        return new Paid(later.price == null ? price : later.price, later.freight == null ? freight : later.freight);
    }

    /** The facts that an event keeps of a reel: in the smallest coin. */
    Map<String, String> facts(String reel) {
        Map<String, String> facts = new TreeMap<>();
        if (price != null) {
            facts.put(PRICE + " " + reel, Long.toString(price.minor()));
        }
        if (freight != null) {
            facts.put(FREIGHT + " " + reel, Long.toString(freight.minor()));
        }
        return facts;
    }

    /**
     * A reel of which it is known.
     *
     * @param reel its id
     * @param paid for it; the price is there
     * @param found its length by the first count before anything was cut, else what its label said
     */
    public record OfReel(String reel, Paid paid, Length found) {
        /** The price by the metre that was found, rounded down. */
        public UnitPrice byMetre() {
            return byMetre(paid.price == null ? Money.ZERO : paid.price);
        }

        /** The freight by the metre that was found, rounded down; nothing where it is not booked. */
        public Optional<UnitPrice> freightByMetre() {
            return Optional.ofNullable(paid.freight).map(this::byMetre);
        }

        private UnitPrice byMetre(Money money) {
            return new UnitPrice(BigInteger.valueOf(money.fine().millis())
                    .multiply(METRE)
                    .divide(BigInteger.valueOf(found.mm()))
                    .longValueExact());
        }
    }

    /**
     * Every reel of which the ledger knows what was paid for it, by id: as it was put right last, else as was said when it
     * came, else the price of its order.
     */
    public static Map<String, OfReel> of(Ledger.Stock stock) {
        Map<String, List<Movement>> histories = Delivery.histories(stock);
        List<Event> standing = Standing.events(stock.events());
        Map<String, Paid> paid = said(standing, histories);
        for (Delivery came : Delivery.of(standing, histories, paid)) {
            if (came.paid().minor() > 0) {
                paid.put(came.reel(), of(came.paid()).then(paid.getOrDefault(came.reel(), NOT_SAID)));
            }
        }
        Map<String, OfReel> known = new TreeMap<>();
        paid.forEach((reel, each) -> Optional.ofNullable(histories.get(reel))
                .map(Delivery::found)
                .filter(found -> each.price != null && found.isPositive())
                .ifPresent(found -> known.put(reel, new OfReel(reel, each, found))));
        return known;
    }

    /** What events that were not taken back said of reels, by id; the price of an order of reels is not among it. */
    static Map<String, Paid> said(List<Event> standing, Map<String, List<Movement>> histories) {
        Map<String, Paid> said = new TreeMap<>();
        for (Event event : standing) {
            of(event).forEach((reel, paid) -> {
                if (came(histories.getOrDefault(reel, List.of())) <= event.number()) {
                    said.merge(reel, paid, Paid::then);
                }
            });
        }
        return said;
    }

    /** The event that brought a reel: what was said before was of another one that had its id, and was taken back. */
    private static long came(List<Movement> history) {
        return history.isEmpty() ? Long.MAX_VALUE : history.get(0).event();
    }

    /** What an event says of reels, by id. */
    private static Map<String, Paid> of(Event event) {
        Map<String, Paid> said = new TreeMap<>();
        if (event.act().kind() == Event.Kind.RECEIVED || event.act().kind() == Event.Kind.CORRECTED) {
            event.named(PRICE).forEach(reel -> said.put(reel, of(money(event, PRICE, reel))));
            event.named(FREIGHT)
                    .forEach(reel ->
                            said.put(reel, said.getOrDefault(reel, NOT_SAID).with(money(event, FREIGHT, reel))));
        }
        return said;
    }

    /** An event that put right what was paid for a reel, and what it said of it. */
    public record Corrected(Event event, Paid paid) {
        /** Every one of a reel that was not taken back, oldest first. */
        public static List<Corrected> of(Ledger.Stock stock, String reel) {
            long came = came(Standing.movements(stock.history(reel)));
            return stock.standing(Event.Kind.CORRECTED).stream()
                    .filter(event -> event.number() > came)
                    .map(event -> new Corrected(event, Paid.of(event).getOrDefault(reel, NOT_SAID)))
                    .filter(corrected -> !corrected.paid.equals(NOT_SAID))
                    .toList();
        }
    }

    private static Money money(Event event, String fact, String reel) {
        return new Money(event.number(fact + " " + reel));
    }

    /**
     * What bringing a delivery cost, shared over its reels by what was paid for each, to the coin; by their lengths where
     * nothing was paid for any.
     *
     * @throws LedgerException when it is not known what was paid for one of them
     */
    public static List<CameIn> shared(List<CameIn> all, Money freight) {
        List<Long> parts = new ArrayList<>();
        for (CameIn came : all) {
            Money price = came.price()
                    .orElseThrow(() ->
                            new LedgerException.Refused("freight is shared by what was paid for each reel, and of reel "
                                    + came.reel().id() + " that is not known: say it, too"));
            parts.add(price.minor());
        }
        boolean free = parts.stream().allMatch(part -> part == 0);
        List<Money> shares = Coins.byParts(
                freight,
                free ? all.stream().map(came -> came.reel().length().mm()).toList() : parts);
        return IntStream.range(0, all.size())
                .mapToObj(i -> all.get(i).bringing(shares.get(i)))
                .toList();
    }
}
