package bitterend.serve;

import bitterend.measure.Length;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was booked last of a reel, and what the ledger has left of it.
 *
 * @param event the number of the event
 * @param words what it was, in words
 * @param isBench whether something befell the reel since it came, so that it may be taken back at the bench
 * @param left what is left of the reel; nothing of one that is gone
 */
record LastBooked(long event, String words, boolean isBench, Length left) {
    /** @param history every movement of the reel, oldest first */
    static Optional<LastBooked> of(List<Movement> history) {
        return history.isEmpty() ? Optional.empty() : Optional.of(last(history));
    }

    private static LastBooked last(List<Movement> history) {
        Movement last = history.get(history.size() - 1);
        String words = history.stream()
                .filter(movement -> movement.event() == last.event())
                .map(movement -> (movement.entry().kind().word() + " "
                                + movement.entry().origin().piece())
                        .strip())
                .distinct()
                .collect(Collectors.joining(", "));
        return new LastBooked(
                last.event(),
                words,
                last.entry().kind() != Kind.RECEIVED,
                last.entry().gone() ? Length.ZERO : last.entry().after().length());
    }
}
