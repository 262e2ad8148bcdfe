package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The stock ledger of a shop. What {@link #change} has returned from is kept, whatever happens to the machine; what it has
 * not returned from happened as a whole or not at all.
 */
public interface Ledger extends AutoCloseable {

    /** Reads the stock as it is at one moment. */
    <T> T read(Function<Stock, T> work);

    /**
     * Reads and writes as one: no one else writes in between, and when the work throws nothing is written.
     *
     * @param who name of the person
     */
    <T> T change(String who, Function<Books, T> work);

    /** What is wrong with the ledger, each in a sentence; empty when its sums agree. */
    List<String> verify();

    /** Copies the ledger as it is at one moment into a new file, while others go on writing. */
    void backup(Path file);

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

        /** Shares of the whole turns that were found on reels of a type of known length. */
        List<Ratio> fills(String reelType);

        /** All movements that cut or spoiled a piece, oldest first. */
        List<Movement> ofPieces();
    }

    /** The stock while it is written to. */
    interface Books extends Stock {
        /** Adds a movement. */
        Movement append(Movement.Entry entry);

        /**
         * Writes down that a reel of a type held a known length.
         *
         * @param turns what whole turns in whole layers would hold
         */
        void addFill(String reelType, Length known, Length turns);
    }
}
