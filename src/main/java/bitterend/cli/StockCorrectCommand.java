package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Paid;
import bitterend.work.ShopNow;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.CorrectReel;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock correct SHOP REEL}: what was written down wrongly of a reel. */
@Command(
        name = "correct",
        header = "Corrects the lot, the papers, the price or the note of a reel.",
        description = {
            "",
            "Only what is given changes. What was there before stays in stock history, and",
            "pieces that were cut meanwhile are found under both lots. A length is corrected",
            "with stock count. What was paid is that of the reel as it came, whatever is left",
            "of it.",
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

    @Option(
            names = "--paid",
            paramLabel = "PRICE",
            description = "What was paid for the reel without freight, such as \"410 EUR\" or \"1.85 EUR/m\".")
    private @Nullable String paid;

    @Option(names = "--freight", paramLabel = "AMOUNT", description = "Its share of what bringing it cost.")
    private @Nullable String freight;

    @Mixin
    private StockNote note = new StockNote();

    StockCorrectCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!isAnythingSaid() || (noUseBy && useBy != null)) {
            throw new Contradictory(
                    "say what is to be corrected: --rope, --lot, --certificate, --certificate-number, --use-by or"
                            + " --no-use-by, --received, --reel-note, --paid, --freight");
        }
        Shop shop = null;
        if (rope != null || paid != null || freight != null) {
            Optional<ShopNow> read = at.shop().readFiles(terminal);
            if (read.isEmpty()) {
                return ExitCode.BAD_INPUT.number();
            }
            shop = read.get().shop();
        }
        CorrectReel.Outcome outcome = new CorrectReel(at.desk(note)).correct(reel, correction(shop));
        outcome.warnings().forEach(warning -> StockAccess.warn(terminal, warning));
        return at.booked(terminal, outcome.booking());
    }

    private boolean isAnythingSaid() {
        return noUseBy
                || Stream.of(rope, lot, certificate, number, useBy, received, reelNote, paid, freight)
                        .anyMatch(Objects::nonNull);
    }

    /** @param shop where a rope or money is looked up; null where none was said */
    private CorrectReel.Correction correction(@Nullable Shop shop) {
        LocalDate lastDay = noUseBy ? LocalDate.MAX : useBy;
        return new CorrectReel.Correction(
                rope == null || shop == null ? null : new CorrectReel.RopeOf(rope, shop),
                lot,
                new CorrectReel.Papers(certificate, number, lastDay, received),
                reelNote,
                shop == null ? Paid.NOT_SAID : paid(shop.settings().money()));
    }

    private Paid paid(MoneyText money) {
        Length came = new AskRack(at.access()).cameWith(reel).orElse(Length.ZERO);
        return TypedMoney.paid(paid, freight, came, money);
    }
}
