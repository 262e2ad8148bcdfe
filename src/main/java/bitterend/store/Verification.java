package bitterend.store;

import bitterend.measure.Length;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Adds the whole ledger up again, movement by movement. */
final class Verification {
    private final Sql sql;
    private final Ledger.Stock stock;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Long> counts = new HashMap<>();
    private final Map<String, Length> lengths = new HashMap<>();
    private final Map<Long, Movement> earlier = new HashMap<>();
    private final Set<String> cut = new HashSet<>();

    Verification(Sql sql, Ledger.Stock stock) {
        this.sql = sql;
        this.stock = stock;
    }

    List<String> faults() {
        for (String answer : sql.list("PRAGMA integrity_check", row -> row.getString(1))) {
            unless(answer.equals("ok"), "the file is damaged: " + answer);
        }
        int strays =
                sql.list("PRAGMA foreign_key_check", row -> row.getString(1)).size();
        unless(strays == 0, strays + " rows speak of movements that are not there");
        stock.movements().forEach(this::add);
        return List.copyOf(faults);
    }

    private void add(Movement movement) {
        Movement.Entry entry = movement.entry();
        String name = "movement " + movement.number() + " (" + entry.kind().word() + ", reel " + entry.reel() + ")";
        long count = counts.merge(entry.reel(), 1L, Long::sum);
        unless(movement.count() == count, name + " is numbered " + movement.count() + ", it is the " + count + ".");
        Length length = lengths.merge(entry.reel(), movement.by(), Length::plus);
        unless(
                length.equals(entry.left()),
                name + " leaves " + entry.left().mm() + " mm, the sum of the movements is " + length.mm() + " mm");
        String parent = entry.origin().parent();
        unless(parent.isEmpty() || counts.containsKey(parent), name + " comes off a reel that is not there: " + parent);
        addPiece(entry, name);
        earlier.put(movement.number(), movement);
    }

    private void addPiece(Movement.Entry entry, String name) {
        String piece = entry.origin().piece();
        if (entry.origin().undoes() != 0) {
            Movement undone = earlier.get(entry.origin().undoes());
            unless(undone != null && undone.entry().reel().equals(entry.reel()), name + " undoes nothing of its reel");
            if (undone != null && undone.entry().kind() == Movement.Kind.CUT) {
                cut.remove(undone.entry().origin().piece());
            } else if (undone != null && undone.entry().kind() == Movement.Kind.SPOILED) {
                cut.add(undone.entry().origin().piece());
            }
        } else if (entry.kind() == Movement.Kind.CUT) {
            unless(cut.add(piece), name + " cuts a piece a second time: " + piece);
        } else if (entry.kind() == Movement.Kind.SPOILED) {
            unless(cut.remove(piece), name + " spoils a piece that is not cut: " + piece);
        }
    }

    private void unless(boolean kept, String sentence) {
        if (!kept) {
            faults.add(sentence);
        }
    }
}
