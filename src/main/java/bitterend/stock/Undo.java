package bitterend.stock;

import bitterend.finding.CommandWord;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Takes events back, each whole: every movement of it by one against it. An event on which others were built is not taken
 * back before those are.
 */
public final class Undo {
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
        return ledger.changeAmong(act.undoing(number), books -> {
                    books.findEvent(number).ifPresent(sent -> Transfers.refuseArrived(ledger.neighbours(), sent));
                    also.accept(whole(books, number));
                })
                .orElseThrow();
    }

    /**
     * Takes back all that was posted of a plan off one reel, in however many events, with the coils that came off it.
     *
     * @param plan its number, or at least eight characters of the name that the ledger knows it by
     */
    public Event posting(String plan, String reel) {
        return posting(plan, reel, movement -> false);
    }

    /**
     * The same, with what of it was booked under other plans.
     *
     * @param alike whether a movement was a step of that plan, though it was booked under another
     */
    public Event posting(String plan, String reel, Predicate<Movement> alike) {
        Event.Act taken = act.with("plan", plan).with("reel " + reel, "");
        return ledger.change(taken, books -> {
                    Set<String> plans = namedBy(books, plan);
                    List<Movement> posted = standing(books).stream()
                            .filter(movement ->
                                    plans.contains(movement.entry().origin().plan()) || alike.test(movement))
                            .filter(movement -> movement.entry().reel().equals(reel)
                                    || movement.entry().origin().parent().equals(reel))
                            .filter(movement -> !movement.entry().kind().isOfPieceAlone())
                            .toList();
                    if (posted.isEmpty()) {
                        throw new LedgerException.Refused("nothing is left of what was posted of plan " + plan
                                + " off reel " + reel + others(books, reel));
                    }
                    BuiltOn.refuse(books, posted);
                    takeBack(books, posted);
                })
                .orElseThrow();
    }

    /** Under which plans something was posted off the reel. */
    private static String others(Ledger.Stock stock, String reel) {
        Set<String> plans = new TreeSet<>();
        Set<String> standing = new HashSet<>();
        Standing.movements(stock.history(reel))
                .forEach(movement -> standing.add(movement.entry().origin().plan()));
        stock.standing(Event.Kind.POSTED).stream()
                .filter(event -> standing.contains(event.fact("plan"))
                        && !event.fact("number").isEmpty())
                .forEach(event -> plans.add("plan " + event.fact("number")));
        return plans.isEmpty()
                ? "; see bitterend stock history SHOP " + CommandWord.of(reel)
                : "; what was posted off it was booked under " + String.join(", ", plans);
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
                .orElseThrow(() -> new LedgerException.Refused("there is no event " + number
                        + "; stock history numbers those of a reel. The reels: bitterend stock list SHOP --all"));
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
        BuiltOn.refuse(books, wrong);
        takeBack(books, left);
        return wrong;
    }

    /** Each by one against it; what was built on them was asked for before. */
    private static void takeBack(Ledger.Books books, List<Movement> wrong) {
        Map<String, List<Movement>> histories = new HashMap<>();
        wrong.forEach(movement -> histories.computeIfAbsent(
                movement.entry().reel(), reel -> new ArrayList<>(Standing.movements(books.history(reel)))));
        wrong.stream()
                .sorted(Comparator.comparingLong(Movement::number).reversed())
                .forEach(movement -> books.append(against(
                        movement, histories.getOrDefault(movement.entry().reel(), List.of()))));
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
