package bitterend.serve;

import static bitterend.serve.FormField.chosen;
import static bitterend.serve.FormField.typed;

import bitterend.report.Figures;
import bitterend.serve.FormField.Choice;
import bitterend.stock.Transfers.OnTheWay;
import java.util.List;

/** What is on the way to this loft and from it, each with the form for what may be done with it here. */
final class OnTheWayRows {
    /** Where it is sent that a reel of another loft is here. */
    static final String ARRIVE = "/rack/arrive";

    private final Figures figures;
    private final List<String> lofts;

    /** @param lofts the other lofts of the server */
    OnTheWayRows(Figures figures, List<String> lofts) {
        this.figures = figures;
        this.lofts = lofts;
    }

    /** What comes first, then what was sent from here. */
    List<OnTheWayRow> of(List<OnTheWay> all) {
        return all.stream().map(this::row).toList();
    }

    private OnTheWayRow row(OnTheWay each) {
        boolean comes = lofts.contains(each.from());
        String id = each.reel().id();
        return new OnTheWayRow(
                id,
                each.reel().rope(),
                each.reel().lot(),
                figures.written(each.reel().contents().written()),
                comes
                        ? "from loft " + each.from() + ", by its event " + each.event()
                        : "to loft " + each.to() + ", by event " + each.event() + " here",
                comes ? "" : RackScreen.PATH + Sent.path(id),
                comes ? arrived(each) : back(each));
    }

    private static FormView arrived(OnTheWay each) {
        String id = each.reel().id();
        return new FormView(
                ARRIVE,
                "arrive",
                "Arrived: reel " + id + " from loft " + each.from(),
                id,
                List.of(typed("reel", "Its number here", "").with(id), typed("note", "Note", "")),
                "Book it in",
                Keys.random(),
                false);
    }

    private static FormView back(OnTheWay each) {
        String id = each.reel().id();
        return new FormView(
                ReelForms.WORK,
                "undo",
                "Not sent after all: reel " + id + " to loft " + each.to(),
                id,
                List.of(
                        chosen(
                                "event",
                                "Event",
                                List.of(new Choice(Long.toString(each.event()), "event " + each.event() + ", sent"))),
                        typed("note", "Why", "")),
                "Take it back",
                Keys.random(),
                false);
    }
}
