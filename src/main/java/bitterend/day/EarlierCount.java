package bitterend.day;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.packing.Words;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import bitterend.stock.Standing;
import java.util.List;
import java.util.Optional;

/**
 * A reel that was cut first, then counted, and whose count was booked before the cuts. The cuts are booked from the figure
 * before the count; afterwards the counted figure stands again, for it is what was found behind them.
 */
final class EarlierCount {
    private final Reel.Contents before;
    private final Movement count;
    private final String plan;

    private EarlierCount(Reel.Contents before, Movement count, String plan) {
        this.before = before;
        this.count = count;
        this.plan = plan;
    }

    /** Whether a reel was counted since, and nothing else. */
    static boolean isAll(List<Movement> since) {
        return !since.isEmpty()
                && since.stream().allMatch(movement -> movement.entry().kind() == Kind.COUNTED);
    }

    /** The count of a draw's reel since the plan was made, where the cutter says that the cuts came before it. */
    static Optional<EarlierCount> of(ReelSince reel, Part part) {
        List<Movement> history = reel.history();
        List<Movement> since = reel.changes();
        if (!part.found().isBeforeTheCount() || !isAll(since)) {
            return Optional.empty();
        }
        List<Movement> standing = Standing.movements(history);
        int first = standing.indexOf(since.get(0));
        if (first < 1) {
            return Optional.empty();
        }
        Movement last = since.get(since.size() - 1);
        Reel.Contents was = standing.get(first - 1).entry().after().contents();
        Length cut = standing.stream()
                .filter(movement ->
                        movement.number() > last.number() && movement.entry().kind() != Kind.COUNTED)
                .map(Movement::by)
                .reduce(Length.ZERO, Length::minus);
        Reel.Contents before = new Reel.Contents(
                cut.isPositive() ? Written.worked(was.length().minus(cut)) : was.written(),
                was.uncertainty(),
                Length.max(Length.ZERO, was.leadTrim().minus(cut)),
                was.innerWraps(),
                was.known());
        return Optional.of(new EarlierCount(before, last, reel.plan()));
    }

    void takeAway(Ledger.Books books) {
        Reel now = books.findHolding(count.entry().reel()).orElseThrow().reel();
        append(
                books,
                now.withContents(before).withFlaws(RopeWork.within(now.flaws(), before.length())),
                "as before the count of event " + count.event(),
                "");
    }

    /**
     * Holds the counted figure to what the ledger has behind the cuts: it may be less by the pieces that are still to be
     * booked, and off by the uncertainty of the reel or a share.
     *
     * @param is what the ledger has of the reel behind the cuts that are booked
     * @param open rope that the cuts still to be booked take
     * @throws LedgerException.Contradictory when it is further off
     */
    void check(Length is, Length open) {
        Length counted = count.entry().left();
        Length least = Length.max(Length.ZERO, is.minus(open));
        Length over = counted.minus(is);
        Length under = least.minus(counted);
        if (over.isLongerThan(Length.max(before.uncertainty(), MeasuredPiece.leeway(is)))
                || under.isLongerThan(Length.max(before.uncertainty(), MeasuredPiece.leeway(least)))) {
            throw new LedgerException.Contradictory("reel " + count.entry().reel() + " has " + Words.of(is)
                    + " behind these cuts by the ledger; " + Words.of(counted) + ", as counted in event "
                    + count.event()
                    + ", is more than 5 % off. If it is so, say it with --sure");
        }
    }

    /** @param step the step of the plan that the counted figure stands for; empty when it stands for none */
    void bringBack(Ledger.Books books, String step) {
        Holding now = books.findHolding(count.entry().reel()).orElseThrow();
        Reel.Contents counted = count.entry().after().contents();
        Length trim = now.gone() ? Length.ZERO : now.reel().contents().leadTrim();
        Reel reel = now.gone() ? now.reel().withFlaws(List.of()) : now.reel();
        Reel.Contents contents = new Reel.Contents(
                counted.written(), counted.uncertainty(), trim, reel.contents().innerWraps(), counted.known());
        append(
                books,
                reel.withContents(contents).withFlaws(RopeWork.within(reel.flaws(), contents.length())),
                RopeWork.countedNote("as counted in event " + count.event(), reel, contents.length()),
                step);
    }

    private void append(Ledger.Books books, Reel reel, String note, String step) {
        books.append(new Entry(Kind.COUNTED, reel, false, note, Origin.ofStep(plan, step)));
    }
}
