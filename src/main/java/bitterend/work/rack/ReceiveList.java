package bitterend.work.rack;

import bitterend.catalogue.Rope;
import bitterend.day.Receipt;
import bitterend.day.Receipt.Apart;
import bitterend.day.Receipt.Ordered;
import bitterend.exchange.ReceiptCsv;
import bitterend.exchange.ReceiptCsv.Row;
import bitterend.market.OnOrder;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Sentence;
import bitterend.stock.CameIn;
import bitterend.stock.Holding;
import bitterend.stock.LedgerException;
import bitterend.stock.Paid;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Books reels that came in by a supplier's list, all of them as one event. */
public final class ReceiveList {
    private final RackDesk desk;
    private final ShopNow now;
    private final ReceiveReel one;

    public ReceiveList(RackDesk desk, ShopNow now) {
        this.desk = desk;
        this.now = now;
        this.one = new ReceiveReel(desk, now.shop());
    }

    /**
     * Reads a list by the place of the shop.
     *
     * @param onOrder number of the order of reels that every row is of which names none; empty for none
     */
    public ReceiptCsv.Read read(Path file, String onOrder) {
        return ReceiptCsv.read(file, now.shop().settings(), onOrder);
    }

    /**
     * Holds a list against what was ordered and what is on the rack: a question that writes nothing.
     *
     * @param sure reels that are set apart and would be booked all the same
     * @param freight what bringing them cost; null where nobody says so
     */
    public Receipt compare(List<Row> rows, Set<String> sure, @Nullable Money freight) {
        Looked looked = looked(rows);
        Receipt receipt = looked.receipt();
        List<String> toKnow = new ArrayList<>(receipt.toKnow());
        toKnow.addAll(PaidTold.shares(
                looked.booked(sure), freight, now.shop().settings().money()));
        return new Receipt(receipt.lines(), receipt.missing(), toKnow);
    }

    /**
     * Books what came, all of it as one event; what is set apart is left out unless somebody says that it is so, and what
     * cannot be is left out whatever is said.
     *
     * @param sure reels that are set apart and booked all the same
     * @param freight what bringing them cost, shared by what was paid for each; null where nobody says so
     */
    public Booking accept(List<Row> rows, Set<String> sure, @Nullable Money freight) {
        List<CameIn> booked = looked(rows).booked(sure);
        Booking booking =
                desk.rack(rack -> rack.receive(freight == null ? booked : Paid.shared(booked, freight), desk.note()));
        return booking instanceof Booking.Booked done
                ? new Booking.Booked(
                        done.event(),
                        booked.stream().map(PromiseTold::day).distinct().toList())
                : booking;
    }

    /** A list that was looked at, with what can be booked of each row. */
    private record Looked(Receipt receipt, List<Optional<CameIn>> coming) {
        /** What is booked, by a word of who accepts the list where it is set apart. */
        List<CameIn> booked(Set<String> sure) {
            List<CameIn> booked = new ArrayList<>();
            for (int i = 0; i < coming.size(); i++) {
                if (receipt.lines().get(i).isBooked(sure)) {
                    booked.add(coming.get(i).orElseThrow());
                }
            }
            return booked;
        }
    }

    private Looked looked(List<Row> rows) {
        List<Holding> there = new AskRack(desk.at()).holdings(false);
        Set<String> known = known(rows);
        OrdersMet orders = new OrdersMet(now.shop().supplies().onOrder());
        List<Receipt.Line> lines = new ArrayList<>();
        List<Optional<CameIn>> coming = new ArrayList<>();
        for (Row row : rows) {
            Reel reel = row.reel();
            List<Apart> apart = new ArrayList<>(ids(row, rows, known));
            Optional<CameIn> came = coming(row, apart);
            Ordered ordered = orders.meet(row, apart);
            Optional<Rope> rope = now.shop().catalogue().findRope(reel.rope());
            if (came.isPresent()) {
                apart.addAll(Receipt.farOff(reel.length(), ordered, rope.map(Rope::usualReel)));
            }
            apart.addAll(lots(reel, rows, there));
            lines.add(Receipt.Line.of(
                            row.place(),
                            reel.id(),
                            reel.rope(),
                            reel.contents().written(),
                            ordered,
                            rope.map(Rope::price),
                            apart)
                    .paid(came.flatMap(CameIn::price)));
            coming.add(came);
        }
        return new Looked(new Receipt(lines, orders.missing(), toKnow(rows, coming)), coming);
    }

    /** Ids of the list that are taken. */
    private Set<String> known(List<Row> rows) {
        return desk.at()
                .reading(ledger -> ledger.read(stock -> rows.stream()
                        .map(row -> row.reel().id())
                        .filter(id -> Rack.isKnown(stock, id))
                        .collect(Collectors.toSet())));
    }

    /** Ids that no reel may have. */
    private static List<Apart> ids(Row row, List<Row> rows, Set<String> known) {
        String id = row.reel().id();
        List<Apart> apart = new ArrayList<>();
        if (known.contains(id)) {
            apart.add(Apart.never("there is a reel " + id + " already"));
        }
        rows.stream()
                .filter(other ->
                        !other.place().equals(row.place()) && other.reel().id().equals(id))
                .findFirst()
                .ifPresent(other -> apart.add(Apart.never("it is in the list twice, in " + other.place() + ", too")));
        return apart;
    }

    /** The reel as it would be booked; where it cannot be, why is told. */
    private Optional<CameIn> coming(Row row, List<Apart> apart) {
        try {
            return Optional.of(new CameIn(one.coming(request(row)), one.promised(row.onOrder()), row.paid()));
        } catch (LedgerException fault) {
            apart.add(Apart.never(fault.sentence()));
            return Optional.empty();
        }
    }

    private static ReceiveReel.Request request(Row row) {
        Reel reel = row.reel();
        Reel.Contents contents = reel.contents();
        Length uncertainty = contents.uncertainty();
        LocalDate received = reel.papers().received();
        return new ReceiveReel.Request(
                reel.id(),
                reel.rope(),
                reel.lot(),
                new ReceiveReel.Amount(
                        contents.written(),
                        contents.known(),
                        row.tolerance(),
                        uncertainty.isPositive() ? uncertainty : null,
                        contents.leadTrim(),
                        contents.innerWraps()),
                reel.flaws(),
                new ReceiveReel.Papers(
                        reel.papers().certificate(),
                        reel.papers().number(),
                        reel.papers().useBy(),
                        received.equals(LocalDate.MIN) ? null : received),
                new ReceiveReel.Owner("", ""),
                reel.full(),
                reel.where().place(),
                reel.where().note(),
                row.onOrder(),
                row.paid());
    }

    /** A lot that is of another rope: one of the two is not what the label says. */
    private static List<Apart> lots(Reel reel, List<Row> rows, List<Holding> there) {
        if (reel.lot().isEmpty()) {
            return List.of();
        }
        return Stream.concat(there.stream().map(Holding::reel), rows.stream().map(Row::reel))
                .filter(other -> other.lot().equals(reel.lot()) && !other.rope().equals(reel.rope()))
                .findFirst()
                .map(other -> Apart.unlessSure(
                        Sentence.of("lot " + reel.lot() + " is of " + other.rope() + " on reel " + other.id())))
                .stream()
                .toList();
    }

    /** Ids and lots that look like others, and orders that a reel may be of. */
    private List<String> toKnow(List<Row> rows, List<Optional<CameIn>> coming) {
        LookAlikes looks = new LookAlikes(desk.at());
        Stream<String> there = rows.stream()
                .flatMap(row -> Stream.of(
                        looks.reel(row.reel().id()),
                        looks.lot(row.reel().rope(), row.reel().lot()),
                        one.stillToCome(request(row)).map(ReceiveList::told)))
                .flatMap(Optional::stream);
        Stream<String> promises = coming.stream()
                .flatMap(Optional::stream)
                .flatMap(came -> PromiseTold.of(came).stream())
                .map(told -> told.substring(0, 1).toUpperCase(Locale.ROOT) + told.substring(1));
        return Stream.concat(there, promises).distinct().collect(Collectors.toList());
    }

    private static String told(OnOrder order) {
        return "Order " + order.id() + " of " + order.rope()
                + " is still to come, and plans count on it. Where a reel of the"
                + " list is of it, say so in the column on order, or of all of them with --on-order " + order.id();
    }
}
