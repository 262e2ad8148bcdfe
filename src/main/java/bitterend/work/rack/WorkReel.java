package bitterend.work.rack;

import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import java.util.ArrayList;
import java.util.List;

/** Books what is done with a reel as a whole. */
public final class WorkReel {
    private final RackDesk desk;

    public WorkReel(RackDesk desk) {
        this.desk = desk;
    }

    /** Books it, and tells of a hold, a release or a reservation what of the other is still there, and of what is held whether it is. */
    public Booking book(RackWork work) {
        Booking booking = desk.rack(rack -> work.on(rack, desk));
        if (!(booking instanceof Booking.Booked booked)) {
            return booking;
        }
        List<Movement> movements = booked.event().movements();
        boolean keeps =
                work instanceof RackWork.Hold || work instanceof RackWork.Release || work instanceof RackWork.Reserve;
        List<String> told = new ArrayList<>(keeps ? stillKept(movements) : List.of());
        told.addAll(HeldTold.of(movements, desk.shopDay()));
        return new Booking.Booked(booked.event(), told);
    }

    private static List<String> stillKept(List<Movement> movements) {
        List<String> told = new ArrayList<>();
        for (Movement movement : movements) {
            Reel reel = movement.entry().after();
            boolean reserving = movement.entry().kind() == Movement.Kind.RESERVED;
            if (reel.custody().isReserved() && !reserving) {
                told.add("reel " + reel.id() + " is still kept for order "
                        + reel.custody().order());
            } else if (reel.custody().isOnHold() && reserving) {
                told.add("reel " + reel.id() + " is still on hold: stock release ends that");
            }
        }
        return told;
    }
}
