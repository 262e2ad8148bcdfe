package bitterend.packing.check;

/**
 * Something wrong with a plan.
 *
 * @param check what was checked
 * @param where the reel, run or piece, or {@code plan}
 * @param sentence what is wrong, with what the plan says and what is so
 */
public record Fault(Check check, String where, String sentence) {
    @Override
    public String toString() {
        return check + " at " + where + ": " + sentence;
    }
}
