package bitterend.catalogue;

/** Which way the strands turn. Ropes of unlike lay are never joined or matched. */
public enum Lay {
    NONE("none"),
    RIGHT_ORDINARY("right ordinary"),
    LEFT_ORDINARY("left ordinary"),
    RIGHT_LANG("right lang"),
    LEFT_LANG("left lang");

    private final String word;

    Lay(String word) {
        this.word = word;
    }

    /** The word used in files and on paper. */
    public String word() {
        return word;
    }
}
