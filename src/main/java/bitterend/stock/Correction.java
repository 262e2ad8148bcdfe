package bitterend.stock;

import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What was written down wrongly of a reel, and what is right. Its length and its place among the reels stay, and so does its
 * rope once something came off it. What was paid for it is a fact of the event alone: no movement of the reel says so, nothing
 * that was done with it is built on that, and it may be put right when nothing of the reel is left.
 *
 * @param reel its id
 * @param made the reel as it should have been
 * @param paid what was paid for it; what is null stays
 * @param words what changes of the reel, in words; asked for after {@code made}
 * @param why in the words of who does it; may be empty
 */
public record Correction(String reel, UnaryOperator<Reel> made, Paid paid, Supplier<String> words, String why) {

    void book(Ledger.Books books) {
        Reel old = Rack.known(books, reel).reel();
        Reel other = made.apply(old);
        Map<String, String> facts = paid.equals(Paid.NOT_SAID) ? Map.of() : facts(books, old);
        boolean same = other.equals(old);
        if (same && facts.isEmpty()) {
            throw new LedgerException.Refused("reel " + reel + " says so already");
        }
        if (!same) {
            Rack.standing(books, reel);
            if (!other.rope().equals(old.rope())) {
                refuseUnlessWhole(books);
            }
            books.append(new Entry(Kind.CORRECTED, other, words.get() + (why.isEmpty() ? "" : ": " + why)));
        }
        facts.forEach(books::fact);
    }

    /** Of what was paid, what is other than it was. */
    private Map<String, String> facts(Ledger.Stock stock, Reel old) {
        if (old.custody().isCustomersOwn()) {
            throw new LedgerException.Contradictory(Paid.CUSTOMERS_OWN);
        }
        String parent = Standing.parents(stock.movements()).get(reel);
        if (parent != null) {
            throw new LedgerException.Refused(
                    "reel " + reel + " came off reel " + parent + ": correct what was paid for that one");
        }
        Paid before = Optional.ofNullable(Paid.of(stock).get(reel))
                .map(Paid.OfReel::paid)
                .orElse(Paid.NOT_SAID);
        if (before.price() == null && paid.price() == null) {
            throw new LedgerException.Contradictory(Paid.FREIGHT_ALONE);
        }
        return paid.otherThan(before).facts(reel);
    }

    /** A reel that was of another rope all along: nothing came off it yet, and it came off no other. */
    private void refuseUnlessWhole(Ledger.Stock stock) {
        boolean ofOther = Standing.parents(stock.movements()).entrySet().stream()
                .anyMatch(coil -> coil.getKey().equals(reel) || coil.getValue().equals(reel));
        Optional<Movement> cut = Standing.movements(stock.history(reel)).stream()
                .filter(movement -> !movement.entry().kind().leavesOneReel())
                .findFirst();
        if (ofOther || cut.isPresent()) {
            throw new LedgerException.Refused("the rope of reel " + reel + " cannot be corrected: "
                    + cut.map(movement -> "it was " + movement.entry().kind().word() + " in event " + movement.event()
                                    + ", which is to be taken back first")
                            .orElse("it is of one piece with another reel or coil"));
        }
    }
}
