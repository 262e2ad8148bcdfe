package bitterend.day;

import bitterend.finding.CommandWord;
import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.packing.ReelDraw;
import bitterend.packing.Words;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException.Refused;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Writes the steps of one draw. What was measured longer or shorter than planned moves everything behind it. */
final class DrawPosting {
    private final Ledger.Books books;
    private final RecordedPlan recorded;
    private final ReelDraw draw;
    private final Part part;
    private final Set<String> spare;
    private final boolean counted;
    private final MeasuredPiece measured;
    private final List<Movement> written = new ArrayList<>();
    private final List<String> asks = new ArrayList<>();

    private Reel reel;
    private String leftToTheCount = "";
    private boolean gone;
    private @Nullable Length left;

    /** @param counted whether the reel was counted behind these cuts: then what is left on it is known */
    DrawPosting(Ledger.Books books, RecordedPlan recorded, ReelDraw draw, Posting.How how, boolean counted) {
        this.counted = counted;
        this.books = books;
        this.recorded = recorded;
        this.draw = draw;
        part = how.part();
        spare = how.spare();
        measured = new MeasuredPiece(part.found());
        left = part.found().left().get(draw.reel());
        Holding holding = books.findHolding(draw.reel()).orElseThrow();
        reel = holding.reel();
        gone = holding.gone();
    }

    List<Movement> written() {
        return written;
    }

    /** The step that disposes of the rest of the reel, where the count has the last word on it; else empty. */
    String leftToTheCount() {
        return leftToTheCount;
    }

    /** What the ledger has of the reel behind what was written. */
    Length standing() {
        return gone ? Length.ZERO : reel.length();
    }

    /** Rope that the cuts of the draw take that are not posted yet. */
    Length stillToCut() {
        Length last = Step.of(draw).stream()
                .filter(step -> step.act() == Step.Act.CUT_PIECE)
                .map(Step::to)
                .reduce(Length.ZERO, Length::max);
        return Length.max(Length.ZERO, last.minus(consumed()));
    }

    /** Figures that have to be measured before this can be posted, each in a sentence. */
    List<String> asks() {
        return asks;
    }

    /**
     * Writes the steps that are not posted yet, and tells how many were.
     *
     * @param closed whether its pieces are posted and others have had a hand in the reel since: then nothing is written
     */
    int post(Set<String> posted, boolean closed) {
        int already = 0;
        int cuts = part.cutsOf(draw);
        boolean wholeReel = cuts == draw.cuts().size();
        for (Step step : Step.of(draw)) {
            if (cuts == 0 && !wholeReel) {
                break;
            }
            if (step.act() == Step.Act.CUT_PIECE) {
                cuts--;
            }
            if (posted.contains(step.key())) {
                already++;
                checkMeasured(step);
            } else if (!closed && !part.found().isSkipped(step.piece())) {
                write(step);
            }
        }
        if (closed) {
            checkClosed();
        } else {
            leave();
        }
        return already;
    }

    private void checkClosed() {
        if (left != null) {
            throw new Refused(
                    "the pieces of reel " + reel.id() + " are posted, and others have had a hand in it since; book"
                            + " what is left: bitterend stock count SHOP " + CommandWord.of(reel.id()) + " "
                            + CommandWord.of(Words.of(left)));
        }
    }

    private void checkMeasured(Step step) {
        if (part.found().measured().containsKey(step.piece())) {
            throw new Refused(
                    step.piece() + " is posted already; stock undo takes that back, to post another length. Its"
                            + " event: bitterend stock trace SHOP " + CommandWord.of(step.piece()));
        }
    }

    private void write(Step step) {
        if (gone) {
            if (step.act() == Step.Act.CUT_PIECE) {
                throw new Refused("reel " + reel.id() + " ends before piece " + step.piece()
                        + "; post what was cut with --piece, and plan the rest again");
            }
            return;
        }
        Origin origin = Origin.ofStep(recorded.id(), step.key());
        Length end = step.to().minus(consumed());
        switch (step.act()) {
            case CUT_PIECE -> cut(step);
            case CLEAN_END -> take(end, Kind.SCRAPPED, "lead trim", origin);
            case CUT_OUT_FLAW -> take(end, Kind.SCRAPPED, "flaw cut out", origin);
            case SCRAP_REST -> {
                if (isWorthKeeping(end, step)) {
                    keep(end, origin);
                } else {
                    take(end, Kind.SCRAPPED, scrapReason(), origin);
                }
            }
            case SCRAP_REEL -> scrapReel(step, origin);
            case KEEP_REST -> keep(end, origin);
        }
    }

    /** Rope gone from the reel since the draw began. */
    private Length consumed() {
        return draw.book().before().minus(reel.length());
    }

    /** A piece and the loss of its cut, from where the knife stands; no further than the run goes, the piece apart. */
    private void cut(Step step) {
        Length length = measured.of(step, reel);
        if (length.isLongerThan(reel.length())) {
            reel = RopeWork.counted(reel, Written.worked(length), Length.ZERO, Reel.Known.COUNTED);
            append(Kind.COUNTED, "longer than the ledger knew", plain(), PieceCut.NONE);
        }
        Length lost = step.to().minus(step.from()).minus(step.length());
        Length room = step.limit().minus(consumed());
        Length taken = Length.min(length.plus(lost), length.isLongerThan(room) ? reel.length() : room);
        Ordered ordered = recorded.facts().ordered().getOrDefault(step.piece(), Ordered.NONE);
        String note = length.equals(step.length())
                ? ""
                : "measured " + Words.of(length) + ", planned " + Words.of(step.length());
        Origin origin = Origin.ofCut(recorded.id(), step.piece());
        PieceCut piece = new PieceCut(length, ordered);
        Length off = Length.min(taken, reel.length());
        if (spare.contains(step.piece())) {
            take(off, Kind.CUT_SPARE, note, CutPieces.spareAtOnce(books, origin), piece);
        } else if (length.isShorterThan(step.length())) {
            take(off, Kind.CUT_SHORT, note, CutPieces.shortOf(books, origin), piece);
        } else {
            String whom = recorded.facts().heldFor().getOrDefault(step.piece(), "");
            reel = reel.withCustody(reel.custody().served(held -> held.whom().equals(whom), off));
            take(off, Kind.CUT, note, origin, piece);
        }
    }

    private void keep(Length length, Origin origin) {
        if (!length.isPositive()) {
            return;
        }
        String id = CoilIds.next(books, reel.id());
        Reel coil = RopeWork.coil(reel, id, length);
        take(length, Kind.KEPT, "kept as " + id, origin);
        Origin off = new Origin(draw.reel(), recorded.id(), origin.step(), "", "", 0);
        written.add(books.append(new Entry(Kind.KEPT, coil, false, "", off)));
    }

    /** A rest that was planned as scrap, but is longer than planned because something was not cut or came out short. */
    private boolean isWorthKeeping(Length rest, Step step) {
        return rest.isLongerThan(step.length()) && keepFrom().isPositive() && !rest.isShorterThan(keepFrom());
    }

    private Length keepFrom() {
        return recorded.facts().keepFrom().getOrDefault(reel.rope(), Length.ZERO);
    }

    /**
     * The rest of a reel that is not worth keeping. What is uncertain of it may be rope that is: then it is to be measured
     * before it is scrapped.
     */
    private void scrapReel(Step step, Origin origin) {
        Length known = left;
        if (counted && known == null) {
            leftToTheCount = step.key();
            return;
        }
        if (known == null) {
            if (!isWorthKeeping(reel.contents().certainEnd(), step)) {
                askForUncertainScrap(keepFrom());
                take(reel.length(), Kind.SCRAPPED, scrapReason(), origin);
            }
            return;
        }
        left = null;
        recount(known);
        if (!gone && known.isShorterThan(keepFrom())) {
            take(known, Kind.SCRAPPED, scrapReason(), origin);
        }
    }

    private void askForUncertainScrap(Length keepFrom) {
        Length uncertain = reel.contents().uncertainty();
        boolean mayBeWorthIt = keepFrom.isPositive()
                && reel.possibleRuns().stream().anyMatch(run -> !run.length().isShorterThan(keepFrom));
        if (uncertain.isPositive() && mayBeWorthIt) {
            asks.add("reel " + reel.id() + ": by the ledger " + Words.of(reel.length())
                    + " are left behind the last cut, but " + Words.of(uncertain)
                    + " of it are not certain. Measure it, and post with --left \"" + reel.id()
                    + "=LENGTH\" (0 m when the reel ended there); from " + Words.of(keepFrom)
                    + " on it stays on the rack");
        }
    }

    /** What was measured behind the last cut, where no step has used the figure. */
    private void leave() {
        Length known = left;
        if (known != null && !(gone && !known.isPositive())) {
            recount(known);
        }
    }

    private void recount(Length known) {
        boolean same = !gone
                && known.equals(reel.length())
                && reel.contents().uncertainty().equals(Length.ZERO);
        if (same) {
            return;
        }
        measured.checkLeft(known, gone ? Optional.empty() : Optional.of(reel), draw.reel());
        String note = known.isPositive()
                ? RopeWork.countedNote("measured behind the last cut", reel, known)
                : "the reel ended here";
        gone = !known.isPositive();
        if (!gone) {
            reel = RopeWork.counted(reel, Written.worked(known), Length.ZERO, Reel.Known.COUNTED);
        }
        append(Kind.COUNTED, note, plain(), PieceCut.NONE);
    }

    private Origin plain() {
        return Origin.off("", recorded.id());
    }

    private String scrapReason() {
        String reason = part.found().scrapReason();
        return reason.isEmpty() ? "too short to keep" : reason;
    }

    private void take(Length length, Kind kind, String note, Origin origin) {
        take(length, kind, note, origin, PieceCut.NONE);
    }

    private void take(Length length, Kind kind, String note, Origin origin, PieceCut piece) {
        if (!length.isPositive()) {
            return;
        }
        Optional<Reel> after = RopeWork.takenOff(reel, length);
        reel = after.orElse(reel);
        gone = after.isEmpty();
        append(kind, note, origin, piece);
    }

    private void append(Kind kind, String note, Origin origin, PieceCut piece) {
        written.add(books.append(new Entry(kind, reel, gone, note, origin, piece)));
    }
}
