package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.quoting.QuoteBasis.PastWeek;
import bitterend.quoting.sharing.CostRange;
import bitterend.quoting.sharing.NewRope;
import bitterend.quoting.sharing.Sharing;
import bitterend.threads.SideBySide;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;

/**
 * What a request would have added to the shop's usual work: each past week cut from new reels with it and without it. The
 * costs are those of the best cutting found. The weeks are all of the past with work in that rope; those of the same time of
 * year by themselves, where there are enough to speak. Of very many weeks some are taken evenly, so that there is time for
 * all of them.
 */
final class UsualWaste {
    /** More weeks than this are not looked at: each is packed twice. */
    private static final int MOST_WEEKS = 40;
    /** So few weeks of one time of year say nothing of it. */
    private static final int FEWEST_OF_SEASON = 8;
    /** How far from the day of the quote a week of its season is, whichever the year. */
    private static final int DAYS_OF_SEASON = 45;

    private static final int DAYS_OF_A_YEAR = 365;

    private final QuoteBasis basis;
    private final Sharing sharing;
    private final int threads;

    /** @param threads so many weeks are cut at once */
    UsualWaste(QuoteBasis basis, Sharing sharing, int threads) {
        this.basis = basis;
        this.sharing = sharing;
        this.threads = Math.min(threads, SideBySide.cores());
    }

    /** The waste that pieces of one rope add: its mean and range over the past weeks. */
    WasteView of(NewRope rope, List<Piece> asked, Cost worth) {
        List<PastWeek> all = basis.pastWeeks().stream()
                .map(week -> in(rope, week))
                .filter(week -> !week.pieces().isEmpty())
                .toList();
        if (all.isEmpty()) {
            return new WasteView.NotKnown("no past work in this rope is recorded");
        }
        List<PastWeek> season = all.stream()
                .filter(week -> isOfSeason(week.monday(), basis.book().day()))
                .toList();
        boolean ofSeason = season.size() >= FEWEST_OF_SEASON && season.size() < all.size();
        List<PastWeek> meant = ofSeason ? season : all;
        List<PastWeek> weeks = evenly(meant);
        List<Callable<Cost>> cuts = weeks.stream()
                .<Callable<Cost>>map(
                        week -> () -> added(rope, week.pieces(), asked).minus(worth))
                .toList();
        List<Cost> added = SideBySide.all(cuts, threads);
        Cost sum = added.stream().reduce(Cost.ZERO, Cost::plus);
        return new WasteView.Span(
                added.stream().min(Cost::compareTo).orElseThrow(),
                new Cost(Math.floorDiv(sum.millis(), (long) added.size())),
                added.stream().max(Cost::compareTo).orElseThrow(),
                added.size(),
                new WasteView.PastWeeks(weeks.stream().map(PastWeek::monday).toList(), ofSeason, meant.size()));
    }

    private static PastWeek in(NewRope rope, PastWeek week) {
        return new PastWeek(
                week.monday(),
                week.pieces().stream()
                        .filter(piece -> !piece.ownRope() && rope.holds(piece))
                        .map(UsualWaste::past)
                        .toList());
    }

    /** Whether a week begins about the time of year of a day: six weeks before it to six weeks after it. */
    private static boolean isOfSeason(LocalDate monday, LocalDate day) {
        int apart = Math.abs(monday.getDayOfYear() - day.getDayOfYear());
        return Math.min(apart, DAYS_OF_A_YEAR - apart) <= DAYS_OF_SEASON;
    }

    /** As many as there is time for, spread evenly; the last is always among them. */
    private static List<PastWeek> evenly(List<PastWeek> weeks) {
        int taken = Math.min(MOST_WEEKS, weeks.size());
        return IntStream.rangeClosed(1, taken)
                .mapToObj(i -> weeks.get(i * weeks.size() / taken - 1))
                .toList();
    }

    private Cost added(NewRope rope, List<Piece> week, List<Piece> asked) {
        List<Piece> both = new ArrayList<>(week);
        both.addAll(asked);
        CostRange with = sharing.cost(rope, both);
        CostRange without = sharing.cost(rope, week);
        return new Cost(with.found() - without.found());
    }

    /** The piece under a name that no piece of today has. */
    private static Piece past(Piece piece) {
        return new Piece(
                "past " + piece.id(),
                piece.source(),
                piece.choices(),
                Piece.Matching.NONE,
                "",
                false,
                piece.finished().roundedUp(),
                piece.ends());
    }
}
