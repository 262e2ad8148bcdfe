package bitterend.exchange;

import bitterend.demand.PieceId;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Parsed;
import bitterend.packing.Pin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Reads {@code pins.csv}: draws that must stay. */
final class PinsCsv {
    static final String NAME = "pins.csv";
    static final CsvColumns COLUMNS = new CsvColumns(List.of("piece", "reel"), List.of("note"));

    private final Predicate<String> pieces;
    private final Predicate<String> reels;
    private final Findings findings;

    /** {@code pieces} and {@code reels} tell whether a pin may speak of an id. */
    PinsCsv(Predicate<String> pieces, Predicate<String> reels, Findings findings) {
        this.pieces = pieces;
        this.reels = reels;
        this.findings = findings;
    }

    /** The pins by piece. */
    List<Pin> read(InputFile file) {
        List<Pin> pins = new ArrayList<>();
        Map<String, String> pinned = new HashMap<>();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            Pin pin = new Pin(
                    row.require("piece", PinsCsv::pieceId, "?" + row.place()), row.require("reel", Readings::id, "?"));
            row.once("piece", pin.piece(), pinned);
            if (row.sound() && !pieces.test(pin.piece())) {
                row.error("piece", "a piece of " + OrdersCsv.NAME);
            }
            if (row.sound() && !reels.test(pin.reel())) {
                row.error("reel", "a reel of " + ReelsCsv.NAME);
            }
            if (row.sound()) {
                pins.add(pin);
            }
        }
        pins.sort(Comparator.comparing(Pin::piece, NaturalOrder.IDS));
        return pins;
    }

    private static Parsed<String> pieceId(String text) {
        return PieceId.isText(text)
                ? Parsed.of(text)
                : Parsed.refused("a piece such as G-1042/2.1: order, line, number within the line,"
                        + " and -leg or -part where there are several");
    }
}
