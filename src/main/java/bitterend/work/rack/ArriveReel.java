package bitterend.work.rack;

import bitterend.exchange.Shop;
import bitterend.stock.LedgerException;
import bitterend.stock.Reel;
import bitterend.stock.Transfers;
import bitterend.stock.Transfers.OnTheWay;
import bitterend.work.Booking;
import bitterend.work.ShopAccess;
import java.util.List;

/** Books a reel that came in from another loft of the same server, as that loft sent it. */
public final class ArriveReel {
    private final RackDesk desk;
    private final Shop shop;

    public ArriveReel(RackDesk desk, Shop shop) {
        this.desk = desk;
        this.shop = shop;
    }

    /** What is on the way to the loft and from it. */
    public static List<OnTheWay> onTheWay(ShopAccess at) {
        return at.reading(Transfers::onTheWay);
    }

    /**
     * Books it.
     *
     * @param newId its id here
     */
    public Booking book(String reel, String newId) {
        return desk.book(ledger ->
                new Transfers(ledger, desk.caller()).arrive(reel, newId, desk.note(), this::refuseUnknownRope));
    }

    private void refuseUnknownRope(Reel sent) {
        if (shop.catalogue().findRope(sent.rope()).isEmpty()) {
            throw new LedgerException.Refused(
                    "reel " + sent.id() + " is rope " + sent.rope() + ", which ropes.json of this loft does not have");
        }
    }
}
