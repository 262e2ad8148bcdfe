package bitterend.buying;

import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Cost;
import bitterend.measure.Money;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** What is proven of every way to buy. */
final class Proven {
    private final Orders orders;
    private final List<PartFound> parts;
    private final Purchase least;
    private final Cost paid;

    /** @param least the least paid that was found: no way that pays less is large enough to come freight paid above it */
    Proven(Orders orders, List<PartFound> parts, Purchase least) {
        this.orders = orders;
        this.parts = parts;
        this.least = least;
        Cost sum = parts.stream().map(part -> paid(part, freight(part))).reduce(byOrder(this::freight), Cost::plus);
        paid = sum.compareTo(least.paid()) > 0 ? least.paid() : sum.roundedUp().fine();
    }

    /** Whether a way that pays less than the least found can be large enough for a supplier of a part to send it freight paid. */
    private Freight freight(PartFound part) {
        return part.offers().stream()
                        .map(offer -> terms(offer).freeFrom())
                        .allMatch(free -> free.equals(Supplier.Freight.NEVER)
                                || free.fine().compareTo(least.paid()) > 0)
                ? Freight.CHARGED
                : Freight.PAID_BY_SUPPLIER;
    }

    private static Cost paid(PartFound part, Freight freight) {
        return part.paidBound().getOrDefault(freight, Cost.ZERO);
    }

    /** No way that leaves no more unplanned pays less: whole coins. */
    Cost paid() {
        return paid;
    }

    /** None costs less. */
    Cost cost() {
        return parts.stream().map(PartFound::costBound).reduce(byOrder(part -> Freight.PAID_BY_SUPPLIER), Cost::plus);
    }

    /** What is charged by order at the very least, where it is proven that something is paid. */
    private Cost byOrder(Function<PartFound, Freight> charged) {
        return parts.stream()
                .filter(part -> paid(part, charged.apply(part)).millis() > 0)
                .map(part -> least(part, charged.apply(part)))
                .max(Comparator.naturalOrder())
                .orElse(Cost.ZERO);
    }

    private Cost least(PartFound part, Freight charged) {
        return part.offers().stream()
                .map(offer -> charged == Freight.PAID_BY_SUPPLIER && Freight.mayBeFree(orders.market(), offer)
                        ? Money.ZERO
                        : terms(offer).byOrder())
                .min(Comparator.naturalOrder())
                .orElse(Money.ZERO)
                .fine();
    }

    private Supplier.Freight terms(Offer offer) {
        return orders.market().supplier(offer.supplier()).freight();
    }
}
