package bitterend.packing.proof;

/** A node of a proof: the plans that are left when every statement above it has been answered. */
public sealed interface ProofNode permits ProofNode.Branch, ProofNode.Leaf, ProofNode.Empty {
    /** No plan is left. */
    ProofNode EMPTY = new Empty();

    /**
     * The plans for which a statement is true, and all others.
     *
     * @param statement what tells them apart
     * @param yes the plans for which it is true
     * @param no the others
     */
    record Branch(Statement statement, ProofNode yes, ProofNode no) implements ProofNode {}

    /**
     * Prices prove a bound for the plans that are left.
     *
     * @param prices which of the price lists of the proof, the first one being 0; several leaves may share one
     */
    record Leaf(int prices) implements ProofNode {}

    /** The statements above leave no plan: some set, run or line has nothing to choose from any more. */
    record Empty() implements ProofNode {}
}
