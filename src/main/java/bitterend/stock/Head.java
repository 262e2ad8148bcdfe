package bitterend.stock;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The end of a ledger's chain at one moment: short enough to be printed on a sheet and typed back. Whoever holds one can
 * tell whether the ledger still goes on from there, or was cut short, changed or put back to an older copy.
 *
 * @param ledger identity of the ledger, 32 hexadecimal figures
 * @param event number of its last event; 0 when it has none
 * @param hash the chain at that event
 */
public record Head(String ledger, long event, String hash) {
    private static final int NAME = 12;
    private static final int LINK = 16;
    private static final Pattern TEXT = Pattern.compile("([0-9a-f]{12})\\.([0-9]{1,18})\\.([0-9a-f]{16})");

    /** As printed: {@code 3f2a9b7c1d2e.41.9c1e7d0a5b6c7d8e}. */
    public String text() {
        return ledger.substring(0, NAME) + "." + event + "." + hash.substring(0, LINK);
    }

    /** Reads a printed head; identity and hash are as short as they were printed. */
    public static Optional<Head> parse(String text) {
        Matcher parts = TEXT.matcher(text.strip());
        return parts.matches()
                ? Optional.of(new Head(parts.group(1), Long.parseLong(parts.group(2)), parts.group(3)))
                : Optional.empty();
    }

    /** Whether a printed head is of the same ledger. */
    public boolean isOfLedger(Head printed) {
        return ledger.startsWith(printed.ledger());
    }

    /** What speaks against a ledger having gone on from a printed head; empty when nothing does. */
    public static List<String> faults(Head printed, Ledger.Stock stock) {
        Head now = stock.head();
        if (!now.isOfLedger(printed)) {
            return List.of("this is not the ledger of that head, it is " + now.text());
        }
        if (printed.event() > now.event()) {
            return List.of("the ledger ends with event " + now.event() + ", the head is of event " + printed.event()
                    + ": its end was cut off, or an older copy was put back");
        }
        boolean same = printed.event() == 0
                || stock.findEvent(printed.event()).stream()
                        .anyMatch(event -> event.hash().startsWith(printed.hash()));
        return same
                ? List.of()
                : List.of("event " + printed.event() + " is not the one that head was printed after: an older copy was"
                        + " put back and worked on, or the ledger was changed");
    }
}
