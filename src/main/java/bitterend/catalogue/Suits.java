package bitterend.catalogue;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The ropes something can be done with.
 *
 * @param constructions how they may be built; empty for any
 * @param fibres what may carry the load; empty for any
 * @param warnings why a construction that looks alike is refused
 */
public record Suits(Set<Construction> constructions, Set<Fibre> fibres, Map<Construction, String> warnings) {
    public static final Suits ANY = new Suits(Set.of(), Set.of(), Map.of());

    public Suits {
        constructions = Set.copyOf(constructions);
        fibres = Set.copyOf(fibres);
        warnings = Map.copyOf(warnings);
    }

    public boolean admits(Rope rope) {
        return refusal(rope).isEmpty();
    }

    /** What would have been right, when the rope does not suit. */
    public Optional<String> refusal(Rope rope) {
        if (warnings.containsKey(rope.construction())) {
            return Optional.ofNullable(warnings.get(rope.construction()));
        }
        if (!constructions.isEmpty() && !constructions.contains(rope.construction())) {
            return Optional.of(EnumSet.copyOf(constructions).stream()
                    .map(Construction::word)
                    .collect(Collectors.joining(" or ", "rope that is ", "")));
        }
        if (!fibres.isEmpty() && !fibres.contains(rope.fibre())) {
            return Optional.of(EnumSet.copyOf(fibres).stream()
                    .map(Fibre::word)
                    .collect(Collectors.joining(" or ", "rope of ", "")));
        }
        return Optional.empty();
    }
}
