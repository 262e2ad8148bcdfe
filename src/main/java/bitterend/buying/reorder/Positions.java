package bitterend.buying.reorder;

import bitterend.buying.FreeRope;
import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** What there is of each rope against what is booked, on a day. */
public final class Positions {
    private final FreeRope free;
    private final List<Piece> open;
    private final List<OnOrder> onOrder;
    private final UsualLateness lateness;
    private final LocalDate day;

    /**
     * @param reels on the rack
     * @param open what is ordered and not cut
     * @param onOrder reels on their way
     */
    public Positions(List<Reel> reels, List<Piece> open, List<OnOrder> onOrder, UsualLateness lateness, LocalDate day) {
        free = new FreeRope(reels, open, day);
        this.open = List.copyOf(open);
        this.onOrder = List.copyOf(onOrder);
        this.lateness = lateness;
        this.day = day;
    }

    /** Of one rope. */
    public Position of(Rope rope) {
        List<Position.Coming> coming = coming(rope);
        Length there = free.of(rope);
        List<Piece> pieces = open.stream()
                .filter(piece -> piece.orderedRope().equals(rope.id()) && !piece.ownRope())
                .sorted(Comparator.comparing(piece -> piece.source().due()))
                .toList();
        return new Position(
                there,
                coming,
                free.booked(rope),
                pieces.stream().map(Piece::cut).reduce(Length.ZERO, Length::max),
                shortFrom(pieces, there, coming, rope.cutting().loss()),
                waiting(rope, pieces));
    }

    private Waiting waiting(Rope rope, List<Piece> pieces) {
        List<Waiting.Stretch> stretches = new ArrayList<>();
        free.stretches(rope).forEach(length -> stretches.add(new Waiting.Stretch(LocalDate.MIN, length)));
        for (OnOrder order : onOrder) {
            if (order.rope().equals(rope.id())) {
                Waiting.Stretch reel = new Waiting.Stretch(lateness.from(order, day), order.usable());
                stretches.addAll(Collections.nCopies(Math.min(order.quantity(), pieces.size()), reel));
            }
        }
        return new Waiting(
                stretches,
                pieces.stream()
                        .map(piece -> new Waiting.Wanted(piece.source().due(), piece.cut()))
                        .toList(),
                rope.cutting().loss());
    }

    /** The first day for which what is wanted by then is more than there is and comes by then. */
    private static LocalDate shortFrom(List<Piece> byDay, Length there, List<Position.Coming> coming, Length loss) {
        Length left = there;
        for (Piece piece : byDay) {
            left = left.minus(piece.cut()).minus(loss);
            LocalDate due = piece.source().due();
            Length come = coming.stream()
                    .filter(each -> !each.day().isAfter(due))
                    .map(Position.Coming::length)
                    .reduce(Length.ZERO, Length::plus);
            if (left.plus(come).isNegative()) {
                return due;
            }
        }
        return LocalDate.MAX;
    }

    private List<Position.Coming> coming(Rope rope) {
        return onOrder.stream()
                .filter(order -> order.rope().equals(rope.id()))
                .map(order -> new Position.Coming(
                        order.id(), lateness.from(order, day), order.usable().times(order.quantity())))
                .toList();
    }
}
