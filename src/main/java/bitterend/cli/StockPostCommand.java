package bitterend.cli;

import bitterend.day.Part;
import bitterend.day.Posting;
import bitterend.day.RecordedPlan;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanJson;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.report.FindingsPage;
import bitterend.report.StockPage;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock post SHOP [PLAN]}: what was cut goes into the ledger. */
@Command(
        name = "post",
        header = "Books what was cut of a plan; a second time does nothing.",
        description = {
            "",
            "Without --reel and --piece the whole plan is booked. Coils that are kept get a",
            "number, and their labels are printed. Nothing is booked when a reel has changed",
            "since the plan was made (exit code 5): plan again with plan --from.",
            ""
        },
        sortOptions = false)
final class StockPostCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", arity = "0..1", paramLabel = "PLAN", description = "Default: SHOP/plan.json.")
    private @Nullable Path plan;

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
        Optional<RecordedPlan> recorded = recorded();
        if (recorded.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Map<String, Length> lengths = new java.util.TreeMap<>();
        measured.forEach((piece, text) -> lengths.put(piece, new LengthOption().convert(text)));
        Part part = new Part(reels, pieces, lengths, scrapReason);
        Posting.Posted posted = at.writing(ledger -> new Posting(ledger, note.caller(at)).post(recorded.get(), part));
        return told(posted);
    }

    private Optional<RecordedPlan> recorded() {
        Findings findings = new Findings();
        Optional<PlanDocument> read = PlanJson.read(plan == null ? at.folder.resolve("plan.json") : plan, findings);
        terminal.err().print(new FindingsPage(terminal.ink()).text(findings.sorted()));
        return read.map(document -> new RecordedPlan(
                PlanJson.digest(document), document.plan(), document.made().movements(), ordered()));
    }

    /** What the order book asks for now, as far as it can be read. */
    private Map<String, Ordered> ordered() {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        return shop.read().shop().map(OrderedPieces::of).orElse(Map.of());
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
