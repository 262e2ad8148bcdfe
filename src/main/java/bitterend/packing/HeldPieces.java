package bitterend.packing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Gives rope that is held to the pieces it is held for: in the order of their urgency they are pinned to its reel, as far as
 * what is held covers their finished lengths and the reel has room for their cuts. A matched set is given it whole or not at
 * all. What no piece takes is left alone by all others.
 */
public final class HeldPieces {
    private final Map<String, Pin> pins = new LinkedHashMap<>();

    private PackingProblem problem;

    private HeldPieces(PackingProblem problem) {
        this.problem = problem;
        problem.pins().forEach(pin -> pins.put(pin.piece(), pin));
    }

    /**
     * The question with the pieces pinned that what is held is for.
     *
     * @param customers the customer of an order; empty for none
     */
    public static PackingProblem pinned(PackingProblem problem, Function<String, String> customers) {
        return problem.reels().stream()
                        .allMatch(reel -> reel.custody().heldOn(problem.day()).isEmpty())
                ? problem
                : new HeldPieces(problem.ofCustomers(concerned(problem, customers))).pinned();
    }

    /** The customers that rope is held for, by order. */
    private static Map<String, String> concerned(PackingProblem problem, Function<String, String> customers) {
        Set<String> named = problem.reels().stream()
                .flatMap(reel -> reel.custody().heldOn(problem.day()).stream())
                .filter(held -> held.kind() == Held.For.CUSTOMER)
                .map(Held::name)
                .collect(Collectors.toSet());
        Map<String, String> byOrder = new HashMap<>();
        problem.pieces().forEach(piece -> {
            String customer = customers.apply(piece.order());
            if (named.contains(customer)) {
                byOrder.put(piece.order(), customer);
            }
        });
        return byOrder;
    }

    private PackingProblem pinned() {
        for (Reel reel : List.copyOf(problem.reels())) {
            for (Held held : reel.custody().heldOn(problem.day())) {
                serve(reel.id(), held);
            }
        }
        return problem;
    }

    private void serve(String reel, Held held) {
        Length left = held.length().minus(served(reel, held));
        for (List<Piece> together : wanting(reel, held)) {
            Length finished = together.stream()
                    .map(piece -> piece.finished().roundedDown())
                    .reduce(Length.ZERO, Length::plus);
            if (!finished.isLongerThan(left) && give(reel, held, together)) {
                left = left.minus(finished);
            }
        }
    }

    /** What sheets that are out take of it. */
    private Length served(String reel, Held held) {
        return problem.pieces().stream()
                .filter(piece -> pins.containsKey(piece.id()))
                .filter(piece -> {
                    Pin pin = pins.getOrDefault(piece.id(), new Pin(piece.id(), reel));
                    return pin.reel().equals(reel) && pin.heldFor().equals(held.whom());
                })
                .map(piece -> piece.finished().roundedDown())
                .reduce(Length.ZERO, Length::plus);
    }

    /** The pieces that it is held for and that may come off the reel, sets together, the most urgent first. */
    private List<List<Piece>> wanting(String reel, Held held) {
        Eligibility rules = new Eligibility(problem);
        Urgency urgency = new Urgency(problem);
        Map<String, List<Piece>> together = new LinkedHashMap<>();
        Set<String> barred = new HashSet<>();
        for (Piece piece : problem.pieces()) {
            String unit = piece.isMatched() ? "set " + piece.matching().set() : "piece " + piece.id();
            together.computeIfAbsent(unit, any -> new ArrayList<>()).add(piece);
            boolean may = held.serves(piece.order(), problem.customers().getOrDefault(piece.order(), ""))
                    && rules.allows(piece, problem.reel(reel))
                    && !pins.getOrDefault(piece.id(), new Pin(piece.id(), reel)).isOfHeldRope();
            if (!may) {
                barred.add(unit);
            }
        }
        together.keySet().removeAll(barred);
        return together.values().stream()
                .sorted(Comparator.comparingInt((List<Piece> unit) -> urgency.classOf(unit.get(0)))
                        .thenComparing(unit -> unit.get(0).source().due())
                        .thenComparing(unit -> unit.get(0).source().priority()))
                .toList();
    }

    /** Pins them, unless the reel then has no room for all that is pinned to it. */
    private boolean give(String reel, Held held, List<Piece> together) {
        Map<String, Pin> before = new HashMap<>();
        for (Piece piece : together) {
            Pin pin = pins.getOrDefault(piece.id(), new Pin(piece.id(), reel));
            before.put(piece.id(), pin);
            pins.put(piece.id(), pin.ofHeldRope(held.whom()));
        }
        PackingProblem then = problem.withPins(List.copyOf(pins.values()));
        if (hasRoom(then, then.reel(reel))) {
            problem = then;
            return true;
        }
        Set<String> known = new HashSet<>();
        problem.pins().forEach(pin -> known.add(pin.piece()));
        before.forEach((piece, pin) -> pins.put(piece, pin));
        pins.keySet().retainAll(known);
        return false;
    }

    /** Whether the sound runs of a reel take what is pinned to it, the longest first, each in the first that has room. */
    private static boolean hasRoom(PackingProblem problem, Reel reel) {
        Set<String> ids = new HashSet<>();
        problem.pins().stream().filter(pin -> pin.reel().equals(reel.id())).forEach(pin -> ids.add(pin.piece()));
        List<Length> cuts = problem.pieces().stream()
                .filter(piece -> ids.contains(piece.id()))
                .flatMap(piece -> piece.lengthOn(reel.rope()).stream())
                .sorted(Comparator.reverseOrder())
                .toList();
        Length loss = problem.ropeOn(reel).cutting().loss();
        Length[] rooms = reel.runs().stream().map(Run::length).toArray(Length[]::new);
        RunLoad[] loads = new RunLoad[rooms.length];
        Arrays.fill(loads, RunLoad.NONE);
        for (Length cut : cuts) {
            int run = 0;
            while (run < rooms.length && !loads[run].plus(cut).fits(rooms[run], loss)) {
                run++;
            }
            if (run == rooms.length) {
                return false;
            }
            loads[run] = loads[run].plus(cut);
        }
        return true;
    }
}
