package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.Sentence;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What narrows a row to some of the ropes that are built alike.
 *
 * @param ropes ids of ropes; empty for any
 * @param from the thinnest rope, itself included; {@link Diameter#NONE} for no limit
 * @param to the thickest rope
 * @param makeUps of wire; empty for any. A make-up that is not stated is none of them
 * @param grades strength grades; empty for any
 */
public record RopeLimits(Set<String> ropes, Diameter from, DiameterLimit to, Set<MakeUp> makeUps, Set<String> grades) {
    public static final RopeLimits NONE =
            new RopeLimits(Set.of(), Diameter.NONE, DiameterLimit.ANY, Set.of(), Set.of());

    public RopeLimits {
        ropes = Set.copyOf(ropes);
        makeUps = Set.copyOf(makeUps);
        grades = Set.copyOf(grades);
    }

    /** What would have been right, when the rope is outside. */
    Optional<Sentence> refusal(Rope rope) {
        if (!ropes.isEmpty() && !ropes.contains(rope.id())) {
            return Optional.of(Sentence.of("rope " + joined(ropes)));
        }
        if (!makeUps.isEmpty() && !makeUps.contains(rope.identity().makeUp())) {
            return Optional.of(Sentence.of(
                    "wire made up " + joined(makeUps.stream().map(MakeUp::word).collect(Collectors.toSet()))));
        }
        if (!grades.isEmpty() && !grades.contains(rope.identity().grade())) {
            return Optional.of(Sentence.of("rope of grade " + joined(grades)));
        }
        return isOfSize(rope.diameter()) ? Optional.empty() : Optional.of(sizes());
    }

    private boolean isOfSize(Diameter diameter) {
        return (from.equals(Diameter.NONE) || diameter.compareTo(from) >= 0) && to.admits(diameter);
    }

    private Sentence sizes() {
        Sentence words = Sentence.of("rope");
        if (!from.equals(Diameter.NONE)) {
            words = words.and(" from ").and(from);
        }
        return to.diameter().equals(Diameter.NONE)
                ? words
                : words.and(to.included() ? " up to " : " below ").and(to.diameter());
    }

    private static String joined(Set<String> names) {
        return names.stream().sorted().collect(Collectors.joining(" or "));
    }
}
