package bitterend.report;

import bitterend.day.FinishedPieces;
import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import bitterend.stock.Balance;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.Reel;
import bitterend.stock.Transfers.OnTheWay;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Stock as text: the rack, the movements of a reel, the way of a piece. */
public final class StockPage {
    private static final int ONE_LINE = 17;

    private final Figures figures;
    private final ZoneId zone;
    private final DateTimeFormatter day;
    /** The day, and below it the time. */
    private final DateTimeFormatter stacked;

    /** Pages with times of day in the given zone. */
    public StockPage(Figures figures, ZoneId zone) {
        this.figures = figures;
        this.zone = zone;
        day = DateTimeFormatter.ofPattern("yyyy-MM-dd").withZone(zone);
        stacked = DateTimeFormatter.ofPattern("yyyy-MM-dd\nHH:mm").withZone(zone);
    }

    /** Reels, one a line, and how many there are. */
    public Document rack(List<Holding> holdings) {
        Writing page = new Writing();
        rack(page, holdings);
        return page.document();
    }

    private void rack(Writing page, List<Holding> holdings) {
        page.table(table(
                holdings,
                this::cells,
                Column.words("reel"),
                Column.words("rope"),
                Column.words("lot"),
                Column.figure("length"),
                Column.words("known"),
                Column.words("place"),
                Column.words("to know")));
        page.paragraph(FindingsPage.count(holdings.size(), "reel") + ".");
    }

    private String[] cells(Holding holding) {
        Reel reel = holding.reel();
        return new String[] {
            clean(reel.id()),
            clean(reel.rope()),
            clean(reel.lot()),
            holding.gone() ? "-" : length(reel),
            holding.gone() ? "" : known(reel),
            clean(reel.where().place()),
            clean(toKnow(holding))
        };
    }

    /** How long it is, in lines where there is much to tell of it. */
    private String length(Reel reel) {
        Written length = reel.contents().written();
        String line = figures.written(length);
        return line.length() <= ONE_LINE ? line : stacked(length);
    }

    /** As it was written, and below that the same in the units of the page where they are others. */
    private String stacked(Written length) {
        return figures.written(length).replace(" (", "\n(");
    }

    /** What a plan or a person must heed: whether it may be cut and for whom, flaws, worn ends, papers, last day, note. */
    public String toKnow(Holding holding) {
        Reel reel = holding.reel();
        List<String> parts = new ArrayList<>();
        if (!state(holding).isEmpty()) {
            parts.add(state(holding));
        }
        parts.addAll(ReelLabel.held(reel, figures));
        parts.addAll(ReelLabel.flaws(reel, figures));
        addUnlessZero(parts, "lead trim ", reel.contents().leadTrim());
        addUnlessZero(parts, "inner wraps ", reel.contents().innerWraps());
        parts.addAll(ReelLabel.papers(reel));
        if (!reel.where().note().isEmpty()) {
            parts.add(reel.where().note());
        }
        return String.join("; ", parts);
    }

    private void addUnlessZero(List<String> parts, String what, Length length) {
        if (length.isPositive()) {
            parts.add(what + figures.length(length));
        }
    }

    /** Where the rope of a sound ledger went: both sides of the equation, and the head to compare with later. */
    public Document sound(Balance balance, Head head, List<OnTheWay> onTheWay) {
        TableRows table = new TableRows(Column.words("rope"), Column.figure("length"));
        for (Balance.Account account : Balance.Account.values()) {
            String sign = account.isSource() ? "" : "  ";
            table.row(sign + account.words(), figures.length(balance.of(account)));
        }
        Writing page = new Writing();
        page.paragraph("the ledger is sound: every sum agrees.");
        page.table(table);
        if (!onTheWay.isEmpty()) {
            page.table(OnTheWayPage.table(onTheWay, figures));
        }
        page.paragraph("head of the ledger: " + head.text());
        return page.document();
    }

    /** Movements, one a line, oldest first. */
    public Document movements(List<Movement> movements) {
        Writing page = new Writing();
        page.table(table(
                movements,
                this::cells,
                Column.figure("event"),
                Column.words("when, who"),
                Column.words("reel"),
                Column.words("what"),
                Column.figure("by, left"),
                Column.words("note")));
        return page.document();
    }

    private String[] cells(Movement movement) {
        Movement.Entry entry = movement.entry();
        return new String[] {
            movement.event() + "\nno. " + movement.number(),
            stacked.format(movement.at()) + " " + clean(movement.who()),
            clean(entry.reel()),
            entry.kind().word(),
            signed(movement.by()) + "\n"
                    + (entry.gone()
                            ? figures.length(Length.ZERO)
                            : stacked(entry.after().contents().written())),
            clean(note(entry))
        };
    }

    /** Events about a piece that move no rope, one a line. */
    public Document events(List<Event> events, String piece) {
        Writing page = new Writing();
        events.forEach(event -> page.paragraph(sentence(event, piece)));
        return page.document();
    }

    private String sentence(Event event, String piece) {
        String value = event.fact("piece " + piece);
        String sets = String.join(", ", event.named("set"));
        boolean timed = !event.fact(FinishedPieces.MINUTES).isEmpty();
        return EventWords.of(
                event,
                zone,
                (sets.isEmpty() ? "" : " " + sets)
                        + (value.isEmpty() ? "" : ", " + value)
                        + (timed ? ", in " + BenchWords.time(event.number(FinishedPieces.MINUTES)) : ""));
    }

    /** All that is known of a reel, by what it is called; what is not known is left out. */
    public List<Fact> facts(Holding holding) {
        Reel reel = holding.reel();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "length",
                holding.gone()
                        ? "nothing is left"
                        : figures.written(reel.contents().written()) + ", " + known(reel)));
        fact(facts, "lot", reel.lot());
        fact(facts, "place", reel.where().place());
        fact(facts, "to know", state(holding));
        fact(facts, "held", String.join("; ", ReelLabel.held(reel, figures)));
        fact(facts, "flaws", String.join("; ", ReelLabel.flaws(reel, figures)));
        fact(facts, "lead trim", unlessZero(reel.contents().leadTrim()));
        fact(facts, "inner wraps", unlessZero(reel.contents().innerWraps()));
        fact(facts, "papers", String.join("; ", ReelLabel.papers(reel)));
        LocalDate came = reel.papers().received();
        fact(facts, "received", came.equals(LocalDate.MIN) ? "" : came.toString());
        fact(facts, "drawn from", reel.where().draw() == Reel.Draw.INSIDE ? "inside" : "");
        fact(facts, "note", reel.where().note());
        return facts;
    }

    private static void fact(List<Fact> facts, String label, String value) {
        if (!value.isEmpty()) {
            facts.add(new Fact(label, clean(value)));
        }
    }

    private String unlessZero(Length length) {
        return length.isPositive() ? figures.length(length) : "";
    }

    /** The label of a coil that goes back to the rack. */
    public String label(Reel reel) {
        StringBuilder label = new StringBuilder();
        ReelLabel.withFlaws(reel, ", " + figures.written(reel.contents().written()), figures)
                .forEach(line -> label.append("  | ").append(clean(line)).append('\n'));
        return label.toString();
    }

    /** What a piece has of its reel: its rope, lot and papers, whatever is left of the reel now. */
    public Document cameOff(List<String> ancestry, Reel reel) {
        Writing page = new Writing();
        page.paragraph("off " + String.join(", which came off ", ancestry) + ":");
        ReelLabel.lines(reel, "").forEach(line -> page.paragraph(1, "| " + line));
        return page.document();
    }

    private String note(Movement.Entry entry) {
        Movement.Origin origin = entry.origin();
        Ordered ordered = entry.piece().ordered();
        List<String> parts = new ArrayList<>();
        if (!origin.piece().isEmpty()) {
            parts.add("piece " + origin.piece()
                    + (ordered.wish().customer().isEmpty()
                            ? ""
                            : " for " + ordered.wish().customer()));
        }
        if (!origin.was().isEmpty()) {
            parts.add("spare piece " + origin.was());
        }
        if (origin.undoes() != 0) {
            parts.add("takes back no. " + origin.undoes());
        }
        if (!origin.parent().isEmpty()) {
            parts.add("off " + origin.parent());
        }
        what(entry, parts);
        if (!origin.plan().isEmpty()) {
            parts.add("plan " + planNumber(origin.plan()));
        }
        if (!entry.note().isEmpty()) {
            parts.add(entry.note());
        }
        return String.join("; ", parts);
    }

    /** Whither, for whom, where on the reel. */
    private void what(Movement.Entry entry, List<String> parts) {
        Reel reel = entry.after();
        switch (entry.kind()) {
            case MOVED -> parts.add("to " + reel.where().place());
            case RESERVED -> {
                if (reel.custody().isReserved()) {
                    parts.add("for order " + reel.custody().order());
                }
            }
            case FLAW_FOUND -> parts.add("flaws now: "
                    + String.join(
                            ", ",
                            reel.flaws().stream()
                                    .map(flaw -> ReelLabel.stretch(flaw, figures))
                                    .toList()));
            default -> {}
        }
    }

    /** The number in front of the name of a plan; of one that had none the beginning of its digest. */
    private static String planNumber(String name) {
        int number = name.indexOf('-');
        return name.substring(0, number > 0 ? number : Math.min(8, name.length()));
    }

    private String known(Reel reel) {
        Length uncertainty = reel.contents().uncertainty();
        return reel.contents().known().word()
                + (uncertainty.isPositive() ? ", at worst " + figures.length(uncertainty) + " less" : "");
    }

    private static String state(Holding holding) {
        Reel.Custody custody = holding.reel().custody();
        if (holding.gone()) {
            return "gone";
        }
        String owner = custody.isCustomersOwn() ? custody.owner() + "'s, order " + custody.order() : "";
        return switch (custody.state()) {
            case ON_HOLD -> "on hold"
                    + (owner.isEmpty() ? "" : ", " + owner)
                    + (custody.isReserved() ? ", for order " + custody.order() : "");
            case RESERVED -> "for order " + custody.order();
            case FREE -> owner.isEmpty() ? (holding.reel().full() ? "full" : "") : owner;
        };
    }

    private String signed(Length by) {
        return (by.isPositive() ? "+" : "") + figures.length(by);
    }

    /** The pieces that came of a lot, with whom they are for, and the reels and coils of it that are on the rack. */
    public Document lot(List<Movement> pieces, List<Holding> rack) {
        TableRows table = new TableRows(
                Column.words("piece"),
                Column.words("customer"),
                Column.words("due"),
                Column.figure("length"),
                Column.words("reel"),
                Column.words("cut on"),
                Column.words("what"));
        for (Movement movement : pieces) {
            Movement.Entry entry = movement.entry();
            Ordered.Wish wish = entry.piece().ordered().wish();
            table.row(
                    clean(entry.origin().piece()),
                    clean(wish.customer()),
                    clean(wish.due()),
                    figures.length(entry.piece().length()),
                    clean(entry.reel()),
                    day.format(movement.at()),
                    entry.kind().word());
        }
        Writing page = new Writing();
        page.table(table);
        page.gap();
        page.paragraph("on the rack:");
        rack(page, rack);
        return page.document();
    }

    private static <T> TableRows table(List<T> rows, Function<T, String[]> cells, Column... columns) {
        TableRows table = new TableRows(columns);
        rows.forEach(row -> table.row(cells.apply(row)));
        return table;
    }

    private static String clean(String text) {
        return Wording.printable(text);
    }
}
