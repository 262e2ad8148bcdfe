package bitterend.packing.loads;

import org.jspecify.annotations.Nullable;

/** A node of the tree: plans of a domain, and what is proven of them. */
final class Node {
    final Domain domain;
    final int depth;
    /** No plan of the domain comes to less, in units. */
    long bound;
    /** The prices that prove it. */
    Duals duals;
    /** Columns that were basic when its parent was solved. */
    int[] basics = {};
    /** Where it was branched on, and the two that are left instead. */
    @Nullable
    Decision decision;

    @Nullable
    Node yes;

    @Nullable
    Node no;
    /** Nothing is left of it, as the domain alone tells. */
    boolean empty;

    Node(Domain domain, int depth, long bound, Duals duals) {
        this.domain = domain;
        this.depth = depth;
        this.bound = bound;
        this.duals = duals;
    }

    /** The child where the statement holds, or where it does not. */
    Node child(Decision at, boolean holds, LoadModel model) {
        Domain part = domain.copy();
        at.narrow(part, holds, model);
        Node child = new Node(part, depth + 1, bound, duals);
        child.basics = basics;
        child.empty = !part.spread();
        return child;
    }
}
