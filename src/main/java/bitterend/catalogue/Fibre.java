package bitterend.catalogue;

/** What carries the load in a rope. */
public enum Fibre {
    POLYESTER("polyester", false),
    NYLON("nylon", false),
    POLYPROPYLENE("polypropylene", false),
    HMPE("HMPE", false),
    ARAMID("aramid", false),
    MANILA("manila", true),
    SISAL("sisal", true),
    STEEL("steel", false);

    private final String word;
    private final boolean natural;

    Fibre(String word, boolean natural) {
        this.word = word;
        this.natural = natural;
    }

    /** The word used in files and on paper. */
    public String word() {
        return word;
    }

    /** Natural fibre wants fewer tucks and cannot be cut hot. */
    public boolean isNatural() {
        return natural;
    }
}
