package bitterend.buying;

/**
 * Every so-manieth scenario of a study, so that several machines can work on one.
 *
 * @param part which part, from 1
 * @param parts how many there are
 */
public record Share(int part, int parts) {
    public static final Share ALL = new Share(1, 1);

    public Share {
        if (part < 1 || part > parts) {
            throw new IllegalArgumentException("share " + part + " of " + parts);
        }
    }

    /** Whether a scenario is one of it. */
    public boolean holds(int scenario) {
        return scenario % parts == part - 1;
    }
}
