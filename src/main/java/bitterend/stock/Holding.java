package bitterend.stock;

/**
 * A reel as the ledger knows it.
 *
 * @param reel how it stands, or stood last when it is gone
 * @param gone whether no rope of it is left here
 * @param movements how many movements it has had
 */
public record Holding(Reel reel, boolean gone, long movements) {
    public String id() {
        return reel.id();
    }
}
