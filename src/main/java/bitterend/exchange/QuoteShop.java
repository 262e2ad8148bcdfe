package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.demand.DemandModel;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.quoting.QuoteBasis;
import bitterend.quoting.sharing.NewReel;
import bitterend.quoting.sharing.NewRope;
import bitterend.stock.StockValue;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a shop folder knows that a quote rests on. */
public final class QuoteShop {
    private QuoteShop() {}

    /**
     * A day's open work and rack, every rope on the new reels that suppliers offer, and the past weeks.
     *
     * @param book what is still to be cut, on today's rack
     */
    public static QuoteBasis basis(Shop shop, PackingProblem book) {
        Map<String, NewRope> bought = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            StockValue value = book.values().getOrDefault(rope.id(), StockValue.NOTHING);
            bought.put(rope.id(), new NewRope(rope, value, shop.settings().prices(), sizes(shop, rope)));
        }
        DemandModel model = new DemandModel(shop.catalogue(), shop.settings().units());
        return new QuoteBasis(book, bought, shop.supplies().history().piecesByWeek(), model::pieces);
    }

    /** Reels as they are offered, each length at its lowest price with freight; without offers the usual reel at the rope's price. */
    private static List<NewReel> sizes(Shop shop, Rope rope) {
        Map<Length, Cost> paid = new TreeMap<>();
        shop.supplies().offers().stream()
                .filter(offer -> offer.rope().equals(rope.id()) && offer.plannable())
                .forEach(offer -> paid.merge(offer.usable(), offer.paid(), (a, b) -> a.compareTo(b) <= 0 ? a : b));
        if (paid.isEmpty()) {
            return List.of(NewReel.at(rope.price(), rope.usualReel()));
        }
        return paid.entrySet().stream()
                .map(size -> new NewReel(size.getKey(), size.getValue()))
                .toList();
    }
}
