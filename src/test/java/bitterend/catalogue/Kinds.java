package bitterend.catalogue;

import bitterend.exchange.RopeKindsJson;
import java.util.List;
import java.util.function.Function;

/** Kinds of ropes as the built-in rows have them. */
public final class Kinds {
    public static final Construction DOUBLE_BRAID = construction("double braid");
    public static final Construction CORE_DEPENDENT_DOUBLE_BRAID = construction("core-dependent double braid");
    public static final Construction TWELVE_STRAND = construction("12-strand");
    public static final Construction THREE_STRAND = construction("3-strand");
    public static final Construction FOUR_STRAND = construction("4-strand");
    public static final Construction EIGHT_STRAND = construction("8-strand");
    public static final Construction SIXTEEN_PLAIT = construction("16-plait");
    public static final Construction HOLLOW_BRAID = construction("hollow braid");
    public static final Construction KERNMANTLE = construction("kernmantle");
    public static final Construction SHOCK_CORD = construction("shock cord");
    public static final Construction WEBBING = construction("webbing");
    public static final Construction WIRE = construction("wire");

    public static final Fibre POLYESTER = fibre("polyester");
    public static final Fibre NYLON = fibre("nylon");
    public static final Fibre POLYPROPYLENE = fibre("polypropylene");
    public static final Fibre POLYETHYLENE = fibre("polyethylene");
    public static final Fibre HMPE = fibre("HMPE");
    public static final Fibre ARAMID = fibre("aramid");
    public static final Fibre LIQUID_CRYSTAL = fibre("liquid crystal polymer");
    public static final Fibre MANILA = fibre("manila");
    public static final Fibre SISAL = fibre("sisal");
    public static final Fibre HEMP = fibre("hemp");
    public static final Fibre COTTON = fibre("cotton");
    public static final Fibre STEEL = fibre("steel");

    private Kinds() {}

    public static Construction construction(String word) {
        return only(RopeKindsJson.builtIn().constructions(), Construction::word, word);
    }

    public static Fibre fibre(String word) {
        return only(RopeKindsJson.builtIn().fibres(), Fibre::word, word);
    }

    public static MakeUp makeUp(String word) {
        return only(RopeKindsJson.builtIn().makeUps(), MakeUp::word, word);
    }

    /** Every construction, in the order of the file. */
    public static List<Construction> constructions() {
        return RopeKindsJson.builtIn().constructions();
    }

    /** Every fibre, in the order of the file. */
    public static List<Fibre> fibres() {
        return RopeKindsJson.builtIn().fibres();
    }

    private static <T> T only(List<T> rows, Function<T, String> name, String word) {
        return rows.stream()
                .filter(row -> name.apply(row).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + word));
    }
}
