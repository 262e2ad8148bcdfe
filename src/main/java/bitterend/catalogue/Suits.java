package bitterend.catalogue;

import bitterend.measure.Sentence;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The ropes something can be done with.
 *
 * @param constructions how they may be built; empty for any
 * @param fibres what may carry the load; empty for any
 * @param warnings why a rope that looks alike is refused, by its construction, its make-up or a fibre in it
 * @param needs what a rope must be, whatever it is called
 * @param limits single ropes, sizes, make-ups and strength grades
 */
public record Suits(
        Set<Construction> constructions,
        Set<Fibre> fibres,
        Map<String, String> warnings,
        Set<Need> needs,
        RopeLimits limits) {
    public static final Suits ANY = new Suits(Set.of(), Set.of(), Map.of());

    public Suits {
        constructions = Set.copyOf(constructions);
        fibres = Set.copyOf(fibres);
        warnings = Map.copyOf(warnings);
        needs = Set.copyOf(needs);
    }

    /** By construction and fibre alone. */
    public Suits(Set<Construction> constructions, Set<Fibre> fibres, Map<String, String> warnings) {
        this(constructions, fibres, warnings, Set.of(), RopeLimits.NONE);
    }

    /** Whether it can be done; with a blend only if it can be done with each of its fibres. */
    public boolean admits(Rope rope) {
        return refusal(rope).isEmpty();
    }

    /** Whether what is said of such ropes is to be minded with this one: with a blend if any of its fibres is meant. */
    public boolean concerns(Rope rope) {
        return unlike(rope).isEmpty()
                && (fibres.isEmpty() || rope.fibre().parts().stream().anyMatch(fibres::contains));
    }

    /** What would have been right, when the rope does not suit. */
    public Optional<Sentence> refusal(Rope rope) {
        return unlike(rope)
                .or(() -> fibres.isEmpty() || fibres.containsAll(rope.fibre().parts())
                        ? Optional.empty()
                        : Optional.of(Sentence.of(words(
                                "rope of ", fibres.stream().map(Fibre::word).sorted()))));
    }

    private Optional<Sentence> unlike(Rope rope) {
        Optional<String> warned =
                names(rope).map(warnings::get).filter(text -> text != null).findFirst();
        if (warned.isPresent()) {
            return warned.map(Sentence::of);
        }
        if (!constructions.isEmpty() && !constructions.contains(rope.construction())) {
            return Optional.of(Sentence.of(words(
                    "rope that is ",
                    constructions.stream().map(Construction::word).sorted())));
        }
        Optional<Sentence> unmet = needs.stream()
                .sorted()
                .filter(need -> !need.isMet(rope))
                .findFirst()
                .map(need -> Sentence.of(need.expected()));
        return unmet.or(() -> limits.refusal(rope));
    }

    private static Stream<String> names(Rope rope) {
        return Stream.concat(
                Stream.of(rope.identity().makeUp().word(), rope.construction().word()),
                rope.fibre().parts().stream().map(Fibre::word));
    }

    private static String words(String before, Stream<String> names) {
        return names.collect(Collectors.joining(" or ", before, ""));
    }
}
