package bitterend.store;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stock as one transaction sees it. */
final class SqliteBooks implements Ledger.Books {
    private static final String LATEST =
            "JOIN (SELECT reel, MAX(count) AS latest FROM movement GROUP BY reel) l ON l.reel = m.reel AND l.latest = m.count";

    private final Sql sql;
    private final MovementRows rows;
    private final String who;
    private final Instant now;

    SqliteBooks(Sql sql, String who, Instant now) {
        this.sql = sql;
        this.who = who;
        this.now = now;
        rows = new MovementRows(sql);
    }

    @Override
    public List<Holding> holdings() {
        return rows.where(LATEST).stream()
                .map(SqliteBooks::holding)
                .sorted(Comparator.comparing(Holding::id, NaturalOrder.IDS))
                .toList();
    }

    @Override
    public Optional<Holding> findHolding(String reel) {
        return rows.where("WHERE m.reel = ? ORDER BY m.count DESC LIMIT 1", reel).stream()
                .map(SqliteBooks::holding)
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
    public List<Ratio> fills(String reelType) {
        return sql.list(
                "SELECT known_mm, turns_mm FROM gauged WHERE reel_type = ? ORDER BY number",
                row -> new Ratio(row.getLong(1), row.getLong(2)),
                reelType);
    }

    @Override
    public void addFill(String reelType, Length known, Length turns) {
        sql.run(
                "INSERT INTO gauged (at, who, reel_type, known_mm, turns_mm) VALUES (?, ?, ?, ?, ?)",
                now.toString(),
                who,
                reelType,
                known.mm(),
                turns.mm());
    }

    @Override
    public Movement append(Movement.Entry entry) {
        Optional<Holding> before = findHolding(entry.reel());
        Length had = before.filter(holding -> !holding.gone())
                .map(holding -> holding.reel().length())
                .orElse(Length.ZERO);
        Movement movement = new Movement(
                1 + sql.number("SELECT COALESCE(MAX(number), 0) FROM movement"),
                now,
                who,
                entry,
                1 + before.map(Holding::movements).orElse(0L),
                entry.left().minus(had));
        rows.insert(movement, attempt(entry));
        return movement;
    }

    /** How often this step was written and undone before: the same step cannot stand twice. */
    private long attempt(Movement.Entry entry) {
        Movement.Origin origin = entry.origin();
        return origin.step().isEmpty()
                ? 0
                : sql.number(
                        "SELECT COUNT(*) FROM movement m JOIN movement u ON u.undoes = m.number"
                                + " WHERE m.plan = ? AND m.reel = ? AND m.step = ? AND m.undoes IS NULL",
                        origin.plan(),
                        entry.reel(),
                        origin.step());
    }
}
