package bitterend.work;

import bitterend.exchange.PlanFolder;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import java.util.List;
import java.util.Optional;

/** What the gate says of a plan that is to be used. */
public sealed interface Verdict {
    /** The plan, where it may be used. */
    Optional<Passed> passed();

    /** What is not as it was when the plan was made; nothing where that does not matter, or it may not be used at all. */
    List<Remark> remarks();

    /** It is sound, and nothing that matters to it has changed. */
    record Good(Passed plan) implements Verdict {
        @Override
        public Optional<Passed> passed() {
            return Optional.of(plan);
        }

        @Override
        public List<Remark> remarks() {
            return List.of();
        }
    }

    /** It is sound, but something is not as it was; some of its reels may be barred from booking. */
    record Remarked(Passed plan, List<Remark> remarks) implements Verdict {
        public Remarked {
            remarks = List.copyOf(remarks);
        }

        @Override
        public Optional<Passed> passed() {
            return Optional.of(plan);
        }
    }

    /** It may not be used. */
    record Refused(Why why, List<String> reasons) implements Verdict {
        public Refused {
            reasons = List.copyOf(reasons);
        }

        @Override
        public Optional<Passed> passed() {
            return Optional.empty();
        }

        @Override
        public List<Remark> remarks() {
            return List.of();
        }
    }

    /** Why a plan is refused. */
    enum Why {
        /** The checker found faults in it, or its file was changed. */
        UNSOUND,
        /** It was made for another shop or another ledger. */
        FOREIGN,
        /** It does not say what it was made from, and the shop has changed. */
        STALE
    }

    /**
     * A plan that went through.
     *
     * @param kept the plan as it is kept
     * @param problem the question it answers
     * @param plan the answer, with no more claimed of it than was confirmed
     */
    record Passed(PlanFolder.Kept kept, PackingProblem problem, CutPlan plan) {
        public int number() {
            return kept.document().number();
        }
    }
}
