package bitterend.cli;

import bitterend.day.RackToday;
import bitterend.exchange.ExplainJson;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.Shop;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.quoting.PlanShares;
import bitterend.report.AnswerPage;
import bitterend.report.Figures;
import bitterend.report.Ink;
import bitterend.report.QuoteSharesPage;
import bitterend.stock.Movement;
import bitterend.work.Verdict;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What can be asked of a plan that is there. A question plans nothing and writes nothing. */
final class PlanQuestions {
    @Option(
            names = "--explain",
            paramLabel = "ID",
            description = "Say why this piece or reel is planned as it is in the plan in force; plans nothing.")
    private @Nullable String explain;

    @Option(
            names = "--shares",
            description = "Say what each order of the plan in force caused, waste and reels included; plans nothing.")
    private boolean shares;

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "Ask this plan, by its number, instead of the one in force.")
    @Nullable
    String plan;

    boolean isAsked() {
        return explain != null || shares;
    }

    /** What is wrong with the question; empty when it can be answered. */
    String refusal(PackingProblem problem, Optional<RackToday> rack) {
        return explain == null || cut(rack).isPresent() || Answers.knows(problem, explain)
                ? ""
                : "--explain: found \"" + explain + "\", expected the id of a piece such as "
                        + Answers.anyPiece(problem) + ", or of a reel";
    }

    /** The movement that cut the piece that is asked about, when it is cut. */
    private Optional<Movement> cut(Optional<RackToday> rack) {
        return rack.flatMap(today ->
                Optional.ofNullable(explain == null ? null : today.cut().get(explain)));
    }

    /** The answer, for people or for programs. */
    String answer(Shop read, Verdict.Passed passed, Optional<RackToday> rack, Printing printing) {
        PackingProblem problem = passed.problem();
        PlanDocument document = passed.kept().document();
        StringBuilder answer = new StringBuilder();
        ExplainJson json = new ExplainJson(read.settings().money(), document.number());
        Optional<Movement> cut = cut(rack);
        if (cut.isPresent()) {
            answer.append(printing.json() ? json.cut(cut.get()) : cutAlready(cut.get()));
        } else if (explain != null) {
            Answers answers =
                    new Answers(problem, passed.plan(), read.supplies().onOrder());
            answer.append(
                    printing.json()
                            ? answers.to(explain, json)
                            : answers.to(explain, new AnswerPage(printing.figures(), printing.ink())));
        }
        return shares
                ? answer.append(shares(read, problem, passed.plan(), printing)).toString()
                : answer.toString();
    }

    private static String cutAlready(Movement cut) {
        String piece = cut.entry().origin().piece();
        return "Piece " + piece + ": cut already, off reel " + cut.entry().reel() + ", by " + cut.who()
                + ".\nHow it came to be: bitterend stock trace SHOP " + piece + "\n";
    }

    /** How an answer is printed. */
    record Printing(Figures figures, Ink ink, boolean json) {}

    private static String shares(Shop read, PackingProblem problem, CutPlan plan, Printing printing) {
        List<PlanShares.OrderShare> caused = PlanShares.of(problem, plan);
        return printing.json()
                ? new QuoteJson(read.settings().money()).shares(caused)
                : new QuoteSharesPage(printing.figures(), printing.ink())
                        .text(read.settings().name(), plan.day().toString(), caused);
    }
}
