package bitterend.report;

import bitterend.measure.Moments;
import bitterend.stock.Event;
import java.time.ZoneId;

/** An event of the ledger in a line of its own. */
final class EventWords {
    private EventWords() {}

    /** Its number, when it was, who did what, and at the end the note; between them what else is to be said of it. */
    static String of(Event event, ZoneId zone, String more) {
        String note = event.act().note();
        return "event " + event.number() + ", " + Moments.text(event.at(), zone) + ", "
                + event.act().who() + ": " + event.act().kind().word() + more + (note.isEmpty() ? "" : "; " + note);
    }
}
