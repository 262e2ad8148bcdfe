package bitterend.work.rack;

import bitterend.finding.LookAlike;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Reel;
import bitterend.work.ShopAccess;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a new word looks like one that the ledger had when it was first asked, and is another: a question that writes nothing. */
public final class LookAlikes {
    private final ShopAccess at;
    private List<Reel> read = List.of();
    private boolean isRead;

    public LookAlikes(ShopAccess at) {
        this.at = at;
    }

    /** Of the id of a reel. */
    public Optional<String> reel(String id) {
        return like(id, reels().map(Reel::id))
                .map(other -> "'" + id + "' looks like '" + other + "', which is another reel");
    }

    /** Of a lot of a rope: a matched set would take the two for two. */
    public Optional<String> lot(String rope, String lot) {
        return like(lot, reels().filter(reel -> reel.rope().equals(rope)).map(Reel::lot))
                .map(other -> "lot '" + lot + "' looks like '" + other + "', which is another lot of " + rope);
    }

    /** Of a lot of the rope of a reel. */
    public Optional<String> lotOf(String reel, String lot) {
        return reels().filter(each -> each.id().equals(reel)).findFirst().flatMap(each -> lot(each.rope(), lot));
    }

    private Stream<Reel> reels() {
        if (!isRead) {
            List<Holding> holdings = at.reading(ledger -> ledger.read(Ledger.Stock::holdings));
            read = holdings.stream().map(Holding::reel).toList();
            isRead = true;
        }
        return read.stream();
    }

    private static Optional<String> like(String word, Stream<String> others) {
        LookAlike met = new LookAlike();
        others.forEach(met::before);
        String other = met.before(word);
        return other.isEmpty() ? Optional.empty() : Optional.of(other);
    }
}
