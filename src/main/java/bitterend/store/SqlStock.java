package bitterend.store;

import bitterend.finding.NaturalOrder;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stock as one transaction sees it. */
class SqlStock implements Ledger.Stock {
    private static final String LATEST =
            "JOIN (SELECT reel, MAX(count) AS latest FROM movement GROUP BY reel) l ON l.reel = m.reel AND l.latest = m.count";

    final Sql sql;
    final MovementRows rows;
    final EventRows events;

    SqlStock(Sql sql) {
        this.sql = sql;
        rows = new MovementRows(sql);
        events = new EventRows(sql, rows);
    }

    @Override
    public List<Holding> holdings() {
        return rows.where(LATEST).stream()
                .map(SqlStock::holding)
                .sorted(Comparator.comparing(Holding::id, NaturalOrder.IDS))
                .toList();
    }

    @Override
    public Optional<Holding> findHolding(String reel) {
        return rows.where("WHERE m.reel = ? ORDER BY m.count DESC LIMIT 1", reel).stream()
                .map(SqlStock::holding)
                .findFirst();
    }

    private static Holding holding(Movement latest) {
        return new Holding(latest.entry().after(), latest.entry().gone(), latest.count());
    }

    @Override
    public List<Movement> history(String reel) {
        return rows.where("WHERE m.reel = ? ORDER BY m.count", reel);
    }

    @Override
    public List<Movement> movements() {
        return rows.where("ORDER BY m.number");
    }

    @Override
    public Optional<Movement> findMovement(long number) {
        return rows.where("WHERE m.number = ?", number).stream().findFirst();
    }

    @Override
    public List<Movement> ofPlan(String plan) {
        return rows.where("WHERE m.plan = ? ORDER BY m.number", plan);
    }

    @Override
    public List<Movement> ofPieces() {
        return rows.where("WHERE m.piece <> '' ORDER BY m.number");
    }

    @Override
    public List<Event> events() {
        return events.all();
    }

    @Override
    public Optional<Event> findEvent(long number) {
        return events.find(number);
    }

    @Override
    public Optional<Event> eventOfId(String id) {
        return events.find(id);
    }

    @Override
    public Head head() {
        return LedgerRow.needed(sql).end();
    }
}
