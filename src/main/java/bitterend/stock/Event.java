package bitterend.stock;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * What one command booked: a fact about the shop with the movements of reels that it made, taken back together. Events are
 * added and never changed.
 *
 * @param number its number in the ledger, from 1 on
 * @param at when it was written
 * @param act what was done
 * @param movements the movements of reels it made, in order; none for a mere fact
 * @param hash its link of the chain, see {@link Chain}
 */
public record Event(long number, Instant at, Act act, List<Movement> movements, String hash) {
    /** A fact of every event that was made from a ledger of an older version. */
    public static final String OLDER = "older ledger";

    /** A fact of an event that was booked under an id of the caller's: what was asked for, in the caller's words. */
    public static final String ASKED = "asked";

    /** A fact of a reel that came, before the number of the order of reels that it is of; its value is the reel, or several. */
    public static final String ON_ORDER = "on order";

    /** A fact of a restored ledger: the head of the backup. */
    public static final String FROM = "from";

    /** A fact of a restored ledger: the head of the ledger whose place it took. */
    public static final String REPLACED = "replaced";

    /** A fact of a restored ledger: the name of the file that the ledger before it is kept as. */
    public static final String ASIDE = "aside";

    public Event {
        movements = List.copyOf(movements);
    }

    /** What was done. */
    public enum Kind {
        OPENED("ledger begun"),
        RECEIVED("received"),
        POSTED("posted"),
        CUT("cut"),
        SPOILED("spoiled"),
        COUNTED("counted"),
        GAUGED("gauged"),
        MOVED("moved"),
        REWOUND("rewound"),
        SPLIT("split"),
        HELD("on hold"),
        RELEASED("released"),
        RESERVED("reserved"),
        FLAW_FOUND("flaw found"),
        CORRECTED("corrected"),
        RETURNED("returned"),
        SOLD("sold"),
        SENT("sent to another loft"),
        CONDEMNED("condemned"),
        MADE_SPARE("made spare"),
        GIVEN("given to another line"),
        BACK_ON_RACK("back on the rack"),
        IN_FORCE("plan in force"),
        ISSUED("plan issued"),
        WITHDRAWN("sheets called back"),
        SET_RELEASED("set released"),
        SPLICED("spliced"),
        PASSED("passed"),
        DELIVERED("delivered"),
        ORDER_CHANGED("order changed"),
        QUOTE_SENT("quote sent"),
        QUOTE_ACCEPTED("quote accepted"),
        QUOTE_DECLINED("quote declined"),
        RESTORED("ledger restored"),
        UNDONE("undone");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in lists. */
        public String word() {
            return word;
        }
    }

    /**
     * What was done, by whom.
     *
     * @param id chosen by the caller, unique in the ledger: the same id sent twice counts once
     * @param who name of the person
     * @param kind what was done
     * @param note why, in words; may be empty
     * @param undoes number of the event it takes back whole; 0 when none
     * @param facts small facts by name, such as {@code plan} or {@code piece 1001/1.1}
     */
    public record Act(String id, String who, Kind kind, String note, long undoes, SortedMap<String, String> facts) {
        public Act {
            if (id.isBlank() || undoes < 0) {
                throw new IllegalArgumentException("event '" + id + "' undoes " + undoes);
            }
            facts = Collections.unmodifiableSortedMap(new TreeMap<>(facts));
        }

        /** An act under an id that no other has. */
        public static Act of(Kind kind, String who, String note) {
            return new Act(UUID.randomUUID().toString(), who, kind, note, 0, new TreeMap<>());
        }

        /** The same act, done by somebody. */
        public Act by(String name) {
            return new Act(id, name, kind, note, undoes, facts);
        }

        /** The same act under an id of the caller's. */
        public Act withId(String other) {
            return new Act(other, who, kind, note, undoes, facts);
        }

        /** The same act with one more fact. */
        public Act with(String fact, String value) {
            return withAll(Map.of(fact, value));
        }

        /** The same act with more facts. */
        public Act withAll(Map<String, String> more) {
            SortedMap<String, String> all = new TreeMap<>(facts);
            all.putAll(more);
            return new Act(id, who, kind, note, undoes, all);
        }

        /** The same act, taking back an event. */
        public Act undoing(long event) {
            return new Act(id, who, kind, note, event, facts);
        }
    }

    /** A fact of it; empty when it has none of that name. */
    public String fact(String name) {
        return act.facts().getOrDefault(name, "");
    }

    /**
     * A fact of it that is a number.
     *
     * @throws LedgerException.Unreadable when it is none
     */
    public long number(String fact) {
        try {
            return Long.parseLong(fact(fact));
        } catch (NumberFormatException nonsense) {
            throw damaged(fact, "number");
        }
    }

    /** That a fact of it is not what it must be. */
    public LedgerException.Unreadable damaged(String fact, String expected) {
        return new LedgerException.Unreadable(
                "the ledger is damaged: event " + number + " (" + act.kind().word()
                        + ") says of \"" + fact + "\" \"" + fact(fact) + "\", which is no " + expected
                        + "; use a backup; how: bitterend stock restore --help");
    }

    /** Whether it was made from movements of a ledger of an older version. */
    public boolean isOfAnOlderLedger() {
        return act.facts().containsKey(OLDER);
    }

    /** The names behind a word among its facts: of {@code piece 1001/1.1} the rest behind {@code piece}. */
    public List<String> named(String word) {
        String start = word + " ";
        return act.facts().keySet().stream()
                .filter(name -> name.startsWith(start))
                .map(name -> name.substring(start.length()))
                .toList();
    }
}
