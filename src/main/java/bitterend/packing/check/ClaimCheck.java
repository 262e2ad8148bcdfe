package bitterend.packing.check;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Bound.CostProof;
import bitterend.packing.Bound.LeastProof;
import bitterend.packing.Undone;
import bitterend.packing.check.BoundVerdict.State;
import bitterend.packing.proof.ProofTree;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Computes one bound again: what its duals prove, and every proof by cases that stands beside them. */
final class ClaimCheck {
    private final BoundClaim claim;
    private final Bound bound;
    private final String ropes;
    private final long work;
    private final LoadStates.Work workOfProofs;
    private final List<String> wrong = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private Cost confirmed = Cost.ZERO;
    private boolean rootChecked;

    /**
     * @param ropes their names
     * @param work states that the duals may look at, and the proofs by cases once more
     */
    ClaimCheck(BoundClaim claim, String ropes, long work) {
        this.claim = claim;
        bound = claim.bound();
        this.ropes = ropes;
        this.work = work;
        workOfProofs = new LoadStates.Work(work);
    }

    BoundVerdict verdict() {
        root();
        bound.cases().costs().forEach(this::cost);
        Undone least = least();
        if (!wrong.isEmpty()) {
            return new BoundVerdict(bound.ropes(), State.REFUTED, wrong.get(0), List.of(), Cost.ZERO, Undone.NONE);
        }
        if (rootChecked && bound.best().compareTo(confirmed) > 0) {
            open.add("its improvement by branching is not re-checked");
        }
        State state = rootChecked || confirmed.compareTo(Cost.ZERO) > 0 ? State.CONFIRMED : State.NOT_CHECKED;
        String said = state == State.NOT_CHECKED ? String.join("; ", open) : "bound confirmed" + behind(open);
        return new BoundVerdict(bound.ropes(), state, ropes + ": " + said, open, confirmed, least);
    }

    private static String behind(List<String> sentences) {
        return sentences.isEmpty() ? "" : "; " + String.join("; ", sentences);
    }

    private void root() {
        try {
            Optional<Cost> root = RootBound.greatest(claim, work);
            rootChecked = root.isPresent();
            root.ifPresentOrElse(this::judgeRoot, () -> open.add("not re-checked, too large"));
        } catch (ArithmeticException tooLarge) {
            open.add("not re-checked, its numbers are too large");
        }
    }

    private void judgeRoot(Cost root) {
        if (root.compareTo(bound.root()) < 0) {
            wrong.add(
                    "the duals prove " + root.millis() + ", not " + bound.root().millis() + " (1/1000 minor units)");
        }
        raise(root);
    }

    /** What is proven is claimed no higher than the plan claims it. */
    private void raise(Cost proven) {
        Cost claimed = proven.compareTo(bound.best()) > 0 ? bound.best() : proven;
        confirmed = claimed.compareTo(confirmed) > 0 ? claimed : confirmed;
    }

    private void cost(CostProof proof) {
        if (proof.cost().compareTo(bound.best()) > 0) {
            wrong.add("a proof by cases claims more than the bound");
            return;
        }
        ProofGoal goal = new ProofGoal(0, proof.proof().scale(), bound.undone().weights());
        if (isProven(proof.proof(), goal, proof.cost().millis())) {
            raise(proof.cost());
        }
    }

    /** Of each class what was confirmed, as long as the plan leaves exactly that of the classes before. */
    private Undone least() {
        Undone least = Undone.NONE;
        for (int urgency = 1; urgency <= Undone.CLASSES; urgency++) {
            long proven = 0;
            for (LeastProof proof : bound.cases().least()) {
                if (proof.urgency() == urgency && isConfirmed(proof)) {
                    proven = Math.max(proven, proof.weight());
                }
            }
            boolean behindLeast = true;
            for (int before = 1; before < urgency; before++) {
                behindLeast &= least.in(before) == bound.undone().in(before);
            }
            least = behindLeast ? least.plus(Undone.of(urgency, proven)) : least;
        }
        return least;
    }

    private boolean isConfirmed(LeastProof proof) {
        if (proof.weight() > bound.undone().in(proof.urgency())) {
            wrong.add("the plan leaves less of class " + proof.urgency() + " undone than any plan is said to");
            return false;
        }
        List<Long> before = bound.undone().weights().subList(0, proof.urgency() - 1);
        return isProven(
                proof.proof(), new ProofGoal(proof.urgency(), proof.proof().scale(), before), proof.weight());
    }

    /** Whether the proof shows as much; says so where it does not, or where it was not followed. */
    private boolean isProven(ProofTree proof, ProofGoal goal, long claimed) {
        try {
            ProofDay day = new ProofDay(claim.facts(), claim.reels(), claim.pieces(), proof);
            Optional<BigInteger> proven = new ProofCheck(day, proof, goal, workOfProofs).proven();
            if (proven.isEmpty()) {
                wrong.add("a proof by cases leaves no plan, and here is one");
            } else if (proven.get().compareTo(BigInteger.valueOf(claimed)) < 0) {
                wrong.add("a proof by cases shows " + proven.get() + ", not " + claimed);
            }
            return wrong.isEmpty();
        } catch (ProofRefused refused) {
            wrong.add("a proof by cases cannot be followed: " + refused.getMessage());
        } catch (ProofTooLarge tooLarge) {
            open.add("a proof by cases is not re-checked, too large");
        } catch (ArithmeticException tooLarge) {
            open.add("a proof by cases is not re-checked, its numbers are too large");
        }
        return false;
    }
}
