package bitterend.work.rack;

import bitterend.market.Claims;
import bitterend.stock.Delivery;
import bitterend.work.ComingReels;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.SortedSet;
import java.util.TreeSet;

/** What suppliers delivered short or late: a question that writes nothing. */
public final class AskClaims {
    private final ShopNow now;

    public AskClaims(ShopNow now) {
        this.now = now;
    }

    /** Every supplier that the shop knows or that a reel came of, by name. */
    public SortedSet<String> suppliers() {
        SortedSet<String> names = new TreeSet<>();
        now.shop().supplies().suppliers().forEach(each -> names.add(each.name()));
        now.shop().supplies().offers().forEach(each -> names.add(each.supplier()));
        now.shop().supplies().onOrder().forEach(each -> names.add(each.supplier()));
        now.at()
                .reading(ledger -> ledger.read(Delivery::of))
                .forEach(came -> names.add(came.promised().supplier()));
        names.remove("");
        return names;
    }

    /**
     * What came from a day to another, both included.
     *
     * @param from the first day; {@link LocalDate#MIN} for all
     * @param until the last day; {@link LocalDate#MAX} for all
     * @param supplier the one that is asked about; empty for all
     */
    public Claims ask(LocalDate from, LocalDate until, String supplier) {
        Claims all = Claims.of(
                now.at().reading(ledger -> ledger.read(Delivery::of)), from, until, ComingReels.lateness(now.shop()));
        return supplier.isEmpty() ? all : all.of(supplier);
    }
}
