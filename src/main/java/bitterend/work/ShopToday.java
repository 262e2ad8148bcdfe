package bitterend.work;

import bitterend.day.RackToday;
import bitterend.exchange.PlanFacts.LedgerMark;
import bitterend.exchange.Shop;
import bitterend.packing.CutPlan;
import bitterend.packing.check.LedgerSets;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The shop as it is now, to hold a plan against.
 *
 * @param shop its files
 * @param rack what its ledger says, where it keeps one
 */
public record ShopToday(Shop shop, Optional<Rack> rack) {

    /**
     * What the ledger says.
     *
     * @param mark which ledger it is, and how far it has got
     * @param today what is there
     * @param book what the checker wants to know of it
     * @param histories all movements of the reels that a plan may speak of, oldest first, by reel
     */
    public record Rack(LedgerMark mark, RackToday today, LedgerSets.Book book, Map<String, List<Movement>> histories) {
        public Rack {
            histories = Map.copyOf(histories);
        }

        /** What the ledger says of the reels of a plan. */
        public static Rack of(Ledger ledger, CutPlan plan) {
            Map<String, List<Movement>> histories = new TreeMap<>();
            ledger.read(stock -> {
                plan.draws().forEach(draw -> histories.put(draw.reel(), stock.history(draw.reel())));
                return histories;
            });
            return new Rack(mark(ledger), RackToday.of(ledger), LedgerSets.Book.of(ledger), histories);
        }

        /** What the ledger says of all reels. */
        public static Rack of(Ledger ledger) {
            Map<String, List<Movement>> histories = ledger.read(stock -> stock.movements().stream()
                    .collect(Collectors.groupingBy(movement -> movement.entry().reel())));
            return new Rack(mark(ledger), RackToday.of(ledger), LedgerSets.Book.of(ledger), histories);
        }

        /** Which ledger it is, and how far it has got. */
        public static LedgerMark mark(Ledger ledger) {
            Head head = ledger.read(Ledger.Stock::head);
            return new LedgerMark(head.ledger(), head.text());
        }
    }
}
