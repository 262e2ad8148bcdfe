package bitterend.catalogue;

import java.util.List;

/**
 * How ropes can be built and of what: the rows that come with the program and a shop's own.
 *
 * @param constructions each name once
 * @param fibres each name once, blends not among them
 * @param makeUps of wire, each name once
 */
public record RopeKinds(List<Construction> constructions, List<Fibre> fibres, List<MakeUp> makeUps) {
    public static final RopeKinds NONE = new RopeKinds(List.of(), List.of(), List.of());

    public RopeKinds {
        constructions = List.copyOf(constructions);
        fibres = List.copyOf(fibres);
        makeUps = List.copyOf(makeUps);
    }
}
