package bitterend.exchange;

import java.time.Instant;
import java.util.List;

/**
 * Something that happened to a plan after it was made.
 *
 * @param at when
 * @param who name of the person
 * @param what what happened
 * @param plan number of the plan
 * @param digest SHA-256 of its file
 * @param reels the reels concerned; empty where the whole plan is
 */
public record PlanEvent(Instant at, String who, What what, int plan, String digest, List<String> reels) {
    public PlanEvent {
        reels = List.copyOf(reels);
    }

    /** What may happen to a plan. */
    public enum What {
        /** It became the plan that the shop works by. */
        IN_FORCE,
        /** Its sheets are out: these reels are cut by them. */
        ISSUED,
        /** Its sheets for these reels were called back. */
        WITHDRAWN
    }
}
