package bitterend.exchange;

import bitterend.demand.CutMate;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.MoneyText;
import bitterend.measure.Sentence;
import bitterend.packing.Horizon;
import bitterend.packing.Reason;
import bitterend.packing.RunId;
import bitterend.packing.explain.KeptFor;
import bitterend.packing.explain.PieceAnswer;
import bitterend.packing.explain.ReelAnswer;
import bitterend.stock.Movement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Why a plan does what it does with one piece or one reel, for programs. */
public final class ExplainJson {
    private static final String FORMAT = "bitterend/explain/1";

    private final MoneyText money;
    private final int plan;
    private final List<CutMate> begun;

    /**
     * @param money the shop's money
     * @param plan number of the plan that was asked; 0 when it has none
     * @param begun pieces of the asked piece's matched set that are cut by now, whatever the plan knew
     */
    public ExplainJson(MoneyText money, int plan, List<CutMate> begun) {
        this.money = money;
        this.plan = plan;
        this.begun = List.copyOf(begun);
    }

    private JsonTree head() {
        JsonTree tree = new JsonTree().with("format", FORMAT);
        return plan > 0 ? tree.with("plan", plan) : tree;
    }

    /** A piece that is cut already: off which reel, when and by whom. */
    public String cut(Movement cut) {
        return head().with("piece", cut.entry().origin().piece())
                .with(
                        "cut",
                        new JsonTree()
                                .with("reel", cut.entry().reel())
                                .with("at", cut.at().toString())
                                .with("who", cut.who()))
                .text();
    }

    /** A piece that is not cut ahead while rope is short. */
    public String waits(String piece, Horizon.Waiting what) {
        return head().with("piece", piece).with("waits", FactsForm.tree(what)).text();
    }

    /** What became of one piece. */
    public String text(PieceAnswer answer) {
        return head().with("piece", answer.piece())
                .with("places", (Object)
                        answer.places().stream().map(RunId::toString).toList())
                .with("why", reasons(answer.why()))
                .with("elsewhere", answer.elsewhere().stream().map(this::tree).toList())
                .with("help", reasons(answer.help()))
                .with("begun", begun.stream().map(PieceForm::tree).toList())
                .text();
    }

    private JsonTree tree(PieceAnswer.Elsewhere other) {
        JsonTree tree = new JsonTree().with("run", other.run().toString());
        return other.isOpen()
                ? tree.with("change", money.exact(other.change()))
                : tree.with("bars", reasons(other.bars()));
    }

    /** What a reel gives. */
    public String text(ReelAnswer answer) {
        return head().with("reel", answer.reel())
                .with(
                        "runs",
                        answer.runs().stream()
                                .map(run -> new JsonTree()
                                        .with("run", run.run().toString())
                                        .with("pieces", (Object) run.pieces()))
                                .toList())
                .with(
                        "charges",
                        answer.charges().stream()
                                .map(charge -> tree(charge.reason()).with("cost", money.exact(charge.cost())))
                                .toList())
                .with("cost", money.exact(answer.cost()))
                .with("untouched", reasons(answer.untouched()))
                .with("held", (Object)
                        answer.held().stream().map(Sentence::exact).toList())
                .with("keptFor", kept(answer.kept()))
                .text();
    }

    private JsonTree kept(@Nullable KeptFor kept) {
        return kept == null
                ? new JsonTree()
                : new JsonTree()
                        .with("pieces", (Object) kept.pieces())
                        .with("day", kept.day().toString())
                        .with("undone", (Object) kept.undone())
                        .with("saving", money.exact(kept.saving()));
    }

    private static List<JsonTree> reasons(List<Reason> reasons) {
        return reasons.stream().map(ExplainJson::tree).toList();
    }

    private static JsonTree tree(Reason reason) {
        return new JsonTree()
                .with("rule", Codec.word(reason.rule()))
                .with("sentence", reason.sentence().exact());
    }
}
