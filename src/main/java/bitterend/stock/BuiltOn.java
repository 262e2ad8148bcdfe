package bitterend.stock;

import bitterend.stock.Event.Kind;
import bitterend.stock.PieceAccount.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was built on an event, and on that again: later movements of the same reels, later cuts and uses of the same pieces
 * whatever reel they came off, later facts about them, cuts that match only because a set was released, and cuts of a set
 * that the piece put back would not match.
 */
final class BuiltOn {
    private static final int MOST_NAMED = 12;

    private final Map<Long, Event> events = new TreeMap<>();
    private final Map<Long, List<Movement>> ofEvent = new HashMap<>();
    private final Map<String, List<Movement>> ofReel = new HashMap<>();
    private final Map<Place, List<Movement>> ofPlace = new HashMap<>();
    private final Map<String, List<Event>> factsOfPiece = new HashMap<>();
    private final PieceAccount pieces;
    private final SetMates mates;

    private BuiltOn(Ledger.Stock stock) {
        List<Movement> all = stock.movements();
        pieces = PieceAccount.of(all);
        mates = new SetMates(all, pieces);
        for (Movement movement : Standing.movements(all)) {
            add(ofEvent, movement.event(), movement);
            add(ofReel, movement.entry().reel(), movement);
            pieces.touchedBy(movement.number()).forEach(place -> add(ofPlace, place, movement));
        }
        for (Event event : Standing.events(stock.events())) {
            events.put(event.number(), event);
            if (event.movements().isEmpty()) {
                event.named("piece").forEach(piece -> add(factsOfPiece, piece, event));
            }
        }
    }

    private static <K, V> void add(Map<K, List<V>> map, K key, V value) {
        map.computeIfAbsent(key, each -> new ArrayList<>()).add(value);
    }

    /** Refuses to take these movements back, all of them standing, while something is built on them. */
    static void refuse(Ledger.Stock stock, List<Movement> wrong) {
        BuiltOn built = new BuiltOn(stock);
        built.refuse(
                built.on(wrong, List.of()), wrong.stream().map(Movement::event).collect(Collectors.toSet()));
    }

    /** Refuses to take an event back whole while something is built on it. */
    static void refuse(Ledger.Stock stock, Event wrong) {
        BuiltOn built = new BuiltOn(stock);
        built.refuse(built.on(wrong), Set.of(wrong.number()));
    }

    private void refuse(Map<Long, String> first, Set<Long> wrong) {
        TreeMap<Long, String> later = new TreeMap<>(Comparator.reverseOrder());
        later.putAll(first);
        Deque<Long> open = new ArrayDeque<>(first.keySet());
        while (!open.isEmpty()) {
            on(Objects.requireNonNull(events.get(open.pop()))).forEach((number, told) -> {
                if (!wrong.contains(number) && later.putIfAbsent(number, told) == null) {
                    open.push(number);
                }
            });
        }
        refuse(later.values(), wrong);
    }

    private static void refuse(Collection<String> later, Set<Long> wrong) {
        if (later.isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add("this was built on event "
                + wrong.stream().sorted().map(String::valueOf).collect(Collectors.joining(", "))
                + "; take it back first, in this order:");
        later.stream().limit(MOST_NAMED).forEach(line -> lines.add("  " + line));
        if (later.size() > MOST_NAMED) {
            lines.add("  and " + (later.size() - MOST_NAMED) + " more");
        }
        throw new LedgerException.Refused(String.join("\n", lines));
    }

    private Map<Long, String> on(Event event) {
        return on(ofEvent.getOrDefault(event.number(), List.of()), List.of(event));
    }

    /** What was built on these movements, and on the mere facts among these events, by event. */
    private Map<Long, String> on(List<Movement> wrong, List<Event> facts) {
        Map<Long, String> later = new TreeMap<>();
        Set<Long> ours = wrong.stream().map(Movement::number).collect(Collectors.toSet());
        for (Movement each : wrong) {
            onRope(each)
                    .filter(movement -> movement.number() > each.number() && !ours.contains(movement.number()))
                    .forEach(movement -> later.putIfAbsent(movement.event(), told(movement)));
            factsOfPiece.getOrDefault(each.entry().origin().piece(), List.of()).stream()
                    .filter(event -> event.number() > each.event())
                    .forEach(event -> later.putIfAbsent(event.number(), told(event)));
            pieces.goodTakenBy(each.number()).ifPresent(back -> mates.tornBy(back, each.number(), releases())
                    .forEach(movement -> later.putIfAbsent(movement.event(), told(movement))));
        }
        facts.stream().filter(event -> event.movements().isEmpty()).forEach(event -> later.putAll(onFact(event)));
        return later;
    }

    /** Whatever was done to the same reel, or to the same piece. */
    private Stream<Movement> onRope(Movement wrong) {
        return Stream.concat(
                ofReel.getOrDefault(wrong.entry().reel(), List.of()).stream(),
                pieces.touchedBy(wrong.number()).stream()
                        .flatMap(place -> ofPlace.getOrDefault(place, List.of()).stream()));
    }

    private Map<Long, String> onFact(Event fact) {
        Map<Long, String> later = new TreeMap<>();
        if (fact.act().kind() == Kind.SET_RELEASED) {
            mates.cutSince(fact).forEach(made -> later.put(made.event(), told(made)));
            return later;
        }
        fact.named("piece").stream()
                .flatMap(piece -> factsOfPiece.getOrDefault(piece, List.of()).stream())
                .filter(event -> event.number() > fact.number() && isFactOn(fact, event))
                .forEach(event -> later.put(event.number(), told(event)));
        return later;
    }

    /** Whether a later fact about a piece relies on what was measured, passed or accepted of it. */
    private static boolean isFactOn(Event fact, Event later) {
        return switch (fact.act().kind()) {
            case SPLICED, PASSED -> later.act().kind() != Kind.SET_RELEASED;
            case ORDER_CHANGED -> later.act().kind() == Kind.DELIVERED;
            default -> false;
        };
    }

    private List<Event> releases() {
        return events.values().stream()
                .filter(event -> event.act().kind() == Kind.SET_RELEASED)
                .toList();
    }

    private static String told(Movement movement) {
        String piece = movement.entry().origin().piece();
        return "event " + movement.event() + ": " + movement.entry().kind().word()
                + (piece.isEmpty() ? "" : ", piece " + piece + ",") + " on reel "
                + movement.entry().reel() + ", by " + movement.who();
    }

    private static String told(Event event) {
        return "event " + event.number() + ": " + event.act().kind().word() + ", by "
                + event.act().who();
    }
}
