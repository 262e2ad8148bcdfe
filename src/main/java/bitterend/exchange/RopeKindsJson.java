package bitterend.exchange;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Grade;
import bitterend.catalogue.MakeUp;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.RopeKinds;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Reads {@code constructions.json}: how ropes are built and of what. The built-in file holds what is known; a shop's file of
 * the same form adds rows and changes those of the same name, member by member.
 */
public final class RopeKindsJson {
    static final String NAME = "constructions.json";
    private static final String FORMAT = "bitterend/constructions/1";
    private static final String BUILT_IN = "/bitterend/constructions.json";
    private static final Provenance UNSTATED = new Provenance("", Grade.MEMORY, false);
    private static final Provenance SHOP = new Provenance("the shop's constructions.json", Grade.SHOP, false);
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} .()-]{0,39}");
    private static final Pattern BY_VOLUME = Pattern.compile("\\s*kg/m(3|³)$");
    private static final Ratio MOST = Ratio.percent(50);

    private final Findings findings;
    private final Provenance usual;

    private RopeKindsJson(Findings findings, Provenance usual) {
        this.findings = findings;
        this.usual = usual;
    }

    /** For a shop's file. */
    RopeKindsJson(Findings findings) {
        this(findings, SHOP);
    }

    /** Read once. */
    private static final class BuiltInKinds {
        static final RopeKinds KINDS = readBuiltIn();
    }

    /** What the program knows by itself. */
    public static RopeKinds builtIn() {
        return BuiltInKinds.KINDS;
    }

    private static RopeKinds readBuiltIn() {
        Findings findings = new Findings();
        InputFile file = new InputFile(NAME, BuiltIn.text(BUILT_IN), "");
        RopeKinds kinds = new RopeKindsJson(findings, UNSTATED).read(file, RopeKinds.NONE);
        if (findings.size() > 0) {
            throw new IllegalStateException("built-in " + findings.sorted().get(0));
        }
        return kinds;
    }

    /** The built-in rows with a shop's added and its changes made. */
    RopeKinds read(InputFile file) {
        return read(file, builtIn());
    }

    private RopeKinds read(InputFile file, RopeKinds base) {
        return JsonDocument.read(file, FORMAT, findings, root -> kinds(root, base))
                .orElse(base);
    }

    private RopeKinds kinds(JsonObject root, RopeKinds base) {
        root.mayHave("note");
        return new RopeKinds(
                rows(root, "constructions", base.constructions(), Construction::word, this::construction),
                rows(root, "fibres", base.fibres(), Fibre::word, this::fibre),
                rows(root, "makeUps", base.makeUps(), MakeUp::word, this::makeUp));
    }

    /** The rows of a list over those there are; a name twice in one file is told. */
    private static <T> List<T> rows(
            JsonObject root,
            String list,
            List<T> base,
            Function<T, String> word,
            BiFunction<JsonObject, Map<String, T>, T> reading) {
        Map<String, T> rows = new LinkedHashMap<>();
        base.forEach(row -> rows.put(Readings.plain(word.apply(row)), row));
        Map<String, String> met = new LinkedHashMap<>();
        for (JsonObject entry : root.objects(list)) {
            entry.mayHave("note");
            T row = reading.apply(entry, rows);
            entry.fields().once("name", Readings.plain(word.apply(row)), met);
            if (entry.fields().sound()) {
                rows.put(Readings.plain(word.apply(row)), row);
            }
        }
        return List.copyOf(rows.values());
    }

    private static String name(JsonObject row) {
        return row.fields().require("name", RopeKindsJson::plain, "?");
    }

    private static Parsed<String> plain(String text) {
        return PLAIN.matcher(text).matches()
                ? Parsed.of(text)
                : Parsed.refused("a name of at most 40 letters, digits, blanks and . ( ) -");
    }

    private Construction construction(JsonObject row, Map<String, Construction> rows) {
        Fields fields = row.fields();
        String name = name(row);
        Construction base = rows.getOrDefault(Readings.plain(name), unknown(name));
        return new Construction(
                base.word(),
                new Construction.Form(
                        fields.optional(
                                "strands", Readings.whole(1, 100), base.form().strands()),
                        is(fields, "laid", base.form().laid()),
                        is(fields, "wire", base.form().wire()),
                        is(fields, "flat", base.form().flat())),
                new Construction.Can(
                        is(fields, "tucked", base.can().tucked()),
                        is(fields, "buried", base.can().buried()),
                        is(fields, "knotted", base.can().knotted())),
                cautions(row, base.cautions()),
                fields.optional("notForLifting", Readings::text, base.notForLifting()),
                BookRow.provenance(fields, provenance(rows.containsKey(Readings.plain(name)), base.provenance())));
    }

    /** One that a row may say more of: it can be knotted, as most rope. */
    private Construction unknown(String name) {
        Construction bare = Construction.named(name);
        return new Construction(
                name, bare.form(), new Construction.Can(false, false, true), bare.cautions(), "", usual);
    }

    private Fibre fibre(JsonObject row, Map<String, Fibre> rows) {
        Fields fields = row.fields();
        String name = name(row);
        Fibre base = rows.getOrDefault(Readings.plain(name), Fibre.named(name));
        Fibre.Nature nature = base.nature();
        return new Fibre(
                base.word(),
                new Fibre.Nature(
                        is(fields, "natural", nature.natural()),
                        is(fields, "metal", nature.metal()),
                        is(fields, "hotCut", nature.hotCut()),
                        is(fields, "slippery", nature.slippery()),
                        is(fields, "stretches", nature.stretches())),
                new Fibre.Water(
                        fields.optional(
                                "density", RopeKindsJson::density, base.water().density()),
                        fields.optional(
                                "shrinks", RopeKindsJson::part, base.water().shrinks())),
                cautions(row, base.cautions()),
                List.of(),
                BookRow.provenance(fields, provenance(rows.containsKey(Readings.plain(name)), base.provenance())));
    }

    private MakeUp makeUp(JsonObject row, Map<String, MakeUp> rows) {
        String name = name(row);
        MakeUp base = rows.getOrDefault(Readings.plain(name), MakeUp.named(name));
        return new MakeUp(
                base.word(),
                row.fields().optional("core", Readings::text, base.core()),
                is(row.fields(), "tucked", base.tucked()),
                cautions(row, base.cautions()),
                BookRow.provenance(
                        row.fields(), provenance(rows.containsKey(Readings.plain(name)), base.provenance())));
    }

    private Provenance provenance(boolean known, Provenance base) {
        return known ? base : usual;
    }

    private static boolean is(Fields fields, String name, boolean usual) {
        return fields.optional(name, Readings::yesOrNo, usual);
    }

    private static List<String> cautions(JsonObject row, List<String> usual) {
        Reading<String> text = Readings::text;
        return row.has("cautions")
                ? row.texts("cautions").stream()
                        .flatMap(each -> BookRow.read(row, "cautions", each, text).stream())
                        .toList()
                : usual;
    }

    private static Parsed<Integer> density(String text) {
        Optional<Integer> kilograms = Readings.whole(1, 30_000)
                .read(BY_VOLUME.matcher(text).replaceFirst(""))
                .value();
        return kilograms.isPresent()
                ? Parsed.of(kilograms.get())
                : Parsed.refused("kilograms of a cubic metre of the fibre, such as 1380 kg/m3");
    }

    private static Parsed<Ratio> part(String text) {
        return RatioText.parse(text)
                .then(part -> part.isNegative() || part.compareTo(MOST) > 0
                        ? Parsed.refused("a part from 0 to 50 %")
                        : Parsed.of(part));
    }
}
