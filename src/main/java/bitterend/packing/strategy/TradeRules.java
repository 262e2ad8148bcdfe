package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.bench.Numbering;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which pieces may come off which reels, asked once for pieces that are alike. Pieces and reels are counted from zero. */
final class TradeRules {
    private static final byte UNKNOWN = 0;
    private static final byte YES = 1;
    private static final byte NO = 2;

    private final PackingProblem problem;
    private final Eligibility rules;
    private final int[] kindOf;
    private final int[] sizeOf;
    private final byte[][] known;

    TradeRules(PackingProblem problem) {
        this.problem = problem;
        rules = new Eligibility(problem);
        Numbering<PieceKind> kinds = new Numbering<>();
        Numbering<List<Piece.RopeChoice>> sizes = new Numbering<>();
        List<Piece> pieces = problem.pieces();
        kindOf = new int[pieces.size()];
        sizeOf = new int[pieces.size()];
        for (int p = 0; p < kindOf.length; p++) {
            Piece piece = pieces.get(p);
            kindOf[p] = kinds.of(rules.kindOf(piece));
            List<Piece.RopeChoice> byRope = new ArrayList<>(piece.choices());
            byRope.sort(Comparator.comparing(Piece.RopeChoice::rope));
            sizeOf[p] = sizes.of(byRope);
        }
        known = new byte[kinds.size()][];
    }

    /** Whether no hard rule of one piece bars a reel; lengths apart. */
    boolean allow(int piece, int reel) {
        byte[] answers = known[kindOf[piece]];
        if (answers == null) {
            answers = new byte[problem.reels().size()];
            known[kindOf[piece]] = answers;
        }
        if (answers[reel] == UNKNOWN) {
            Reel asked = problem.reels().get(reel);
            answers[reel] = rules.allows(problem.pieces().get(piece), asked) ? YES : NO;
        }
        return answers[reel] == YES;
    }

    /** Pieces that are as long as one another on every rope share a number. */
    int sizeOf(int piece) {
        return sizeOf[piece];
    }
}
