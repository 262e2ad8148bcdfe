package bitterend.quoting.after;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.Movement;
import bitterend.stock.StockValue;
import java.util.List;
import java.util.Optional;

/**
 * What held on the day of a cut, by what was written down until then: nothing that is booked or planned later changes an answer.
 */
public interface ThatDay {
    /** What the rope of a cut was worth, and what handling its reel cost. */
    Terms of(Movement cut);

    /** What a plan has of a reel; nothing where its file is not there, or of a form that does not say so. */
    Optional<PlannedDraw> planned(String plan, String reel);

    /**
     * What a draw of a rope is priced by.
     *
     * @param list price of the rope in the catalogue, which its worth follows; nothing where it has none
     * @param value what a coil of it is worth
     * @param opening opening a full reel
     * @param fetching fetching a reel and putting it back
     */
    record Terms(UnitPrice list, StockValue value, Cost opening, Cost fetching) {}

    /**
     * A draw as it is planned.
     *
     * @param last the piece that is cut last
     * @param taken pieces and cut losses
     * @param draw how it changes its reel
     */
    record PlannedDraw(String last, Length taken, Draw draw) {}

    /**
     * How a draw changes its reel.
     *
     * @param full whether the reel is full before
     * @param before rope on it before
     * @param scrap rope of it that is scrapped
     * @param left rope on it afterwards
     * @param kept coils that are put aside
     */
    record Draw(boolean full, Length before, Length scrap, Length left, List<Length> kept) {
        public Draw {
            kept = List.copyOf(kept);
        }

        /** The value that leaves the rack. */
        Cost gone(StockValue value) {
            Cost was = full ? value.unopened(before) : value.of(before);
            return kept.stream().map(value::of).reduce(was.minus(value.of(left)), Cost::minus);
        }
    }
}
