package bitterend.cli;

import bitterend.stock.LedgerException.Contradictory;
import bitterend.work.ShopNow;
import bitterend.work.rack.CorrectReel;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock correct SHOP REEL}: what was written down wrongly of a reel. */
@Command(
        name = "correct",
        header = "Corrects the lot, the papers or the note of a reel.",
        description = {
            "",
            "Only what is given changes. What was there before stays in stock history, and",
            "pieces that were cut meanwhile are found under both lots. A length is corrected",
            "with stock count.",
            ""
        },
        sortOptions = false)
final class StockCorrectCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Option(
            names = "--rope",
            paramLabel = "ROPE",
            description = "Id of its rope in ropes.json, as long as nothing came off it.")
    private @Nullable String rope;

    @Option(names = "--lot", paramLabel = "LOT", converter = Typed.Lot.class, description = "Production run.")
    private @Nullable String lot;

    @Option(
            names = "--certificate",
            paramLabel = "KIND",
            converter = Typed.Words.class,
            description = "Kind of certificate.")
    private @Nullable String certificate;

    @Option(
            names = "--certificate-number",
            paramLabel = "NUMBER",
            converter = Typed.Words.class,
            description = "Its number.")
    private @Nullable String number;

    @Option(names = "--use-by", paramLabel = "DATE", converter = Typed.Day.class, description = "Last day to cut it.")
    private @Nullable LocalDate useBy;

    @Option(names = "--no-use-by", description = "It has no last day.")
    private boolean noUseBy;

    @Option(names = "--received", paramLabel = "DATE", converter = Typed.Day.class, description = "Day it came.")
    private @Nullable LocalDate received;

    @Option(
            names = "--reel-note",
            paramLabel = "TEXT",
            converter = Typed.Words.class,
            description = "What is to be known of the reel.")
    private @Nullable String reelNote;

    @Mixin
    private StockNote note = new StockNote();

    StockCorrectCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        boolean nothing = rope == null
                && lot == null
                && certificate == null
                && number == null
                && useBy == null
                && !noUseBy
                && received == null
                && reelNote == null;
        if (nothing || (noUseBy && useBy != null)) {
            throw new Contradictory(
                    "say what is to be corrected: --rope, --lot, --certificate, --certificate-number, --use-by or"
                            + " --no-use-by, --received, --reel-note");
        }
        CorrectReel.RopeOf ofRope = null;
        if (rope != null) {
            Optional<ShopNow> read = at.shop().readFiles(terminal);
            if (read.isEmpty()) {
                return ExitCode.BAD_INPUT.number();
            }
            ofRope = new CorrectReel.RopeOf(rope, read.get().shop());
        }
        CorrectReel.Outcome outcome = new CorrectReel(at.desk(note)).correct(reel, correction(ofRope));
        outcome.warnings().forEach(warning -> StockAccess.warn(terminal, warning));
        return at.booked(terminal, outcome.booking());
    }

    private CorrectReel.Correction correction(CorrectReel.@Nullable RopeOf ofRope) {
        LocalDate lastDay = noUseBy ? LocalDate.MAX : useBy;
        return new CorrectReel.Correction(
                ofRope, lot, new CorrectReel.Papers(certificate, number, lastDay, received), reelNote);
    }
}
