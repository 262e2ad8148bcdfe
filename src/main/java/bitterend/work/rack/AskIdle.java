package bitterend.work.rack;

import bitterend.buying.IdleReel;
import bitterend.buying.IdleRope;
import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.measure.Moments;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.stock.Standing;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Which reels nobody is likely to want, and what keeping them costs: a question that writes nothing. */
public final class AskIdle {
    private final ShopNow now;
    private final Shop shop;

    public AskIdle(ShopNow now) {
        this.now = now;
        shop = now.shop();
    }

    /** The idle reels of a day, those first that cost most to keep. */
    public List<IdleReel> ask(LocalDate day, IdleRope.Limits limits) {
        ReelWorth worth = new ReelWorth(now, day);
        Set<String> open = now.stillOpen();
        List<IdleReel> all = new ArrayList<>();
        for (Rope rope : shop.catalogue().ropes()) {
            List<Reel> reels = shop.reels().stream()
                    .filter(reel -> reel.rope().equals(rope.id()))
                    .toList();
            new IdleRope(use(rope, open), day, limits).of(reels).forEach((id, found) -> reels.stream()
                    .filter(reel -> reel.id().equals(id))
                    .forEach(reel -> all.add(idle(reel, rope, found, worth))));
        }
        all.sort(Comparator.comparing(IdleReel::holding).reversed().thenComparing(each -> each.reel()
                .id()));
        return all;
    }

    private IdleRope.Use use(Rope rope, Set<String> open) {
        List<Length> ordered = shop.pieces().stream()
                .filter(piece ->
                        open.contains(piece.id()) && piece.orderedRope().equals(rope.id()) && !piece.ownRope())
                .map(Piece::cut)
                .toList();
        return new IdleRope.Use(
                shop.supplies().history().cutsOf(rope.id()),
                ordered,
                rope.cutting().loss());
    }

    private IdleReel idle(Reel reel, Rope rope, IdleRope.Found found, ReelWorth worth) {
        Settings.Holding holding = shop.settings().holding();
        return new IdleReel(
                reel,
                found.why(),
                found.weeks(),
                found.booked(),
                worth.of(reel),
                IdleReel.ofAYear(reel.length(), rope.price(), holding.interest(), holding.room()),
                since(reel));
    }

    private LocalDate since(Reel reel) {
        LocalDate received = reel.papers().received();
        if (now.rack().isEmpty()) {
            return received;
        }
        List<Movement> history =
                Standing.movements(now.at().reading(ledger -> ledger.read(stock -> stock.history(reel.id()))));
        return history.stream()
                .filter(movement ->
                        movement.by().isNegative() && movement.entry().kind() != Movement.Kind.COUNTED)
                .reduce((earlier, later) -> later)
                .map(movement -> Moments.day(movement.at()))
                .orElseGet(() -> history.isEmpty() || !received.equals(LocalDate.MIN)
                        ? received
                        : Moments.day(history.get(0).at()));
    }
}
