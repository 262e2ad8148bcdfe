package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination.Kind;
import bitterend.demand.Assembly;
import bitterend.demand.EndWork.Picked;
import bitterend.demand.Measuring;
import bitterend.demand.SpliceCard;
import bitterend.measure.Money;
import bitterend.quoting.QuoteLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The words of a quote that its pages share. */
final class QuoteWords {
    private final Catalogue catalogue;
    private final Figures figures;

    QuoteWords(Catalogue catalogue, Figures figures) {
        this.catalogue = catalogue;
        this.figures = figures;
    }

    /** What a line is, as a customer would say it. */
    String what(QuoteLine line) {
        return String.join("; ", parts(line));
    }

    /** The same in lines of a cell: its note first, then the rope, the length, the ends, and what is with it. */
    String cell(QuoteLine line) {
        List<String> lines = new ArrayList<>();
        String note = line.assembly().ordered().note();
        if (!note.isEmpty()) {
            lines.add(note);
        }
        lines.addAll(parts(line));
        List<String> included = included(line);
        if (!included.isEmpty()) {
            lines.add("with " + String.join(", ", included));
        }
        return String.join("\n", lines);
    }

    private List<String> parts(QuoteLine line) {
        Assembly.Make make = line.assembly().make();
        List<String> parts = new ArrayList<>();
        if (!line.assembly().ordered().product().isEmpty()) {
            parts.add(line.assembly().ordered().product());
        }
        parts.add(rope(line));
        int legs = line.assembly().ordered().legs();
        parts.add((legs == 1 ? "" : legs + " legs of ") + figures.written(make.finished()) + " finished, "
                + measured(line));
        SaidEnds.of(line).forEach(end -> parts.add(figures.written(end)));
        if (make.hang().isStated()) {
            parts.add("legs " + make.hang().angle().words()
                    + (make.hang().angle().isWide() ? ", above 60 degrees: ask a qualified rigger" : ""));
        }
        return parts;
    }

    /** The rope and the ends, all that a line is apart from its length and what is along it. */
    List<String> made(QuoteLine line) {
        return List.of(
                rope(line), SaidEnds.of(line).stream().map(figures::written).collect(Collectors.joining("; ")));
    }

    /** What the price is for beside rope and ends: papers, samples, tests, the parts that are seen. */
    List<String> included(QuoteLine line) {
        List<String> included = new ArrayList<>();
        for (Picked part : line.picked()) {
            if (QuoteLine.isFitting(part)) {
                included.add(QuoteLine.counted(part, figures.sentence(part.words())));
            }
        }
        String certificate = line.assembly().terms().certificate();
        if (!certificate.isEmpty()) {
            included.add("certificate " + certificate);
        }
        Assembly.Extras extras = line.assembly().make().extras();
        if (extras.sample().exact().isPositive()) {
            included.add("a sample of " + figures.written(extras.sample()) + " for a break test");
        }
        if (extras.spare().exact().isPositive()) {
            included.add(figures.written(extras.spare()) + " of spare rope on every piece");
        }
        if (!line.asked().test().equals(Money.ZERO)) {
            included.add("testing and papers");
        }
        return included;
    }

    private String rope(QuoteLine line) {
        String name = catalogue.findRope(line.rope()).map(Rope::name).orElse(line.rope());
        return line.ownRope() ? name + ", your own rope" : name;
    }

    /** From where to where, in words: {@code pin to end}, {@code over the outside}. */
    static String measured(QuoteLine line) {
        Measuring measuring = line.assembly().make().measuring();
        String words = measuring.words();
        int conditions = words.indexOf(", extension ");
        conditions = conditions < 0 ? words.indexOf(", shrinkage ") : conditions;
        conditions = conditions < 0 ? words.indexOf(", bedding ") : conditions;
        return between(line) + (conditions < 0 ? "" : words.substring(conditions));
    }

    private static String between(QuoteLine line) {
        Measuring measuring = line.assembly().make().measuring();
        if (!measuring.points().equals(Measuring.Points.NONE)) {
            return measuring.betweenPoints();
        }
        String ends = line.demanded().findCard().map(QuoteWords::points).orElse("pin to pin");
        return switch (measuring.between()) {
            case BEARING_POINTS -> ends;
            case FLAT -> ends + ", laid flat";
            case ON_PINS -> ends + ", " + measuring.words().replaceFirst(",.*", "");
            case OUTSIDE -> "over the outside";
            case CIRCUMFERENCE -> "round the inside";
        };
    }

    private static String points(SpliceCard card) {
        List<String> points = card.ends().stream().map(QuoteWords::point).toList();
        return points.size() == 1 ? points.get(0) + " to " + points.get(0) : points.get(0) + " to " + points.get(1);
    }

    private static String point(SpliceCard.End end) {
        return end.hasEye() || end.kind() == Kind.FITTING || end.kind() == Kind.GROMMET ? "pin" : "end";
    }
}
