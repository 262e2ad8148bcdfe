package bitterend.day;

import bitterend.measure.Length;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import bitterend.stock.Standing;

/**
 * Rope of a cut piece that goes back to the rack. Whatever was found out of its reel since holds for it too: the coil has
 * today's lot, papers and custody of the reel, and is on hold when the reel was condemned.
 */
public final class RopeBack {
    private RopeBack() {}

    /** The coil, under the next number of its reel. */
    public static Reel coil(Ledger.Stock stock, String reel, Length length) {
        Holding holding = stock.findHolding(reel).orElseThrow();
        Reel coil = RopeWork.coil(holding.reel(), CoilIds.next(stock, reel), length);
        return isCondemned(stock, holding) ? coil.withCustody(coil.custody().onHold()) : coil;
    }

    /** The reel that a piece was cut off or given from, as it was then but for what was found out of it since. */
    static Reel today(Ledger.Stock stock, Movement cut) {
        Reel then = cut.entry().after();
        Holding holding = stock.findHolding(then.id()).orElseThrow();
        Reel now = holding.reel();
        Reel known = new Reel(
                then.id(),
                now.rope(),
                now.lot(),
                then.contents(),
                then.flaws(),
                now.papers(),
                now.custody(),
                then.full(),
                then.where());
        return isCondemned(stock, holding) ? known.withCustody(known.custody().onHold()) : known;
    }

    private static boolean isCondemned(Ledger.Stock stock, Holding holding) {
        return holding.gone()
                && Standing.movements(stock.history(holding.id())).stream()
                        .map(movement -> movement.entry().kind())
                        .filter(kind -> !kind.isOfPieceAlone())
                        .reduce((earlier, later) -> later)
                        .filter(Kind.CONDEMNED::equals)
                        .isPresent();
    }
}
