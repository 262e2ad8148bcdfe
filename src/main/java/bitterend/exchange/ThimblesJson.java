package bitterend.exchange;

import bitterend.catalogue.Fitting;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.TeardropFormula;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThroatAngle;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code thimbles.json}: linings for eyes, and the metal ends that swages and sockets put on a rope. */
final class ThimblesJson {
    static final String NAME = "thimbles.json";
    private static final String FORMAT = "bitterend/thimbles/1";
    private static final FineLength PLACEHOLDER = FineLength.ofMillimetres(1);
    /** A thimble's throat is rarely wider; the wider, the more rope lies in it. */
    private static final ThroatAngle USUAL_ANGLE = ThroatAngle.ofDegrees(60);

    private final Findings findings;

    ThimblesJson(Findings findings) {
        this.findings = findings;
    }

    /** The book with the thimbles and fittings of a file. */
    SpliceBook read(InputFile file, SpliceBook book) {
        Optional<JsonObject> document = JsonDocument.open(file, FORMAT, findings);
        return document.map(root -> withRows(root, book)).orElse(book);
    }

    private static SpliceBook withRows(JsonObject root, SpliceBook book) {
        root.allowOnly("format", "thimbles", "fittings", "note");
        Set<String> ids = new HashSet<>();
        List<Thimble> thimbles = new ArrayList<>();
        for (JsonObject row : root.objects("thimbles")) {
            thimble(row, ids).ifPresent(thimbles::add);
        }
        List<Fitting> fittings = new ArrayList<>();
        for (JsonObject row : root.objects("fittings")) {
            fitting(row, ids).ifPresent(fittings::add);
        }
        return book.withHardware(thimbles, fittings);
    }

    private static Optional<Thimble> thimble(JsonObject row, Set<String> ids) {
        row.allowOnly(
                "id",
                "name",
                "groove",
                "insideWidth",
                "insideLength",
                "throatToBearing",
                "crown",
                "throatAngle",
                "ropeFrom",
                "ropeTo",
                "note");
        Fields fields = row.fields();
        String id = id(fields, ids);
        String name = fields.optional("name", Readings::text, id);
        FineLength groove = groove(fields);
        FineLength bearing = fields.require("throatToBearing", ThimblesJson::positive, PLACEHOLDER);
        FineLength crown = fields.optional("crown", ThimblesJson::notNegative, FineLength.ZERO);
        int degrees = fields.optional("throatAngle", Readings.whole(0, 180), (int) (USUAL_ANGLE.millidegrees() / 1000));
        Diameter from = fields.require("ropeFrom", DiameterText::parse, Diameter.NONE);
        Diameter to = ropeTo(fields, from);
        return fields.sound()
                ? Optional.of(new Thimble(id, name, groove, bearing, crown, ThroatAngle.ofDegrees(degrees), from, to))
                : Optional.empty();
    }

    /** The groove as typed; never shorter than the inside of the ring, of which it runs on the outside. */
    private static FineLength groove(Fields fields) {
        FineLength groove = fields.require("groove", ThimblesJson::positive, PLACEHOLDER);
        FineLength width = fields.optional("insideWidth", ThimblesJson::positive, FineLength.ZERO);
        FineLength length = fields.optional("insideLength", ThimblesJson::positive, FineLength.ZERO);
        if (!width.isPositive() && !length.isPositive()) {
            return groove;
        }
        if (!TeardropFormula.isOne(width, length)) {
            fields.error("insideLength", "an inside width, and an inside length above it");
        } else if (groove.compareTo(TeardropFormula.perimeter(width, length)) < 0) {
            fields.warning(
                    "groove",
                    "at least " + LengthText.exact(TeardropFormula.perimeter(width, length))
                            + ", the inside of the ring by its width and length: measure it again");
        }
        return groove;
    }

    private static Optional<Fitting> fitting(JsonObject row, Set<String> ids) {
        row.allowOnly("id", "name", "pinToBore", "length", "growth", "ropeFrom", "ropeTo", "note");
        Fields fields = row.fields();
        String id = id(fields, ids);
        String name = fields.optional("name", Readings::text, id);
        FineLength depth = fields.require("pinToBore", ThimblesJson::positive, PLACEHOLDER);
        FineLength length = fields.optional("length", ThimblesJson::positive, depth);
        FineLength growth = fields.optional("growth", ThimblesJson::notNegative, FineLength.ZERO);
        Diameter from = fields.require("ropeFrom", DiameterText::parse, Diameter.NONE);
        Diameter to = ropeTo(fields, from);
        return fields.sound() ? Optional.of(new Fitting(id, name, depth, length, growth, from, to)) : Optional.empty();
    }

    private static String id(Fields fields, Set<String> ids) {
        String id = fields.require("id", EndText::partId, "?");
        if (!ids.add(id)) {
            fields.error("id", "an id that no other thimble or fitting has");
        }
        return id;
    }

    private static Diameter ropeTo(Fields fields, Diameter from) {
        Diameter to = fields.require("ropeTo", DiameterText::parse, from);
        if (to.compareTo(from) < 0) {
            fields.error("ropeTo", "a diameter not below ropeFrom");
        }
        return to;
    }

    private static Parsed<FineLength> positive(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isPositive() ? Parsed.of(length) : Parsed.refused("a length above 0"));
    }

    private static Parsed<FineLength> notNegative(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isNegative() ? Parsed.refused("a length from 0 up") : Parsed.of(length));
    }
}
