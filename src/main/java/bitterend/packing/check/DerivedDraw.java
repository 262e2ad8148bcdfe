package bitterend.packing.check;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.Prices;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.RunDraw.Rest;
import bitterend.packing.check.SoundRope.Stretch;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;

/**
 * What a draw must say, given only which pieces come off which run in which order. The reel is walked from the working end
 * to the last cut; the pieces must be known, allowed on the rope, and fit.
 */
final class DerivedDraw {
    private final Facts facts;
    private final Reel reel;
    private final StockValue value;
    private final Length loss;
    private final List<Stretch> all;
    private final int drawn;
    private final List<DerivedRun> runs = new ArrayList<>();

    private Length pieces = Length.ZERO;
    private Length cutLoss = Length.ZERO;
    private Length flaws = Length.ZERO;
    private Length scrap = Length.ZERO;
    private Length kept = Length.ZERO;
    private Length leftOnReel = Length.ZERO;
    private Cost cost;

    DerivedDraw(Facts facts, Reel reel, ReelDraw draw) {
        this.facts = facts;
        this.reel = reel;
        value = facts.problem().valueOn(reel);
        loss = facts.problem().ropeOn(reel).cutting().loss();
        all = facts.runs(reel);
        drawn = draw.runs().size();
        cost = fetching(facts, reel);
        Length behindLast = reel.contents().leadTrim();
        for (RunDraw run : draw.runs()) {
            Stretch stretch = all.get(runs.size());
            flaws = flaws.plus(stretch.from().minus(behindLast));
            behindLast = stretch.to();
            runs.add(walk(stretch, run.cuts().stream().map(Cut::piece).toList()));
        }
    }

    /** One run as it must stand in the plan. */
    record DerivedRun(List<Cut> cuts, Length left, Rest rest) {}

    List<DerivedRun> runs() {
        return runs;
    }

    Length leftOnReel() {
        return leftOnReel;
    }

    Cost cost() {
        return cost;
    }

    LengthBook book() {
        return LengthBook.EMPTY
                .with(Account.BEFORE, reel.length())
                .with(Account.PIECES, pieces)
                .with(Account.CUT_LOSS, cutLoss)
                .with(Account.LEAD_TRIM, reel.contents().leadTrim())
                .with(Account.FLAWS, flaws)
                .with(Account.SCRAP, scrap)
                .with(Account.KEPT, kept)
                .with(Account.LEFT, leftOnReel)
                .with(Account.INNER_WRAPS, reel.contents().innerWraps());
    }

    private DerivedRun walk(Stretch run, List<String> wanted) {
        boolean last = runs.size() == drawn - 1;
        Length at = run.from().minus(reel.contents().leadTrim());
        List<Cut> cuts = new ArrayList<>();
        Length inPieces = Length.ZERO;
        for (String piece : wanted) {
            Length length = facts.findPiece(piece)
                    .flatMap(known -> known.lengthOn(reel.rope()))
                    .orElseThrow();
            cuts.add(new Cut(piece, at, at.plus(length)));
            at = at.plus(length).plus(loss);
            inPieces = inPieces.plus(length);
        }
        Length unused = run.length().minus(inPieces);
        Length left = Length.max(Length.ZERO, unused.minus(loss.times(wanted.size())));
        pieces = pieces.plus(inPieces);
        cutLoss = cutLoss.plus(unused.minus(left));
        cost = cost.plus(
                wanted.isEmpty()
                        ? facts.problem().prices().handling()
                        : value.of(run.length()).minus(value.of(left)));
        return new DerivedRun(cuts, left, last ? bookRestOfReel(run, left) : bookRestOfRun(left));
    }

    private Rest bookRestOfRun(Length left) {
        if (isWorthKeeping(left, value.of(left))) {
            kept = kept.plus(left);
            return Rest.REMNANT;
        }
        scrap = scrap.plus(left);
        return Rest.SCRAP;
    }

    /** Behind the last cut everything stays on the reel, sound or not, or everything is scrap. What is held stays. */
    private Rest bookRestOfReel(Stretch run, Length left) {
        Cost worth = value.of(left);
        for (Stretch behind : all.subList(drawn, all.size())) {
            worth = worth.plus(value.of(behind.length()));
        }
        Length rest =
                left.plus(reel.length().minus(run.to())).minus(reel.contents().innerWraps());
        if (facts.held(reel).isPositive() || isWorthKeeping(rest, worth)) {
            leftOnReel = rest;
            return Rest.ON_REEL;
        }
        scrap = scrap.plus(rest);
        return Rest.SCRAP;
    }

    /** A customer's own rope goes back however short it is. */
    private boolean isWorthKeeping(Length rest, Cost worth) {
        return reel.custody().isCustomersOwn() ? rest.isPositive() : worth.millis() > 0;
    }

    /**
     * Opening of a full reel and changing, less the credit for full years on the rack, never below zero; and what the runs
     * of a full reel are worth less once it is open.
     */
    static Cost fetching(Facts facts, Reel reel) {
        Cost fetching = fetching(facts.problem().prices(), facts.problem().day(), reel);
        if (!reel.full()) {
            return fetching;
        }
        StockValue value = facts.problem().valueOn(reel);
        for (Stretch run : facts.runs(reel)) {
            Cost lost = value.unopened(run.length()).minus(value.of(run.length()));
            fetching = lost.millis() > 0 ? fetching.plus(lost) : fetching;
        }
        return fetching;
    }

    private static Cost fetching(Prices prices, LocalDate day, Reel reel) {
        Cost fetching = reel.full() ? prices.changing().plus(prices.opening()) : prices.changing();
        LocalDate received = reel.papers().received();
        boolean known = !received.equals(LocalDate.MIN) && received.isBefore(day);
        long years = known ? day.getYear() - received.getYear() : 0;
        if (known && MonthDay.from(day).isBefore(MonthDay.from(received))) {
            years--;
        }
        Cost after = fetching.minus(prices.ageCredit().times(years));
        return after.millis() < 0 ? Cost.ZERO : after;
    }
}
