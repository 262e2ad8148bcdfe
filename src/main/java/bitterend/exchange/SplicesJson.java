package bitterend.exchange;

import bitterend.catalogue.BenchRules;
import bitterend.catalogue.BenchTools;
import bitterend.catalogue.ClearRope;
import bitterend.catalogue.Codes;
import bitterend.catalogue.Construction;
import bitterend.catalogue.CounterRule;
import bitterend.catalogue.DiameterLimit;
import bitterend.catalogue.FidTable;
import bitterend.catalogue.FidTable.ShortSection;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Handling;
import bitterend.catalogue.Preparation;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.RopeKinds;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Suits;
import bitterend.catalogue.Termination;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Ratio;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads {@code splices.json}. The built-in file holds what is known of ends; a shop's file of the same form adds rows and
 * changes those of the same id, member by member.
 */
public final class SplicesJson {
    static final String NAME = "splices.json";
    static final String FORMAT = "bitterend/splices/1";
    private static final String BUILT_IN = "/bitterend/splices.json";
    private static final Provenance UNSTATED = new Provenance("", Grade.MEMORY, false);
    private static final FidTable NO_FIDS = new FidTable(
            List.of(),
            new FidTable.Rule(Map.of(), List.of(new ShortSection(DiameterLimit.ANY, Ratio.ZERO)), UNSTATED),
            BenchTools.METRIC);
    private static final SpliceBook EMPTY = new SpliceBook(
            NO_FIDS,
            Map.of(),
            List.of(),
            List.of(),
            List.of(),
            new BenchRules(List.of(), Handling.UNLIMITED),
            Codes.NONE,
            List.of(),
            List.of());

    private final Findings findings;
    private final KindReadings kinds;

    /** For a shop that knows these kinds of ropes. */
    SplicesJson(Findings findings, RopeKinds kinds) {
        this.findings = findings;
        this.kinds = KindReadings.of(kinds);
    }

    /** Read once. */
    private static final class BuiltInBook {
        static final SpliceBook BOOK = readBuiltIn();
    }

    /** What the program knows of ends by itself; no thimbles, no fittings. */
    public static SpliceBook builtIn() {
        return BuiltInBook.BOOK;
    }

    private static SpliceBook readBuiltIn() {
        Findings findings = new Findings();
        String text = BuiltIn.text(BUILT_IN);
        SpliceBook book =
                new SplicesJson(findings, RopeKindsJson.builtIn()).read(new InputFile(NAME, text, ""), EMPTY, UNSTATED);
        if (findings.size() > 0) {
            throw new IllegalStateException("built-in " + findings.sorted().get(0));
        }
        return ThimblesJson.builtIn(book.with(CodesJson.builtIn()));
    }

    /** A book, such as the built-in one, with a shop's rows added and its changes made. */
    SpliceBook read(InputFile file, SpliceBook base) {
        return read(file, base, TerminationRow.SHOP);
    }

    private SpliceBook read(InputFile file, SpliceBook base, Provenance usual) {
        return JsonDocument.read(file, FORMAT, findings, root -> book(root, base, usual))
                .orElse(base);
    }

    private SpliceBook book(JsonObject root, SpliceBook base, Provenance usual) {
        root.mayHave("note");
        Map<Construction, Ratio> layTurns = new HashMap<>();
        layTurns.putAll(base.layTurns());
        root.objects("layTurns").forEach(row -> layTurns.putAll(layTurn(row)));
        return new SpliceBook(
                root.has("fids") ? new FidsRow(root.object("fids"), usual).on(base.fids()) : base.fids(),
                layTurns,
                terminations(root, base, usual),
                firstOurs(
                        root.objects("beforeTheCut").stream().map(row -> preparation(row, usual)), base.preparations()),
                firstOurs(root.objects("clearRope").stream().map(row -> clearRope(row, usual)), base.clearRope()),
                bench(root, base.bench(), usual),
                base.codes(),
                base.thimbles(),
                base.fittings());
    }

    private static <T> List<T> firstOurs(Stream<T> ours, List<T> base) {
        return Stream.concat(ours, base.stream()).toList();
    }

    private List<Termination> terminations(JsonObject root, SpliceBook base, Provenance usual) {
        Map<String, Termination> rows = new LinkedHashMap<>();
        base.terminations().forEach(row -> rows.put(row.id(), row));
        Set<String> seen = new HashSet<>();
        for (JsonObject entry : root.objects("terminations")) {
            TerminationRow row = new TerminationRow(entry, usual, kinds);
            String id = entry.fields().text("id").orElse("");
            if (!id.isEmpty() && !seen.add(id)) {
                entry.fields().error("id", "an id that no other row has");
                entry.leave();
                continue;
            }
            Termination changed = rows.get(id);
            Termination termination = changed == null ? row.read() : row.on(changed);
            if (entry.fields().sound()) {
                rows.put(termination.id(), termination);
            }
        }
        return List.copyOf(rows.values());
    }

    private Map<Construction, Ratio> layTurn(JsonObject row) {
        row.mayHave("source", "grade", "verified");
        Construction construction = row.fields().require("construction", kinds::construction, Construction.named("?"));
        return Map.of(construction, row.fields().require("diameters", BookRow::aboveZero, Ratio.ONE));
    }

    private Preparation preparation(JsonObject row, Provenance usual) {
        Fields fields = row.fields();
        Suits suits = kinds.suits(row, Suits.ANY);
        return new Preparation(
                suits,
                fields.require("brief", Readings::text, "?"),
                fields.require("what", Readings::text, "?"),
                BookRow.count(row),
                fields.optional("widthFrom", BookRow::positive, Ratio.ZERO),
                fields.optional("widthTo", BookRow::positive, Ratio.ZERO),
                fields.optional("spacing", BookRow::positive, Ratio.ZERO),
                BookRow.provenance(fields, usual));
    }

    private ClearRope clearRope(JsonObject row, Provenance usual) {
        return new ClearRope(
                kinds.suits(row, Suits.ANY),
                row.fields().optional("lifting", Readings::yesOrNo, false),
                BookRow.allowance(row.object("length"), usual));
    }

    private BenchRules bench(JsonObject root, BenchRules base, Provenance usual) {
        return new BenchRules(
                firstOurs(root.objects("counters").stream().map(row -> counter(row, usual)), base.counters()),
                handling(root.fields(), base.handling()));
    }

    /** A limit of one person brings that of two with it, unless that is stated too. */
    private static Handling handling(Fields fields, Handling base) {
        Mass one = fields.optional("handlingLimit", MassText::parse, base.one());
        Handling usual = one.equals(base.one()) ? base : Handling.of(one);
        Mass two = fields.optional("handlingLimitOfTwo", MassText::parse, usual.two());
        if (two.compareTo(one) < 0) {
            fields.error("handlingLimitOfTwo", "a mass of at least what one person handles");
            return usual;
        }
        return new Handling(one, two);
    }

    private CounterRule counter(JsonObject row, Provenance usual) {
        Fields fields = row.fields();
        return new CounterRule(
                kinds.suits(row, Suits.ANY),
                row.texts("ropes"),
                fields.optional("error", BookRow::smallPart, Ratio.ZERO),
                fields.optional("from", Readings::allowance, Length.ZERO),
                fields.optional("factor", BookRow::nearOne, Ratio.ONE),
                BookRow.provenance(fields, usual));
    }
}
