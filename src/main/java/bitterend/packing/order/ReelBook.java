package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.DrawPrice;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.RunDraw.Rest;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.List;

/** Sets the running marks of one reel and books where its rope goes. */
final class ReelBook {
    private final Reel reel;
    private final DrawPrice price;
    private final StockValue value;
    private final List<Run> runs;
    private final Length zero;

    ReelBook(PackingProblem problem, Reel reel, DrawPrice price) {
        this.reel = reel;
        this.price = price;
        value = problem.valueOn(reel);
        runs = price.runs();
        zero = reel.contents().leadTrim();
    }

    /** The draw of this reel; one list of pieces in cutting order for each run, empty for an untouched one. */
    ReelDraw draw(List<List<Piece>> piecesByRun) {
        int deepest = deepest(piecesByRun);
        List<RunDraw> draws = new ArrayList<>();
        RunLoad[] loads = new RunLoad[runs.size()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = load(piecesByRun.get(i));
        }
        Rest lastRest = restOnReel(deepest, loads[deepest]);
        for (int i = 0; i <= deepest; i++) {
            draws.add(runDraw(i, piecesByRun.get(i), loads[i], i == deepest ? lastRest : null));
        }
        LengthBook book = book(draws, lastRest);
        return new ReelDraw(reel.id(), zero, draws, book.left(), book, price.of(loads));
    }

    private static int deepest(List<List<Piece>> piecesByRun) {
        int deepest = piecesByRun.size() - 1;
        while (piecesByRun.get(deepest).isEmpty()) {
            deepest--;
        }
        return deepest;
    }

    private RunLoad load(List<Piece> pieces) {
        RunLoad load = RunLoad.NONE;
        for (Piece piece : pieces) {
            load = load.plus(cut(piece));
        }
        return load;
    }

    private RunDraw runDraw(int index, List<Piece> pieces, RunLoad load, @org.jspecify.annotations.Nullable Rest last) {
        Run run = runs.get(index);
        Length at = run.from().minus(zero);
        List<Cut> cuts = new ArrayList<>();
        for (Piece piece : pieces) {
            Length to = at.plus(cut(piece));
            cuts.add(new Cut(piece.id(), at, to));
            at = to.plus(price.loss());
        }
        Length left = load.isEmpty() ? run.length() : load.leftOf(run.length(), price.loss());
        Rest rest = last != null ? last : isWorthKeeping(left) ? Rest.REMNANT : Rest.SCRAP;
        return new RunDraw(run.index(), run.from().minus(zero), run.to().minus(zero), cuts, left, rest);
    }

    /** A customer's own rope goes back whatever its length; ours is kept when it is worth anything. */
    private boolean isWorthKeeping(Length left) {
        return reel.custody().isCustomersOwn()
                ? left.isPositive()
                : value.of(left).millis() > 0;
    }

    /**
     * What becomes of the reel behind the last cut: it stays when any sound rope on it is worth keeping, or is held. A
     * customer's own goes back down to the uncertain end.
     */
    private Rest restOnReel(int deepest, RunLoad load) {
        Run last = runs.get(deepest);
        Length left = load.leftOf(last.length(), price.loss());
        Length behindIt = reel.length().minus(last.to()).minus(reel.contents().innerWraps());
        boolean kept = reel.contents().held().isPositive()
                || isWorthKeeping(left)
                || (reel.custody().isCustomersOwn() && behindIt.isPositive());
        for (Run behind : runs.subList(deepest + 1, runs.size())) {
            kept |= isWorthKeeping(behind.length());
        }
        return kept ? Rest.ON_REEL : Rest.SCRAP;
    }

    private LengthBook book(List<RunDraw> draws, Rest lastRest) {
        LengthBook book = LengthBook.EMPTY.with(Account.BEFORE, reel.length()).with(Account.LEAD_TRIM, zero);
        Length at = zero;
        for (RunDraw draw : draws) {
            Run run = runs.get(draw.run() - 1);
            Length pieces = draw.cuts().stream().map(Cut::length).reduce(Length.ZERO, Length::plus);
            Length loss = run.length().minus(pieces).minus(draw.left());
            boolean last = draw.run() == draws.size();
            book = book.adding(Account.PIECES, pieces)
                    .adding(Account.CUT_LOSS, loss)
                    .adding(Account.FLAWS, run.from().minus(at));
            if (!last) {
                book = book.adding(draw.rest() == Rest.SCRAP ? Account.SCRAP : Account.KEPT, draw.left());
            }
            at = run.to();
        }
        Length behind = reel.length().minus(at);
        Length inner = Length.min(behind, reel.contents().innerWraps());
        Length rest = behind.minus(inner).plus(draws.get(draws.size() - 1).left());
        return book.adding(lastRest == Rest.SCRAP ? Account.SCRAP : Account.LEFT, rest)
                .adding(Account.INNER_WRAPS, inner);
    }

    private Length cut(Piece piece) {
        return piece.lengthOn(reel.rope()).orElseThrow();
    }

    /** The price of the draw, as the engines see it. */
    static Cost sum(List<ReelDraw> draws) {
        return draws.stream().map(ReelDraw::cost).reduce(Cost.ZERO, Cost::plus);
    }
}
