package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace;
import bitterend.stock.Movement;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.stock.Undo;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same random work in a file and on a server: both refuse the same, and both hold the same. */
final class TwoPlacesTest {
    private static final int OPERATIONS = Integer.getInteger("operations", 120);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void sameWork_givesTheSameLedgerInEitherPlace() {
        LedgerPlace file = new SqliteLedgerPlace(folder, LedgerContract.CLOCK);
        LedgerPlace served = new ServedLedgerPlace(LoftServer.shared().newLoft(), folder, LedgerContract.CLOCK);
        for (LedgerPlace place : List.of(file, served)) {
            place.begin(LedgerContract.act(Event.Kind.OPENED).withId("begun"), books -> {});
        }
        try (Ledger one = file.toWrite();
                Ledger other = served.toWrite()) {
            for (int i = 0; i < OPERATIONS; i++) {
                assertEquals(done(one, i), done(other, i), "operation " + i);
            }
            assertEquals(one.read(TwoPlacesTest::unlinked), other.read(TwoPlacesTest::unlinked));
            assertEquals(one.read(Ledger.Stock::holdings), other.read(Ledger.Stock::holdings));
            assertEquals(one.read(Ledger.Stock::movements), other.read(Ledger.Stock::movements));
            assertEquals(one.read(Ledger.Stock::ofPieces), other.read(Ledger.Stock::ofPieces));
            assertEquals(List.of(), one.verify());
            assertEquals(List.of(), other.verify());
        }
    }

    /** What came of an operation: the event, or why there is none. */
    private static String done(Ledger ledger, int number) {
        SplittableRandom random = new SplittableRandom(number);
        Rack rack = new Rack(ledger, act -> act.by("Ada").withId("operation " + number));
        List<Holding> holdings = ledger.read(Ledger.Stock::holdings);
        String reel = holdings.isEmpty()
                ? "none"
                : holdings.get(random.nextInt(holdings.size())).id();
        List<Consumer<Rack>> deeds = List.of(
                each -> each.receive(LedgerContract.reel("N" + number, "L" + number % 3, List.of()), "came"),
                each -> each.move(reel, "bay " + number % 5, ""),
                each -> each.hold(reel, "tag missing"),
                each -> each.release(reel, ""),
                each -> each.count(
                        reel,
                        Written.worked(new Length(1_000 + random.nextInt(30_000))),
                        new Length(random.nextInt(500)),
                        Reel.Known.COUNTED,
                        "tape"),
                each -> each.split(reel, Written.worked(new Length(1 + random.nextInt(9_000))), "S" + number, ""),
                each -> each.sell(reel, "", LocalDate.MIN, LocalDate.MIN),
                each -> each.remove(Movement.Kind.CONDEMNED, reel, "chafed"),
                each -> each.reserve(reel, "100" + number % 4, ""),
                each -> new Undo(ledger, LedgerContract.act(Event.Kind.UNDONE).withId("operation " + number))
                        .event(1 + random.nextInt(number + 1)));
        try {
            deeds.get(random.nextInt(deeds.size())).accept(rack);
            return ledger.read(stock -> stock.eventOfId("operation " + number)
                            .map(Event::toString)
                            .orElse("nothing"))
                    .replaceAll("hash=[0-9a-f]+", "");
        } catch (LedgerException refused) {
            return refused.sentence();
        }
    }

    /** Without the links, which begin with the identity of a ledger. */
    private static List<Event> unlinked(Ledger.Stock stock) {
        List<Event> events = new ArrayList<>();
        stock.events()
                .forEach(
                        event -> events.add(new Event(event.number(), event.at(), event.act(), event.movements(), "")));
        return events;
    }
}
