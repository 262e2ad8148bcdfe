package bitterend.catalogue;

/** What a splicer measures with. */
public enum BenchTools {
    METRIC("metric"),
    INCH("inch");

    private final String word;

    BenchTools(String word) {
        this.word = word;
    }

    /** The word used in files and on the command line. */
    public String word() {
        return word;
    }
}
