package bitterend.report;

import bitterend.measure.Length;
import bitterend.report.TextTable.Column;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
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
            "" + holding.movements()
        };
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
        List<String> lines = new ArrayList<>(List.of(reel.id(), reel.rope() + ", " + figures.length(reel.length())));
        lines.add("lot " + (reel.lot().isEmpty() ? "not known" : reel.lot()));
        if (!reel.papers().certificate().isEmpty()) {
            lines.add("certificate " + reel.papers().certificate() + " "
                    + reel.papers().number());
        }
        if (!reel.papers().useBy().equals(LocalDate.MAX)) {
            lines.add("use by " + reel.papers().useBy());
        }
        if (reel.custody().isCustomersOwn()) {
            lines.add(reel.custody().owner() + "'s own, order " + reel.custody().order());
        }
        StringBuilder label = new StringBuilder();
        lines.forEach(line -> label.append("  | ").append(clean(line)).append('\n'));
        return label.toString();
    }

    private static String note(Movement.Entry entry) {
        Movement.Origin origin = entry.origin();
        List<String> parts = new ArrayList<>();
        if (!origin.piece().isEmpty()) {
            parts.add("piece " + origin.piece());
        }
        if (origin.undoes() != 0) {
            parts.add("takes back no. " + origin.undoes());
        }
        if (!origin.parent().isEmpty()) {
            parts.add("off " + origin.parent());
        }
        if (!origin.plan().isEmpty()) {
            parts.add("plan "
                    + origin.plan().substring(0, Math.min(8, origin.plan().length())));
        }
        if (!entry.note().isEmpty()) {
            parts.add(entry.note());
        }
        return String.join("; ", parts);
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
