package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.Readings;
import bitterend.measure.Parsed;

/** The column {@code rope} of files about reels. */
final class RopeColumn {
    private RopeColumn() {}

    /** The id of a rope of the catalogue. */
    static String read(Fields row, Ropes ropes) {
        return row.require(
                "rope",
                text -> Readings.id(text)
                        .then(id -> ropes.mayKnow(id) ? Parsed.of(id) : Parsed.refused("a rope of " + ropes.file())),
                "?");
    }
}
