package bitterend.work;

import bitterend.day.OpenWork;
import bitterend.day.OrderBook;
import bitterend.day.RackToday;
import bitterend.demand.Piece;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.PlanFacts.LedgerMark;
import bitterend.exchange.Shop;
import bitterend.packing.PackingProblem;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A shop as it was at one moment.
 *
 * @param at the way to it
 * @param shop its files, with the reels of its ledger where it keeps one
 * @param rack what its ledger said, where it keeps one
 * @param mark which ledger that is, and how far it had got
 */
public record ShopNow(ShopAccess at, Shop shop, Optional<RackToday> rack, LedgerMark mark) {
    /** The day that is worked on: as the shop's files say, else today where the program runs. */
    public LocalDate today() {
        return shop.day().orElseGet(() -> LocalDate.now(at.clock().withZone(ZoneId.systemDefault())));
    }

    /** What is still to be cut on a day: a question of the shop's rack and orders. */
    public PackingProblem open(LocalDate day) {
        return open(DayProblem.of(shop, day)).fresh();
    }

    /** Ids of what is ordered and not cut. */
    public Set<String> stillOpen() {
        Set<String> cut = rack.map(today -> today.cut().keySet()).orElse(Set.of());
        return shop.pieces().stream()
                .map(Piece::id)
                .filter(piece -> !cut.contains(piece))
                .collect(Collectors.toSet());
    }

    /** What is still to be cut of a day's question. */
    public OpenWork open(PackingProblem day) {
        return new OpenWork(day, rack.orElse(RackToday.NONE));
    }

    /** How many movements each reel has had, where the shop keeps a ledger. */
    public Map<String, Long> movements() {
        return rack.map(RackToday::movements).orElse(Map.of());
    }

    /** What the orders ask for. */
    public OrderBook book() {
        return OrderedPieces.book(shop);
    }
}
