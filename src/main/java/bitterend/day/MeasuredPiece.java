package bitterend.day;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Words;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.LedgerException.Refused;
import bitterend.stock.Reel;
import java.util.Optional;

/** How long a piece came out, and whether that can be. */
final class MeasuredPiece {
    /** A figure that is further off the plan has to be confirmed. */
    static final Ratio SHARE = Ratio.percent(5);

    private static final Length ANYHOW = new Length(100);

    private final Found found;

    MeasuredPiece(Found found) {
        this.found = found;
    }

    /** The length of the piece that a step cuts off a reel as it stands before. */
    Length of(Step step, Reel reel) {
        Length length = found.measured().get(step.piece());
        if (length != null) {
            checkConfirmed(step, length);
        }
        Length is = length == null ? step.length() : length;
        Length most = reel.length().plus(reel.contents().uncertainty());
        if (length == null && is.isLongerThan(reel.length())) {
            throw new Refused("piece " + step.piece() + " no longer fits on reel " + reel.id() + ": "
                    + Words.of(reel.length()) + " are left of it. Post what was cut with --piece, or give what came out"
                    + " with --measured");
        }
        if (is.isLongerThan(most)) {
            throw new Refused("piece " + step.piece() + " is " + Words.of(is) + ", but reel " + reel.id()
                    + " has no more than " + Words.of(most)
                    + " by the ledger. When the reel really was longer, book that"
                    + " first; how: bitterend stock count --help");
        }
        checkFlaws(step, reel, is);
        return is;
    }

    /** How far a figure may be off what is planned before it has to be confirmed: a share of it, but 100 mm anyhow. */
    static Length leeway(Length planned) {
        return Length.max(new Length(SHARE.timesRoundedDown(planned.mm())), ANYHOW);
    }

    /** Whether a figure has to be confirmed. */
    static boolean isFarOff(Length is, Length planned) {
        return new Length(Math.abs(is.minus(planned).mm())).isLongerThan(leeway(planned));
    }

    /**
     * What was measured behind the last cut of a reel, against what the ledger has there; that a reel ended is said by 0.
     *
     * @param standing the reel as it stands there; nothing where the ledger has none of it left
     */
    void checkLeft(Length known, Optional<Reel> standing, String id) {
        Length is = standing.map(Reel::length).orElse(Length.ZERO);
        Length uncertain = standing.map(reel -> reel.contents().uncertainty()).orElse(Length.ZERO);
        Length most = Length.max(uncertain, leeway(is));
        if (known.isLongerThan(is.plus(most))) {
            throw new Refused(
                    "reel " + id + " has no more than " + Words.of(is.plus(uncertain))
                            + " behind the last cut by the ledger, and " + Words.of(known)
                            + " are said to be left. When the reel really was longer, book that first; how: bitterend stock count --help");
        }
        if (known.isPositive() && is.minus(known).isLongerThan(most) && !found.isSure()) {
            throw new Contradictory("reel " + id + " has " + Words.of(is) + " behind the last cut by the ledger; "
                    + Words.of(known) + " is more than 5 % off. If it is so, say it with --sure");
        }
    }

    private void checkConfirmed(Step step, Length length) {
        if (isFarOff(length, step.length()) && !found.isSure()) {
            throw new Contradictory("piece " + step.piece() + " was planned at " + Words.of(step.length()) + "; "
                    + Words.of(length) + " is more than 5 % off. If it is so, say it with --sure");
        }
    }

    private void checkFlaws(Step step, Reel reel, Length length) {
        boolean overFlaw = reel.flaws().stream()
                .anyMatch(
                        flaw -> flaw.avoidTo().isPositive() && flaw.avoidFrom().isShorterThan(length));
        if (overFlaw && !found.isSure()) {
            throw new Contradictory(
                    "piece " + step.piece() + " of " + Words.of(length) + " would reach over a flaw of reel "
                            + reel.id()
                            + ". If it does not, because the flaw lies further in, say so with --sure; else post what"
                            + " was cut with --piece, and plan the rest again");
        }
    }
}
