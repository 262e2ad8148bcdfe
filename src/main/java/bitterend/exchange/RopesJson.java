package bitterend.exchange;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Lay;
import bitterend.catalogue.MakeUp;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.catalogue.RopeKinds;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.ObjectTable;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.LinearMass;
import bitterend.measure.MassText;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.UnitPrice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads {@code ropes.json} or {@code ropes.csv}, the catalogue of ropes with price and value curve. */
final class RopesJson {
    static final String NAME = "ropes.json";
    static final String FORMAT = "bitterend/ropes/1";
    /** The same catalogue as a table, in place of the other. */
    static final String TABLE_NAME = "ropes.csv";

    static final ObjectTable TABLE = new ObjectTable(
            "ropes",
            new CsvColumns(
                    List.of("id", "construction", "fibre", "price", "usual reel"),
                    List.of(
                            "name",
                            "diameter",
                            "width",
                            "lay",
                            "lay length",
                            "core",
                            "grade",
                            "finish",
                            "colour",
                            "tracer",
                            "make up",
                            "mass",
                            "cut loss",
                            "cut to nearest",
                            "keep from",
                            "note")));
    private static final String AS_GOOD_AS_NEW = "asGoodAsNew";
    private static final Construction UNKNOWN_CONSTRUCTION = Construction.named("?");
    private static final Fibre UNKNOWN_FIBRE = Fibre.named("?");
    private static final Length SOME_REEL = Length.ofMetres(1);
    /** Where a shop sets no floor, the curve alone says what is scrap. */
    private static final Length NO_FLOOR = new Length(1);

    private final MoneyText money;
    private final Settings.Cutting usual;
    private final KindReadings kinds;
    private final Findings findings;

    /** For the ropes of a shop that knows these kinds of ropes. */
    RopesJson(Settings settings, RopeKinds kinds, Findings findings) {
        this(settings.money(), settings.cutting(), KindReadings.of(kinds), findings);
    }

    /** For ropes of a plan, which state everything in money of this shop; of their kinds the name is enough. */
    RopesJson(MoneyText money, Findings findings) {
        this(money, ShopJson.placeholder().cutting(), KindReadings.ofPlans(), findings);
    }

    private RopesJson(MoneyText money, Settings.Cutting usual, KindReadings kinds, Findings findings) {
        this.money = money;
        this.usual = usual;
        this.kinds = kinds;
        this.findings = findings;
    }

    /** The ropes of a list, each as it stands. */
    List<Rope> ropes(List<JsonObject> entries) {
        return entries.stream().map(this::rope).toList();
    }

    /** The ropes by id. */
    Ropes read(InputFile file) {
        Optional<Ropes> read = ObjectTable.isOne(file)
                ? TABLE.read(file, findings, this::ropes)
                : JsonDocument.read(file, FORMAT, findings, this::ropes);
        return read.map(ropes -> ropes.without(leftOut(file, findings).ids())).orElse(Ropes.UNREAD);
    }

    /** Rows that cannot be used; none that shares an id with one is among the ropes. */
    static LeftOutRows leftOut(InputFile file, Findings ofFile) {
        return LeftOutRows.of(file, FORMAT, List.of("ropes"), TABLE, ofFile);
    }

    private Ropes ropes(JsonObject document) {
        List<Rope> sound = new ArrayList<>();
        List<Fields> rows = new ArrayList<>();
        Map<String, String> stated = new TreeMap<>();
        LookAlike met = new LookAlike();
        for (JsonObject entry : document.objects("ropes")) {
            Rope rope = rope(entry);
            entry.fields().once("id", rope.id(), stated);
            entry.fields().unlike("id", rope.id(), met);
            if (entry.fields().sound()) {
                sound.add(rope);
                rows.add(entry.fields());
            }
        }
        Unlikely.tell(sound, rows);
        if (stated.isEmpty() && document.fields().sound()) {
            document.fields().error("ropes", "a list of at least one rope");
        }
        tellWhatWent(document.objects("ropes"));
        sound.sort(Comparator.comparing(Rope::id, NaturalOrder.IDS));
        return new Ropes(
                sound, stated.keySet(), !stated.isEmpty(), document.fields().file());
    }

    /** One warning for what coils were valued by once. */
    private static void tellWhatWent(List<JsonObject> ropes) {
        List<Fields> there = ropes.stream()
                .map(JsonObject::fields)
                .filter(rope -> rope.text(AS_GOOD_AS_NEW).isPresent())
                .toList();
        if (!there.isEmpty()) {
            String others = there.size() == 1 ? "" : ", here and on " + (there.size() - 1) + " more";
            there.get(0).warning(AS_GOOD_AS_NEW, Readings.GONE + others);
        }
    }

    private Rope rope(JsonObject entry) {
        entry.mayHave("note");
        Fields fields = entry.fields();
        RopeIdentity identity = identity(fields);
        Length usualReel = fields.require("usualReel", Readings::presentLength, SOME_REEL);
        String id = fields.require("id", Readings::id, "?");
        return new Rope(
                id,
                fields.optional("name", Readings::text, id),
                identity,
                fields.optional("mass", MassText::parseByLength, new LinearMass(0)),
                fields.require("price", text -> ShopJson.moneyFor(text, money).parseByLength(text), new UnitPrice(0)),
                cutting(fields, identity),
                worth(fields),
                usualReel,
                fields.optional("layLength", RopesJson::layLength, FineLength.ZERO));
    }

    private static Parsed<FineLength> layLength(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isPositive() ? Parsed.of(length) : Parsed.refused("a lay length above 0"));
    }

    private RopeIdentity identity(Fields fields) {
        Construction construction = fields.require("construction", kinds::construction, UNKNOWN_CONSTRUCTION);
        Reading<Lay> lay = Readings.word(Lay.values(), Lay::word);
        MakeUp makeUp = fields.optional("makeUp", kinds::makeUp, MakeUp.NONE);
        RopeIdentity identity = new RopeIdentity(
                construction,
                fields.require("fibre", kinds::fibre, UNKNOWN_FIBRE),
                fields.optional("core", Readings::text, makeUp.core()),
                fields.optional("grade", Readings::text, ""),
                diameter(fields, construction),
                construction.form().laid()
                        ? fields.require("lay", lay, Lay.NONE)
                        : fields.optional("lay", lay, Lay.NONE),
                fields.optional("finish", Readings::text, ""),
                fields.optional("colour", Readings::text, ""),
                fields.optional("tracer", Readings::text, ""),
                makeUp);
        if (kinds.haveRows()) {
            checkWire(fields, identity);
        }
        return identity;
    }

    /** Of a band its width takes the place of the diameter, and either may be typed. */
    private static Diameter diameter(Fields fields, Construction construction) {
        boolean wide = construction.form().flat() && fields.text("width").isPresent();
        return fields.require(wide ? "width" : "diameter", DiameterText::parse, Diameter.ofMillimetres(1));
    }

    private static void checkWire(Fields fields, RopeIdentity identity) {
        boolean wire = identity.construction().form().wire();
        boolean known = !identity.construction().equals(UNKNOWN_CONSTRUCTION)
                && !identity.fibre().equals(UNKNOWN_FIBRE);
        if (known && wire != identity.fibre().nature().metal()) {
            fields.error("fibre", "steel for wire, and for wire only");
        }
        MakeUp makeUp = identity.makeUp();
        if (!wire && !makeUp.equals(MakeUp.NONE)) {
            fields.error("makeUp", "a make-up of wire, and for wire only");
        }
    }

    private Rope.Cutting cutting(Fields fields, RopeIdentity identity) {
        boolean wire = identity.construction().form().wire();
        boolean whipped = !identity.fibre().nature().hotCut();
        Length loss = wire ? usual.wire() : whipped ? usual.whipped() : usual.fibre();
        return new Rope.Cutting(
                fields.optional("cutLoss", Readings::allowance, loss),
                fields.optional("cutToNearest", Readings::step, wire ? usual.wireToNearest() : usual.fibreToNearest()));
    }

    private static Rope.Worth worth(Fields fields) {
        Length keepFrom = fields.optional("keepFrom", Readings::wantedLength, NO_FLOOR);
        Length asGoodAsNew = fields.optional(AS_GOOD_AS_NEW, Readings::wantedLength, keepFrom);
        return new Rope.Worth(keepFrom, Length.max(keepFrom, asGoodAsNew));
    }
}
