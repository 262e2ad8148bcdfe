package bitterend.work.rack;

import bitterend.exchange.Shop;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.work.ShopAccess;

/** Begins the ledger of a shop with the reels of its {@code reels.csv}. */
public final class BeginLedger {
    private final ShopAccess at;

    public BeginLedger(ShopAccess at) {
        this.at = at;
    }

    /**
     * Begins it.
     *
     * @param shop its files
     * @param who name of the person
     * @return its head
     * @throws bitterend.stock.LedgerException.Refused when there is one
     */
    public Head begin(Shop shop, String who) {
        Event.Act begun = Event.Act.of(Event.Kind.OPENED, who, "")
                .with("reels", "" + shop.reels().size());
        at.ledger().begin(begun, books -> shop.reels()
                .forEach(reel -> books.append(
                        new Movement.Entry(Movement.Kind.RECEIVED, reel, "on the rack when the ledger was begun"))));
        return at.reading(ledger -> ledger.read(Ledger.Stock::head));
    }
}
