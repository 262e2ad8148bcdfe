package bitterend.catalogue;

/** How far a number can be trusted, by where it comes from. */
public enum Grade {
    REGULATION("A", "regulation, standard or government manual"),
    HANDBOOK("B", "published handbook"),
    SECONDARY("C", "secondary page or data sheet, never verified"),
    DERIVED("D", "derived by arithmetic"),
    PRACTICE("P", "common practice, no source"),
    MEMORY("M", "from memory, unchecked"),
    SHOP("S", "the shop's own value"),
    ORDER("O", "stated by the order");

    private final String letter;
    private final String words;

    Grade(String letter, String words) {
        this.letter = letter;
        this.words = words;
    }

    /** The letter used in files. */
    public String letter() {
        return letter;
    }

    /** What the letter stands for, as printed. */
    public String words() {
        return words;
    }
}
