package bitterend.work.rack;

import bitterend.catalogue.Rope;
import bitterend.day.CountedRack;
import bitterend.stock.Counted;
import bitterend.stock.Holding;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Counts the rack: whether by hand, from a file or on the page, and books what differs as one event. */
public final class CountRack {
    private final RackDesk desk;
    private final ShopNow now;

    public CountRack(RackDesk desk, ShopNow now) {
        this.desk = desk;
        this.now = now;
    }

    /** The reels of the rack in the order in which one walks past them. */
    public List<Holding> walk() {
        return new AskRack(desk.at())
                .holdings(false).stream()
                        .sorted(Comparator.comparing(Holding::reel, CountedRack.WALK))
                        .toList();
    }

    /** Holds a count against the ledger: a question that writes nothing. */
    public CountedRack compare(List<Counted> counted) {
        return CountedRack.of(
                counted,
                new AskRack(desk.at()).holdings(false),
                rope -> now.shop().catalogue().findRope(rope).map(Rope::price));
    }

    /**
     * Books what differs, all of it as one event: what agrees with the ledger stays as it is, and what is set apart is left out
     * unless somebody says that it is so.
     *
     * @param sure reels that are set apart and booked all the same
     */
    public Booking accept(List<Counted> counted, Set<String> sure) {
        CountedRack rack = compare(counted);
        List<Counted> booked = rack.lines().stream()
                .filter(line -> line.isBooked(sure))
                .map(CountedRack.Line::counted)
                .toList();
        if (booked.isEmpty()) {
            return new Booking.Refused(
                    "nothing of the count is to be booked: what was counted agrees with the ledger, or"
                            + " is set apart to be looked at again");
        }
        return new WorkReel(desk).book(new RackWork.Count(booked));
    }
}
