package bitterend.work.orders;

import bitterend.day.CoilIds;
import bitterend.day.CutPieces;
import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces;
import bitterend.demand.Piece;
import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import bitterend.stock.StockValue;
import bitterend.work.Booking;
import bitterend.work.DayProblem;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A spare piece becomes a piece of another line that it fits: same rope, long enough, papers and set respected. */
public final class GiveSpare {
    private final Desk desk;
    private final Shop shop;
    private final LocalDate day;

    /** Of a shop and its orders on a day. */
    public GiveSpare(Desk desk, ShopNow shop, LocalDate day) {
        this.desk = desk;
        this.shop = shop.shop();
        this.day = day;
    }

    /** Gives the spare piece to an open one; what is cut off it is a coil when that is worth keeping, else scrap. */
    public Booking give(String spare, String to, String note) {
        return desk.book(
                Event.Kind.GIVEN, note, books -> give(books, spare, to, note), event -> told(event, spare, to));
    }

    private static List<String> told(Event event, String spare, String to) {
        List<String> told = new ArrayList<>();
        told.add(spare + " is " + to + " now: change its tag");
        for (Movement movement : event.movements()) {
            Entry entry = movement.entry();
            if (entry.kind() == Kind.TRIMMED) {
                told.add("cut " + Words.of(entry.piece().length()) + " off it");
            }
            if (entry.kind() == Kind.KEPT) {
                told.add("what is cut off is coil " + entry.reel() + ", " + Words.of(entry.left()));
            }
        }
        return told;
    }

    private void give(Ledger.Books books, String spare, String to, String note) {
        PackingProblem open = new OpenWork(DayProblem.of(shop, day), RackToday.of(books)).fresh();
        SparePiece fitting = fitting(books, open, spare, to);
        Length surplus = write(books, fitting, to, note);
        Optional.ofNullable(open.ropes().get(fitting.reel().rope()))
                .ifPresent(rope -> keepWhatIsWorthIt(
                        books,
                        fitting,
                        open.values().get(rope.id()),
                        surplus.minus(rope.cutting().loss())));
    }

    private SparePiece fitting(Ledger.Stock stock, PackingProblem open, String id, String to) {
        SparePiece spare = SparePieces.named(id, stock, desk.book());
        Piece piece = open.pieces().stream()
                .filter(each -> each.id().equals(to))
                .findFirst()
                .filter(each -> !new CutPieces(stock).cuts().containsKey(to))
                .orElseThrow(() -> new LedgerException.Refused("no piece " + to + " is open"));
        Optional<String> bar = SparePieces.against(spare, piece, open);
        if (bar.isPresent()) {
            throw new LedgerException.Refused(bar.get());
        }
        return spare;
    }

    /** The piece changes hands; how much is cut off it. */
    private Length write(Ledger.Books books, SparePiece spare, String to, String note) {
        String name = spare.declared() ? spare.piece() : MakeSpare.write(books, spare.piece(), note);
        Piece piece = desk.book().find(to).orElseThrow();
        Length needed = piece.lengthOn(spare.reel().rope()).orElseThrow();
        Ordered ordered = desk.book().ordered().getOrDefault(to, Ordered.NONE);
        Origin given = new Origin("", "", "", to, name, 0);
        append(books, spare, Kind.GIVEN, note, given, new PieceCut(needed, ordered));
        Length surplus = spare.length().minus(needed);
        if (surplus.isPositive()) {
            append(books, spare, Kind.TRIMMED, "", Origin.ofPiece("", to), new PieceCut(surplus, Ordered.NONE));
        }
        return surplus;
    }

    private static void append(
            Ledger.Books books, SparePiece spare, Kind kind, String note, Origin origin, PieceCut cut) {
        Holding reel = books.findHolding(spare.reel().id()).orElseThrow();
        books.append(new Entry(kind, reel.reel(), reel.gone(), note, origin, cut));
    }

    private static void keepWhatIsWorthIt(
            Ledger.Books books, SparePiece spare, @Nullable StockValue value, Length left) {
        if (value != null && left.isPositive() && value.of(left).millis() > 0) {
            String reel = spare.reel().id();
            Reel coil = RopeWork.coil(spare.reel(), CoilIds.next(books, reel), left);
            books.append(new Entry(Kind.KEPT, coil, false, "cut off " + spare.piece(), Origin.off(reel, "")));
        }
    }
}
