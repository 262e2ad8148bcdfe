package bitterend.stock;

import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Takes events back, each whole: every movement of it by one against it. An event on which others were built is not taken
 * back before those are.
 */
public final class Undo {
    private static final int MOST_NAMED = 12;
    private static final int SHORTEST = 8;

    private final Ledger ledger;
    private final Event.Act act;

    /**
     * Undoing by one person.
     *
     * @param act who does it, why, and under which id
     */
    public Undo(Ledger ledger, Event.Act act) {
        this.ledger = ledger;
        this.act = act;
    }

    /** Takes an event back. */
    public Event event(long number) {
        return event(number, wrong -> {});
    }

    /**
     * Takes an event back, and what was written elsewhere with it.
     *
     * @param also does so, handed the event, before the taking back is kept; when it throws, nothing is taken back
     */
    public Event event(long number, Consumer<Event> also) {
        return ledger.change(act.undoing(number), books -> also.accept(whole(books, number)))
                .orElseThrow();
    }

    /**
     * Takes back all that was posted of a plan off one reel, in however many events, with the coils that came off it.
     *
     * @param plan its number, or at least eight characters of the name that the ledger knows it by
     */
    public Event posting(String plan, String reel) {
        Event.Act taken = act.with("plan", plan).with("reel " + reel, "");
        return ledger.change(taken, books -> {
                    Set<String> plans = namedBy(books, plan);
                    List<Movement> posted = standing(books).stream()
                            .filter(movement ->
                                    plans.contains(movement.entry().origin().plan()))
                            .filter(movement -> movement.entry().reel().equals(reel)
                                    || movement.entry().origin().parent().equals(reel))
                            .filter(movement -> !movement.entry().kind().isOfPieceAlone())
                            .toList();
                    if (posted.isEmpty()) {
                        throw new LedgerException.Refused("nothing stands that was posted of plan " + plan
                                + " off reel " + reel + "; see stock history");
                    }
                    takeBack(books, posted);
                })
                .orElseThrow();
    }

    private static Set<String> namedBy(Ledger.Stock stock, String plan) {
        Set<String> plans = new HashSet<>();
        for (Event event : stock.events()) {
            String name = event.fact("plan");
            if (event.act().kind() == Event.Kind.POSTED
                    && (event.fact("number").equals(plan) || (plan.length() >= SHORTEST && name.startsWith(plan)))) {
                plans.add(name);
            }
        }
        stock.ofPlan(plan).forEach(movement -> plans.add(plan));
        return plans;
    }

    private static List<Movement> standing(Ledger.Stock stock) {
        return Standing.movements(stock.movements());
    }

    private static Event whole(Ledger.Books books, long number) {
        Event wrong = books.findEvent(number)
                .orElseThrow(() ->
                        new LedgerException.Refused("there is no event " + number + "; stock history numbers them"));
        String name = "event " + number + " (" + wrong.act().kind().word() + ")";
        if (wrong.act().kind() == Event.Kind.UNDONE) {
            throw new LedgerException.Refused(name + " takes another back; book that one again");
        }
        if (wrong.act().kind() == Event.Kind.OPENED) {
            throw new LedgerException.Refused(name + " began the ledger; return, sell or condemn what is not there");
        }
        List<Event> standing = Standing.events(books.events());
        if (standing.stream().noneMatch(event -> event.number() == number)) {
            throw new LedgerException.Refused(name + " has been taken back already");
        }
        Set<Long> ours = new HashSet<>();
        wrong.movements().forEach(movement -> ours.add(movement.number()));
        List<Movement> left = standing(books).stream()
                .filter(movement -> ours.contains(movement.number()))
                .toList();
        refuseLookedOverSince(books, wrong);
        takeBack(books, left);
        return wrong;
    }

    /** What was measured or passed is not taken back while a later fact about the same pieces stands. */
    private static void refuseLookedOverSince(Ledger.Stock stock, Event wrong) {
        if (wrong.act().kind() != Event.Kind.SPLICED && wrong.act().kind() != Event.Kind.PASSED) {
            return;
        }
        List<String> pieces = wrong.named("piece");
        TreeMap<Long, String> later = new TreeMap<>();
        Standing.events(stock.events()).stream()
                .filter(event -> event.number() > wrong.number()
                        && event.movements().isEmpty()
                        && event.named("piece").stream().anyMatch(pieces::contains))
                .forEach(event -> later.put(event.number(), told(event)));
        refuse(later, "event " + wrong.number());
    }

    private static void takeBack(Ledger.Books books, List<Movement> wrong) {
        Map<String, List<Movement>> histories = new HashMap<>();
        wrong.forEach(movement -> histories.computeIfAbsent(
                movement.entry().reel(), reel -> new ArrayList<>(Standing.movements(books.history(reel)))));
        refuseBuiltOn(books, histories, wrong);
        wrong.stream()
                .sorted(Comparator.comparingLong(Movement::number).reversed())
                .forEach(movement -> books.append(against(
                        movement, histories.getOrDefault(movement.entry().reel(), List.of()))));
    }

    /** Later movements of the same reels, and later facts about the same pieces, such as a delivery, that still stand. */
    private static void refuseBuiltOn(Ledger.Stock stock, Map<String, List<Movement>> histories, List<Movement> wrong) {
        Set<Long> ours = new HashSet<>();
        Set<String> pieces = new HashSet<>();
        TreeSet<Long> events = new TreeSet<>();
        Map<String, Long> first = new HashMap<>();
        for (Movement movement : wrong) {
            ours.add(movement.number());
            events.add(movement.event());
            pieces.add(movement.entry().origin().piece());
            first.merge(movement.entry().reel(), movement.number(), Math::min);
        }
        TreeMap<Long, String> later = new TreeMap<>();
        histories.forEach((reel, history) -> history.stream()
                .filter(movement -> movement.number() > first.getOrDefault(reel, Long.MAX_VALUE)
                        && !ours.contains(movement.number()))
                .forEach(movement -> later.putIfAbsent(movement.event(), told(movement))));
        Standing.events(stock.events()).stream()
                .filter(event -> event.movements().isEmpty()
                        && !events.isEmpty()
                        && event.number() > events.first()
                        && event.named("piece").stream().anyMatch(pieces::contains))
                .forEach(event -> later.put(event.number(), told(event)));
        refuse(later, "event " + events.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }

    private static String told(Movement movement) {
        return "event " + movement.event() + ": " + movement.entry().kind().word() + " on reel "
                + movement.entry().reel() + ", by " + movement.who();
    }

    private static String told(Event event) {
        return "event " + event.number() + ": " + event.act().kind().word() + ", by "
                + event.act().who();
    }

    private static void refuse(NavigableMap<Long, String> later, String name) {
        if (later.isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add("this was built on " + name + "; take it back first, in this order:");
        later.descendingMap().values().stream().limit(MOST_NAMED).forEach(line -> lines.add("  " + line));
        if (later.size() > MOST_NAMED) {
            lines.add("  and " + (later.size() - MOST_NAMED) + " more");
        }
        throw new LedgerException.Refused(String.join("\n", lines));
    }

    /** The movement against one, as the reel stood before it; that one is taken from the reel's standing history. */
    private static Entry against(Movement wrong, List<Movement> standing) {
        int place = standing.indexOf(wrong);
        Entry was = place == 0 ? wrong.entry() : standing.get(place - 1).entry();
        standing.remove(place);
        boolean gone = place == 0 || was.gone();
        Movement.Origin origin = wrong.entry().origin().against(wrong.number());
        return new Entry(
                Kind.UNDONE, was.after(), gone, "", origin, wrong.entry().piece());
    }
}
