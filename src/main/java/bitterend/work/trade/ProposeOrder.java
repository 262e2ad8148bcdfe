package bitterend.work.trade;

import bitterend.buying.Spending;
import bitterend.buying.reorder.Position;
import bitterend.buying.reorder.Positions;
import bitterend.buying.reorder.Proposal;
import bitterend.buying.reorder.Reordering;
import bitterend.buying.reorder.Terms;
import bitterend.demand.Piece;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.market.UsualLateness;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.work.ComingReels;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Which ropes to order again now: a question that writes nothing. */
public final class ProposeOrder {
    private final ShopNow now;
    private final Shop shop;

    public ProposeOrder(ShopNow now) {
        this.now = now;
        shop = now.shop();
    }

    /**
     * What is asked.
     *
     * @param day the day reels would be ordered
     * @param service share of the rope that is to be there in time; null for what the shop says
     * @param budget the most that is paid now, where that is less than the budget of the shop; {@link Terms#NO_BUDGET}
     * @param seed of every draw
     */
    public record Request(LocalDate day, @Nullable Ratio service, Money budget, long seed) {
        Optional<Ratio> findService() {
            return Optional.ofNullable(service);
        }
    }

    /** The proposal. */
    public Proposal propose(Request request) {
        UsualLateness lateness = ComingReels.lateness(shop);
        Set<String> open = now.stillOpen();
        List<Piece> pieces = shop.pieces().stream()
                .filter(piece -> open.contains(piece.id()))
                .toList();
        Positions there = new Positions(shop.reels(), pieces, shop.supplies().onOrder(), lateness, request.day());
        Map<String, Position> positions = new TreeMap<>();
        shop.catalogue().ropes().forEach(rope -> positions.put(rope.id(), there.of(rope)));
        Spending spending = shop.settings().spending();
        Settings.Holding holding = shop.settings().holding();
        Terms terms = new Terms(
                request.findService().orElse(shop.settings().service()),
                request.budget().compareTo(spending.budget()) < 0 || !spending.hasBudget()
                        ? request.budget()
                        : spending.budget(),
                request.budget(),
                spending.hasMostWeeks() ? spending.mostWeeks() : Terms.USUAL_WEEKS,
                holding.interest(),
                holding.room(),
                request.seed());
        return new Reordering(shop.market(request.day()), lateness, terms)
                .propose(shop.catalogue().ropes(), positions, shop.supplies().history());
    }
}
