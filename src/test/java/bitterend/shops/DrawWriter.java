package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.RunDraw.Rest;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes down the draw from one reel, in whole millimetres, one run after the other. */
final class DrawWriter {
    private final PackingProblem problem;
    private final Reel reel;
    private final Map<Integer, List<Piece>> pieces;
    private final StockValue value;
    private final long loss;
    private final List<Run> runs;
    private final int deepest;

    private final List<RunDraw> written = new ArrayList<>();
    private long inPieces;
    private long lost;
    private long scrap;
    private long kept;
    private long cost;

    DrawWriter(PackingProblem problem, Reel reel, Map<Integer, List<Piece>> pieces) {
        this.problem = problem;
        this.reel = reel;
        this.pieces = pieces;
        value = problem.valueOn(reel);
        loss = problem.ropeOn(reel).cutting().loss().mm();
        runs = reel.runs();
        deepest = pieces.keySet().stream().mapToInt(Integer::intValue).max().orElseThrow();
    }

    ReelDraw draw() {
        long before = reel.length().mm();
        long trim = reel.contents().leadTrim().mm();
        long wraps = reel.contents().innerWraps().mm();
        long flaws = 0;
        long at = trim;
        for (Run run : runs.subList(0, deepest)) {
            flaws += run.from().mm() - at;
            at = run.to().mm();
            write(run, before - at - wraps);
        }
        long left = before - trim - flaws - inPieces - lost - scrap - kept - wraps;
        return new ReelDraw(reel.id(), mm(trim), written, mm(left), book(flaws, left), new Cost(cost + fetching()));
    }

    private LengthBook book(long flaws, long left) {
        return LengthBook.EMPTY
                .with(Account.BEFORE, reel.length())
                .with(Account.PIECES, mm(inPieces))
                .with(Account.CUT_LOSS, mm(lost))
                .with(Account.LEAD_TRIM, reel.contents().leadTrim())
                .with(Account.FLAWS, mm(flaws))
                .with(Account.SCRAP, mm(scrap))
                .with(Account.KEPT, mm(kept))
                .with(Account.LEFT, mm(left))
                .with(Account.INNER_WRAPS, reel.contents().innerWraps());
    }

    private void write(Run run, long behind) {
        long trim = reel.contents().leadTrim().mm();
        long at = run.from().mm() - trim;
        List<Cut> cuts = new ArrayList<>();
        long sum = 0;
        for (Piece piece : pieces.getOrDefault(run.index(), List.of())) {
            long length = piece.lengthOn(reel.rope()).orElse(piece.cut()).mm();
            cuts.add(new Cut(piece.id(), mm(at), mm(at + length)));
            at += length + loss;
            sum += length;
        }
        long left = Math.max(0, run.length().mm() - sum - cuts.size() * loss);
        inPieces += sum;
        lost += run.length().mm() - sum - left;
        cost += cuts.isEmpty()
                ? problem.prices().handling().millis()
                : value(run.length().mm()) - value(left);
        Rest rest = rest(run, left, behind);
        written.add(
                new RunDraw(run.index(), run.from().minus(mm(trim)), run.to().minus(mm(trim)), cuts, mm(left), rest));
    }

    /** Books what is left of a run, and of the reel when it is done with. */
    private Rest rest(Run run, long left, long behind) {
        boolean last = run.index() == deepest;
        boolean own = reel.custody().isCustomersOwn();
        long worth = value(left);
        if (last) {
            worth += runs.stream()
                    .skip(deepest)
                    .mapToLong(r -> value(r.length().mm()))
                    .sum();
        }
        if (worth > 0 || (own && left + (last ? behind : 0) > 0)) {
            kept += last ? 0 : left;
            return last ? Rest.ON_REEL : Rest.REMNANT;
        }
        scrap += left + (last ? behind : 0);
        return Rest.SCRAP;
    }

    private long fetching() {
        long fetching = problem.prices().changing().millis()
                + (reel.full() ? problem.prices().opening().millis() : 0);
        LocalDate received = reel.papers().received();
        long years = received.equals(LocalDate.MIN) || received.isAfter(problem.day())
                ? 0
                : received.until(problem.day()).getYears();
        long lost = runs.stream()
                .mapToLong(run -> value.unopened(run.length())
                        .minus(value.of(run.length()))
                        .millis())
                .sum();
        return Math.max(0, fetching - years * problem.prices().ageCredit().millis()) + (reel.full() ? lost : 0);
    }

    private long value(long mm) {
        return value.of(mm(mm)).millis();
    }

    private static Length mm(long mm) {
        return new Length(mm);
    }
}
