package bitterend.catalogue;

/** How a rope is built; it decides which ends suit it. */
public enum Construction {
    /** Braided cover over a braided core that share the load. */
    DOUBLE_BRAID("double braid"),
    /** Braided cover over a core that carries the load alone. */
    CORE_DEPENDENT_DOUBLE_BRAID("core-dependent double braid"),
    /** Hollow single braid or plait of twelve strands. */
    TWELVE_STRAND("12-strand"),
    /** Three laid strands. */
    THREE_STRAND("3-strand"),
    /** Eight plaited strands. */
    EIGHT_STRAND("8-strand"),
    /** Woven sheath over a core of twisted yarns. */
    KERNMANTLE("kernmantle"),
    /** Laid strands of steel wire. */
    WIRE("wire");

    private final String word;

    Construction(String word) {
        this.word = word;
    }

    /** The word used in files and on paper. */
    public String word() {
        return word;
    }
}
