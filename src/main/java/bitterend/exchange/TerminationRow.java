package bitterend.exchange;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Danger;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Layout;
import bitterend.catalogue.Part;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Seizing;
import bitterend.catalogue.Suits;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Termination.Work;
import bitterend.catalogue.Tucking;
import bitterend.catalogue.Yardstick;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads one termination; what a shop's row leaves out stays as in the row it stands on. */
final class TerminationRow {
    private static final Reading<Kind> KIND = Readings.word(Kind.values(), Kind::word);
    private static final Reading<Danger.When> WHEN = Readings.word(Danger.When.values(), Danger.When::word);
    private static final Map<String, What> MEMBERS = Map.ofEntries(
            Map.entry("tail", What.TAIL),
            Map.entry("takeUp", What.TAKE_UP),
            Map.entry("takeUpSpread", What.TAKE_UP_SPREAD),
            Map.entry("margin", What.MARGIN),
            Map.entry("marginOfTwo", What.MARGIN_OF_TWO),
            Map.entry("trim", What.TRIM),
            Map.entry("room", What.ROOM),
            Map.entry("fills", What.FILLS),
            Map.entry("slipKnot", What.SLIP_KNOT),
            Map.entry("leastEye", What.LEAST_EYE),
            Map.entry("leastTail", What.LEAST_TAIL),
            Map.entry("return", What.RETURN));

    /** Where a number comes from when a shop's row does not say. */
    static final Provenance SHOP = new Provenance("the shop's splices.json", Grade.SHOP, false);

    private final JsonObject row;
    private final Fields fields;
    private final Provenance usual;
    private final KindReadings kinds;

    /**
     * A row to read.
     *
     * @param row the object of the file
     * @param usual where its numbers come from when it does not say
     * @param kinds how ropes are named
     */
    TerminationRow(JsonObject row, Provenance usual, KindReadings kinds) {
        this.row = row;
        this.fields = row.fields();
        this.usual = BookRow.provenance(fields, usual);
        this.kinds = kinds;
    }

    /** A row of its own. */
    Termination read() {
        Kind kind = fields.require("kind", KIND, Kind.BARE);
        String id = fields.require("id", EndText::partId, "?");
        String name = fields.require("name", Readings::text, id);
        return on(new Termination(
                id,
                "",
                name,
                kind,
                Suits.ANY,
                Tucking.NONE,
                Map.of(),
                Map.of(),
                Layout.NONE,
                new Work(0, List.of(), "", List.of(), ""),
                usual));
    }

    /** A row that changes another of the same id. */
    Termination on(Termination base) {
        row.mayHave("id", "strength", "note");
        return new Termination(
                base.id(),
                fields.optional("family", EndText::partId, base.family()),
                fields.optional("name", Readings::text, base.name()),
                fields.optional("kind", KIND, base.kind()),
                kinds.suits(row, base.suits()),
                row.has("tucks") ? tucking(row.object("tucks")) : base.tucking(),
                allowances(row.object("allowances"), base.allowances()),
                onRope(base.onRope()),
                new LayoutRow(row, usual).on(base.layout()),
                work(base.work()),
                BookRow.provenance(fields, base.provenance()));
    }

    private Map<What, Allowance> allowances(JsonObject stated, Map<What, Allowance> base) {
        Map<What, Allowance> allowances = new EnumMap<>(What.class);
        allowances.putAll(base);
        MEMBERS.forEach((member, what) -> {
            if (stated.has(member)) {
                allowances.put(what, BookRow.allowance(stated.object(member), usual));
            }
        });
        return allowances;
    }

    private Map<String, Map<What, Allowance>> onRope(Map<String, Map<What, Allowance>> base) {
        Map<String, Map<What, Allowance>> ropes = new HashMap<>(base);
        JsonObject stated = row.object("onRope");
        for (String rope : stated.names()) {
            ropes.put(rope, allowances(stated.object(rope), base.getOrDefault(rope, Map.of())));
        }
        return ropes;
    }

    private Tucking tucking(JsonObject tucks) {
        Reading<Integer> count = Readings.whole(0, 100);
        Fields stated = tucks.fields();
        int natural = stated.require("natural", count, 0);
        int other = stated.require("other", count, 0);
        if ((natural == 0) != (other == 0)) {
            stated.error("other", "tucks for both natural and other fibre, or for neither");
            tucks.leave();
            return Tucking.NONE;
        }
        int sides = stated.optional("sides", Readings.whole(1, 2), 1);
        int taper = stated.optional("taper", count, 0);
        if (natural % sides != 0 || other % sides != 0 || taper % sides != 0) {
            stated.error("sides", "numbers of tucks that both sides can share");
            tucks.leave();
            return Tucking.NONE;
        }
        return new Tucking(
                natural,
                other,
                new Tucking.Form(taper, stated.optional("half", count, 0), sides),
                tucks.has("projection") ? BookRow.allowance(tucks.object("projection"), usual) : Allowance.NOTHING,
                tucks.has("advised") ? advised(tucks.object("advised")) : Tucking.Advised.NONE,
                BookRow.provenance(stated, usual));
    }

    private Tucking.Advised advised(JsonObject row) {
        return new Tucking.Advised(
                row.fields().require("count", Readings.whole(1, 100), 1), BookRow.provenance(row.fields(), usual));
    }

    private Work work(Work base) {
        List<Part> parts = new ArrayList<>();
        for (JsonObject part : row.objects("parts")) {
            parts.add(new Part(
                    part.fields().require("item", Readings::text, "?"),
                    BookRow.count(part),
                    part.has("seizing") ? seizing(part.object("seizing")) : null));
        }
        return new Work(
                fields.optional("minutes", Readings.whole(0, 10_000), base.minutes()),
                row.has("parts") ? parts : base.parts(),
                fields.optional("notForLifting", Readings::text, base.notForLifting()),
                row.has("dangers")
                        ? row.objects("dangers").stream().map(this::danger).toList()
                        : base.dangers(),
                fields.optional("caution", Readings::text, base.caution()));
    }

    private static Seizing seizing(JsonObject seizing) {
        Fields stated = seizing.fields();
        Ratio stuff = stated.require("stuff", TerminationRow::partOfRope, Ratio.ONE);
        Reading<Integer> count = Readings.whole(0, 100);
        return new Seizing(
                stuff,
                stated.require("turns", Readings.whole(1, 100), 1),
                stated.optional("riders", count, 0),
                stated.optional("crossing", count, 0),
                stated.optional("racked", Readings::yesOrNo, false));
    }

    /** {@code 1/4 diameters}. */
    private static Parsed<Ratio> partOfRope(String text) {
        String expected = "a part of the rope such as 1/4 diameters";
        return AllowanceText.parse(text)
                .then(terms -> terms.size() == 1
                                && terms.get(0) instanceof Term.Multiple multiple
                                && multiple.of() == Yardstick.DIAMETER
                                && multiple.count().isPositive()
                        ? Parsed.of(multiple.count())
                        : Parsed.refused(expected));
    }

    private Danger danger(JsonObject danger) {
        return new Danger(
                kinds.suits(danger, Suits.ANY),
                danger.texts("cores"),
                danger.texts("coresOtherThan"),
                danger.fields().optional("when", WHEN, Danger.When.LIFTING),
                danger.fields().require("because", Readings::text, "?"),
                danger.fields().require("instead", Readings::text, "?"),
                BookRow.provenance(danger.fields(), usual));
    }
}
