package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.util.Arrays;

/**
 * Cuts a reel of rope as the plan prints it: every millimetre is written to once, by what became of it. Knows nothing but
 * the marks, the word for each rest, and where the flaws of the rope really are.
 */
final class Knife {
    private enum Fate {
        PIECE,
        LOSS,
        TRIM,
        FLAW,
        SCRAP,
        KEPT,
        LEFT,
        WRAPS
    }

    private final Reel reel;
    private final Fate[] rope;
    private final int zero;
    private final long loss;
    private int at;

    private Knife(PackingProblem problem, Reel reel, ReelDraw draw) {
        this.reel = reel;
        rope = new Fate[Math.toIntExact(reel.length().mm())];
        zero = Math.toIntExact(draw.leadTrim().mm());
        loss = problem.ropeOn(reel).cutting().loss().mm();
    }

    /** Cuts the reel and compares what it finds with the book of the draw. */
    static void cut(PackingProblem problem, ReelDraw draw) {
        Reel reel = problem.reels().stream()
                .filter(each -> each.id().equals(draw.reel()))
                .findFirst()
                .orElseThrow();
        Knife knife = new Knife(problem, reel, draw);
        knife.walk(problem, draw);
        assertEquals(draw.book(), knife.book(), draw.reel());
        assertEquals(draw.leftOnReel(), knife.booked(Fate.LEFT), draw.reel());
    }

    private void walk(PackingProblem problem, ReelDraw draw) {
        to(zero, Fate.TRIM);
        for (RunDraw run : draw.runs()) {
            to(zero + run.from().mm(), Fate.FLAW);
            for (Cut cut : run.cuts()) {
                int begun = at;
                to(zero + cut.from().mm(), Fate.LOSS);
                assertTrue(begun == at || at - begun == loss, "a cut loss, no more, before " + cut);
                to(zero + cut.to().mm(), Fate.PIECE);
                assertEquals(wanted(problem, cut.piece()), cut.length(), cut.toString());
            }
            endRun(run);
        }
        Fate rest = draw.runs().get(draw.runs().size() - 1).rest() == RunDraw.Rest.ON_REEL ? Fate.LEFT : Fate.SCRAP;
        long wraps = Math.min(reel.contents().innerWraps().mm(), rope.length - at);
        to(rope.length - wraps, rest);
        to(rope.length, Fate.WRAPS);
    }

    private Length wanted(PackingProblem problem, String piece) {
        return problem.pieces().stream()
                .filter(each -> each.id().equals(piece))
                .findFirst()
                .flatMap(each -> each.lengthOn(reel.rope()))
                .orElseThrow();
    }

    /** The last cut takes its loss too, as far as there is rope for it. */
    private void endRun(RunDraw run) {
        long lost = zero + run.to().mm() - run.left().mm() - at;
        assertTrue(
                lost <= loss
                        && (lost == loss
                                || run.left().equals(Length.ZERO)
                                || run.cuts().isEmpty()),
                "" + run);
        to(at + lost, Fate.LOSS);
        Fate rest =
                switch (run.rest()) {
                    case ON_REEL -> Fate.LEFT;
                    case REMNANT -> Fate.KEPT;
                    case SCRAP -> Fate.SCRAP;
                };
        to(zero + run.to().mm(), rest);
    }

    private void to(long mark, Fate fate) {
        assertTrue(mark >= at && mark <= rope.length, reel.id() + ": the knife stands at " + at + ", told " + mark);
        Arrays.fill(rope, at, Math.toIntExact(mark), fate);
        at = Math.toIntExact(mark);
    }

    private LengthBook book() {
        for (Flaw flaw : reel.flaws()) {
            for (long mm = flaw.from().mm(); mm < flaw.to().mm(); mm++) {
                assertTrue(rope[Math.toIntExact(mm)] != Fate.PIECE, reel.id() + ": a flaw in a piece at " + mm);
            }
        }
        return LengthBook.EMPTY
                .with(Account.BEFORE, reel.length())
                .with(Account.PIECES, booked(Fate.PIECE))
                .with(Account.CUT_LOSS, booked(Fate.LOSS))
                .with(Account.LEAD_TRIM, booked(Fate.TRIM))
                .with(Account.FLAWS, booked(Fate.FLAW))
                .with(Account.SCRAP, booked(Fate.SCRAP))
                .with(Account.KEPT, booked(Fate.KEPT))
                .with(Account.LEFT, booked(Fate.LEFT))
                .with(Account.INNER_WRAPS, booked(Fate.WRAPS));
    }

    private Length booked(Fate fate) {
        return new Length(Arrays.stream(rope).filter(each -> each == fate).count());
    }
}
