package bitterend.cli;

import bitterend.catalogue.Rope;
import bitterend.day.BenchCut;
import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.demand.Piece;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.Shop;
import bitterend.finding.CommandWord;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock cut SHOP REEL LENGTH}: a cut that is in no plan. */
@Command(
        name = "cut",
        header = "Books a cut that is in no plan, or off another reel than planned.",
        description = {
            "",
            "Over the counter:            stock cut SHOP R-104 \"12 m\" --for \"Harbour Board\"",
            "A piece off another reel:    stock cut SHOP R-105 \"12.4 m\" --piece 1001/1.1",
            "A piece no order asks for:   stock cut SHOP R-105 \"12.4 m\" --spare 1001/1.1",
            "A sample for a break test:   stock cut SHOP R-104 \"2 m\" --sample \"lot test\"",
            "",
            "LENGTH is what came off, measured; the loss of the cut is added.",
            ""
        },
        sortOptions = false)
final class StockCutCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Parameters(index = "2", paramLabel = "LENGTH", converter = Typed.Rope.class)
    private Length length = Length.ZERO;

    @Option(names = "--for", paramLabel = "NAME", converter = Typed.Words.class, description = "Sold to.")
    private @Nullable String customer;

    @Option(names = "--piece", paramLabel = "PIECE", description = "The piece it is, such as 1041/3.2.")
    private @Nullable String piece;

    @Option(
            names = "--spare",
            paramLabel = "NAME",
            converter = Typed.Words.class,
            description = "What it was cut for, though no order may be made of it: it is a spare piece.")
    private @Nullable String spare;

    @Option(names = "--sample", paramLabel = "WHY", converter = Typed.Words.class, description = "Used up as a sample.")
    private @Nullable String sample;

    @Option(
            names = "--sure",
            description = "It may reach over a flaw, be far off what the piece needs, or be sold past its last day.")
    private boolean sure;

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private StockNote note = new StockNote();

    StockCutCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        long asked = Stream.of(customer, piece, spare, sample)
                .filter(java.util.Objects::nonNull)
                .count();
        if (asked != 1) {
            throw new Contradictory("say what the cut is: --for NAME, --piece PIECE, --spare NAME or --sample WHY");
        }
        Stream.of(customer, piece, spare, sample)
                .filter(said -> said != null && said.isBlank())
                .findFirst()
                .ifPresent(blank -> {
                    throw new Contradictory(
                            "say in words whom or what it is cut for; nothing stands behind the option");
                });
        ShopArgument argument = new ShopArgument();
        argument.folder = at.folder;
        Optional<Shop> read = argument.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Shop shop = read.get();
        Reel off = shop.reels().stream()
                .filter(each -> each.id().equals(reel))
                .findFirst()
                .orElseThrow(() ->
                        new LedgerException.Refused("there is no reel " + reel + "; see bitterend stock list SHOP"));
        checkUseBy(off, day.of(shop));
        Rope rope = shop.catalogue().rope(off.rope());
        BenchCut.Cut cut = new BenchCut.Cut(reel, length, rope.cutting().loss(), sure);
        Event event = at.writing(ledger -> {
            BenchCut bench = new BenchCut(ledger, note.caller(at));
            if (customer != null) {
                return bench.sold(cut, customer);
            }
            if (spare != null) {
                return bench.spare(cut, spare);
            }
            return sample != null
                    ? bench.sample(cut, sample)
                    : bench.piece(cut, "" + piece, stock -> wanted(shop, stock));
        });
        int code = at.booked(terminal, event.movements());
        tellShort(event);
        return code;
    }

    /** Rope past its last day goes over the counter only with a word: whoever buys it cannot know. */
    private void checkUseBy(Reel off, LocalDate today) {
        if (customer != null && !sure) {
            Rack.pastItsLastDay(off, today).ifPresent(why -> {
                throw new Contradictory(why);
            });
        }
    }

    /** What is wanted, where the rules let the piece come off this reel by what the ledger says at that moment. */
    private BenchCut.Wanted wanted(Shop shop, Ledger.Stock stock) {
        PackingProblem open = new OpenWork(shop.problem(day.of(shop)), RackToday.of(stock)).fresh();
        Piece wanted = open.pieces().stream()
                .filter(each -> each.id().equals(piece))
                .findFirst()
                .orElseThrow(() -> new LedgerException.Refused("no order asks for a piece " + piece + asSpare()));
        Reel off = stock.findHolding(reel)
                .map(Holding::reel)
                .orElseThrow(() ->
                        new LedgerException.Refused("there is no reel " + reel + "; see bitterend stock list SHOP"));
        new Eligibility(open).against(wanted, off).ifPresent(reason -> {
            throw new LedgerException.Refused("piece " + piece + " may not come off reel " + off.id() + ": "
                    + reason.sentence().exact() + asSpare());
        });
        return new BenchCut.Wanted(
                OrderedPieces.of(shop).getOrDefault(wanted.id(), Ordered.NONE),
                wanted.lengthOn(off.rope()).orElseThrow());
    }

    private String asSpare() {
        return "\n  if it was cut all the same it is a spare piece: bitterend stock cut SHOP " + CommandWord.of(reel)
                + " " + CommandWord.of(Words.of(length)) + " --spare " + CommandWord.of("" + piece);
    }

    private void tellShort(Event event) {
        event.movements().stream()
                .filter(movement -> movement.entry().kind() == Movement.Kind.CUT_SPARE)
                .forEach(movement -> at.say(terminal, StockPostCommand.spareSentence(movement)));
        event.movements().stream()
                .filter(movement -> movement.entry().kind() == Movement.Kind.CUT_SHORT)
                .forEach(movement -> at.say(terminal, StockPostCommand.shortSentence(movement)));
    }
}
