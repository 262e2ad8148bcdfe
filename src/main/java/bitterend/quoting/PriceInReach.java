package bitterend.quoting;

import bitterend.market.Market;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What rope costs by the metre on the cheapest new reel that pieces get, by the rule of a quote: of an offer that can be had, at
 * a price that asks for no more reels than the pieces need of its length; the cheapest with freight by reel and by mass.
 *
 * @param price by the metre that can be counted on, that freight in it, rounded down
 * @param goods the same without freight
 * @param inReach whether the pieces get it; otherwise every offer asks for more reels, and it is the cheapest of all
 */
public record PriceInReach(UnitPrice price, UnitPrice goods, boolean inReach) {
    /** The price of a rope for pieces of these cut lengths; nothing where nobody offers it. */
    public static Optional<PriceInReach> of(Market market, String rope, List<Length> cuts) {
        ReelsNeeded need = new ReelsNeeded(cuts);
        List<Tier> tiers = market.offered(rope).stream()
                .flatMap(offer -> Tier.of(market, offer, Set.of()).stream())
                .toList();
        List<Tier> reached = tiers.stream()
                .filter(tier -> !tier.isTooFew(need.of(tier.length())))
                .toList();
        return (reached.isEmpty() ? tiers : reached)
                .stream()
                        .min(Comparator.comparingLong(
                                tier -> tier.reel().byMetre().millisPerMetre()))
                        .map(tier -> new PriceInReach(
                                tier.reel().byMetre(), tier.goods().byMetre(), !reached.isEmpty()));
    }
}
