package bitterend.work;

import bitterend.exchange.Shop;
import bitterend.packing.Arrival;
import bitterend.packing.CutDays;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What happened to the reels on order that a plan rides on since it was made: they came, were put off, changed or called off. */
final class ComingSince {
    private final PackingProblem then;
    private final Map<String, List<String>> came;
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, Arrival> arrivals = new HashMap<>();
    private final CutDays days;

    ComingSince(PackingProblem then, Shop shop, Map<String, List<String>> came) {
        this.then = then;
        this.came = came;
        days = new CutDays(then);
        ComingReels.of(shop, shop.supplies().onOrder(), then.day()).forEach((reel, arrival) -> {
            reels.put(reel.id(), reel);
            arrivals.put(reel.id(), arrival);
        });
    }

    /** Whether the plan has a reel as one that is on order. */
    boolean isAbout(String reel) {
        return then.isComing(reel);
    }

    List<Remark> of(ReelDraw draw) {
        Arrival was = Objects.requireNonNull(then.arrivals().get(draw.reel()));
        Arrival is = arrivals.get(draw.reel());
        String id = draw.reel();
        if (is == null) {
            return List.of(Remark.barring(id, "reel " + id + gone(was.order(), id)));
        }
        if (!sameRope(then.reel(id), Objects.requireNonNull(reels.get(id)))) {
            return List.of(Remark.barring(id, "reel " + id + ": order " + was.order() + " was changed"));
        }
        if (is.equals(was)) {
            return List.of();
        }
        LocalDate first = draw.cuts().stream()
                .map(days::lastFor)
                .min(LocalDate::compareTo)
                .orElse(LocalDate.MAX);
        String told = "reel " + id + ": order " + was.order() + " is expected " + is.expected() + " now, not "
                + was.expected() + ", and counted on from " + is.from();
        return List.of(
                first.isBefore(is.from())
                        ? Remark.barring(id, told + "; work that rides on it must be cut by " + first)
                        : Remark.told(id, told));
    }

    private String gone(String order, String reel) {
        int number = Arrival.numberOf(reel);
        List<String> there = came.getOrDefault(order, List.of());
        return number <= there.size()
                ? " came and is reel " + there.get(number - 1) + " now"
                : " is not on order any more: on-order.csv has no such reel of order " + order;
    }

    private static boolean sameRope(Reel was, Reel is) {
        return was.rope().equals(is.rope())
                && was.contents().worked().equals(is.contents().worked())
                && was.papers().equals(is.papers());
    }
}
