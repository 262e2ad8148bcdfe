package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.demand.DemandModel;
import bitterend.demand.Piece;
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
     * A day's open work and rack, and every rope on new reels of its usual length at its price.
     *
     * @param book what is still to be cut, on today's rack
     */
    public static QuoteBasis basis(Shop shop, PackingProblem book, List<List<Piece>> pastWeeks) {
        Map<String, NewRope> bought = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            StockValue value = book.values().getOrDefault(rope.id(), StockValue.NOTHING);
            NewReel usual = NewReel.at(rope.price(), rope.usualReel());
            bought.put(rope.id(), new NewRope(rope, value, shop.settings().prices(), List.of(usual)));
        }
        DemandModel model = new DemandModel(shop.catalogue(), shop.settings().units());
        return new QuoteBasis(book, bought, pastWeeks, model::pieces);
    }
}
