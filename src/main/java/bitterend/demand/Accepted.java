package bitterend.demand;

/**
 * What an order may accept by the name of a person.
 *
 * @param what the rule that is not kept
 * @param by who accepted it
 */
public record Accepted(String what, String by) {
    /** Less slack rope than the tools want. */
    public static final String WORKING_ROOM = "working room";

    /** A throat angle above the limit; an end may accept it too. */
    public static final String THROAT_ANGLE = "throat angle";

    /** A code's rule that is warned of where nothing is lifted. */
    public static final String CODE = "code";
}
