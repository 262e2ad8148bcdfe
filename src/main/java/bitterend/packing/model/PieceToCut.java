package bitterend.packing.model;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.entity.PlanningPin;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A piece and the run it comes off; no run means that it is not planned. */
@PlanningEntity
public final class PieceToCut {
    /** Name of the one variable, as the solver knows it. */
    public static final String RUN = "run";

    private static final String HOMES = "homes";

    private PieceFacts facts;

    @PlanningVariable(valueRangeProviderRefs = HOMES, nullable = true)
    private @Nullable RunOfReel run;

    /** For the solver's clones. */
    @SuppressWarnings({"NullAway", "unused"})
    private PieceToCut() {
        facts = null;
    }

    PieceToCut(PieceFacts facts, @Nullable RunOfReel run) {
        this.facts = facts;
        this.run = run;
    }

    @PlanningId
    public String getId() {
        return facts.piece().id();
    }

    public Piece piece() {
        return facts.piece();
    }

    /** The class in which it is left undone, from 1, the most urgent. */
    public int urgency() {
        return facts.urgency();
    }

    /** Its weight in that class. */
    public long weight() {
        return facts.weight();
    }

    /** The runs it may come off, as far as hard rules of one piece on one run go. */
    @ValueRangeProvider(id = HOMES)
    public List<RunOfReel> getHomes() {
        return facts.homes().runs();
    }

    /** Whether the solver must leave it where it is. */
    @PlanningPin
    public boolean isFixed() {
        return isPinned() && run != null && getHomes().size() == 1;
    }

    /** Whether a pin holds it to one reel. */
    public boolean isPinned() {
        return facts.isPinned();
    }

    public Eligibility eligibility() {
        return facts.eligibility();
    }

    /** The matched set it belongs to; a piece that stands alone has none, which is a caller's bug. */
    public MatchedSet matchedSet() {
        MatchedSet set = facts.set();
        if (set == null) {
            throw new IllegalArgumentException(getId() + " belongs to no set");
        }
        return set;
    }

    public boolean isMatched() {
        return facts.set() != null;
    }

    /** Whether an earlier plan had it on another reel. */
    public boolean isMoved() {
        return run != null && !facts.earlierReel().isEmpty() && !run.reel().id().equals(facts.earlierReel());
    }

    /** Whether its order has other pieces, so that it can be split over lots. */
    public boolean hasOrderMates() {
        return facts.hasOrderMates();
    }

    /** Pieces of one kind differ in their number alone. */
    public int kind() {
        return facts.kind();
    }

    /** Whether no hard rule of one piece on one run bars a run. */
    public boolean mayComeOff(RunOfReel home) {
        return facts.homes().holds(home);
    }

    /** Cut length on a run's rope and the cut loss, in millimetres. */
    public long sizeOn(RunOfReel home) {
        return facts.homes().sizeOn(home);
    }

    public @Nullable RunOfReel getRun() {
        return run;
    }

    public void setRun(@Nullable RunOfReel run) {
        this.run = run;
    }

    /** The run of a planned piece. */
    public RunOfReel plannedRun() {
        RunOfReel planned = run;
        if (planned == null) {
            throw new IllegalStateException(getId() + " is not planned");
        }
        return planned;
    }

    public boolean isPlanned() {
        return run != null;
    }

    @Override
    public String toString() {
        return getId() + (run == null ? "" : " off " + run);
    }
}
