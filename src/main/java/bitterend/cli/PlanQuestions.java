package bitterend.cli;

import bitterend.day.BegunSets;
import bitterend.day.RackToday;
import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.exchange.ExplainJson;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.Shop;
import bitterend.finding.CommandWord;
import bitterend.measure.MoneyText;
import bitterend.packing.PackingProblem;
import bitterend.quoting.PlanShares;
import bitterend.report.AnswerPage;
import bitterend.report.Figures;
import bitterend.report.QuoteSharesPage;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.Movement;
import bitterend.work.Verdict;
import java.nio.file.Path;
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

    /**
     * What an answer is made from.
     *
     * @param rack what is cut already, where the shop keeps a ledger
     * @param folder the shop folder as it was typed
     */
    record Asked(Shop read, Verdict.Passed passed, Optional<RackToday> rack, Path folder) {
        PackingProblem problem() {
            return passed.problem();
        }

        Answers answers() {
            return new Answers(problem(), passed.plan(), read.supplies().onOrder());
        }

        List<PlanShares.OrderShare> shares() {
            return PlanShares.of(problem(), passed.plan());
        }
    }

    /** The answer for people. */
    Document page(Asked asked, Figures figures) {
        List<Document> pages = new ArrayList<>();
        String id = explain;
        if (id != null) {
            pages.add(cut(asked.rack())
                    .map(cut -> cutAlready(cut, asked.folder()))
                    .orElseGet(() -> asked.answers().to(id, new AnswerPage(figures))));
            if (cut(asked.rack()).isEmpty()) {
                pages.add(begun(asked, id));
            }
        }
        if (shares) {
            Shop read = asked.read();
            String day = asked.passed().plan().day().toString();
            pages.add(new QuoteSharesPage(figures).of(read.settings().name(), day, asked.shares()));
        }
        return pages.stream().reduce(Document::then).orElse(Document.EMPTY);
    }

    /** The answer for programs. */
    String json(Asked asked) {
        MoneyText money = asked.read().settings().money();
        String id = explain;
        ExplainJson json =
                new ExplainJson(money, asked.passed().kept().document().number(), begunMates(asked, id));
        String about = id == null
                ? ""
                : cut(asked.rack()).map(json::cut).orElseGet(() -> asked.answers()
                        .to(id, json));
        return shares ? about + new QuoteJson(money).shares(asked.shares()) : about;
    }

    /** That the set of a piece is begun by now, on what, and what a person may do where nothing matches any more. */
    private static Document begun(Asked asked, String id) {
        String shop = CommandWord.of(asked.folder().toString());
        Writing page = new Writing();
        bound(asked, id).ifPresent(piece -> {
            String set = piece.matching().set();
            List<CutMate> cut = piece.matching().begun();
            boolean toTheReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
            page.heading("Its set is begun");
            page.paragraph(cut.stream().map(CutMate::piece).collect(Collectors.joining(", "))
                    + (cut.size() == 1 ? " is" : " are") + " cut, off "
                    + cut.get(0).origin(toTheReel) + ": what is left of set " + set
                    + " must match. Where no rope"
                    + " does, a person decides: bitterend orders release " + shop + " "
                    + CommandWord.of(set) + " lets the rest go on off other rope, bitterend orders again "
                    + shop
                    + " " + CommandWord.of(set) + " has all of it made again.");
        });
        return page.document();
    }

    private static List<CutMate> begunMates(Asked asked, @Nullable String id) {
        return id == null
                ? List.of()
                : bound(asked, id).map(piece -> piece.matching().begun()).orElse(List.of());
    }

    /** A piece whose set is begun by now, bound to what is cut of it. */
    private static Optional<Piece> bound(Asked asked, String id) {
        return asked.rack().flatMap(rack -> asked.read().pieces().stream()
                .filter(piece -> piece.id().equals(id))
                .map(piece -> new BegunSets(asked.read().pieces(), rack).bound(piece))
                .filter(piece -> !piece.matching().begun().isEmpty())
                .findFirst());
    }

    private static Document cutAlready(Movement cut, Path folder) {
        String piece = cut.entry().origin().piece();
        Writing page = new Writing();
        page.title("Piece " + piece + ": cut already, off reel " + cut.entry().reel() + ", by " + cut.who() + ".");
        page.paragraph("How it came to be: bitterend stock trace " + CommandWord.of(folder.toString()) + " "
                + CommandWord.of(piece));
        return page.document();
    }
}
