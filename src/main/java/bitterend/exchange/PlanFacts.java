package bitterend.exchange;

import bitterend.finding.NaturalOrder;
import bitterend.packing.PackingProblem;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** What a plan was made from, kept with it, so that it can be checked and printed whatever happens to the shop later. */
public sealed interface PlanFacts {

    /** How many movements each reel had had in the ledger; empty without one. */
    Map<String, Long> movements();

    /**
     * The whole question: every reel, every piece, every price as it was.
     *
     * @param ledger the ledger it was made with
     * @param movements how many movements each reel had had; empty without a ledger
     * @param problem the day's question as it was put to the engines
     */
    record Whole(LedgerMark ledger, Map<String, Long> movements, PackingProblem problem) implements PlanFacts {
        public Whole {
            movements = byId(movements);
        }
    }

    /**
     * Of a plan in the older form, which named its input by digest alone; each map by piece, but for the movements.
     *
     * @param movements how many movements each reel had had; empty without a ledger
     * @param moved the reel each piece was planned on that is on another now, which costs something
     * @param kept the reel each piece had to stay on
     */
    record Older(Map<String, Long> movements, Map<String, String> moved, Map<String, String> kept)
            implements PlanFacts {
        public Older {
            movements = byId(movements);
            moved = byId(moved);
            kept = byId(kept);
        }
    }

    /**
     * Which ledger, and how far it had got.
     *
     * @param id the ledger's own; empty where the shop kept none
     * @param head hash of its last event; empty where there was none
     */
    record LedgerMark(String id, String head) {
        /** The reels came from {@code reels.csv}. */
        public static final LedgerMark NONE = new LedgerMark("", "");

        /** Whether there was a ledger. */
        public boolean isKept() {
            return !id.isEmpty();
        }
    }

    private static <T> Map<String, T> byId(Map<String, T> map) {
        Map<String, T> sorted = new TreeMap<>(NaturalOrder.IDS);
        sorted.putAll(map);
        return Collections.unmodifiableMap(sorted);
    }
}
