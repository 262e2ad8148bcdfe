package bitterend.work.rack;

import bitterend.day.SameSteps;
import bitterend.exchange.MeasuredRows;
import bitterend.finding.Findings;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Undo;
import bitterend.work.Booking;
import bitterend.work.Gate;
import bitterend.work.NamedPlan;
import bitterend.work.Plans;
import bitterend.work.SamePlans;
import bitterend.work.ShopAccess;
import bitterend.work.ShopToday;
import bitterend.work.orders.AcceptedRows;
import bitterend.work.orders.FinishedLog;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * What was booked is taken back: an event whole, with its movements, its facts, and the row of measurements that was
 * written with it; or all that was posted of a plan off a reel.
 */
public final class TakeBack {
    private final ShopAccess at;
    private final Event.Act act;

    /**
     * @param at the way to the shop
     * @param act who does it, why, and under which id
     */
    public TakeBack(ShopAccess at, Event.Act act) {
        this.at = at;
        this.act = act;
    }

    /** Takes an event back; what went with it is told. */
    public Booking event(long number) {
        return Booking.of(() -> at.writing(ledger -> {
            List<String> told = new ArrayList<>();
            return MeasuredRows.orAsItWas(at.folder(), () -> {
                Event event = new Undo(ledger, act).event(number, wrong -> told.addAll(rowOf(wrong)));
                return new Booking.Booked(event, told);
            });
        }));
    }

    private List<String> rowOf(Event wrong) {
        List<String> told = new ArrayList<>();
        told.add("event " + wrong.number() + " (" + wrong.act().kind().word() + ") is taken back");
        if (wrong.act().kind() == Event.Kind.QUOTE_ACCEPTED) {
            told.addAll(new AcceptedRows(at).takeOut(AcceptedRows.of(wrong), wrong.fact(AcceptedRows.BOOK), act.who()));
        }
        String row = wrong.fact(FinishedLog.ROW);
        if (!row.isEmpty()) {
            told.add(
                    MeasuredRows.takeOut(at.folder(), row)
                            ? "its row of measured.csv went with it: " + row
                            : "its row of measured.csv is not as it was written; look whether calibrate may still learn"
                                    + " from it: " + row);
        }
        return told;
    }

    /** Takes back all that was posted of a plan off a reel, under its name or that of another that cuts the reel alike. */
    public Booking posting(String plan, String reel) {
        return Booking.of(() -> at.writing(
                ledger -> new Booking.Booked(new Undo(ledger, act).posting(plan, reel, alike(plan, ledger)))));
    }

    private Predicate<Movement> alike(String plan, Ledger ledger) {
        Plans plans = at.plans(new Findings());
        return NamedPlan.number(plan)
                .flatMap(named -> plans.read(named, new Findings()))
                .<Predicate<Movement>>map(kept -> {
                    SameSteps same = SamePlans.of(kept, plans, ShopToday.Rack.of(ledger));
                    return movement -> same.isStepOf(Gate.name(kept), movement);
                })
                .orElse(movement -> false);
    }
}
