package bitterend.serve;

/**
 * A reel to be cut, and how far it is.
 *
 * @param id its number
 * @param rope name of the rope on it
 * @param place where it stands
 * @param path its screen
 * @param cut how many of its pieces are cut
 * @param cuts of how many
 * @param promised whether it need not be cut today, and its sheet is not out: it is planned again before its day
 * @param sheet that its sheet is out, in words; empty while it is not
 * @param again whether what is not cut of it is to be planned again: it has ended, or is not to be cut by this plan any more
 */
public record ReelToCut(
        String id,
        String rope,
        String place,
        String path,
        int cut,
        int cuts,
        boolean promised,
        String sheet,
        boolean again) {
    public boolean done() {
        return cut == cuts;
    }

    /** Whether it is to be cut today and its sheet is not out yet. */
    public boolean toIssue() {
        return !promised && sheet.isEmpty() && !done() && !again;
    }

    public boolean isIssued() {
        return !sheet.isEmpty();
    }
}
