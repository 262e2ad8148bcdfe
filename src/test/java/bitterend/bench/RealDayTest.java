package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days that are measured must have in them what makes real days hard. */
final class RealDayTest {
    @ParameterizedTest
    @ValueSource(ints = {300, 1_000, 10_000})
    void largeDay_hasEverythingThatMakesADayHard(int pieces) {
        assertHard(List.of(RealDay.of(0, pieces)), pieces);
    }

    @ParameterizedTest
    @ValueSource(ints = {30, 100})
    void tenSmallDays_haveEverythingThatMakesADayHard(int pieces) {
        List<PackingProblem> days = new ArrayList<>();
        for (long seed = 0; seed < 10; seed++) {
            days.add(RealDay.of(seed, pieces));
        }
        assertHard(days, pieces);
    }

    private static void assertHard(List<PackingProblem> days, int pieces) {
        days.forEach(day -> assertEquals(pieces, day.pieces().size()));
        assertTrue(anyPiece(days, piece -> piece.matching().bond() == Bond.ONE_LOT), "sets of one lot");
        assertTrue(anyPiece(days, piece -> piece.matching().bond() == Bond.ONE_REEL), "sets of one reel");
        assertTrue(anyPiece(days, piece -> !piece.certificate().isEmpty()), "certificates");
        assertTrue(anyPiece(days, piece -> piece.choices().size() > 1), "substitutes");
        assertTrue(days.stream().allMatch(day -> any(day, reel -> !reel.full())), "part reels");
        assertTrue(days.stream().allMatch(day -> any(day, Reel::full)), "full reels");
        assertTrue(anyReel(days, reel -> reel.runs().size() > 1), "flaws that part a reel");
        assertTrue(anyReel(days, reel -> !reel.custody().order().isEmpty()), "reels kept for an order");
        assertTrue(anyReel(days, reel -> reel.contents().uncertainty().isPositive()), "uncertain lengths");
    }

    private static boolean anyPiece(List<PackingProblem> days, Predicate<Piece> which) {
        return days.stream().anyMatch(day -> day.pieces().stream().anyMatch(which));
    }

    private static boolean anyReel(List<PackingProblem> days, Predicate<Reel> which) {
        return days.stream().anyMatch(day -> any(day, which));
    }

    private static boolean any(PackingProblem day, Predicate<Reel> which) {
        return day.reels().stream().anyMatch(which);
    }

    @Test
    void matchedSets_haveMates() {
        PackingProblem day = RealDay.of(3, 1_000);
        Map<String, Long> sizes = day.pieces().stream()
                .filter(Piece::isMatched)
                .collect(Collectors.groupingBy(piece -> piece.matching().set(), Collectors.counting()));
        assertTrue(sizes.size() > 10, () -> "" + sizes);
        assertTrue(sizes.values().stream().anyMatch(size -> size > 1));
    }

    @Test
    void tenThousandPieces_haveTwoHundredLengths() {
        assertEquals(200, lengths(RealDay.of(0, 10_000)).size());
    }

    @ParameterizedTest
    @ValueSource(ints = {50, 800, 3_000})
    void lengths_areAsManyAsWereAskedFor(int lengths) {
        PackingProblem day = RealDay.of(1, DayKind.of(3_000, lengths));
        assertEquals(3_000, day.pieces().size());
        assertEquals(lengths, lengths(day).size());
    }

    @Test
    void plainDay_isTheSameDayWithoutSetsAndWithoutAPriceOfSplitting() {
        PackingProblem usual = RealDay.of(0, 300);
        PackingProblem plain = RealDay.of(0, DayKind.usual(300).madePlain());
        assertEquals(
                usual.pieces().stream().map(Piece::cut).toList(),
                plain.pieces().stream().map(Piece::cut).toList());
        assertEquals(usual.reels(), plain.reels());
        assertTrue(usual.prices().splitOrder().compareTo(Cost.ZERO) > 0);
        assertEquals(Cost.ZERO, plain.prices().splitOrder());
        assertTrue(plain.pieces().stream().noneMatch(Piece::isMatched));
    }

    @Test
    void longPieces_areTwentyMetresAndMoreWithoutSetsAndKeepNoRemnantThatHoldsNone() {
        PackingProblem day = RealDay.of(0, DayKind.ofLongPieces(30));
        assertTrue(day.pieces().stream().noneMatch(piece -> piece.cut().isShorterThan(Length.ofMetres(20))));
        assertTrue(day.pieces().stream().noneMatch(Piece::isMatched));
        assertTrue(day.ropes().values().stream()
                .noneMatch(rope -> rope.worth().keepFrom().isShorterThan(Length.ofMetres(20))));
    }

    @ParameterizedTest
    @ValueSource(ints = {30, 300, 10_000})
    void fullReels_aloneHoldWhatIsWantedOfEveryRope(int pieces) {
        PackingProblem day = RealDay.of(2, pieces);
        for (String rope : day.ropes().keySet()) {
            long wanted = day.pieces().stream()
                    .filter(piece -> piece.orderedRope().equals(rope))
                    .mapToLong(piece -> piece.cut().mm())
                    .sum();
            long there = day.reels().stream()
                    .filter(reel -> reel.full() && reel.rope().equals(rope))
                    .mapToLong(reel -> reel.length().mm())
                    .sum();
            assertTrue(there >= wanted, rope + ": " + there + " of " + wanted);
        }
    }

    @Test
    void certifiedReels_ofALargeDay_holdWhatIsWantedWithACertificate() {
        PackingProblem day = RealDay.of(0, 10_000);
        for (String rope : day.ropes().keySet()) {
            long wanted = day.pieces().stream()
                    .filter(piece -> piece.orderedRope().equals(rope)
                            && !piece.certificate().isEmpty())
                    .mapToLong(piece -> piece.cut().mm())
                    .sum();
            long there = day.reels().stream()
                    .filter(reel -> reel.rope().equals(rope)
                            && !reel.papers().certificate().isEmpty())
                    .mapToLong(reel -> reel.length().mm())
                    .sum();
            assertTrue(there >= wanted, rope + ": " + there + " of " + wanted);
        }
    }

    @Test
    void sameSeed_givesTheSameDay() {
        assertEquals(RealDay.of(7, 100).pieces(), RealDay.of(7, 100).pieces());
        assertEquals(RealDay.of(7, 100).reels(), RealDay.of(7, 100).reels());
    }

    private static Set<Length> lengths(PackingProblem day) {
        return day.pieces().stream().map(Piece::cut).collect(Collectors.toSet());
    }
}
