package bitterend.work.rack;

import bitterend.exchange.Shop;
import bitterend.stock.LedgerException;
import bitterend.stock.Transfers;
import bitterend.stock.Transfers.OnTheWay;
import bitterend.work.Booking;
import bitterend.work.ShopAccess;
import java.util.List;
import java.util.function.UnaryOperator;

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
        return at.reading(ledger -> new Transfers(ledger, UnaryOperator.identity()).onTheWay());
    }

    /**
     * Books it.
     *
     * @param newId its id here
     */
    public Booking book(String reel, String newId) {
        return desk.book(ledger -> {
            Transfers transfers = new Transfers(ledger, desk.caller());
            transfers.onTheWay().stream()
                    .filter(each -> each.reel().id().equals(reel))
                    .filter(each ->
                            shop.catalogue().findRope(each.reel().rope()).isEmpty())
                    .findFirst()
                    .ifPresent(each -> {
                        throw new LedgerException.Refused("reel " + reel + " is rope "
                                + each.reel().rope() + ", which ropes.json of this loft does not have");
                    });
            return transfers.arrive(reel, newId, desk.note());
        });
    }
}
