package bitterend.cli;

import bitterend.day.Part;
import bitterend.day.Posting;
import bitterend.day.RecordedPlan;
import bitterend.measure.Length;
import bitterend.report.StockPage;
import bitterend.stock.Movement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code stock post SHOP [PLAN]}: what was cut goes into the ledger. */
@Command(
        name = "post",
        header = "Books what was cut of a plan; a second time does nothing.",
        description = {
            "",
            "Without --reel and --piece the whole plan is booked. Coils that are kept get a",
            "number, and their labels are printed. Nothing is booked when one of the reels, or",
            "what is ordered off it, has changed since the plan was made (exit code 5); each",
            "is told. A plan that is not sound, or of another ledger, is refused.",
            ""
        },
        sortOptions = false)
final class StockPostCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "The number of the plan that was cut by; may be left out where only one can be meant.")
    private @Nullable String plan;

    @Option(names = "--reel", paramLabel = "REEL", description = "Only this reel; may be given again.")
    private List<String> reels = List.of();

    @Option(names = "--piece", paramLabel = "PIECE", description = "On its reel everything up to this piece.")
    private List<String> pieces = List.of();

    @Option(
            names = "--measured",
            paramLabel = "PIECE=LENGTH",
            description = "Length a piece really came out at; may be given again.")
    private Map<String, String> measured = Map.of();

    @Option(names = "--scrap-reason", paramLabel = "TEXT", defaultValue = "", description = "Why rope was scrapped.")
    private String scrapReason = "";

    @Mixin
    private StockNote note = new StockNote();

    StockPostCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        PostedPlan.Choice choice =
                new PostedPlan(terminal, at.folder).choose(plan, new TreeSet<>(reels), new TreeSet<>(pieces));
        Optional<RecordedPlan> recorded = choice.recorded();
        if (recorded.isEmpty()) {
            return choice.code().number();
        }
        Map<String, Length> lengths = new java.util.TreeMap<>();
        measured.forEach((piece, text) -> lengths.put(piece, new LengthOption().convert(text)));
        Part part = new Part(reels, pieces, lengths, scrapReason);
        Posting.Posted posted = at.writing(ledger -> new Posting(ledger, note.caller(at)).post(recorded.get(), part));
        at.say(terminal, choice.words() + "\n");
        return told(posted);
    }

    private int told(Posting.Posted posted) {
        StockPage page = at.page();
        if (at.common.json || !posted.written().isEmpty()) {
            at.booked(terminal, posted.written());
        }
        if (posted.already() > 0) {
            at.say(terminal, posted.already() + " steps stood in the ledger already.\n");
        }
        for (Movement movement : posted.written()) {
            if (!movement.entry().origin().parent().isEmpty()) {
                at.say(terminal, "label:\n" + page.label(movement.entry().after()));
            }
        }
        return ExitCode.DONE.number();
    }
}
