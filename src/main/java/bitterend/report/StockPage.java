package bitterend.report;

import bitterend.measure.Length;
import bitterend.report.TextTable.Column;
import bitterend.stock.Balance;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Stock as text: the rack, the movements of a reel, the way of a piece. */
public final class StockPage {
    private static final int WIDTH = 100;

    private final Figures figures;
    private final DateTimeFormatter moment;

    /** Pages with times of day in the given zone. */
    public StockPage(Figures figures, ZoneId zone) {
        this.figures = figures;
        moment = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(zone);
    }

    /** Reels, one a line, and how many there are. */
    public String rack(List<Holding> holdings) {
        return table(
                        holdings,
                        this::cells,
                        Column.words("reel"),
                        Column.words("rope"),
                        Column.words("lot"),
                        Column.figure("length"),
                        Column.words("known"),
                        Column.words("place"),
                        Column.words("state"),
                        Column.words("to know"),
                        Column.figure("movements"))
                + FindingsPage.count(holdings.size(), "reel") + ".\n";
    }

    private String[] cells(Holding holding) {
        Reel reel = holding.reel();
        return new String[] {
            clean(reel.id()),
            clean(reel.rope()),
            clean(reel.lot()),
            holding.gone() ? "-" : figures.length(reel.length()),
            known(reel),
            clean(reel.where().place()),
            clean(state(holding)),
            clean(toKnow(reel)),
            "" + holding.movements()
        };
    }

    /** What a plan or a person must heed: flaws, worn ends, papers, last day, note. */
    private String toKnow(Reel reel) {
        List<String> parts = new ArrayList<>();
        reel.flaws()
                .forEach(flaw -> parts.add("flaw " + figures.length(flaw.from()) + " to " + figures.length(flaw.to())
                        + (flaw.what().isEmpty() ? "" : " (" + flaw.what() + ")")));
        addUnlessZero(parts, "lead trim ", reel.contents().leadTrim());
        addUnlessZero(parts, "inner wraps ", reel.contents().innerWraps());
        parts.addAll(paperWords(reel));
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

    private static List<String> paperWords(Reel reel) {
        List<String> parts = new ArrayList<>();
        Reel.Papers papers = reel.papers();
        if (!papers.certificate().isEmpty()) {
            parts.add(("certificate " + papers.certificate() + " " + papers.number()).strip());
        }
        if (!papers.useBy().equals(LocalDate.MAX)) {
            parts.add("use by " + papers.useBy());
        }
        return parts;
    }

    /** Where the rope went: both sides of the equation. */
    public String balance(Balance balance) {
        TextTable table = new TextTable(Column.words("rope"), Column.figure("length"));
        for (Balance.Account account : Balance.Account.values()) {
            String sign = account.isSource() ? "" : "  ";
            table.row(sign + account.words(), figures.length(balance.of(account)));
        }
        StringBuilder text = new StringBuilder();
        table.lines(WIDTH).forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    /** Movements, one a line, oldest first. */
    public String movements(List<Movement> movements) {
        return table(
                movements,
                this::cells,
                Column.figure("no."),
                Column.figure("event"),
                Column.words("when"),
                Column.words("who"),
                Column.words("reel"),
                Column.words("what"),
                Column.figure("by"),
                Column.figure("left"),
                Column.words("note"));
    }

    private String[] cells(Movement movement) {
        Movement.Entry entry = movement.entry();
        return new String[] {
            "" + movement.number(),
            "" + movement.event(),
            moment.format(movement.at()),
            clean(movement.who()),
            clean(entry.reel()),
            entry.kind().word(),
            signed(movement.by()),
            figures.length(entry.left()),
            clean(note(entry))
        };
    }

    /** Events about a piece that move no rope, one a line. */
    public String events(List<Event> events, String piece) {
        StringBuilder text = new StringBuilder();
        for (Event event : events) {
            String value = event.fact("piece " + piece);
            text.append("event ")
                    .append(event.number())
                    .append(", ")
                    .append(moment.format(event.at()))
                    .append(", ")
                    .append(clean(event.act().who()))
                    .append(": ")
                    .append(event.act().kind().word())
                    .append(event.named("set").isEmpty() ? "" : " " + clean(String.join(", ", event.named("set"))))
                    .append(value.isEmpty() ? "" : ", " + clean(value))
                    .append(
                            event.act().note().isEmpty()
                                    ? ""
                                    : "; " + clean(event.act().note()))
                    .append('\n');
        }
        return text.toString();
    }

    /** The label of a coil that goes back to the rack. */
    public String label(Reel reel) {
        return label(reel, ", " + figures.length(reel.length()));
    }

    /** What a piece has of its reel: its rope, lot and papers, whatever is left of the reel now. */
    public String papers(Reel reel) {
        return label(reel, "");
    }

    private static String label(Reel reel, String length) {
        List<String> lines = new ArrayList<>(List.of(reel.id(), reel.rope() + length));
        lines.add("lot " + (reel.lot().isEmpty() ? "not known" : reel.lot()));
        lines.addAll(paperWords(reel));
        if (reel.custody().isCustomersOwn()) {
            lines.add(reel.custody().owner() + "'s own, order " + reel.custody().order());
        }
        StringBuilder label = new StringBuilder();
        lines.forEach(line -> label.append("  | ").append(clean(line)).append('\n'));
        return label.toString();
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
            case RESERVED -> parts.add("for order " + reel.custody().order());
            case FLAW_FOUND -> parts.add("flaws now: "
                    + String.join(
                            ", ",
                            reel.flaws().stream()
                                    .map(flaw -> figures.length(flaw.from()) + " to " + figures.length(flaw.to()))
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
        return reel.contents().known().word() + (uncertainty.isPositive() ? " -" + figures.length(uncertainty) : "");
    }

    private static String state(Holding holding) {
        Reel.Custody custody = holding.reel().custody();
        if (holding.gone()) {
            return "gone";
        }
        String owner = custody.isCustomersOwn() ? custody.owner() + "'s, order " + custody.order() : "";
        return switch (custody.state()) {
            case ON_HOLD -> "on hold" + (owner.isEmpty() ? "" : ", " + owner);
            case RESERVED -> "for order " + custody.order();
            case FREE -> owner.isEmpty() ? (holding.reel().full() ? "full" : "") : owner;
        };
    }

    private String signed(Length by) {
        return (by.isPositive() ? "+" : "") + figures.length(by);
    }

    /** The pieces that came of a lot, with whom they are for, and the reels and coils of it that are on the rack. */
    public String lot(List<Movement> pieces, List<Holding> rack) {
        TextTable table = new TextTable(
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
                    moment.format(movement.at()),
                    entry.kind().word());
        }
        StringBuilder text = new StringBuilder();
        table.lines(WIDTH).forEach(line -> text.append(line).append('\n'));
        return text.append('\n').append("on the rack:\n").append(rack(rack)).toString();
    }

    private static <T> String table(List<T> rows, Function<T, String[]> cells, Column... columns) {
        TextTable table = new TextTable(columns);
        rows.forEach(row -> table.row(cells.apply(row)));
        StringBuilder text = new StringBuilder();
        table.lines(WIDTH).forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    private static String clean(String text) {
        return Wording.printable(text);
    }
}
