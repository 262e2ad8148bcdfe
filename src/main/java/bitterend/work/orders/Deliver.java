package bitterend.work.orders;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.day.OrderBook;
import bitterend.day.OrderStates;
import bitterend.day.OrderStatus;
import bitterend.day.PackingNote;
import bitterend.day.PieceStatus;
import bitterend.day.PieceStatus.State;
import bitterend.day.RackToday;
import bitterend.demand.Assembly;
import bitterend.demand.Piece;
import bitterend.exchange.PackingNoteForm;
import bitterend.packing.ShopCalendar;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An order goes out, whole or in part, with a packing note. */
public final class Deliver {
    private final Desk desk;
    private final Catalogue catalogue;

    public Deliver(Desk desk, Catalogue catalogue) {
        this.desk = desk;
        this.catalogue = catalogue;
    }

    /**
     * What is to go out.
     *
     * @param order number of the order
     * @param pieces the pieces; empty for all of the order that is ready
     * @param unpassed whether pieces go out that nobody recorded as passed
     * @param day the day
     * @param note what the shop says with it
     */
    public record Request(String order, List<String> pieces, boolean unpassed, LocalDate day, String note) {
        public Request {
            pieces = List.copyOf(pieces);
        }
    }

    /** What became of a delivery. */
    public sealed interface Result {
        /**
         * It is in the ledger.
         *
         * @param note to print and to put into the parcel
         */
        record Delivered(PackingNote note) implements Result {}

        /**
         * Nothing was booked.
         *
         * @param why in a sentence
         */
        record Refused(String why) implements Result {}
    }

    /** Delivers all of it or nothing; the note is kept with the event, to be printed again. */
    public Result deliver(Request request) {
        List<PackingNote> notes = new ArrayList<>();
        Booking booking = desk.book(
                Event.Kind.DELIVERED,
                request.note(),
                books -> {
                    PackingNote note = note(request, books);
                    notes.add(note);
                    books.fact("order " + request.order(), "");
                    note.pieces().forEach(piece -> books.fact("piece " + piece, ""));
                    books.fact(PackingNoteForm.FACT, PackingNoteForm.text(note));
                },
                event -> List.of());
        if (booking instanceof Booking.Refused refused) {
            return new Result.Refused(refused.why());
        }
        return new Result.Delivered(
                notes.isEmpty()
                        ? PackingNoteForm.of(((Booking.Booked) booking).event()).orElseThrow()
                        : notes.get(0));
    }

    private PackingNote note(Request request, Ledger.Stock stock) {
        List<PieceStatus> all = status(request.order(), stock);
        List<PieceStatus> out = goingOut(request, all);
        return new PackingNote(
                request.order(),
                customer(request.order()),
                request.day(),
                stock.head().event() + 1,
                lines(request.order(), out, stock),
                all.stream()
                        .filter(piece -> !piece.is(State.DELIVERED) && !out.contains(piece))
                        .map(PieceStatus::piece)
                        .toList(),
                request.note());
    }

    private String customer(String order) {
        return desk.book().lines().stream()
                .map(line -> line.assembly().ordered())
                .filter(ordered -> ordered.source().order().equals(order))
                .map(Assembly.Ordered::customer)
                .findFirst()
                .orElse("");
    }

    private List<PieceStatus> status(String order, Ledger.Stock stock) {
        return new OrderStates(desk.book(), Map.of(), ShopCalendar.USUAL, stock)
                .orders(LocalDate.MIN).stream()
                        .filter(each -> each.order().equals(order))
                        .findFirst()
                        .map(OrderStatus::pieces)
                        .orElseThrow(() -> new LedgerException.Refused("there is no order " + order));
    }

    private static List<PieceStatus> goingOut(Request request, List<PieceStatus> all) {
        List<PieceStatus> out = new ArrayList<>();
        for (String id : request.pieces()) {
            out.add(all.stream()
                    .filter(piece -> piece.piece().equals(id))
                    .findFirst()
                    .orElseThrow(
                            () -> new LedgerException.Refused("order " + request.order() + " has no piece " + id)));
        }
        if (request.pieces().isEmpty()) {
            all.stream()
                    .filter(piece -> piece.reel().isPresent() && !piece.is(State.DELIVERED))
                    .forEach(out::add);
        }
        if (out.isEmpty()) {
            throw new LedgerException.Refused("nothing of order " + request.order() + " is cut and still here");
        }
        out.forEach(piece -> checkReady(piece, request.unpassed()));
        return out;
    }

    private static void checkReady(PieceStatus piece, boolean unpassed) {
        String why =
                switch (piece.state()) {
                    case OPEN, PLANNED -> "is not cut";
                    case SHORT -> "is not what is ordered now; see orders";
                    case DELIVERED -> "is delivered already";
                    case CUT, SPLICED -> unpassed
                            ? ""
                            : "was not recorded as passed (measure --passed); --unpassed sends it all the same";
                    case PASSED -> "";
                };
        if (!why.isEmpty()) {
            throw new LedgerException.Refused("piece " + piece.piece() + " " + why);
        }
    }

    private List<PackingNote.Line> lines(String order, List<PieceStatus> out, Ledger.Stock stock) {
        List<PackingNote.Line> lines = new ArrayList<>();
        for (OrderBook.Line line : desk.book().lines()) {
            Assembly assembly = line.assembly();
            List<PackingNote.Item> items = line.pieces().stream()
                    .flatMap(piece -> item(piece, out, stock).stream())
                    .toList();
            if (assembly.ordered().source().order().equals(order) && !items.isEmpty()) {
                Piece first = line.pieces().get(0);
                lines.add(new PackingNote.Line(
                        assembly.ordered().source().lineId(),
                        assembly.ordered().note(),
                        product(assembly),
                        catalogue.findRope(first.orderedRope()).map(Rope::name).orElse(first.orderedRope()),
                        first.finished(),
                        first.ends(),
                        assembly.make().measuring().betweenPoints(),
                        assembly.ordered().quantity(),
                        items));
            }
        }
        return lines;
    }

    private static String product(Assembly assembly) {
        String part = assembly.membership().part();
        return part.isEmpty()
                ? assembly.ordered().product()
                : assembly.ordered().product() + ", " + part;
    }

    private static Optional<PackingNote.Item> item(Piece piece, List<PieceStatus> out, Ledger.Stock stock) {
        return out.stream()
                .filter(state -> state.piece().equals(piece.id()))
                .findFirst()
                .flatMap(state -> state.reel().map(reel -> item(piece, state, reel, stock)));
    }

    private static PackingNote.Item item(Piece piece, PieceStatus state, Reel reel, Ledger.Stock stock) {
        Reel.Papers papers = reel.papers();
        return new PackingNote.Item(
                piece.id(),
                reel.lot(),
                new PackingNote.Certificate(papers.certificate(), papers.number()),
                state.found(),
                piece.isMatched() ? RackToday.released(piece.matching().set(), stock) : "");
    }
}
