package bitterend.work.rack;

import bitterend.measure.Written;
import bitterend.stock.Counted;
import bitterend.stock.Event;
import bitterend.stock.Flaw;
import bitterend.stock.Movement;
import bitterend.stock.Rack;
import java.time.LocalDate;
import java.util.List;

/** What is done with a reel as a whole. */
public sealed interface RackWork {
    /** Does it; the desk knows why and on which day. */
    Event on(Rack rack, RackDesk desk);

    /** What a count found, of one reel or of many: one event. */
    record Count(List<Counted> reels) implements RackWork {
        public Count {
            reels = List.copyOf(reels);
        }

        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.count(reels, desk.note());
        }
    }

    /** It is not cut; whom it is kept for stays. */
    record Hold(String reel) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.hold(reel, desk.note());
        }
    }

    /** Ends a hold; of a reel that is not on hold, its reservation. */
    record Release(String reel) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.release(reel, desk.note());
        }
    }

    /** Rope of it is held no longer; for one alone where no order or customer is named. */
    record ReleaseRope(String reel, String name) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.releaseRope(reel, name, desk.note());
        }
    }

    /** It is kept for one order; a hold stays. */
    record Reserve(String reel, String order) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.reserve(reel, order, desk.note());
        }
    }

    /** It stands at another place. */
    record Move(String reel, String place) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.move(reel, place, desk.note());
        }
    }

    /** It was wound over: its inner end is outside now. */
    record Rewind(String reel) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.rewind(reel, desk.note());
        }
    }

    /** Some of it goes onto a reel of its own. */
    record Split(String reel, Written length, String newReel) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.split(reel, length, newReel, desk.note());
        }
    }

    /** Flaws were found on it, told from the working end. */
    record AddFlaws(String reel, List<Flaw> flaws) implements RackWork {
        public AddFlaws {
            flaws = List.copyOf(flaws);
        }

        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.addFlaws(reel, flaws, desk.note());
        }
    }

    /** It goes back to its supplier or owner. */
    record GiveBack(String reel) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.remove(Movement.Kind.RETURNED, reel, desk.note());
        }
    }

    /**
     * It is sold as it is.
     *
     * @param sure whether it may be past its last day
     */
    record Sell(String reel, boolean sure) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.sell(reel, desk.note(), sure ? LocalDate.MIN : desk.today(), desk.shopDay());
        }
    }

    /** It is written off. */
    record Condemn(String reel) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            return rack.remove(Movement.Kind.CONDEMNED, reel, desk.note());
        }
    }

    /** It goes to another loft of the shop. */
    record Send(String reel, String loft) implements RackWork {
        @Override
        public Event on(Rack rack, RackDesk desk) {
            String words = desk.note().isEmpty() ? "to " + loft : "to " + loft + ": " + desk.note();
            return rack.send(reel, loft, words);
        }
    }
}
