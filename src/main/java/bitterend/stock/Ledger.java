package bitterend.stock;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The stock ledger of a shop. What {@link #change} has returned from is kept, whatever happens to the machine; what it has
 * not returned from happened as a whole or not at all.
 */
public interface Ledger extends AutoCloseable {

    /** Reads the stock as it is at one moment. */
    <T> T read(Function<Stock, T> work);

    /**
     * Books one event, reading and writing as one: no one else writes in between, and when the work throws nothing is
     * written. When the ledger has an event of this id already, that one is returned and the work is not done again.
     *
     * @param act what is done
     * @param work writes the movements and further facts of the event
     * @return the event; nothing when the work wrote nothing and the act states no fact
     * @throws LedgerException.Refused when the id was given to an event of another kind
     */
    Optional<Event> change(Event.Act act, Consumer<Books> work);

    /** The other lofts that are kept beside it; asked inside of {@link #read} or {@link #change}. */
    default Neighbours neighbours() {
        return Neighbours.NONE;
    }

    /** The same as {@link #change}, while nobody books what goes between lofts: what is read of the others holds. */
    default Optional<Event> changeAmong(Event.Act act, Consumer<Books> work) {
        return change(act, work);
    }

    /** What is wrong with the ledger, each in a sentence; empty when its sums and its chain agree. */
    List<String> verify();

    /**
     * Copies the ledger as it is at one moment into a new file, while others go on writing; whole or not at all.
     *
     * @return the head of the copy
     */
    Head backup(Path file);

    @Override
    void close();

    /** The stock at one moment. */
    interface Stock {
        /** Every reel there ever was, by id. */
        List<Holding> holdings();

        /** A reel, if there ever was one of that id. */
        Optional<Holding> findHolding(String reel);

        /** All movements of a reel, oldest first. */
        List<Movement> history(String reel);

        /** All movements, oldest first. */
        List<Movement> movements();

        /** The movement of a number, if there is one. */
        Optional<Movement> findMovement(long number);

        /** All movements that posted this plan, oldest first. */
        List<Movement> ofPlan(String plan);

        /** All movements that cut a piece or are about one, oldest first. */
        List<Movement> ofPieces();

        /** All events, oldest first. */
        List<Event> events();

        /** The event of a number, if there is one. */
        Optional<Event> findEvent(long number);

        /** The event of an id that its caller chose, if there is one. */
        Optional<Event> eventOfId(String id);

        /** The end of the chain as it is now. */
        Head head();

        /** All events of a kind that were not taken back, oldest first. */
        default List<Event> standing(Event.Kind kind) {
            return Standing.events(events()).stream()
                    .filter(event -> event.act().kind() == kind)
                    .toList();
        }
    }

    /** The stock while one event is written. */
    interface Books extends Stock {
        /** Adds a movement to the event. */
        Movement append(Movement.Entry entry);

        /** Adds a fact to the event. */
        void fact(String name, String value);
    }
}
