package bitterend.packing.bench;

import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.WantedRope;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.Optional;

/** The reel to count before rope is received for work left undone: by the ledger it has room, and only the certain rope is too short. */
public final class RopeToCount {
    private final PackingProblem problem;
    private final RackState rack;
    private final Workbench bench;
    private final Eligibility rules;

    public RopeToCount(Workbench bench, RackState rack) {
        problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        rules = new Eligibility(problem);
    }

    /** Such as {@code 65.240 m is probably left on K1 beside the other work: count it first (stock count)}. */
    public Optional<Sentence> before(WantedRope wanted) {
        Optional<Room> best = Optional.empty();
        for (Reel reel : problem.reels()) {
            if (reel.contents().uncertainty().isPositive()
                    && !problem.isComing(reel.id())
                    && wanted.together().stream().allMatch(piece -> rules.allows(piece, reel))) {
                for (Run run : reel.possibleRuns()) {
                    Room room = on(reel, run, wanted);
                    if (room.mayServe()
                            && (best.isEmpty() || room.missing() < best.get().missing())) {
                        best = Optional.of(room);
                    }
                }
            }
        }
        return best.map(Room::told);
    }

    /**
     * Room beside the other work.
     *
     * @param certain what is there at least
     * @param byLedger what is there if the booked length is true
     * @param wanted what the work takes, with the cuts between its pieces
     */
    private record Room(String reel, long certain, long byLedger, long wanted) {
        boolean mayServe() {
            return certain < wanted && byLedger >= wanted;
        }

        long missing() {
            return wanted - certain;
        }

        Sentence told() {
            return Sentence.NONE
                    .and(new Length(byLedger))
                    .and(" is probably left on " + reel + " beside the other work: count it first (stock count)");
        }
    }

    /** Runs are counted from the working end, and uncertain rope lies at the other: a run has one number with it and without. */
    private Room on(Reel reel, Run possible, WantedRope wanted) {
        Optional<Run> sure = reel.runs().stream()
                .filter(run -> run.index() == possible.index())
                .findFirst();
        long certain = sure.map(run -> rack.free(bench.numberOf(new RunId(reel.id(), run.index()))))
                .orElse(0L);
        long more = possible.length().mm() - sure.map(run -> run.length().mm()).orElse(0L);
        return new Room(reel.id(), certain, certain + more, wanted.takesOn(reel).mm());
    }
}
