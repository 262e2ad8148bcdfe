package bitterend.store;

import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.Written;
import bitterend.stock.Flaw;
import bitterend.stock.Held;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Movements as rows of the ledger, there and back. */
final class MovementRows {
    private static final List<String> COLUMNS = List.of(
            "number",
            "event",
            "kind",
            "reel",
            "count",
            "by_mm",
            "note",
            "parent",
            "plan",
            "step",
            "attempt",
            "piece",
            "was",
            "piece_mm",
            "undoes",
            "gone",
            "rope",
            "lot",
            "length_mm",
            "uncertainty_mm",
            "lead_trim_mm",
            "inner_wraps_mm",
            "known",
            "certificate",
            "certificate_number",
            "use_by",
            "received",
            "owner",
            "state",
            "for_order",
            "is_full",
            "place",
            "mass_g",
            "draw",
            "reel_note",
            "length_text",
            "held");
    private static final String INSERT = "INSERT INTO movement (" + String.join(", ", COLUMNS) + ") VALUES ("
            + String.join(", ", Collections.nCopies(COLUMNS.size(), "?")) + ")";
    private static final String FROM = "FROM movement m JOIN event e ON e.number = m.event ";

    private final Sql sql;

    MovementRows(Sql sql) {
        this.sql = sql;
    }

    /** Movements for which a condition holds, such as {@code WHERE m.reel = ? ORDER BY m.count}. */
    List<Movement> where(String condition, Object... values) {
        String those = " WHERE movement IN (SELECT m.number " + FROM + condition + ")";
        Map<Long, List<Flaw>> flaws = new HashMap<>();
        sql.list(
                "SELECT * FROM flaw" + those + " ORDER BY movement, position",
                row -> flaws.computeIfAbsent(row.getLong("movement"), movement -> new ArrayList<>())
                        .add(flaw(row)),
                values);
        Map<Long, Ordered> ordered = new HashMap<>();
        sql.list(
                "SELECT * FROM ordered" + those,
                row -> ordered.put(row.getLong("movement"), OrderedRow.read(row)) == null,
                values);
        return sql.list("SELECT m.*, e.at, e.who " + FROM + condition, row -> movement(row, flaws, ordered), values);
    }

    private static Movement movement(ResultSet row, Map<Long, List<Flaw>> flaws, Map<Long, Ordered> ordered)
            throws SQLException {
        long number = row.getLong("number");
        return Unreadable.unless("movement " + number, () -> {
            Movement.Entry entry = new Movement.Entry(
                    Movement.Kind.valueOf(row.getString("kind")),
                    reel(row, flaws.getOrDefault(number, List.of())),
                    row.getInt("gone") == 1,
                    row.getString("note"),
                    origin(row),
                    new PieceCut(new Length(row.getLong("piece_mm")), ordered.getOrDefault(number, Ordered.NONE)));
            return new Movement(
                    number,
                    row.getLong("event"),
                    Instant.parse(row.getString("at")),
                    row.getString("who"),
                    entry,
                    row.getLong("count"),
                    new Length(row.getLong("by_mm")));
        });
    }

    private static Movement.Origin origin(ResultSet row) throws SQLException {
        return new Movement.Origin(
                row.getString("parent"),
                row.getString("plan"),
                row.getString("step"),
                row.getString("piece"),
                row.getString("was"),
                row.getLong("undoes"));
    }

    private static Reel reel(ResultSet row, List<Flaw> flaws) throws SQLException {
        return new Reel(
                row.getString("reel"),
                row.getString("rope"),
                row.getString("lot"),
                new Reel.Contents(
                        length(row),
                        new Length(row.getLong("uncertainty_mm")),
                        new Length(row.getLong("lead_trim_mm")),
                        new Length(row.getLong("inner_wraps_mm")),
                        Reel.Known.valueOf(row.getString("known"))),
                flaws,
                new Reel.Papers(
                        row.getString("certificate"),
                        row.getString("certificate_number"),
                        day(row.getString("use_by"), LocalDate.MAX),
                        day(row.getString("received"), LocalDate.MIN)),
                new Reel.Custody(
                        row.getString("owner"),
                        Reel.State.valueOf(row.getString("state")),
                        row.getString("for_order"),
                        held(row.getString("held"))),
                row.getInt("is_full") == 1,
                new Reel.Where(
                        row.getString("place"),
                        new Mass(row.getLong("mass_g")),
                        Reel.Draw.valueOf(row.getString("draw")),
                        row.getString("reel_note")));
    }

    /** As it was typed, which must be the millimetres beside it. */
    private static Written length(ResultSet row) throws SQLException {
        Written worked = Written.worked(new Length(row.getLong("length_mm")));
        String text = row.getString("length_text");
        Written typed =
                text.isEmpty() ? worked : Written.parsePresent(text).value().orElse(Written.NOTHING);
        if (!typed.roundedDown().equals(worked.roundedDown())) {
            throw new IllegalArgumentException("'" + text + "' typed for " + worked.kept());
        }
        return typed;
    }

    private static List<Held> held(String text) {
        return Held.parse(text)
                .value()
                .orElseThrow(() -> new IllegalArgumentException("'" + text + "' is no rope held for anybody"));
    }

    private static Flaw flaw(ResultSet row) throws SQLException {
        return Unreadable.unless(
                "movement " + row.getLong("movement"),
                () -> new Flaw(
                        new Length(row.getLong("from_mm")),
                        new Length(row.getLong("to_mm")),
                        new Length(row.getLong("uncertainty_mm")),
                        row.getString("what")));
    }

    private static LocalDate day(@Nullable String text, LocalDate whenMissing) {
        return text == null ? whenMissing : LocalDate.parse(text);
    }

    /** Writes a movement; {@code attempt} tells repeated steps of a plan apart after they were undone. */
    void insert(Movement movement, long attempt) {
        Movement.Entry entry = movement.entry();
        Movement.Origin origin = entry.origin();
        Reel reel = entry.after();
        List<Object> values = new ArrayList<>(List.of(
                movement.number(),
                movement.event(),
                entry.kind().name(),
                reel.id(),
                movement.count(),
                movement.by().mm(),
                entry.note(),
                origin.parent(),
                origin.plan(),
                origin.step(),
                attempt,
                origin.piece(),
                origin.was(),
                entry.piece().length().mm(),
                origin.undoes() == 0 ? Sql.Missing.VALUE : origin.undoes(),
                entry.gone() ? 1 : 0));
        values.addAll(values(reel));
        sql.run(INSERT, values.toArray());
        List<Flaw> flaws = reel.flaws();
        for (int i = 0; i < flaws.size(); i++) {
            Flaw flaw = flaws.get(i);
            sql.run(
                    "INSERT INTO flaw (movement, position, from_mm, to_mm, uncertainty_mm, what) VALUES (?, ?, ?, ?, ?, ?)",
                    movement.number(),
                    i,
                    flaw.from().mm(),
                    flaw.to().mm(),
                    flaw.uncertainty().mm(),
                    flaw.what());
        }
        if (!entry.piece().ordered().equals(Ordered.NONE)) {
            OrderedRow.insert(sql, movement.number(), entry.piece().ordered());
        }
    }

    private static List<Object> values(Reel reel) {
        Reel.Contents contents = reel.contents();
        Reel.Papers papers = reel.papers();
        return List.of(
                reel.rope(),
                reel.lot(),
                contents.length().mm(),
                contents.uncertainty().mm(),
                contents.leadTrim().mm(),
                contents.innerWraps().mm(),
                contents.known().name(),
                papers.certificate(),
                papers.number(),
                papers.useBy().equals(LocalDate.MAX)
                        ? Sql.Missing.VALUE
                        : papers.useBy().toString(),
                papers.received().equals(LocalDate.MIN)
                        ? Sql.Missing.VALUE
                        : papers.received().toString(),
                reel.custody().owner(),
                reel.custody().state().name(),
                reel.custody().order(),
                reel.full() ? 1 : 0,
                reel.where().place(),
                reel.where().mass().grams(),
                reel.where().draw().name(),
                reel.where().note(),
                contents.written().text(),
                Held.text(reel.custody().held()));
    }
}
