package bitterend.cli;

import bitterend.buying.OnOrder;
import bitterend.exchange.ExplainJson;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.RunId;
import bitterend.packing.explain.Coming;
import bitterend.packing.explain.Explanation;
import bitterend.report.AnswerPage;
import bitterend.report.page.Document;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Answers what a plan does with one piece or one reel. */
final class Answers {
    private final Explanation explanation;

    /** Knows of the rope that the shop has on order. */
    Answers(PackingProblem problem, CutPlan plan, List<OnOrder> coming) {
        explanation = new Explanation(
                problem,
                packing(plan),
                coming.stream()
                        .map(each ->
                                new Coming(each.id(), each.rope(), each.written(), each.expected(), each.certificate()))
                        .toList());
    }

    /** Whether a piece or a reel has this id. */
    static boolean knows(PackingProblem problem, String id) {
        return problem.pieces().stream().anyMatch(piece -> piece.id().equals(id))
                || problem.reels().stream().anyMatch(reel -> reel.id().equals(id));
    }

    /** The id of some piece, as an example. */
    static String anyPiece(PackingProblem problem) {
        return problem.pieces().stream().findFirst().map(piece -> piece.id()).orElse("1041/2.1");
    }

    /** The page about a piece, or about a reel when no piece has this id. */
    Document to(String id, AnswerPage page) {
        return explanation
                .piece(id)
                .map(page::of)
                .or(() -> explanation.reel(id).map(page::of))
                .orElseThrow(() -> new IllegalArgumentException("no piece and no reel " + id));
    }

    /** The same for programs. */
    String to(String id, ExplainJson json) {
        return explanation
                .piece(id)
                .map(json::text)
                .or(() -> explanation.reel(id).map(json::text))
                .orElseThrow(() -> new IllegalArgumentException("no piece and no reel " + id));
    }

    private static Packing packing(CutPlan plan) {
        Map<String, RunId> places = new TreeMap<>();
        for (ReelDraw draw : plan.draws()) {
            for (RunDraw run : draw.runs()) {
                for (Cut cut : run.cuts()) {
                    places.put(cut.piece(), new RunId(draw.reel(), run.run()));
                }
            }
        }
        return new Packing(places);
    }
}
