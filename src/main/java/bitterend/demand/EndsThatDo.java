package bitterend.demand;

import bitterend.catalogue.Danger;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import java.util.List;
import java.util.stream.Stream;

/**
 * The ends of the shop's book that a rope could have in place of one that it cannot: made on its construction and fibre, known
 * for its diameter, dangerous neither on it nor in this use.
 *
 * @param splices the book
 * @param rope the rope
 * @param terms what the assembly is for
 */
record EndsThatDo(SpliceBook splices, Rope rope, Assembly.Terms terms) {
    /** What would do, or that nothing in the book does. */
    String words(Termination asked) {
        List<String> ids = ids(asked);
        return ids.isEmpty()
                ? "no " + asked.kind().word() + " of splices.json does on " + rope.id()
                : "on " + rope.id() + " does: " + String.join(", ", ids);
    }

    /** The ids of the ends of like kind; for an eye that no splice makes, loops. */
    List<String> ids(Termination asked) {
        boolean eyed = asked.kind() == Kind.EYE || asked.kind() == Kind.LOOP;
        if (!eyed) {
            return ids(asked, asked.kind());
        }
        List<String> eyes = ids(asked, Kind.EYE);
        return eyes.isEmpty() ? ids(asked, Kind.LOOP) : eyes;
    }

    private List<String> ids(Termination asked, Kind kind) {
        return splices.terminations().stream()
                .filter(row -> row.kind() == kind && !row.id().equals(asked.id()) && does(row))
                .map(Termination::id)
                .toList();
    }

    private boolean does(Termination row) {
        return row.suits().admits(rope)
                && Stream.of(What.values())
                        .allMatch(what -> row.on(rope).allowance(what).covers(rope.diameter()))
                && row.work().dangers().stream().noneMatch(this::holds)
                && (!terms.use().isLifting() || row.work().notForLifting().isEmpty());
    }

    private boolean holds(Danger danger) {
        return danger.holds(rope, terms.ownRope(), terms.use() == Assembly.Use.TURNING);
    }

    /** Why an end is dangerous on this rope, for a refusal that may have another reason first; none where it is not. */
    List<String> dangers(Termination asked) {
        return asked.work().dangers().stream()
                .filter(this::holds)
                .map(Danger::words)
                .toList();
    }
}
