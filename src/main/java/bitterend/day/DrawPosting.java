package bitterend.day;

import bitterend.measure.Length;
import bitterend.packing.ReelDraw;
import bitterend.packing.Words;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
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

/** Writes the steps of one draw. What was measured longer or shorter than planned moves everything behind it. */
final class DrawPosting {
    private final Ledger.Books books;
    private final RecordedPlan recorded;
    private final String plan;
    private final ReelDraw draw;
    private final Part part;
    private final List<Movement> written = new ArrayList<>();

    private Reel reel;
    private boolean gone;

    DrawPosting(Ledger.Books books, RecordedPlan recorded, ReelDraw draw, Part part) {
        this.books = books;
        this.recorded = recorded;
        plan = recorded.id();
        this.draw = draw;
        this.part = part;
        Holding holding = books.findHolding(draw.reel()).orElseThrow();
        reel = holding.reel();
        gone = holding.gone();
    }

    List<Movement> written() {
        return written;
    }

    /** Writes the steps that are not posted yet, and tells how many were. */
    int post(Set<String> posted) {
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
            } else if (!gone) {
                write(step);
            }
        }
        return already;
    }

    private void checkMeasured(Step step) {
        if (part.measured().containsKey(step.piece())) {
            throw new LedgerException.Refused(
                    step.piece() + " is posted already; take that movement back to post another length");
        }
    }

    private void write(Step step) {
        Origin origin = Origin.ofStep(plan, step.key());
        Length end = step.to().minus(consumed());
        switch (step.act()) {
            case CUT_PIECE -> cut(step);
            case CLEAN_END -> take(end, Kind.SCRAPPED, "lead trim", origin);
            case CUT_OUT_FLAW -> take(end, Kind.SCRAPPED, "flaw cut out", origin);
            case SCRAP_REST, SCRAP_REEL -> take(end, Kind.SCRAPPED, scrapReason(), origin);
            case KEEP_REST -> keep(end, origin);
        }
    }

    /** Rope gone from the reel since the draw began. */
    private Length consumed() {
        return draw.book().before().minus(reel.length());
    }

    /** A piece and the loss of its cut, from where the knife stands; no further than the run goes, the piece apart. */
    private void cut(Step step) {
        Length length = part.measured().getOrDefault(step.piece(), step.length());
        Length lost = step.to().minus(step.from()).minus(step.length());
        Length room = step.limit().minus(consumed());
        Length taken = Length.max(length, Length.min(length.plus(lost), room));
        String note = length.equals(step.length())
                ? ""
                : "measured " + Words.of(length) + ", planned " + Words.of(step.length());
        Ordered ordered = recorded.ordered().getOrDefault(step.piece(), Ordered.NONE);
        take(taken, Kind.CUT, note, Origin.ofCut(plan, step.piece()), new PieceCut(length, ordered));
    }

    private void keep(Length length, Origin origin) {
        if (!length.isPositive()) {
            return;
        }
        String id = CoilIds.next(books, reel.id());
        Reel coil = RopeWork.coil(reel, id, length);
        take(length, Kind.KEPT, "kept as " + id, origin);
        Origin off = new Origin(draw.reel(), plan, origin.step(), "", "", 0);
        written.add(books.append(new Entry(Kind.KEPT, coil, false, "", off)));
    }

    private String scrapReason() {
        return part.scrapReason().isEmpty() ? "too short to keep" : part.scrapReason();
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
        written.add(books.append(new Entry(kind, reel, gone, note, origin, piece)));
    }
}
