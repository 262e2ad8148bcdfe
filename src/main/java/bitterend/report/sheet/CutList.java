package bitterend.report.sheet;

import bitterend.finding.Formula;
import bitterend.finding.Unseen;
import bitterend.measure.FineLength;
import bitterend.packing.ReelDraw;
import bitterend.report.Mark;
import bitterend.report.PlanView;
import java.util.List;
import java.util.stream.Collectors;

/** Every mark of every reel as one row of CSV, in cutting order; lengths in whole millimetres, for other programs. */
public final class CutList {
    private static final List<String> HEAD = List.of(
            "plan",
            "issued",
            "reel",
            "rope",
            "lot",
            "place",
            "step",
            "what",
            "piece",
            "at mm",
            "counter mm",
            "length mm",
            "left mm",
            "before",
            "words",
            "cut on");

    private CutList() {}

    /** The rows, with a header, separated by commas, each ended by CR LF as RFC 4180 wants it. */
    public static String csv(PlanView view) {
        int number = view.mark().number();
        StringBuilder csv = new StringBuilder(row(HEAD));
        for (ReelDraw draw : view.draws()) {
            int step = 0;
            for (Mark mark : view.marks(draw)) {
                step++;
                csv.append(row(List.of(
                        number == 0 ? "" : Integer.toString(number),
                        view.mark().preview() && !view.mark().isOut(draw.reel()) ? "no" : "yes",
                        draw.reel(),
                        view.rope(draw).id(),
                        view.reel(draw).lot(),
                        view.reel(draw).where().place(),
                        Integer.toString(step),
                        mark.kind().word(),
                        mark.piece(),
                        Long.toString(mark.at().mm()),
                        Long.toString(counter(view, draw, mark)),
                        Long.toString(mark.length().mm()),
                        Long.toString(mark.left().mm()),
                        mark.before(),
                        mark.words().exact(),
                        view.byId().days().of(draw).toString())));
            }
        }
        return csv.toString();
    }

    /** The exact reading of whole millimetres, as other programs have them; a lead trim as the counter shows it. */
    private static long counter(PlanView view, ReelDraw draw, Mark mark) {
        FineLength reading =
                mark.kind() == Mark.Kind.LEAD_TRIM ? view.reading(draw, mark) : view.reading(draw, mark.at());
        return reading.toNearestMillimetre().mm();
    }

    private static String row(List<String> cells) {
        return cells.stream().map(CutList::cell).collect(Collectors.joining(",")) + "\r\n";
    }

    /** A text that a spreadsheet would take for a formula is marked as text. */
    static String cell(String text) {
        String shown = Unseen.shown(text);
        String safe = shown.matches("-?[0-9]+") ? shown : Formula.marked(shown);
        return safe.matches(".*[\",].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
