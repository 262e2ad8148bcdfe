package bitterend.work.rack;

import bitterend.measure.Money;
import bitterend.packing.Words;
import bitterend.stock.CameIn;
import bitterend.stock.Delivery;
import bitterend.stock.Promised;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;

/** When a reel came, and how it differs from what was ordered: shorter, or late. */
final class PromiseTold {
    private PromiseTold() {}

    /** In sentences; none where it came as it was ordered, or was not. */
    static List<String> of(CameIn came) {
        Promised promised = came.promised();
        if (promised.order().isEmpty()) {
            return List.of();
        }
        Reel reel = came.reel();
        return of(new Delivery(
                0,
                reel.papers().received(),
                reel.id(),
                reel.rope(),
                promised,
                came.price().orElse(Money.ZERO),
                reel.length(),
                reel.length()));
    }

    /** The day it is booked for, where nobody stated one. */
    static String day(CameIn came) {
        return "received on " + came.reel().papers().received();
    }

    private static List<String> of(Delivery came) {
        Promised promised = came.promised();
        List<String> told = new ArrayList<>();
        if (came.beyond().isPositive()) {
            told.add("reel " + came.reel() + " is " + Words.of(came.shortBy()) + " shorter than was ordered, "
                    + (promised.allowed().isPositive()
                            ? Words.of(came.beyond()) + " more than the " + Words.of(promised.allowed())
                                    + " that it may be short"
                            : "and it may not be short")
                    + "; what to claim: bitterend stock claims SHOP");
        } else if (came.shortBy().isPositive()) {
            told.add(
                    "reel " + came.reel() + " is " + Words.of(came.shortBy()) + " shorter than was ordered, within the "
                            + Words.of(promised.allowed()) + " that it may be short");
        }
        if (came.daysLate() > 0) {
            told.add("order " + promised.order() + " was expected on " + promised.expected() + ": this comes "
                    + came.daysLate() + (came.daysLate() == 1 ? " day" : " days") + " late");
        }
        return told;
    }
}
