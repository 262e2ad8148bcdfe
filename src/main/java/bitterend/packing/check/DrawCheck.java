package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.LengthBook;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.Words;
import bitterend.packing.check.SoundRope.Stretch;
import bitterend.stock.Reel;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Checks what one reel gives: the rules of every piece on it, then every mark, rest, booking and price. */
final class DrawCheck {
    private final Facts facts;
    private final Faults faults;
    private final Reel reel;
    private final ReelDraw draw;
    private final List<Stretch> runs;

    DrawCheck(Facts facts, Faults faults, Reel reel, ReelDraw draw) {
        this.facts = facts;
        this.faults = faults;
        this.reel = reel;
        this.draw = draw;
        runs = facts.runs(reel);
    }

    /** What cannot be derived any more behind a fault is left alone: one mistake gives one fault. */
    void check() {
        checkRules();
        checkDay();
        faults.compare(
                Check.LEAD_TRIM,
                reel.id(),
                "lead trim",
                draw.leadTrim(),
                reel.contents().leadTrim());
        if (!piecesCanBeCut() || !runsAreThere() || !runsFit()) {
            return;
        }
        DerivedDraw derived = new DerivedDraw(facts, reel, draw);
        for (int i = 0; i < draw.runs().size(); i++) {
            checkRun(draw.runs().get(i), derived.runs().get(i));
        }
        faults.compare(Check.LEFT, reel.id(), "left on the reel", draw.leftOnReel(), derived.leftOnReel());
        checkBook(derived.book());
        checkHeld(derived.leftOnReel());
        faults.compare(Check.COST, reel.id(), "cost of the draw", draw.cost(), derived.cost());
    }

    /** What is held for a piece that is not cut is still there behind the last cut. */
    private void checkHeld(Length left) {
        Set<String> cut = draw.cuts().stream().map(Cut::piece).collect(Collectors.toSet());
        Length waiting = facts.waitingFor(reel, cut);
        Length loss = facts.problem().ropeOn(reel).cutting().loss();
        faults.unless(
                !waiting.minus(loss).isLongerThan(left),
                Check.RESERVED,
                reel.id(),
                "pieces that rope of it is held for are not cut and take " + Words.of(waiting) + "; " + Words.of(left)
                        + " is left");
    }

    private void checkRules() {
        for (Cut cut : draw.cuts()) {
            facts.findPiece(cut.piece())
                    .ifPresentOrElse(
                            piece -> facts.broken(piece, reel)
                                    .forEach((check, sentence) -> faults.add(check, piece.id(), sentence)),
                            () -> faults.add(Check.KNOWN, reel.id(), "no piece " + cut.piece() + " is wanted"));
        }
    }

    private void checkDay() {
        faults.unless(
                !draw.isBroughtForward() || facts.mayBeCutOn(draw.forward(), draw),
                Check.CUT_DAY,
                reel.id(),
                "the reel cannot be brought forward to " + draw.forward());
    }

    private boolean piecesCanBeCut() {
        return draw.cuts().stream().allMatch(cut -> facts.findPiece(cut.piece())
                .flatMap(piece -> piece.lengthOn(reel.rope()))
                .isPresent());
    }

    private boolean runsAreThere() {
        List<RunDraw> drawn = draw.runs();
        if (drawn.isEmpty() || drawn.get(drawn.size() - 1).cuts().isEmpty() || drawn.size() > runs.size()) {
            faults.add(
                    Check.RUNS,
                    reel.id(),
                    "the plan lists " + drawn.size() + " runs down to the last cut, the reel has " + runs.size());
            return false;
        }
        Length zero = reel.contents().leadTrim();
        for (int i = 0; i < drawn.size(); i++) {
            RunDraw run = drawn.get(i);
            Length from = runs.get(i).from().minus(zero);
            Length to = runs.get(i).to().minus(zero);
            if (run.run() != i + 1 || !run.from().equals(from) || !run.to().equals(to)) {
                faults.add(
                        Check.RUNS,
                        where(run),
                        Faults.says(
                                "run",
                                run.run() + " from " + Words.of(run.from()) + " to " + Words.of(run.to()),
                                (i + 1) + " from " + Words.of(from) + " to " + Words.of(to)));
                return false;
            }
        }
        return true;
    }

    private boolean runsFit() {
        boolean fits = true;
        Length loss = facts.problem().ropeOn(reel).cutting().loss();
        for (RunDraw run : draw.runs()) {
            Length taken = loss.times(Math.max(0, run.cuts().size() - 1L));
            for (Cut cut : run.cuts()) {
                taken = taken.plus(length(cut));
            }
            Length room = runs.get(run.run() - 1).length();
            if (taken.isLongerThan(room)) {
                faults.add(
                        Check.FITS_THE_RUN,
                        where(run),
                        "the pieces and the cut losses between take " + Words.of(taken) + " of " + Words.of(room));
                fits = false;
            }
        }
        return fits;
    }

    private void checkRun(RunDraw run, DerivedDraw.DerivedRun derived) {
        if (isClearOfFlaws(run)) {
            checkMarks(run, derived);
        }
        faults.compare(Check.LEFT, where(run), "left of the run", run.left(), derived.left());
        faults.unless(
                run.rest() == derived.rest(),
                Check.REST,
                where(run),
                Faults.says("what becomes of the rest", "" + run.rest(), "" + derived.rest()));
    }

    private boolean isClearOfFlaws(RunDraw run) {
        SoundRope rope = facts.sound(reel);
        Length zero = reel.contents().leadTrim();
        for (Cut cut : run.cuts()) {
            if (!rope.isClear(cut.from().plus(zero), cut.to().plus(zero))) {
                faults.add(
                        Check.CLEAR_OF_FLAWS,
                        where(run),
                        cut.piece() + " from " + Words.of(cut.from()) + " to " + Words.of(cut.to())
                                + " does not lie in sound rope");
                return false;
            }
        }
        return true;
    }

    private void checkMarks(RunDraw run, DerivedDraw.DerivedRun derived) {
        for (int i = 0; i < run.cuts().size(); i++) {
            Cut stated = run.cuts().get(i);
            Cut right = derived.cuts().get(i);
            if (!stated.equals(right)) {
                faults.add(
                        Check.MARKS,
                        where(run),
                        Faults.says(
                                stated.piece(),
                                Words.of(stated.from()) + " to " + Words.of(stated.to()),
                                Words.of(right.from()) + " to " + Words.of(right.to())));
                return;
            }
        }
    }

    private void checkBook(LengthBook derived) {
        faults.unless(
                draw.book().equals(derived),
                Check.BOOK,
                reel.id(),
                Faults.says("where the rope went", "" + draw.book(), "" + derived));
    }

    private Length length(Cut cut) {
        return facts.findPiece(cut.piece())
                .flatMap((Piece piece) -> piece.lengthOn(reel.rope()))
                .orElseThrow();
    }

    private String where(RunDraw run) {
        return reel.id() + " run " + run.run();
    }
}
