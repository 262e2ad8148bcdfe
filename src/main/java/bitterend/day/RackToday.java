package bitterend.day;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Moments;
import bitterend.stock.CameIn;
import bitterend.stock.Delivery;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.stock.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a plan needs to know of the ledger, as it is at one moment.
 *
 * @param reels what is on the rack
 * @param gone reels of which nothing is left
 * @param movements number of movements of every reel
 * @param cut the movement that cut it, of every piece that is cut
 * @param parents the reel that each coil was cut off, by coil
 * @param released the event that released it last, of every matched set that was released
 * @param known every reel there ever was, as it stands or stood last, by id
 * @param came the reels that came of each order of reels, first to last, by its number
 * @param deliveries the same against what was ordered, where the ledger keeps that
 */
public record RackToday(
        List<Reel> reels,
        Set<String> gone,
        Map<String, Long> movements,
        Map<String, Movement> cut,
        Map<String, String> parents,
        Map<String, Event> released,
        Map<String, Reel> known,
        Map<String, List<String>> came,
        List<Delivery> deliveries) {
    /** Of a shop that keeps no ledger. */
    public static final RackToday NONE =
            new RackToday(List.of(), Set.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), List.of());

    public RackToday {
        reels = List.copyOf(reels);
        gone = Set.copyOf(gone);
        movements = Map.copyOf(movements);
        cut = Map.copyOf(cut);
        parents = Map.copyOf(parents);
        released = Map.copyOf(released);
        known = Map.copyOf(known);
        came = Map.copyOf(came);
        deliveries = List.copyOf(deliveries);
    }

    /** A reel as it was once, with what is known of it today: its lot may have been corrected since. */
    Reel today(Reel was) {
        return known.getOrDefault(was.id(), was);
    }

    /** A reel, then every other reel and coil that was rope of the same reel when it came. */
    List<String> sameReel(String reel) {
        String first = asReceived(reel);
        List<String> same = new ArrayList<>(List.of(reel));
        movements.keySet().stream()
                .filter(other -> !other.equals(reel) && asReceived(other).equals(first))
                .sorted(NaturalOrder.IDS)
                .forEach(same::add);
        return same;
    }

    private String asReceived(String reel) {
        String first = reel;
        for (String parent = parents.get(first); parent != null; parent = parents.get(first)) {
            first = parent;
        }
        return first;
    }

    /** Whether a person let the set go on without matching this cut. */
    boolean isReleased(String set, Movement cut) {
        Event release = released.get(set);
        return release != null && release.number() > cut.event();
    }

    /** That a matched set was released: when, by whom and why; empty when it was not. */
    public String released(String set) {
        return toldIfAny(set, released.get(set));
    }

    /** That a matched set was released by what the ledger says at one moment. */
    public static String released(String set, Ledger.Stock stock) {
        return toldIfAny(set, releases(stock).get(set));
    }

    private static String toldIfAny(String set, @Nullable Event release) {
        return release == null ? "" : told(set, release);
    }

    /** A release in words. */
    public static String told(String set, Event release) {
        String note = release.act().note();
        return "set " + set + " was released on "
                + Moments.day(release.at()) + " by "
                + release.act().who()
                + (note.isEmpty() ? "" : ": " + note);
    }

    public static RackToday of(Ledger ledger) {
        return ledger.read(RackToday::of);
    }

    /** What the ledger says at one moment, such as while an event is written. */
    public static RackToday of(Ledger.Stock stock) {
        List<Reel> reels = new ArrayList<>();
        Set<String> gone = new TreeSet<>();
        Map<String, Long> movements = new TreeMap<>();
        Map<String, Reel> known = new TreeMap<>();
        for (Holding holding : stock.holdings()) {
            movements.put(holding.id(), holding.movements());
            known.put(holding.id(), holding.reel());
            if (holding.gone()) {
                gone.add(holding.id());
            } else {
                reels.add(holding.reel());
            }
        }
        return new RackToday(
                reels,
                gone,
                movements,
                new CutPieces(stock).cuts(),
                Standing.parents(stock.movements()),
                releases(stock),
                known,
                came(stock),
                Delivery.of(stock));
    }

    private static Map<String, List<String>> came(Ledger.Stock stock) {
        Map<String, List<String>> came = new TreeMap<>();
        for (Event event : stock.standing(Event.Kind.RECEIVED)) {
            event.named(Event.ON_ORDER).forEach(order -> came.computeIfAbsent(order, any -> new ArrayList<>())
                    .addAll(CameIn.reels(event, order)));
        }
        return came;
    }

    private static Map<String, Event> releases(Ledger.Stock stock) {
        Map<String, Event> releases = new TreeMap<>();
        for (Event event : stock.standing(Event.Kind.SET_RELEASED)) {
            event.named("set").forEach(set -> releases.put(set, event));
        }
        return releases;
    }
}
