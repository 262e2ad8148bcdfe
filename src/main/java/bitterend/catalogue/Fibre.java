package bitterend.catalogue;

import bitterend.measure.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What carries the load in a rope, as a row of data, or a blend of several. Two of one name are the same.
 *
 * @param word the word used in files and on paper
 * @param nature what rules ask of it
 * @param water how it behaves in water
 * @param cautions what to know of it whenever it is cut
 * @param shares what it is a blend of; empty for one fibre alone
 * @param provenance where that comes from
 */
public record Fibre(
        String word, Nature nature, Water water, List<String> cautions, List<Share> shares, Provenance provenance) {
    private static final int WHOLE = 100;

    public Fibre {
        cautions = List.copyOf(cautions);
        shares = List.copyOf(shares);
    }

    /**
     * What rules ask of a fibre.
     *
     * @param natural wants fewer tucks
     * @param metal is the wire of a wire rope
     * @param hotCut heat cuts and seals it
     * @param slippery tucks and knots slip in it
     * @param stretches stretches so much that a firm eye can open until its thimble falls out
     */
    public record Nature(boolean natural, boolean metal, boolean hotCut, boolean slippery, boolean stretches) {
        static final Nature UNKNOWN = new Nature(false, false, false, false, false);
    }

    /**
     * How a fibre behaves in water.
     *
     * @param density kilograms of a cubic metre of it; 0 where that is not known
     * @param shrinks the most that rope of it shrinks when it is wetted first; zero for not worth a word
     */
    public record Water(int density, Ratio shrinks) {
        /** Kilograms of a cubic metre of sea water, whole; common practice, no source. */
        static final int SEA = 1025;

        static final Water UNKNOWN = new Water(0, Ratio.ZERO);

        public Water {
            if (density < 0 || shrinks.isNegative()) {
                throw new IllegalArgumentException("density " + density + ", shrinks " + shrinks);
            }
        }
    }

    /**
     * A part of a blend.
     *
     * @param fibre what it is of
     * @param percent its part of the mass
     */
    public record Share(Fibre fibre, int percent) {
        public Share {
            if (percent < 1 || percent >= WHOLE) {
                throw new IllegalArgumentException("a share of " + percent + " %");
            }
        }
    }

    /** One of which nothing but the name is known. */
    public static Fibre named(String word) {
        return new Fibre(word, Nature.UNKNOWN, Water.UNKNOWN, List.of(), List.of(), Provenance.ARITHMETIC);
    }

    /**
     * Several fibres in one rope, named with their shares. What it can be is what the least able of them can: cut hot only if
     * all can, natural only if all are, slippery and stretching if one is, shrinking as the one that shrinks most; its density
     * is the mass of all by the room of all, so that a cubic metre is 100 / (sum of percent / density) kilograms.
     */
    public static Fibre blend(List<Share> shares) {
        if (shares.size() < 2 || shares.stream().mapToInt(Share::percent).sum() != WHOLE) {
            throw new IllegalArgumentException("shares " + shares);
        }
        List<Fibre> fibres = shares.stream().map(Share::fibre).toList();
        Set<String> cautions = new LinkedHashSet<>();
        fibres.forEach(fibre -> cautions.addAll(fibre.cautions));
        return new Fibre(
                shares.stream()
                        .map(share -> share.fibre.word + " " + share.percent + " %")
                        .collect(Collectors.joining(" + ")),
                new Nature(
                        all(fibres, Nature::natural),
                        any(fibres, Nature::metal),
                        all(fibres, Nature::hotCut),
                        any(fibres, Nature::slippery),
                        any(fibres, Nature::stretches)),
                new Water(
                        density(shares),
                        fibres.stream()
                                .map(fibre -> fibre.water.shrinks)
                                .max(Ratio::compareTo)
                                .orElse(Ratio.ZERO)),
                new ArrayList<>(cautions),
                shares,
                Provenance.ARITHMETIC);
    }

    private static boolean all(List<Fibre> fibres, Predicate<Nature> is) {
        return fibres.stream().map(Fibre::nature).allMatch(is);
    }

    private static boolean any(List<Fibre> fibres, Predicate<Nature> is) {
        return fibres.stream().map(Fibre::nature).anyMatch(is);
    }

    /** Rounded to whole kilograms of a cubic metre; 0 where one of them is not known. */
    private static int density(List<Share> shares) {
        long litres = 0;
        for (Share share : shares) {
            if (share.fibre.water.density == 0) {
                return 0;
            }
            litres += share.percent * 1_000_000_000L / share.fibre.water.density;
        }
        return (int) ((WHOLE * 1_000_000_000L + litres / 2) / litres);
    }

    public boolean isNatural() {
        return nature.natural;
    }

    /** Whether it is lighter than sea water; not where its density is not known. */
    public boolean floats() {
        return water.density > 0 && water.density <= Water.SEA;
    }

    /** This fibre, or each of a blend. */
    public List<Fibre> parts() {
        return shares.isEmpty()
                ? List.of(this)
                : shares.stream().map(Share::fibre).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fibre fibre && fibre.word.equals(word);
    }

    @Override
    public int hashCode() {
        return word.hashCode();
    }

    @Override
    public String toString() {
        return word;
    }
}
