package bitterend.day;

import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Standing;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which cut pieces are made, by the last events about them that stand: measured, passed, accepted, or to be spliced again,
 * which makes it a cut piece as before.
 */
public final class FinishedPieces {
    /** Name of the fact that says what was found. */
    public static final String VERDICT = "verdict";

    /** Name of the fact that says how many minutes it took; there where somebody noted them. */
    public static final String MINUTES = "minutes";

    public static final String TO_BE_RESPLICED = "to be respliced";

    private final Map<String, LookedOver> pieces = new HashMap<>();

    /** @param cuts the movement that cut each piece, by its id */
    FinishedPieces(Ledger.Stock stock, Map<String, Movement> cuts) {
        for (Event event : Standing.events(stock.events())) {
            switch (event.act().kind()) {
                case SPLICED -> DeliveredPieces.ofThisCut(event, cuts).forEach(piece -> spliced(piece, event));
                case PASSED -> DeliveredPieces.ofThisCut(event, cuts)
                        .forEach(piece ->
                                pieces.merge(piece, LookedOver.NOT_YET.passed(), (before, passed) -> before.passed()));
                default -> {}
            }
        }
    }

    private void spliced(String piece, Event event) {
        String verdict = event.fact(VERDICT);
        if (verdict.equals(TO_BE_RESPLICED)) {
            pieces.remove(piece);
        } else {
            String before = pieces.getOrDefault(piece, LookedOver.NOT_YET).verdict();
            Written made = length(event, "piece " + piece);
            pieces.put(piece, new LookedOver(made, LookedOver.isGood(verdict) ? verdict : before));
        }
    }

    private static Written length(Event event, String fact) {
        return Written.parsePresent(event.fact(fact))
                .value()
                .filter(made -> made.exact().isPositive())
                .orElseThrow(() -> event.damaged(fact, "length"));
    }

    /** What was found of a piece; nothing while nobody has made it. */
    Optional<LookedOver> find(String piece) {
        return Optional.ofNullable(pieces.get(piece));
    }
}
