package bitterend.stock;

import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Which piece is what: good under the id of what was ordered, or spare under a name of its own, each with the movement that
 * cut its rope. Movements are added oldest first, those that take others back among them.
 */
public final class PieceAccount {
    private final Map<Place, Made> places = new HashMap<>();
    private final Map<Long, List<Step>> steps = new HashMap<>();
    private final Set<Long> backAsSpare = new HashSet<>();

    /**
     * A piece that is there.
     *
     * @param piece the id it was wanted under last
     * @param made the movement that made it what it is
     * @param cut the movement that cut its rope off a reel
     */
    public record Made(String piece, Movement made, Movement cut) {}

    /**
     * Where a piece can be.
     *
     * @param spare whether it is a spare piece
     * @param name the id of a good piece, or the name of a spare one
     */
    public record Place(boolean spare, String name) {}

    /** What a movement did to one place. */
    private record Step(Place place, @Nullable Made before, @Nullable Made after) {}

    /** What movements say that are all there are of pieces, oldest first. */
    public static PieceAccount of(List<Movement> movements) {
        PieceAccount account = new PieceAccount();
        movements.forEach(account::add);
        return account;
    }

    /** The name of a piece that an event makes spare. */
    public static String spareName(String piece, long event) {
        return piece + " spare " + event;
    }

    /** Good pieces by id. */
    public Map<String, Made> good() {
        return ofKind(false);
    }

    /** Spare pieces by name. */
    public Map<String, Made> spare() {
        return ofKind(true);
    }

    private Map<String, Made> ofKind(boolean spare) {
        Map<String, Made> found = new TreeMap<>();
        places.forEach((place, made) -> {
            if (place.spare() == spare) {
                found.put(place.name(), made);
            }
        });
        return found;
    }

    /** The places that a movement took a piece from or put one to; none for one that is about no piece. */
    public Set<Place> touchedBy(long movement) {
        Set<Place> touched = new HashSet<>();
        steps.getOrDefault(movement, List.of()).forEach(step -> touched.add(step.place()));
        return touched;
    }

    /** Whether a movement against another brought back a good piece that had been cut again: it is spare. */
    boolean isBackAsSpare(long movement) {
        return backAsSpare.contains(movement);
    }

    /** The good piece that a movement took from its place, if it took one. */
    Optional<Made> goodTakenBy(long movement) {
        return steps.getOrDefault(movement, List.of()).stream()
                .filter(step -> !step.place().spare() && step.after() == null)
                .flatMap(step -> Optional.ofNullable(step.before()).stream())
                .findFirst();
    }

    /** Adds the next movement; what cannot be of it, in words behind its name, empty when all is as it must be. */
    public Optional<String> add(Movement movement) {
        Origin origin = movement.entry().origin();
        if (origin.undoes() != 0) {
            return takeBack(movement);
        }
        return switch (movement.entry().kind()) {
            case CUT -> made(movement, good(origin.piece()));
            case CUT_SHORT -> made(movement, new Place(true, origin.was()));
            case CUT_SPARE -> spareAtOnce(movement);
            case SPOILED -> moved(movement, good(origin.piece()), null);
            case MADE_SPARE -> moved(movement, good(origin.piece()), new Place(true, nameOf(movement)));
            case GIVEN -> moved(movement, spare(origin.was()), good(origin.piece()));
            case TRIMMED -> places.containsKey(good(origin.piece()))
                    ? Optional.empty()
                    : Optional.of("is of a piece that is not there: " + origin.piece());
            case BACK_ON_RACK -> moved(movement, spare(origin.piece()), null);
            default -> Optional.empty();
        };
    }

    private static Place good(String piece) {
        return new Place(false, piece);
    }

    /** Ledgers knew spare pieces by the id of the piece once, where the name is not written down: then the last is meant. */
    private Place spare(String name) {
        Place place = new Place(true, name);
        if (places.containsKey(place)) {
            return place;
        }
        return places.entrySet().stream()
                .filter(entry -> entry.getKey().spare()
                        && entry.getValue().piece().equals(name)
                        && entry.getValue().made().entry().kind() == Kind.MADE_SPARE)
                .max(Map.Entry.comparingByValue((one, other) ->
                        Long.compare(one.made().number(), other.made().number())))
                .map(Map.Entry::getKey)
                .orElse(place);
    }

    private static String nameOf(Movement madeSpare) {
        Origin origin = madeSpare.entry().origin();
        return origin.was().isEmpty() ? spareName(origin.piece(), madeSpare.event()) : origin.was();
    }

    private Optional<String> made(Movement cut, Place to) {
        String piece = cut.entry().origin().piece();
        boolean again = places.containsKey(to) || places.containsKey(good(piece));
        put(cut, to, new Made(piece, cut, cut));
        return again ? Optional.of("cuts a piece a second time: " + piece) : Optional.empty();
    }

    /** Whatever else was cut for the same piece. */
    private Optional<String> spareAtOnce(Movement cut) {
        Place to = new Place(true, cut.entry().origin().was());
        boolean again = places.containsKey(to);
        put(cut, to, new Made(cut.entry().origin().piece(), cut, cut));
        return again ? Optional.of("makes a piece a second time: " + to.name()) : Optional.empty();
    }

    private Optional<String> moved(Movement movement, Place from, @Nullable Place to) {
        Made was = places.get(from);
        if (was == null) {
            return Optional.of("is of a piece that is not there: " + from.name());
        }
        put(movement, from, null);
        if (to == null) {
            return Optional.empty();
        }
        boolean again = places.containsKey(to);
        String piece = movement.entry().origin().piece();
        put(movement, to, new Made(piece, movement, was.cut()));
        return again ? Optional.of("makes a piece a second time: " + to.name()) : Optional.empty();
    }

    private void put(Movement movement, Place place, @Nullable Made after) {
        Made before = after == null ? places.remove(place) : places.put(place, after);
        steps.computeIfAbsent(movement.number(), number -> new ArrayList<>()).add(new Step(place, before, after));
    }

    /**
     * Every place as it was before; one that something else was done to since stays as it is. Once a piece could come back
     * although it had been cut again off another reel: then it is not lost, and not good twice, but a spare piece.
     */
    private Optional<String> takeBack(Movement undoing) {
        Optional<String> wrong = Optional.empty();
        for (Step step : steps.getOrDefault(undoing.entry().origin().undoes(), List.of())) {
            Made now = places.get(step.place());
            if (now != null
                    && step.before() != null
                    && step.after() == null
                    && !step.place().spare()) {
                String piece = step.before().piece();
                places.put(new Place(true, spareName(piece, undoing.event())), step.before());
                backAsSpare.add(undoing.number());
            } else if (!isSame(now, step.after())) {
                wrong = Optional.of(
                        "takes back what others were built on: " + step.place().name());
            } else if (step.before() == null) {
                places.remove(step.place());
            } else {
                places.put(step.place(), step.before());
            }
        }
        return wrong;
    }

    private static boolean isSame(@Nullable Made one, @Nullable Made other) {
        if (one == null) {
            return other == null;
        }
        return other != null && one.made().number() == other.made().number();
    }
}
