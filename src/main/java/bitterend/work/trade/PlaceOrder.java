package bitterend.work.trade;

import bitterend.catalogue.Rope;
import bitterend.exchange.OnOrderText;
import bitterend.exchange.ProposalCsv;
import bitterend.exchange.Shop;
import bitterend.exchange.TableText;
import bitterend.exchange.WholeFile;
import bitterend.finding.Finding;
import bitterend.market.Market;
import bitterend.market.NewOrder;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.measure.LinearMass;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.work.DraftShop;
import bitterend.work.FilesBefore;
import bitterend.work.ShopAccess;
import bitterend.work.ShopNow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Orders reels by an edited proposal: what is ordered is written below the rows of {@code on-order.csv}, each line under a number
 * that was never given before. The file as it was is kept, and the last order can be taken back whole. Nothing is sent.
 */
public final class PlaceOrder {
    /** The folder in the shop where the files before each order are kept. */
    public static final String BEFORE = "order-before";

    /** One order at a time in this process. */
    private static final Object ORDERING = new Object();

    private final ShopAccess at;
    private final FilesBefore log;

    public PlaceOrder(ShopAccess at) {
        this.at = at;
        log = new FilesBefore(at.folder(), at.clock(), BEFORE);
    }

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is in the file.
         *
         * @param already numbers of reels that were ordered today before, of the same rope, length and supplier as one of these
         */
        record Ordered(NewOrder order, List<String> already) implements Result {
            public Ordered {
                already = List.copyOf(already);
            }

            /** Whether the suppliers take it so. */
            public boolean isAllowed() {
                return order.bill().isAllowed();
            }
        }

        /** No row orders anything. */
        record Nothing() implements Result {}

        /** It cannot be written; nothing was. */
        record Refused(String why) implements Result {}

        /**
         * The file as it would be cannot be read; nothing was written.
         *
         * @param findings why
         */
        record Wrong(List<Finding> findings) implements Result {
            public Wrong {
                findings = List.copyOf(findings);
            }
        }

        /**
         * The last order is taken back.
         *
         * @param numbers of its lines
         */
        record TakenBack(List<String> numbers) implements Result {
            public TakenBack {
                numbers = List.copyOf(numbers);
            }
        }
    }

    /** Reads a proposal: wrong rows are named, and nothing is written. */
    public static ProposalCsv.Read read(Path file, ShopNow now, LocalDate day) {
        return ProposalCsv.read(file, now.shop(), day);
    }

    /** The order as it would be, or why there is none: a question that writes nothing. */
    public Result look(ShopNow now, List<ProposalCsv.Row> rows, LocalDate day) {
        if (rows.isEmpty()) {
            return new Result.Nothing();
        }
        Optional<TableText> table = OnOrderText.find(at.folder());
        if (table.isEmpty()) {
            return new Result.Refused(
                    OnOrderText.FILE
                            + " cannot be added to: it must be a table in UTF-8 that begins with its headings, and no workbook");
        }
        NewOrder order = order(now, rows, day, table.get());
        return new Result.Ordered(order, already(now, order, OnOrderText.numbers(table.get())));
    }

    private List<String> already(ShopNow now, NewOrder order, List<String> numbers) {
        List<String> today = new ArrayList<>(numbers);
        Optional<Path> first = log.firstOf(LocalDate.ofInstant(at.clock().instant(), ZoneId.systemDefault()));
        first.flatMap(OnOrderText::find).map(OnOrderText::numbers).ifPresent(today::removeAll);
        return first.isEmpty()
                ? List.of()
                : now.shop().supplies().onOrder().stream()
                        .filter(each -> today.contains(each.id())
                                && order.lines().stream().anyMatch(line -> isAlike(line.offer(), each)))
                        .map(OnOrder::id)
                        .toList();
    }

    private static boolean isAlike(Offer offer, OnOrder other) {
        return offer.rope().equals(other.rope())
                && offer.supplier().equals(other.supplier())
                && offer.made().length().equals(other.made().length());
    }

    /** Orders it. */
    public Result accept(ShopNow now, List<ProposalCsv.Row> rows, LocalDate day, String who) {
        synchronized (ORDERING) {
            Result looked = look(now, rows, day);
            return looked instanceof Result.Ordered ordered ? write(now, ordered, who) : looked;
        }
    }

    private Result write(ShopNow now, Result.Ordered ordered, String who) {
        TableText table = OnOrderText.find(at.folder()).orElseThrow();
        String text = OnOrderText.with(
                        table, ordered.order().lines(), now.shop().settings().money())
                .text();
        List<Finding> wrong = new DraftShop(at)
                .with(Map.of(OnOrderText.FILE, text)).findings().stream()
                        .filter(finding -> finding.isError())
                        .toList();
        if (!wrong.isEmpty()) {
            return new Result.Wrong(wrong);
        }
        Path before = log.begin(Map.of(OnOrderText.FILE, text), who);
        WholeFile.write(at.folder().resolve(OnOrderText.FILE), text);
        log.end(before, List.of(OnOrderText.FILE));
        return ordered;
    }

    private NewOrder order(ShopNow now, List<ProposalCsv.Row> rows, LocalDate day, TableText table) {
        OrderNumbers numbers = new OrderNumbers(OnOrderText.numbers(table), given(now));
        List<NewOrder.Line> lines = new ArrayList<>();
        for (ProposalCsv.Row row : rows) {
            String number = numbers.next();
            lines.add(new NewOrder.Line(
                    number, row.offer().as(number), row.of(), row.reels(), row.expected(), row.note()));
        }
        return new NewOrder(day, lines, market(now.shop(), lines, day).bill(reels(lines)));
    }

    private static Map<String, Integer> reels(List<NewOrder.Line> lines) {
        Map<String, Integer> reels = new TreeMap<>();
        lines.forEach(line -> reels.put(line.number(), line.reels()));
        return reels;
    }

    /** What is ordered, as a market of its own: at the prices that were agreed. */
    private static Market market(Shop shop, List<NewOrder.Line> lines, LocalDate day) {
        Map<String, LinearMass> masses = new TreeMap<>();
        shop.catalogue().ropes().forEach((Rope rope) -> masses.put(rope.id(), rope.mass()));
        return new Market(
                day,
                lines.stream().map(NewOrder.Line::offer).toList(),
                shop.supplies().suppliers(),
                masses);
    }

    /** Numbers of the past: of reels that came, taken back or not, and of orders that were. */
    private List<String> given(ShopNow now) {
        List<String> given = new ArrayList<>();
        if (now.at().keepsLedger()) {
            now.at()
                    .reading(ledger -> ledger.read(Ledger.Stock::events))
                    .forEach(event -> given.addAll(event.named(Event.ON_ORDER)));
        }
        for (Path version : log.all()) {
            OnOrderText.find(version).map(OnOrderText::numbers).ifPresent(given::addAll);
        }
        return given;
    }

    /** Takes the last order back whole, unless somebody changed the file since, or a reel of it came. */
    public Result back(ShopNow now) {
        synchronized (ORDERING) {
            return takenBack(now);
        }
    }

    private Result takenBack(ShopNow now) {
        Optional<Path> last = log.last();
        if (last.isEmpty()) {
            return new Result.Nothing();
        }
        Path folder = last.get();
        if (!log.changedSince(folder).isEmpty()) {
            return new Result.Refused(
                    "somebody changed " + OnOrderText.FILE + " since the last order; take its rows out there by hand");
        }
        List<String> numbers = new ArrayList<>(
                OnOrderText.find(at.folder()).map(OnOrderText::numbers).orElse(List.of()));
        numbers.removeAll(OnOrderText.find(folder).map(OnOrderText::numbers).orElse(List.of()));
        Optional<String> came = numbers.stream()
                .filter(number ->
                        now.rack().map(rack -> rack.came().containsKey(number)).orElse(false))
                .findFirst();
        if (came.isPresent()) {
            return new Result.Refused("a reel of order " + came.get()
                    + " came; take that back first: stock history of the reel numbers its event");
        }
        keepNumbers(folder);
        log.restore(folder, OnOrderText.FILE);
        log.takenBack(folder);
        return new Result.TakenBack(numbers);
    }

    /** Keeps the file with the order in it: its numbers are not given again, since the order may be with the supplier. */
    private void keepNumbers(Path folder) {
        try {
            Path kept = Files.createDirectories(folder.resolve("taken-back"));
            Files.copy(at.folder().resolve(OnOrderText.FILE), kept.resolve(OnOrderText.FILE));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
