package bitterend.store;

import bitterend.measure.Length;
import bitterend.stock.Chain;
import bitterend.stock.Event;
import bitterend.stock.Fills;
import bitterend.stock.Movement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Makes events of the movements of a ledger of version 1 or 2, each of which stays as it was. Those that one command wrote
 * together are known by their moment and their writer, and become one event. How long a cut piece was is not known of
 * them: what came off the reel counts as the piece.
 */
final class OlderLedger {
    private static final String BEGUN = "on the rack when the ledger was begun";
    private static final String COLUMNS =
            "kind, reel, count, by_mm, note, parent, plan, step, attempt, piece, undoes, gone,"
                    + " rope, lot, length_mm, uncertainty_mm, lead_trim_mm, inner_wraps_mm, known, certificate,"
                    + " certificate_number, use_by, received, owner, state, for_order, is_full, place, mass_g, draw";
    private static final String PIECE = "COALESCE(CASE o.kind WHEN 'CUT' THEN -o.by_mm"
            + " WHEN 'SPOILED' THEN (SELECT -c.by_mm FROM older_movement c WHERE c.kind = 'CUT' AND c.piece = o.piece"
            + " AND c.number < o.number ORDER BY c.number DESC LIMIT 1)"
            + " WHEN 'UNDONE' THEN (SELECT u.piece_mm FROM movement u WHERE u.number = o.undoes) END, 0)";
    private static final String TAKE_OVER = "INSERT INTO movement (number, event, was, piece_mm, reel_note, " + COLUMNS
            + ") SELECT o.number, ?, '', " + PIECE + ", '', " + COLUMNS + " FROM older_movement o WHERE o.number = ?";
    private static final String TAKE_FLAWS = "INSERT INTO flaw SELECT * FROM older_flaw WHERE movement = ?";

    private final Sql sql;
    private final EventRows events;

    private long number;
    private String hash = "";

    OlderLedger(Sql sql) {
        this.sql = sql;
        events = new EventRows(sql, new MovementRows(sql));
    }

    /** Writes the row of the ledger and its events; the older tables go. */
    void migrate(Instant now) {
        List<List<Row>> commands = commands();
        List<Fill> fills = sql.list("SELECT at, who, reel_type, known_mm, turns_mm FROM older_gauged", Fill::of);
        begin(now, commands.size() + (long) fills.size());
        int next = 0;
        for (List<Row> command : commands) {
            Row first = command.get(0);
            while (next < fills.size() && fills.get(next).at().isBefore(first.at())) {
                write(fills.get(next++));
            }
            write(first.act(), first.at(), command);
        }
        fills.subList(next, fills.size()).forEach(this::write);
        sql.script("DROP TABLE older_flaw; DROP TABLE older_movement; DROP TABLE older_gauged");
    }

    private List<List<Row>> commands() {
        List<List<Row>> commands = new ArrayList<>();
        for (Row row : sql.list("SELECT number, at, who, kind, note FROM older_movement ORDER BY number", Row::of)) {
            if (commands.isEmpty() || !commands.get(commands.size() - 1).get(0).isOfOneCommandWith(row)) {
                commands.add(new ArrayList<>());
            }
            commands.get(commands.size() - 1).add(row);
        }
        return commands;
    }

    private void begin(Instant now, long count) {
        LedgerRow row = LedgerRow.begun(now, count);
        hash = row.root();
        row.insert(sql);
    }

    private void write(Fill fill) {
        Event.Act act = Event.Act.of(Event.Kind.GAUGED, fill.who(), "")
                .withAll(Fills.facts(fill.type(), fill.known(), fill.turns()));
        write(act, fill.at(), List.of());
    }

    private void write(Event.Act act, Instant at, List<Row> command) {
        number++;
        Event.Act older = act.withId("older " + number).withAll(Map.of(Event.OLDER, ""));
        events.begin(number, at, older);
        for (Row row : command) {
            sql.run(TAKE_OVER, number, row.number());
            sql.run(TAKE_FLAWS, row.number());
        }
        Event open = new Event(number, at, older, movements(), "");
        hash = Chain.link(hash, open);
        events.close(new Event(number, at, older, open.movements(), hash));
    }

    private List<Movement> movements() {
        return new MovementRows(sql).where("WHERE m.event = ? ORDER BY m.number", number);
    }

    private record Row(long number, Instant at, String who, Movement.Kind kind, String note) {
        static Row of(ResultSet row) throws SQLException {
            return Unreadable.unless(
                    "movement " + row.getLong(1),
                    () -> new Row(
                            row.getLong(1),
                            Instant.parse(row.getString(2)),
                            row.getString(3),
                            Movement.Kind.valueOf(row.getString(4)),
                            row.getString(5)));
        }

        boolean isOfOneCommandWith(Row later) {
            return at.equals(later.at)
                    && who.equals(later.who)
                    && (kind == Movement.Kind.UNDONE) == (later.kind == Movement.Kind.UNDONE);
        }

        Event.Act act() {
            return Event.Act.of(event(), who, "");
        }

        private Event.Kind event() {
            return switch (kind) {
                case RECEIVED -> note.equals(BEGUN) ? Event.Kind.OPENED : Event.Kind.RECEIVED;
                case CUT, SCRAPPED, KEPT -> Event.Kind.POSTED;
                case SPOILED -> Event.Kind.SPOILED;
                case COUNTED -> Event.Kind.COUNTED;
                case MOVED -> Event.Kind.MOVED;
                case REWOUND -> Event.Kind.REWOUND;
                case SPLIT -> Event.Kind.SPLIT;
                case ON_HOLD -> Event.Kind.HELD;
                case RELEASED -> Event.Kind.RELEASED;
                case RESERVED -> Event.Kind.RESERVED;
                case FLAW_FOUND -> Event.Kind.FLAW_FOUND;
                case RETURNED -> Event.Kind.RETURNED;
                case SOLD -> Event.Kind.SOLD;
                case CONDEMNED -> Event.Kind.CONDEMNED;
                case UNDONE -> Event.Kind.UNDONE;
                default -> Event.Kind.CORRECTED;
            };
        }
    }

    private record Fill(Instant at, String who, String type, Length known, Length turns) {
        static Fill of(ResultSet row) throws SQLException {
            return Unreadable.unless(
                    "a gauged reel",
                    () -> new Fill(
                            Instant.parse(row.getString(1)),
                            row.getString(2),
                            row.getString(3),
                            new Length(row.getLong(4)),
                            new Length(row.getLong(5))));
        }
    }
}
