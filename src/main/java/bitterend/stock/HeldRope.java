package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Units;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is held of a reel for orders and customers: so much of it, until a day. */
final class HeldRope {
    private HeldRope() {}

    /**
     * A reel of which more is held; what was held for the same before gives way to it.
     *
     * @param day today: what is held no longer takes no room
     */
    static Reel with(Reel old, Held held, LocalDate day) {
        Reel.Custody custody = old.custody();
        List<Held> others = custody.heldOn(day).stream()
                .filter(each -> !each.whom().equals(held.whom()))
                .toList();
        refuseUnlessHoldable(old, held, others);
        List<Held> all = new ArrayList<>(others);
        all.add(held);
        return old.withCustody(custody.holding(all));
    }

    private static void refuseUnlessHoldable(Reel reel, Held held, List<Held> others) {
        Reel.Custody custody = reel.custody();
        if (custody.isOnHold()) {
            throw new LedgerException.Refused(
                    "reel " + reel.id() + " is on hold: nothing of it can be held for anybody");
        }
        if (custody.isCustomersOwn() || custody.isReserved()) {
            throw new LedgerException.Refused("all of reel " + reel.id() + " is kept for order " + custody.order());
        }
        Length room = reel.contents().certainEnd().minus(reel.contents().leadTrim());
        for (Held other : others) {
            room = room.minus(other.length());
        }
        if (held.length().isLongerThan(room)) {
            throw new LedgerException.Refused(metres(held.length()) + " cannot be held: reel " + reel.id() + " has "
                    + metres(Length.max(Length.ZERO, room)) + " of certain rope"
                    + (others.isEmpty() ? "" : " beside what is held for others"));
        }
    }

    /**
     * That something is held no longer.
     *
     * @param name the order or customer that it is held for; empty for the one there is
     */
    static Entry released(Reel old, String name, String note) {
        List<Held> ended = old.custody().held().stream()
                .filter(each -> name.isEmpty() || each.name().equals(name))
                .toList();
        if (ended.isEmpty()) {
            throw new LedgerException.Refused("nothing of reel " + old.id() + " is held for " + name);
        }
        if (ended.size() > 1) {
            throw new LedgerException.Refused("rope of reel " + old.id() + " is held for "
                    + ended.stream().map(Held::whom).collect(Collectors.joining(" and for "))
                    + ": say whose is released with --for");
        }
        List<Held> left = new ArrayList<>(old.custody().held());
        left.removeAll(ended);
        return new Entry(
                Kind.RELEASED,
                old.withCustody(old.custody().holding(left)),
                said(ended.get(0), "no longer held", note));
    }

    /** What became of rope that is or was held, in words. */
    static String said(Held held, String what, String note) {
        return metres(held.length()) + " " + what + " for " + held.whom() + " until " + held.until()
                + (note.isEmpty() ? "" : ": " + note);
    }

    private static String metres(Length length) {
        return LengthText.print(length, Units.METRIC);
    }
}
