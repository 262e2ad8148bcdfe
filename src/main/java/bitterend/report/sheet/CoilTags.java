package bitterend.report.sheet;

import bitterend.measure.Length;
import bitterend.packing.HeldWords;
import bitterend.packing.ReelDraw;
import bitterend.packing.UncertainRest;
import bitterend.report.Figures;
import bitterend.report.Mark;
import bitterend.report.PlanView;
import bitterend.report.ReelLabel;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;

/** The tags of what is kept of a reel: coils that come off it, what stays on it, a rest that is kept if it measures enough. */
final class CoilTags {
    private final PlanView view;
    private final Figures figures;

    CoilTags(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
    }

    List<Tag> of(ReelDraw draw) {
        List<Tag> tags = new ArrayList<>();
        for (Mark mark : view.marks(draw)) {
            switch (mark.kind()) {
                case REMNANT -> tags.add(coil(draw, mark));
                case STAYS -> tags.add(reel(draw, mark));
                case MEASURE -> view.uncertain(draw)
                        .map(rest -> rest(rest, draw))
                        .ifPresent(tags::add);
                default -> {}
            }
        }
        return tags;
    }

    /** It gets a number of its own when it is booked. */
    private Tag coil(ReelDraw draw, Mark mark) {
        List<String> lines = new ArrayList<>(List.of("number when booked: ____________"));
        lines.addAll(rope(draw, List.of()));
        return tag(
                draw, "off " + draw.reel(), "coil", TagCode.Kind.COIL, "kept: " + figures.length(mark.length()), lines);
    }

    private Tag reel(ReelDraw draw, Mark mark) {
        Reel.Contents contents = view.reel(draw).contents();
        List<String> lines = new ArrayList<>();
        if (contents.uncertainty().isPositive()) {
            lines.add("may be " + figures.length(contents.uncertainty()) + " shorter");
        }
        if (contents.innerWraps().isPositive()) {
            lines.add("and " + figures.length(contents.innerWraps()) + " inner wraps, not to be used");
        }
        Length gone = view.reel(draw).length().minus(contents.innerWraps()).minus(mark.left());
        HeldWords.behind(view.problem(), draw).stream().map(figures::sentence).forEach(lines::add);
        lines.addAll(rope(draw, flaws(draw, gone)));
        return tag(draw, draw.reel(), "reel", TagCode.Kind.REEL, "stays: " + figures.length(mark.left()), lines);
    }

    /** Flaws on what is left, from its new end. */
    private List<String> flaws(ReelDraw draw, Length gone) {
        return view.reel(draw).flaws().stream()
                .filter(flaw -> flaw.avoidTo().isLongerThan(gone))
                .map(flaw -> flaw(flaw, gone))
                .toList();
    }

    private String flaw(Flaw flaw, Length gone) {
        return "flaw, " + flaw.what() + ": "
                + figures.length(Length.max(Length.ZERO, flaw.avoidFrom().minus(gone))) + " to "
                + figures.length(flaw.avoidTo().minus(gone)) + " from its end";
    }

    /** Its length is written on by hand. */
    private Tag rest(UncertainRest rest, ReelDraw draw) {
        List<String> lines = new ArrayList<>();
        lines.add("measured: ____________");
        lines.add("by the ledger " + figures.length(rest.byLedger()) + ", certain " + figures.length(rest.certain()));
        Reel reel = view.reel(draw);
        Length gone = reel.length().minus(reel.contents().innerWraps()).minus(rest.byLedger());
        lines.addAll(rope(draw, flaws(draw, gone)));
        return tag(
                draw,
                rest.reel(),
                "rest of the reel",
                TagCode.Kind.REST,
                "measure; keep if " + figures.length(rest.keepFrom()) + " or more",
                lines);
    }

    private List<String> rope(ReelDraw draw, List<String> flaws) {
        Reel reel = view.reel(draw);
        List<String> lines = new ArrayList<>(flaws);
        String place = reel.where().place();
        if (!place.isEmpty()) {
            lines.add("place " + place);
        }
        lines.addAll(ReelLabel.lines(reel, ", " + view.rope(draw).name()).stream()
                .skip(1)
                .toList());
        return lines;
    }

    private Tag tag(ReelDraw draw, String title, String kind, TagCode.Kind on, String measure, List<String> lines) {
        String mark = view.mark().words(draw.reel());
        return new Tag(
                title,
                kind,
                mark,
                measure,
                lines,
                QrCode.of(new TagCode(on, draw.reel()).text() + "; " + measure + (mark.isEmpty() ? "" : "; " + mark)));
    }
}
