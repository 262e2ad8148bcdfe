package bitterend.work.quotes;

import bitterend.exchange.quotes.QuoteEventFiles;
import bitterend.finding.Findings;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteEvent.What;
import bitterend.quoting.life.QuoteName;
import bitterend.stock.Event;
import bitterend.stock.Event.Kind;
import bitterend.stock.Standing;
import bitterend.work.ShopAccess;
import bitterend.work.orders.AcceptedRows;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What happened to the quotes of a shop and still holds: what was written down beside them, then events of its ledger where it
 * keeps one.
 */
final class QuoteLog {
    private static final Map<What, Kind> KINDS = new EnumMap<>(
            Map.of(What.SENT, Kind.QUOTE_SENT, What.ACCEPTED, Kind.QUOTE_ACCEPTED, What.DECLINED, Kind.QUOTE_DECLINED));
    private static final String DAY = "day";

    private final ShopAccess at;
    private final QuoteEventFiles files;
    private final Findings findings;

    QuoteLog(ShopAccess at, Findings findings) {
        this.at = at;
        this.findings = findings;
        files = new QuoteEventFiles(at.folder());
    }

    /** All events that still hold, the oldest first. */
    List<QuoteEvent> events() {
        List<QuoteEvent> all = new ArrayList<>(files.events(findings));
        if (at.keepsLedger()) {
            for (Event event : at.reading(ledger -> ledger.read(stock -> Standing.events(stock.events())))) {
                KINDS.forEach((what, kind) -> {
                    if (event.act().kind() == kind) {
                        all.add(told(event, what));
                    }
                });
            }
        }
        return all;
    }

    private static QuoteEvent told(Event event, What what) {
        return new QuoteEvent(
                new QuoteEvent.Place(true, event.number()),
                event.at(),
                new Said(event.act().who(), event.act().note(), event.act().id()),
                what,
                QuoteName.find(event.fact(AcceptedRows.QUOTE))
                        .orElseThrow(() -> event.damaged(AcceptedRows.QUOTE, "quote and its revision")),
                day(event),
                event.fact(AcceptedRows.ORDER));
    }

    private static LocalDate day(Event event) {
        try {
            return LocalDate.parse(event.fact(DAY));
        } catch (DateTimeParseException nonsense) {
            throw event.damaged(DAY, "day");
        }
    }

    /** The act of the ledger that says so. */
    static Event.Act act(What what, QuoteName quote, LocalDate day, String note) {
        Kind kind = KINDS.get(what);
        if (kind == null) {
            throw new IllegalArgumentException("no event of the ledger for " + what);
        }
        return Event.Act.of(kind, "", note)
                .with(AcceptedRows.QUOTE, quote.toString())
                .with(DAY, day.toString());
    }

    /** The files of a shop without a ledger. */
    QuoteEventFiles files() {
        return files;
    }
}
