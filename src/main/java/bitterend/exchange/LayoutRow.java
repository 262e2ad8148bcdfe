package bitterend.exchange;

import bitterend.catalogue.Clips;
import bitterend.catalogue.Layout;
import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.LayoutMark.Place;
import bitterend.catalogue.Provenance;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads how a termination is laid out; what a shop's row leaves out stays as in the row it stands on. */
final class LayoutRow {
    private static final Reading<Place> PLACE = Readings.word(Place.values(), Place::word);

    private final JsonObject row;
    private final Provenance usual;

    LayoutRow(JsonObject row, Provenance usual) {
        this.row = row;
        this.usual = usual;
    }

    Layout on(Layout base) {
        return new Layout(
                row.has("layout") ? marks() : base.marks(),
                row.has("counts") ? row.texts("counts") : base.counts(),
                row.has("clips") ? clips(row.object("clips"), base.clips()) : base.clips(),
                row.fields().optional("rings", Readings.whole(1, 100), base.rings()));
    }

    private List<LayoutMark> marks() {
        Set<String> known = new HashSet<>(Set.of(LayoutMark.CUT_END));
        List<LayoutMark> marks = new ArrayList<>();
        for (JsonObject mark : row.objects("layout")) {
            Fields fields = mark.fields();
            String name = fields.require("mark", Readings::text, "?");
            String from = fields.optional("from", Readings::text, LayoutMark.CUT_END);
            if (!known.contains(from)) {
                fields.error("from", "a mark set before this one, or " + LayoutMark.CUT_END);
            }
            if (!known.add(name)) {
                fields.error("mark", "a name that no other mark of the row has");
            }
            marks.add(new LayoutMark(
                    name,
                    fields.optional("on", Readings::text, "rope"),
                    from,
                    BookRow.sum(mark, usual),
                    fields.optional("for", Readings::text, ""),
                    fields.optional("place", PLACE, Place.FIXED)));
        }
        return marks;
    }

    private Clips clips(JsonObject clips, Clips base) {
        Provenance provenance = BookRow.provenance(clips.fields(), usual);
        boolean counted = clips.has("count") || clips.has("perInch") || clips.has("byDiameter");
        return new Clips(
                clips.fields().optional("item", Readings::text, base.isNone() ? "clip" : base.item()),
                counted ? BookRow.count(clips) : base.count(),
                clips.has("saddle") ? BookRow.allowance(clips.object("saddle"), provenance) : base.saddle(),
                clips.has("torque") ? torques(clips, provenance) : base.torques());
    }

    private static List<Clips.Torque> torques(JsonObject clips, Provenance usual) {
        List<Clips.Torque> torques = new ArrayList<>();
        for (JsonObject step : clips.objects("torque")) {
            torques.add(new Clips.Torque(
                    BookRow.limit(step),
                    step.fields().require("is", Readings::text, "?"),
                    BookRow.provenance(step.fields(), usual)));
        }
        return torques;
    }
}
