package bitterend.stock;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.util.Optional;

/** What a length of rope on the rack is worth. Never falls with length; cutting a length up never creates value. */
@FunctionalInterface
public interface StockValue {
    /** The customer's own rope: worth nothing to the shop. */
    StockValue NOTHING = length -> Cost.ZERO;

    /** No rope is longer: 1,000,000 km. */
    long LONGEST_MM = 1_000_000_000_000L;

    /** The worth of one run of this length; zero for what is scrap. */
    Cost of(Length length);

    /** The worth of one run of a full reel until it is opened; never below the worth of a coil as long. */
    default Cost unopened(Length length) {
        return of(length);
    }

    /** The shortest length that is worth anything, which is the shortest to keep; nothing when no length is. */
    default Optional<Length> keepFrom() {
        long scrap = 0;
        long kept = LONGEST_MM;
        if (of(new Length(kept)).millis() <= 0) {
            return Optional.empty();
        }
        while (kept - scrap > 1) {
            long middle = (scrap + kept) / 2;
            if (of(new Length(middle)).millis() > 0) {
                kept = middle;
            } else {
                scrap = middle;
            }
        }
        return Optional.of(new Length(kept));
    }
}
