package bitterend.exchange;

import bitterend.catalogue.Fitting;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Hardware;
import bitterend.catalogue.Hardware.Kind;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.TeardropFormula;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThimbleSheet;
import bitterend.catalogue.ThroatAngle;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.ObjectTable;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Parsed;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads {@code thimbles.json}, and {@code thimbles.csv}, {@code metal-ends.csv} and {@code hardware.csv}: linings for eyes, the metal ends that swages and sockets put on a rope, and the hardware that hangs on either. */
final class ThimblesJson {
    static final String NAME = "thimbles.json";
    private static final String FORMAT = "bitterend/thimbles/1";
    /** The same as tables, one for each list. */
    static final String THIMBLES_TABLE = "thimbles.csv";

    static final String FITTINGS_TABLE = "metal-ends.csv";
    static final String HARDWARE_TABLE = "hardware.csv";
    /** Every file that thimbles, fittings and hardware may be in. */
    static final List<String> NAMES = List.of(NAME, THIMBLES_TABLE, FITTINGS_TABLE, HARDWARE_TABLE);

    private static final List<String> LISTS = List.of("thimbles", "fittings", "hardware");
    private static final ObjectTable THIMBLES = new ObjectTable(
            "thimbles",
            new CsvColumns(
                    List.of("id", "rope from", "rope to"),
                    List.of(
                            "name",
                            "groove",
                            "throat to bearing",
                            "overall width",
                            "overall length",
                            "inside width",
                            "inside length",
                            "crown",
                            "throat angle",
                            "source",
                            "grade",
                            "verified",
                            "note")));
    private static final ObjectTable FITTINGS = new ObjectTable(
            "fittings",
            new CsvColumns(
                    List.of("id", "pin to bore", "rope from", "rope to"), List.of("name", "length", "growth", "note")));
    private static final ObjectTable HARDWARE = new ObjectTable(
            "hardware",
            new CsvColumns(
                    List.of("id", "kind"), List.of("name", "inside", "closed", "open", "tolerance", "mass", "note")));
    private static final String BUILT_IN = "/bitterend/thimbles.json";
    private static final Provenance SHEET = new Provenance("a dealer's sheet", Grade.SECONDARY, false);
    private static final FineLength PLACEHOLDER = FineLength.ofMillimetres(1);
    /** A thimble's throat is rarely wider; the wider, the more rope lies in it. */
    private static final ThroatAngle USUAL_ANGLE = ThroatAngle.ofDegrees(60);

    private final Findings findings;
    private final Set<String> ids;

    ThimblesJson(Findings findings) {
        this(findings, new HashSet<>());
    }

    /** With the ids that other files of the shop state, to which those of this one come. */
    ThimblesJson(Findings findings, Set<String> ids) {
        this.findings = findings;
        this.ids = ids;
    }

    /** The book with the thimbles that a shop starts with, by rope size; each is unverified until the shop types its own. */
    static SpliceBook builtIn(SpliceBook book) {
        Findings findings = new Findings();
        SpliceBook started = new ThimblesJson(findings).read(new InputFile(NAME, BuiltIn.text(BUILT_IN), ""), book);
        if (findings.size() > 0) {
            throw new IllegalStateException("built-in " + findings.sorted().get(0));
        }
        return started;
    }

    /** The book with the thimbles and fittings of a file in front of those it has; the same id takes the place of one. */
    SpliceBook read(InputFile file, SpliceBook book) {
        Optional<Rows> read = ObjectTable.isOne(file)
                ? table(file).read(file, findings, this::rows)
                : JsonDocument.read(file, FORMAT, findings, this::rows);
        return read.map(rows -> rows.on(book, leftOut(file, findings).ids())).orElse(book);
    }

    /** Rows that cannot be used, and those that share an id with one, are not in the book. */
    static LeftOutRows leftOut(InputFile file, Findings ofFile) {
        return LeftOutRows.of(file, FORMAT, LISTS, table(file), ofFile);
    }

    private static ObjectTable table(InputFile file) {
        return switch (file.name().replaceFirst("\\.xlsx$", ".csv")) {
            case FITTINGS_TABLE -> FITTINGS;
            case HARDWARE_TABLE -> HARDWARE;
            default -> THIMBLES;
        };
    }

    private Rows rows(JsonObject root) {
        root.mayHave("note");
        Set<String> before = Set.copyOf(ids);
        List<Thimble> thimbles = new ArrayList<>();
        for (JsonObject row : root.objects("thimbles")) {
            thimble(row, ids).ifPresent(thimbles::add);
        }
        List<Fitting> fittings = new ArrayList<>();
        for (JsonObject row : root.objects("fittings")) {
            fitting(row, ids).ifPresent(fittings::add);
        }
        List<Hardware> hung = new ArrayList<>();
        for (JsonObject row : root.objects("hardware")) {
            hardware(row, ids).ifPresent(hung::add);
        }
        Set<String> own = new HashSet<>(ids);
        own.removeAll(before);
        return new Rows(thimbles, fittings, hung, own);
    }

    /** The rows of a file, and every id that it states, of rows too that cannot be used. */
    private record Rows(List<Thimble> thimbles, List<Fitting> fittings, List<Hardware> hung, Set<String> ids) {
        /** The book with the rows that are not broken before its own. */
        SpliceBook on(SpliceBook book, Set<String> broken) {
            thimbles.removeIf(row -> broken.contains(row.id()));
            fittings.removeIf(row -> broken.contains(row.id()));
            hung.removeIf(row -> broken.contains(row.id()));
            book.thimbles().stream()
                    .filter(thimble -> !ids.contains(thimble.id()))
                    .forEach(thimbles::add);
            book.fittings().stream()
                    .filter(fitting -> !ids.contains(fitting.id()))
                    .forEach(fittings::add);
            book.hardware().stream()
                    .filter(hardware -> !ids.contains(hardware.id()))
                    .forEach(hung::add);
            return book.withHardware(thimbles, fittings).hanging(hung);
        }
    }

    private static Optional<Thimble> thimble(JsonObject row, Set<String> ids) {
        row.mayHave("name", "note");
        Fields fields = row.fields();
        String id = id(fields, ids);
        Optional<ThimbleSheet> sheet = row.has("overallWidth") ? sheet(fields) : Optional.empty();
        boolean measured = sheet.isEmpty();
        FineLength groove = measured ? groove(fields) : sheet.get().groove();
        FineLength bearing = measured
                ? fields.require("throatToBearing", ThimblesJson::positive, PLACEHOLDER)
                : sheet.get().insideLength();
        FineLength crown = fields.optional(
                "crown",
                ThimblesJson::notNegative,
                measured ? FineLength.ZERO : sheet.get().crown());
        int degrees = fields.optional("throatAngle", Readings.whole(0, 180), (int) (USUAL_ANGLE.millidegrees() / 1000));
        Diameter from = fields.require("ropeFrom", DiameterText::parse, Diameter.NONE);
        Diameter to = ropeTo(fields, from);
        return fields.sound()
                ? Optional.of(new Thimble(
                        id,
                        groove,
                        bearing,
                        crown,
                        ThroatAngle.ofDegrees(degrees),
                        from,
                        to,
                        BookRow.provenance(fields, measured ? ofTheShop(fields) : SHEET)))
                : Optional.empty();
    }

    private static Provenance ofTheShop(Fields fields) {
        return new Provenance("the shop's " + fields.file(), Grade.SHOP, true);
    }

    /** The sizes of a dealer's sheet, from which groove and bearing are estimated; nothing, with an error, when they cannot be. */
    private static Optional<ThimbleSheet> sheet(Fields fields) {
        FineLength width = fields.require("overallWidth", ThimblesJson::positive, PLACEHOLDER);
        FineLength length = fields.require("overallLength", ThimblesJson::positive, PLACEHOLDER);
        FineLength insideWidth = fields.require("insideWidth", ThimblesJson::positive, PLACEHOLDER);
        FineLength insideLength = fields.optional(
                "insideLength", ThimblesJson::positive, ThimbleSheet.insideLength(width, length, insideWidth));
        if (!ThimbleSheet.isSound(width, length, insideWidth, insideLength)) {
            fields.error("overallWidth", "an overall width and length above the inside ones, each longer than wide");
            return Optional.empty();
        }
        return Optional.of(new ThimbleSheet(width, length, insideWidth, insideLength));
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
        row.mayHave("name", "note");
        Fields fields = row.fields();
        String id = id(fields, ids);
        FineLength depth = fields.require("pinToBore", ThimblesJson::positive, PLACEHOLDER);
        FineLength length = fields.optional("length", ThimblesJson::positive, depth);
        FineLength growth = fields.optional("growth", ThimblesJson::notNegative, FineLength.ZERO);
        Diameter from = fields.require("ropeFrom", DiameterText::parse, Diameter.NONE);
        Diameter to = ropeTo(fields, from);
        return fields.sound() ? Optional.of(new Fitting(id, depth, length, growth, from, to)) : Optional.empty();
    }

    /** Of one inside length, or a turnbuckle's closed and open. */
    private static Optional<Hardware> hardware(JsonObject row, Set<String> ids) {
        row.mayHave("name", "note");
        Fields fields = row.fields();
        String id = id(fields, ids);
        Kind kind = fields.require("kind", HardwareText.KIND, Kind.SHACKLE);
        boolean turnbuckle = kind == Kind.TURNBUCKLE;
        FineLength inside = fields.require(turnbuckle ? "closed" : "inside", HardwareText::inside, PLACEHOLDER);
        FineLength opened = turnbuckle ? fields.require("open", HardwareText::inside, inside) : inside;
        if (turnbuckle && opened.compareTo(inside) <= 0 && fields.sound()) {
            fields.error("open", "a length above closed");
        }
        FineLength tolerance = fields.optional("tolerance", HardwareText::notNegative, FineLength.ZERO);
        Mass mass = fields.optional("mass", MassText::parse, Mass.ZERO);
        return fields.sound() ? Optional.of(new Hardware(id, kind, inside, opened, tolerance, mass)) : Optional.empty();
    }

    private static String id(Fields fields, Set<String> ids) {
        String id = fields.require("id", EndText::partId, "?");
        if (!ids.add(id)) {
            fields.error("id", "an id that no other thimble, fitting or hardware has");
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
