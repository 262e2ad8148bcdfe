package bitterend.exchange;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Grade;
import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Part;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Suits;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Termination.Work;
import bitterend.catalogue.Tucking;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads one termination; what a shop's row leaves out stays as in the row it stands on. */
final class TerminationRow {
    private static final Reading<Kind> KIND = Readings.word(Kind.values(), Kind::word);
    private static final Map<String, What> MEMBERS = Map.of(
            "tail", What.TAIL,
            "takeUp", What.TAKE_UP,
            "takeUpSpread", What.TAKE_UP_SPREAD,
            "trim", What.TRIM,
            "room", What.ROOM,
            "slipKnot", What.SLIP_KNOT);

    /** Where a number comes from when a shop's row does not say. */
    static final Provenance SHOP = new Provenance("the shop's splices.json", Grade.SHOP, false);

    private final JsonObject row;
    private final Fields fields;
    private final Provenance usual;

    /**
     * A row to read.
     *
     * @param row the object of the file
     * @param usual where its numbers come from when it does not say
     */
    TerminationRow(JsonObject row, Provenance usual) {
        this.row = row;
        this.fields = row.fields();
        this.usual = BookRow.provenance(fields, usual);
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
                List.of(),
                List.of(),
                new Work(0, "", List.of(), "", ""),
                usual));
    }

    /** A row that changes another of the same id. */
    Termination on(Termination base) {
        row.allowOnly(
                "id",
                "family",
                "name",
                "kind",
                "constructions",
                "fibres",
                "refused",
                "tucks",
                "allowances",
                "minutes",
                "strength",
                "onRope",
                "layout",
                "counts",
                "parts",
                "notForLifting",
                "caution",
                "source",
                "grade",
                "verified",
                "note");
        return new Termination(
                base.id(),
                fields.optional("family", EndText::partId, base.family()),
                fields.optional("name", Readings::text, base.name()),
                fields.optional("kind", KIND, base.kind()),
                BookRow.suits(row, base.suits()),
                row.has("tucks") ? tucking(row.object("tucks")) : base.tucking(),
                allowances(row.object("allowances"), base.allowances()),
                onRope(base.onRope()),
                row.has("layout") ? marks() : base.marks(),
                row.has("counts") ? row.texts("counts") : base.counts(),
                work(base.work()),
                BookRow.provenance(fields, base.provenance()));
    }

    private Map<What, Allowance> allowances(JsonObject stated, Map<What, Allowance> base) {
        stated.allowOnly(MEMBERS.keySet().stream().sorted().toArray(String[]::new));
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

    private List<LayoutMark> marks() {
        Set<String> known = new HashSet<>(Set.of(LayoutMark.CUT_END));
        List<LayoutMark> marks = new ArrayList<>();
        for (JsonObject mark : row.objects("layout")) {
            mark.allowOnly("mark", "on", "from", "is", "byDiameter");
            String name = mark.fields().require("mark", Readings::text, "?");
            String from = mark.fields().optional("from", Readings::text, LayoutMark.CUT_END);
            if (!known.contains(from)) {
                mark.fields().error("from", "a mark set before this one, or " + LayoutMark.CUT_END);
            }
            if (!known.add(name)) {
                mark.fields().error("mark", "a name that no other mark of the row has");
            }
            String on = mark.fields().optional("on", Readings::text, "rope");
            marks.add(new LayoutMark(name, on, from, BookRow.sum(mark, usual)));
        }
        return marks;
    }

    private Tucking tucking(JsonObject tucks) {
        tucks.allowOnly("natural", "other", "taper", "projection", "source", "grade", "verified");
        Reading<Integer> count = Readings.whole(0, 100);
        Fields stated = tucks.fields();
        int natural = stated.require("natural", count, 0);
        int other = stated.require("other", count, 0);
        if ((natural == 0) != (other == 0)) {
            stated.error("other", "tucks for both natural and other fibre, or for neither");
            return Tucking.NONE;
        }
        return new Tucking(
                natural,
                other,
                tucks.has("projection") ? BookRow.allowance(tucks.object("projection"), usual) : Allowance.NOTHING,
                stated.optional("taper", count, 0),
                BookRow.provenance(stated, usual));
    }

    private Work work(Work base) {
        List<Part> parts = new ArrayList<>();
        for (JsonObject part : row.objects("parts")) {
            part.allowOnly("item", "count", "perInch", "plus", "byDiameter");
            parts.add(new Part(part.fields().require("item", Readings::text, "?"), BookRow.count(part)));
        }
        return new Work(
                fields.optional("minutes", Readings.whole(0, 10_000), base.minutes()),
                fields.optional("strength", Readings::text, base.strength()),
                row.has("parts") ? parts : base.parts(),
                fields.optional("notForLifting", Readings::text, base.notForLifting()),
                fields.optional("caution", Readings::text, base.caution()));
    }
}
