package bitterend.serve;

/**
 * A reel between two lofts in the list of the rack, every value as it is printed.
 *
 * @param id the number that it was sent under
 * @param rope the rope on it
 * @param lot its lot
 * @param length how much is on it
 * @param way from which loft or to which, and by which event
 * @param path its screen, of one that was sent from here; empty of one that comes
 * @param form books it in, or takes back that it was sent
 */
public record OnTheWayRow(String id, String rope, String lot, String length, String way, String path, FormView form) {
    /** The same with another form. */
    OnTheWayRow with(FormView other) {
        return new OnTheWayRow(id, rope, lot, length, way, path, other);
    }

    /** Whether it comes to this loft. */
    public boolean comes() {
        return path.isEmpty();
    }
}
