package bitterend.exchange;

import bitterend.finding.NaturalOrder;
import bitterend.measure.MoneyText;
import bitterend.packing.CutPlan;
import java.time.Duration;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A cutting plan with what is needed to tell where it came from.
 *
 * @param plan the plan
 * @param money the currency its costs are in
 * @param made how it was made
 */
public record PlanDocument(CutPlan plan, MoneyText money, Made made) {
    /**
     * How a plan was made.
     *
     * @param engine version of the program
     * @param seed seed of every random choice
     * @param time how long the search was allowed to take, to the millisecond
     * @param inputs SHA-256 of every file it was made from, by file name
     * @param movements how many movements each reel had in the ledger; empty when there was none
     * @param near what of an earlier plan it was held to
     */
    public record Made(
            String engine,
            long seed,
            Duration time,
            Map<String, String> inputs,
            Map<String, Long> movements,
            Near near) {
        public Made {
            inputs = Collections.unmodifiableMap(new TreeMap<>(inputs));
            Map<String, Long> byReel = new TreeMap<>(NaturalOrder.IDS);
            byReel.putAll(movements);
            movements = Collections.unmodifiableMap(byReel);
        }

        /** Made without an earlier plan. */
        public Made(String engine, long seed, Duration time, Map<String, String> inputs, Map<String, Long> movements) {
            this(engine, seed, time, inputs, movements, Near.NOTHING);
        }

        /** Made without a ledger. */
        public Made(String engine, long seed, Duration time, Map<String, String> inputs) {
            this(engine, seed, time, inputs, Map.of());
        }
    }

    /**
     * What of an earlier plan a plan was held to, beyond the files of the shop; each by piece.
     *
     * @param moved the reel each piece was planned on that is on another now, which costs something
     * @param kept the reel each piece had to stay on
     */
    public record Near(Map<String, String> moved, Map<String, String> kept) {
        /** Of none. */
        public static final Near NOTHING = new Near(Map.of(), Map.of());

        public Near {
            moved = byPiece(moved);
            kept = byPiece(kept);
        }

        private static Map<String, String> byPiece(Map<String, String> reels) {
            Map<String, String> sorted = new TreeMap<>(NaturalOrder.IDS);
            sorted.putAll(reels);
            return Collections.unmodifiableMap(sorted);
        }
    }
}
