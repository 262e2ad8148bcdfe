package bitterend.work;

import bitterend.exchange.PlanEvent;
import bitterend.exchange.PlanEvent.What;
import bitterend.stock.Event;
import bitterend.stock.Event.Act;
import bitterend.stock.Event.Kind;
import bitterend.stock.Ledger;
import bitterend.stock.Standing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The log of a shop with a ledger: what was written down before the ledger was begun, which still holds, then events of
 * the ledger.
 */
final class LedgerLog implements PlanLog {
    private static final Map<What, Kind> KINDS = new EnumMap<>(
            Map.of(What.IN_FORCE, Kind.IN_FORCE, What.ISSUED, Kind.ISSUED, What.WITHDRAWN, Kind.WITHDRAWN));

    private final Supplier<Ledger> toRead;
    private final Supplier<Ledger> toWrite;
    private final PlanLog before;

    /**
     * @param toRead opens the ledger to read
     * @param toWrite opens it to write
     * @param before what was written down before it was begun
     */
    LedgerLog(Supplier<Ledger> toRead, Supplier<Ledger> toWrite, PlanLog before) {
        this.toRead = toRead;
        this.toWrite = toWrite;
        this.before = before;
    }

    @Override
    public List<PlanEvent> events() {
        List<PlanEvent> events = new ArrayList<>();
        try (Ledger ledger = toRead.get()) {
            for (Event event : ledger.read(stock -> Standing.events(stock.events()))) {
                KINDS.forEach((what, kind) -> {
                    if (event.act().kind() == kind) {
                        events.add(told(event, what));
                    }
                });
            }
        }
        List<PlanEvent> all = new ArrayList<>(before.events());
        all.addAll(events);
        return all;
    }

    private static PlanEvent told(Event event, What what) {
        return new PlanEvent(
                event.at(), event.act().who(), what, number(event), event.fact("digest"), event.named("reel"));
    }

    private static int number(Event event) {
        long number = event.number("number");
        if (number < 1 || number > Integer.MAX_VALUE) {
            throw event.damaged("number", "number of a plan");
        }
        return (int) number;
    }

    @Override
    public void add(PlanEvent event) {
        Kind kind = KINDS.get(event.what());
        if (kind == null) {
            throw new IllegalArgumentException("no event of the ledger for " + event.what());
        }
        Act act = Act.of(kind, event.who(), "plan " + event.plan())
                .with("number", Integer.toString(event.plan()))
                .with("digest", event.digest());
        for (String reel : event.reels()) {
            act = act.with("reel " + reel, "");
        }
        Act said = act;
        try (Ledger ledger = toWrite.get()) {
            ledger.change(said, books -> {});
        }
    }
}
