package bitterend.packing.proof;

import java.util.List;

/**
 * A proof that so many reels, all alike and cut flat, do not hold all pieces. Let W be the room of a reel, w and d size and
 * number of the pieces of each line, K the reels, S = K W - sum of d w what they leave over. In a plan each reel is loaded with
 * at least W - S. For whole prices pi of either sign, and Z the most that the pieces of any such load are worth, a plan's pieces
 * are worth at most K Z: where the sum of d pi is more, there is no plan. At a leaf Z is over the loads that the answers above
 * it leave.
 *
 * @param lines pieces that are alike, the longest first; of lines as long the first counts as the longest
 * @param reels K
 * @param root all plans
 */
public record FewestProof(List<Line> lines, long reels, Node root) {
    public FewestProof {
        lines = List.copyOf(lines);
    }

    /**
     * Pieces of one size.
     *
     * @param size length with one cut loss, in mm
     * @param count how many
     */
    public record Line(long size, int count) {}

    /** The plans that are left when every question above has been answered. */
    public sealed interface Node permits Branch, Leaf, Empty {}

    /**
     * The plans in which the reel whose longest piece is of a line with one piece holds at least so many of another line, and
     * those in which it does not or that piece is no reel's longest.
     *
     * @param leader the line of the longest piece, the first one being 0
     * @param line a line behind it
     * @param copies at least one
     * @param yes the plans in which it does
     * @param no the others
     */
    public record Branch(int leader, int line, int copies, Node yes, Node no) implements Node {}

    /**
     * Prices that leave no plan.
     *
     * @param prices one for each line
     */
    public record Leaf(List<Long> prices) implements Node {
        public Leaf {
            prices = List.copyOf(prices);
        }
    }

    /** The answers above contradict each other. */
    public record Empty() implements Node {}
}
