package bitterend.work;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.CoilsOnRack;
import bitterend.stock.worth.PastCuts;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a shop's ropes are worth on the rack of one morning: by its past orders, else its orders in hand, else its reels. */
public final class CoilCurves {
    /** A quarter of a year: less tells nothing about a year. Our own choice, no source. */
    private static final int FEWEST_WEEKS = 13;

    private static final int FEWEST_WEEKS_OF_ORDERS = 4;
    private static final int MOST_WEEKS_OF_ORDERS = 26;
    private static final int DAYS_OF_A_WEEK = 7;

    private final Shop shop;
    private final LocalDate day;
    private final List<Reel> reels;
    private final List<Piece> inHand;

    public CoilCurves(Shop shop, LocalDate day) {
        this(shop, day, shop.reels(), shop.pieces());
    }

    private CoilCurves(Shop shop, LocalDate day, List<Reel> reels, List<Piece> inHand) {
        this.shop = shop;
        this.day = day;
        this.reels = reels;
        this.inHand = inHand;
    }

    /** The curves of an earlier morning, on the rack as it was: what is in hand today tells nothing of it. */
    public static CoilCurves earlier(Shop shop, LocalDate morning, List<Reel> rack) {
        return new CoilCurves(shop, morning, List.copyOf(rack), List.of());
    }

    /** What a length of a rope was worth by a curve of an earlier morning, with the coils of this one. */
    public StockValue value(Rope rope, StockValue earlier) {
        return earlier instanceof CoilValue curve ? curve.on(CoilsOnRack.of(rope.id(), reels, day)) : earlier;
    }

    /** What a length of a rope is worth: as the shop typed it, else by the coil curve. */
    public StockValue value(Rope rope) {
        StockValue typed = shop.supplies().values().typed().get(rope.id());
        return typed == null ? of(rope) : typed;
    }

    /** The curve of a rope with the coils that are on the rack. */
    public CoilValue of(Rope rope) {
        return CoilValue.of(past(rope), terms(rope), CoilsOnRack.of(rope.id(), reels, day));
    }

    /** The curve on an empty rack where reels of this price and length are bought. */
    public CoilValue bought(Rope rope, UnitPrice price, Length reel) {
        return CoilValue.of(past(rope), CoilTerms.of(price, reel, longest(rope), holding(rope)), Length.ZERO);
    }

    private CoilTerms terms(Rope rope) {
        return CoilTerms.of(rope.price(), rope.usualReel(), longest(rope), holding(rope));
    }

    private CoilTerms.Holding holding(Rope rope) {
        Settings.Holding holding = shop.settings().holding();
        return new CoilTerms.Holding(
                holding.interest(), holding.room(), rope.worth().keepFrom());
    }

    private Length longest(Rope rope) {
        Stream<Length> offered = shop.supplies().offers().stream()
                .filter(offer -> offer.rope().equals(rope.id()))
                .map(offer -> offer.usable());
        Stream<Length> there = reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()))
                .flatMap(reel -> reel.runs().stream())
                .map(Run::length);
        return Stream.concat(offered, there).reduce(rope.usualReel(), Length::max);
    }

    private PastCuts past(Rope rope) {
        List<List<Length>> byWeek = shop.supplies().history().cutsOf(rope.id());
        List<Length> cuts =
                new ArrayList<>(byWeek.stream().flatMap(List::stream).toList());
        Length loss = rope.cutting().loss();
        if (byWeek.size() >= FEWEST_WEEKS && cuts.size() >= PastCuts.ENOUGH) {
            return PastCuts.of(cuts, loss, byWeek.size(), PastCuts.Source.HISTORY);
        }
        List<Piece> ordered = inHand.stream()
                .filter(piece -> piece.orderedRope().equals(rope.id()) && !piece.ownRope())
                .toList();
        int weeks = (cuts.isEmpty() ? 0 : byWeek.size()) + weeksOf(ordered);
        PastCuts.Source source = cuts.isEmpty()
                ? PastCuts.Source.IN_HAND
                : ordered.isEmpty() ? PastCuts.Source.FEW_PAST : PastCuts.Source.ORDERS;
        ordered.forEach(piece -> cuts.add(piece.cut()));
        return cuts.isEmpty()
                ? PastCuts.ofReel(rope.usualReel())
                : PastCuts.thin(PastCuts.of(cuts, loss, weeks, source), rope.usualReel());
    }

    /** How many weeks of work the orders in hand are: until the last of them is due. */
    private int weeksOf(List<Piece> ordered) {
        LocalDate last = ordered.stream()
                .map(piece -> piece.source().due())
                .filter(due -> !due.equals(LocalDate.MAX))
                .reduce(day, (a, b) -> a.isAfter(b) ? a : b);
        long weeks = ChronoUnit.DAYS.between(day, last) / DAYS_OF_A_WEEK + 1;
        return (int) Math.min(MOST_WEEKS_OF_ORDERS, Math.max(FEWEST_WEEKS_OF_ORDERS, weeks));
    }
}
