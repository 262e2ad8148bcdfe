package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a reel was paid for, as the events say that brought it; a later one holds.
 *
 * @param price of the reel, without freight; null where nobody said so
 * @param freight its share of what bringing its delivery cost; null where nobody said so
 */
public record Paid(@Nullable Money price, @Nullable Money freight) {
    /** Where nobody said anything. */
    public static final Paid NOT_SAID = new Paid(null, null);

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

    /** Every reel of which the ledger knows what was paid for it, by id: said when it came, else the price of its order. */
    public static Map<String, OfReel> of(Ledger.Stock stock) {
        Map<String, Paid> said = new TreeMap<>();
        for (Delivery came : Delivery.of(stock)) {
            if (came.promised().price().minor() > 0) {
                said.put(came.reel(), of(came.promised().price()));
            }
        }
        for (Event event : stock.standing(Event.Kind.RECEIVED)) {
            event.named(PRICE).forEach(reel -> said.merge(reel, of(money(event, PRICE, reel)), (old, is) -> is));
            event.named(FREIGHT)
                    .forEach(reel -> said.computeIfPresent(reel, (id, paid) -> paid.with(money(event, FREIGHT, reel))));
        }
        Map<String, List<Movement>> histories = Delivery.histories(stock);
        Map<String, OfReel> known = new TreeMap<>();
        said.forEach((reel, paid) -> Optional.ofNullable(histories.get(reel))
                .map(Delivery::found)
                .filter(Length::isPositive)
                .ifPresent(found -> known.put(reel, new OfReel(reel, paid, found))));
        return known;
    }

    /** The price that was said of a reel with the event that brought it; nothing where none was. */
    static Optional<Money> said(Event event, String reel) {
        return event.named(PRICE).contains(reel) ? Optional.of(money(event, PRICE, reel)) : Optional.empty();
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
        return shared(
                all,
                freight,
                free ? all.stream().map(came -> came.reel().length().mm()).toList() : parts);
    }

    private static List<CameIn> shared(List<CameIn> all, Money freight, List<Long> parts) {
        BigInteger whole = BigInteger.valueOf(freight.minor());
        BigInteger of = parts.stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::add);
        List<CameIn> shared = new ArrayList<>();
        BigInteger until = BigInteger.ZERO;
        BigInteger given = BigInteger.ZERO;
        for (int i = 0; i < all.size(); i++) {
            until = until.add(BigInteger.valueOf(parts.get(i)));
            BigInteger share = whole.multiply(until).divide(of).subtract(given);
            given = given.add(share);
            shared.add(all.get(i).bringing(new Money(share.longValueExact())));
        }
        return shared;
    }
}
