package bitterend.exchange;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.CodeRule;
import bitterend.catalogue.Codes;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.RopeKinds;
import bitterend.catalogue.Suits;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code codes.json}, the rules of the regions; a shop's file of the same form adds codes of its own. */
final class CodesJson {
    static final String NAME = "codes.json";
    private static final String FORMAT = "bitterend/codes/1";
    private static final String BUILT_IN = "/bitterend/codes.json";
    private static final Provenance UNSTATED = new Provenance("", Grade.MEMORY, false);
    private static final Provenance SHOP = new Provenance("the shop's codes.json", Grade.SHOP, false);
    private static final int MOST_TUCKS = 20;
    private static final Reading<CodeRule.Rule> RULE = Readings.word(CodeRule.Rule.values(), CodeRule.Rule::word);

    private final Findings findings;
    private final KindReadings kinds;

    /** For a shop that knows these kinds of ropes. */
    CodesJson(Findings findings, RopeKinds kinds) {
        this.findings = findings;
        this.kinds = KindReadings.of(kinds);
    }

    /** Read once. */
    private static final class BuiltInCodes {
        static final Codes CODES = readBuiltIn();
    }

    /** The codes the program knows by itself. */
    static Codes builtIn() {
        return BuiltInCodes.CODES;
    }

    private static Codes readBuiltIn() {
        Findings findings = new Findings();
        InputFile file = new InputFile(NAME, BuiltIn.text(BUILT_IN), "");
        Codes codes = new CodesJson(findings, RopeKindsJson.builtIn()).read(file, Codes.NONE, UNSTATED);
        if (findings.size() > 0) {
            throw new IllegalStateException("built-in " + findings.sorted().get(0));
        }
        return codes;
    }

    /** The built-in codes with a shop's rows before them. */
    Codes read(InputFile file) {
        return read(file, builtIn(), SHOP);
    }

    private Codes read(InputFile file, Codes base, Provenance usual) {
        return JsonDocument.read(file, FORMAT, findings, root -> codes(root, base, usual))
                .orElse(base);
    }

    private Codes codes(JsonObject root, Codes base, Provenance usual) {
        root.mayHave("note");
        List<String> ids = new ArrayList<>();
        List<CodeRule> rules = new ArrayList<>();
        for (JsonObject code : root.objects("codes")) {
            code.mayHave("name", "note");
            String id = code.fields().require("id", EndText::partId, "?");
            if (ids.contains(id)) {
                code.fields().error("id", "an id that no other code has");
            }
            ids.add(id);
            code.objects("rules").forEach(row -> rules.add(rule(id, row, usual)));
        }
        base.ids().stream().filter(id -> !ids.contains(id)).forEach(ids::add);
        rules.addAll(base.rules());
        return new Codes(ids, rules, base.stated());
    }

    private CodeRule rule(String code, JsonObject row, Provenance usual) {
        Fields fields = row.fields();
        CodeRule.Rule rule = fields.require("rule", RULE, CodeRule.Rule.CLEAR_ROPE);
        return new CodeRule(
                code,
                rule,
                kinds.suits(row, Suits.ANY),
                row.texts("ends"),
                fields.optional("warned", Readings::yesOrNo, false),
                fields.optional("from", EndText::partId, ""),
                least(rule, row, fields, usual));
    }

    /** A thimble is asked for or not, tucks are counted; the others ask for a length. */
    private static CodeRule.Least least(CodeRule.Rule rule, JsonObject row, Fields fields, Provenance usual) {
        return switch (rule) {
            case THIMBLE -> new CodeRule.Least(0, new Allowance(List.of(), BookRow.provenance(fields, usual)));
            case TUCKS -> new CodeRule.Least(
                    fields.require("count", Readings.whole(1, MOST_TUCKS), 1),
                    new Allowance(List.of(), BookRow.provenance(fields, usual)));
            case CLEAR_ROPE, LEAST_EYE, RING -> new CodeRule.Least(0, BookRow.sum(row, usual));
        };
    }
}
