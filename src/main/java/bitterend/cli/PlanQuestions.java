package bitterend.cli;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.exchange.ExplainJson;
import bitterend.exchange.QuoteJson;
import bitterend.finding.CommandWord;
import bitterend.measure.MoneyText;
import bitterend.quoting.PlanShares;
import bitterend.report.AnswerPage;
import bitterend.report.Figures;
import bitterend.report.QuoteSharesPage;
import bitterend.report.WaitingWords;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.Movement;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.AskPlan;
import bitterend.work.plans.AskPlan.About;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What can be asked of a plan that is there. A question plans nothing and writes nothing. */
final class PlanQuestions {
    @Option(
            names = "--explain",
            paramLabel = "ID",
            description = "Say why this piece or reel is planned as it is in the plan in force; keeps no plan. What it"
                    + " costs to keep a reel for later work is found by planning its rope for up to a second.")
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

    /** Whether both were asked. */
    boolean isTwo() {
        return explain != null && shares;
    }

    /**
     * What was asked, and the answer.
     *
     * @param id of the piece or reel; null where none was asked about
     * @param about what is said of it; null where none was asked about
     */
    record Asked(
            ShopNow shop,
            Verdict.Passed passed,
            @Nullable String id,
            @Nullable About about,
            Optional<List<PlanShares.OrderShare>> shares) {}

    /** Has the questions answered. */
    Asked asked(ShopNow shop, Verdict.Passed passed) {
        AskPlan ask = new AskPlan(shop, passed);
        String id = explain;
        return new Asked(
                shop,
                passed,
                id,
                id == null ? null : ask.about(id),
                shares ? Optional.of(ask.shares()) : Optional.empty());
    }

    /** What is wrong with the question; empty when it was answered. */
    String refusal(Asked asked) {
        if (asked.about() instanceof About.Later later) {
            return "--explain: " + asked.id() + " need not be cut before " + later.cutBy() + ", and plan "
                    + asked.passed().number() + " looks ahead to " + later.until()
                    + ". To plan it now: bitterend plan " + shop(asked) + " --until " + later.cutBy();
        }
        return asked.about() instanceof About.Unknown unknown
                ? "--explain: found \"" + asked.id() + "\", expected the id of a piece such as " + unknown.piece()
                        + ", or of a reel"
                : "";
    }

    /** The answer for people. */
    Document page(Asked asked, Figures figures) {
        List<Document> pages = new ArrayList<>();
        if (asked.about() instanceof About.OfPiece piece) {
            pages.add(new AnswerPage(figures).of(piece.answer()));
            pages.add(begun(shop(asked), piece.begun()));
        } else if (asked.about() instanceof About.OfReel reel) {
            pages.add(new AnswerPage(figures).of(reel.answer()));
        } else if (asked.about() instanceof About.CutAlready cut) {
            pages.add(cutAlready(cut.cut(), shop(asked)));
        } else if (asked.about() instanceof About.Waits waits) {
            pages.add(WaitingWords.about(waits.piece(), waits.what()));
        }
        asked.shares()
                .ifPresent(found -> pages.add(new QuoteSharesPage(figures)
                        .of(
                                asked.shop().shop().settings().name(),
                                asked.passed().plan().day().toString(),
                                found)));
        return pages.stream().reduce(Document::then).orElse(Document.EMPTY);
    }

    private static String shop(Asked asked) {
        return CommandWord.of(asked.shop().at().folder().toString());
    }

    /** The answer for programs. */
    String json(Asked asked) {
        MoneyText money = asked.shop().shop().settings().money();
        int plan = asked.passed().number();
        String about = "";
        if (asked.about() instanceof About.OfPiece piece) {
            List<CutMate> begun =
                    piece.begun() == null ? List.of() : piece.begun().matching().begun();
            about = new ExplainJson(money, plan, begun).text(piece.answer());
        } else if (asked.about() instanceof About.OfReel reel) {
            about = new ExplainJson(money, plan, List.of()).text(reel.answer());
        } else if (asked.about() instanceof About.CutAlready cut) {
            about = new ExplainJson(money, plan, List.of()).cut(cut.cut());
        } else if (asked.about() instanceof About.Waits waits) {
            about = new ExplainJson(money, plan, List.of()).waits(waits.piece(), waits.what());
        }
        return about + asked.shares().map(new QuoteJson(money)::shares).orElse("");
    }

    /** That the set of a piece is begun by now, on what, and what a person may do where nothing matches any more. */
    private static Document begun(String shop, @Nullable Piece piece) {
        Writing page = new Writing();
        if (piece != null) {
            String set = piece.matching().set();
            List<CutMate> cut = piece.matching().begun();
            boolean toTheReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
            page.heading("Its set is begun");
            page.paragraph(cut.stream().map(CutMate::piece).collect(Collectors.joining(", "))
                    + (cut.size() == 1 ? " is" : " are") + " cut, off "
                    + cut.get(0).origin(toTheReel) + ": what is left of set " + set
                    + " must match. Where no rope"
                    + " does, a person decides.");
            page.paragraph("To let the rest go on off other rope: bitterend orders release " + shop + " "
                    + CommandWord.of(set));
            page.paragraph("To make all of it again: bitterend orders again " + shop + " " + CommandWord.of(set));
        }
        return page.document();
    }

    private static Document cutAlready(Movement cut, String shop) {
        String piece = cut.entry().origin().piece();
        Writing page = new Writing();
        page.title("Piece " + piece + ": cut already, off reel " + cut.entry().reel() + ", by " + cut.who() + ".");
        page.paragraph("How it came to be: bitterend stock trace " + shop + " " + CommandWord.of(piece));
        return page.document();
    }
}
