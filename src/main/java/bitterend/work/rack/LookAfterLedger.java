package bitterend.work.rack;

import bitterend.stock.Balance;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerPlace;
import bitterend.stock.Transfers;
import bitterend.stock.Transfers.OnTheWay;
import bitterend.work.ShopAccess;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Copies the ledger, puts a copy back, adds it up again. */
public final class LookAfterLedger {
    private final ShopAccess at;

    public LookAfterLedger(ShopAccess at) {
        this.at = at;
    }

    /** The rack as the ledger had it at one moment, and its head then. */
    public record Rack(List<Holding> holdings, Head head) {
        public Rack {
            holdings = List.copyOf(holdings);
        }
    }

    /** The whole rack, reels of which nothing is left among it. */
    public Rack rack() {
        return read(stock -> new Rack(stock.holdings(), stock.head()));
    }

    /** Copies it into a new file, while others work; the head of the copy. */
    public Head backup(Path file) {
        return at.reading(ledger -> ledger.backup(file));
    }

    /** Puts a backup in its place; it is kept beside it. */
    public LedgerPlace.Restored restore(Path backup, LedgerPlace.Whose whose, Event.Act act) {
        return at.ledger().restore(backup, whose, act);
    }

    /** Carries it to the server that the shop names, or from there into a file. */
    public LedgerPlace.Carried carry(LedgerPlace.Where where) {
        return at.ledger().carry(where);
    }

    /** What is found when it is added up again. */
    public sealed interface Verified {
        /**
         * All agrees.
         *
         * @param onTheWay what went between this loft and others of its server and has not come in
         */
        record Sound(Balance balance, Head head, List<OnTheWay> onTheWay) implements Verified {
            public Sound {
                onTheWay = List.copyOf(onTheWay);
            }
        }

        /** Something does not; each fault in a sentence. */
        record Damaged(List<String> faults) implements Verified {
            public Damaged {
                faults = List.copyOf(faults);
            }
        }

        /**
         * It is sound, but the head is of a ledger that was replaced by a backup.
         *
         * @param restore the event that did so
         * @param aside where that ledger is
         */
        record Replaced(Event restore, Path aside) implements Verified {}
    }

    /** Adds it up again; {@code printed} is a head that was printed before, to be held against it. */
    public Verified verify(@Nullable Head printed) {
        List<String> faults = new ArrayList<>(at.reading(LookAfterLedger::faults));
        if (faults.isEmpty() && printed != null) {
            faults.addAll(read(stock -> Head.faults(printed, stock)));
            Optional<Verified> replaced = faults.isEmpty() ? Optional.empty() : replaced(printed);
            if (replaced.isPresent()) {
                return replaced.get();
            }
        }
        return faults.isEmpty()
                ? at.reading(ledger -> sound(ledger, Transfers.onTheWay(ledger)))
                : new Verified.Damaged(faults);
    }

    private static List<String> faults(Ledger ledger) {
        List<String> faults = ledger.verify();
        return faults.isEmpty() ? Transfers.faults(ledger) : faults;
    }

    private static Verified sound(Ledger ledger, List<OnTheWay> onTheWay) {
        return ledger.read(stock -> new Verified.Sound(Balance.of(stock.events()), stock.head(), onTheWay));
    }

    /** The restore by which the ledger of a head was replaced; that one is still kept and goes on from the head. */
    private Optional<Verified> replaced(Head printed) {
        return read(stock -> stock.standing(Event.Kind.RESTORED)).stream()
                .filter(event -> !event.fact(Event.ASIDE).isEmpty())
                .filter(event -> at.ledger().wentOn(aside(event), printed))
                .findFirst()
                .map(event -> new Verified.Replaced(event, aside(event)));
    }

    private Path aside(Event restore) {
        Path name = Path.of(restore.fact(Event.ASIDE)).getFileName();
        return at.folder().resolve(name);
    }

    private <T> T read(Function<Ledger.Stock, T> question) {
        return at.reading(ledger -> ledger.read(question));
    }
}
