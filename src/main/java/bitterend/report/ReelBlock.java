package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.measure.Length;
import bitterend.packing.ReelDraw;
import bitterend.report.Mark.Kind;
import bitterend.report.TextTable.Column;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** One reel on the page: what it is, the tape beside the cutting table, what happens to the rest. */
final class ReelBlock {
    private final PlanView view;
    private final Figures figures;
    private final Tape tape;

    ReelBlock(PlanView view, Figures figures, Tape tape) {
        this.view = view;
        this.figures = figures;
        this.tape = tape;
    }

    void write(Page page, ReelDraw draw) {
        Reel reel = view.reel(draw);
        page.heading("Reel " + reel.id() + ": " + view.rope(draw).name());
        page.paragraph(0, "Rope: " + rope(view.rope(draw)) + ".");
        page.paragraph(0, stands(reel));
        page.paragraph(0, contents(reel, draw));
        String before = view.beforeCut(draw).words();
        if (!before.isEmpty()) {
            page.paragraph(0, "Before each cut: " + before + ".");
        }
        for (Flaw flaw : reel.flaws()) {
            page.caution(flaw(flaw, draw.leadTrim()));
        }
        page.blank();
        page.table(table(view.marks(draw)));
        page.blank();
        page.paragraph(0, rest(draw));
    }

    private static String rope(Rope rope) {
        RopeIdentity identity = rope.identity();
        List<String> words = new ArrayList<>(List.of(
                rope.id(), identity.fibre().word(), identity.construction().word()));
        addNamed(words, "core ", identity.core());
        addNamed(words, "grade ", identity.grade());
        addNamed(words, "", identity.finish());
        addNamed(words, "colour ", identity.colour());
        addNamed(words, "tracer ", identity.tracer());
        return String.join(", ", words);
    }

    private String stands(Reel reel) {
        List<String> words = new ArrayList<>();
        addNamed(words, "Lot ", reel.lot().isEmpty() ? "not known" : reel.lot());
        addNamed(words, "place ", reel.where().place());
        addNamed(
                words,
                "certificate ",
                (reel.papers().certificate() + " " + reel.papers().number()).strip());
        if (!reel.papers().useBy().equals(LocalDate.MAX)) {
            words.add("use by " + reel.papers().useBy());
        }
        if (reel.where().mass().grams() > 0) {
            words.add("mass " + figures.mass(reel.where().mass()));
        }
        addNamed(words, "own rope of ", reel.custody().owner());
        addNamed(words, "kept for order ", reel.custody().order());
        words.add("drawn from the " + (reel.where().draw() == Reel.Draw.INSIDE ? "inside" : "outside"));
        return String.join(", ", words) + ".";
    }

    private String contents(Reel reel, ReelDraw draw) {
        Reel.Contents contents = reel.contents();
        List<String> words = new ArrayList<>();
        words.add((reel.full() ? "Full reel, " : "Part reel, ") + figures.length(contents.length()) + " "
                + contents.known().word());
        if (contents.uncertainty().isPositive()) {
            words.add("may be " + figures.length(contents.uncertainty()) + " shorter");
        }
        if (draw.leadTrim().isPositive()) {
            words.add("lead trim " + figures.length(draw.leadTrim()));
        }
        if (contents.innerWraps().isPositive()) {
            words.add("inner wraps " + figures.length(contents.innerWraps()));
        }
        return String.join(", ", words) + ".";
    }

    private String flaw(Flaw flaw, Length leadTrim) {
        return "flaw, " + flaw.what() + ": no piece between "
                + figures.length(Length.max(Length.ZERO, flaw.avoidFrom().minus(leadTrim))) + " and "
                + figures.length(flaw.avoidTo().minus(leadTrim)) + " on the counter.";
    }

    private TextTable table(List<Mark> marks) {
        String unit = "\n" + figures.unit();
        TextTable table = new TextTable(
                Column.words("before\nthe cut"),
                Column.drawing(""),
                Column.figure("cut at" + unit),
                Column.figure("piece" + unit),
                Column.words("order"),
                Column.words("ends"),
                Column.figure("left on\nreel, " + figures.unit()));
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            table.row(
                    mark.before(),
                    tape.cell(mark.kind(), i == marks.size() - 1),
                    figures.bare(mark.at()),
                    mark.length().isPositive() ? figures.bare(mark.length()) : "",
                    mark.kind() == Kind.CUT ? mark.piece() : word(mark.kind()),
                    mark.words(),
                    figures.bare(mark.left()));
        }
        return table;
    }

    static String word(Kind kind) {
        return switch (kind) {
            case LEAD_TRIM -> "lead trim";
            case ZERO -> "clean end";
            case CUT -> "cut";
            case FLAW -> "flaw";
            case KEPT -> "remnant";
            case SCRAP -> "scrap";
            case STAYS -> "rest";
            case COUNT_FIRST -> "count first";
            case INNER_WRAPS -> "inner wraps";
        };
    }

    private String rest(ReelDraw draw) {
        StringBuilder words = new StringBuilder();
        view.marks(draw).forEach(mark -> {
            switch (mark.kind()) {
                case KEPT -> words.append("Remnant of ")
                        .append(figures.length(mark.length()))
                        .append(" goes to the rack as a coil. ");
                case SCRAP -> words.append("Scrap of ")
                        .append(figures.length(mark.length()))
                        .append(". ");
                default -> {}
            }
        });
        words.append(
                draw.leftOnReel().isPositive()
                        ? figures.length(draw.leftOnReel()) + " stays on the reel."
                        : "Nothing usable stays on the reel.");
        return "The rest: " + words;
    }

    private static void addNamed(List<String> words, String name, String value) {
        if (!value.isEmpty()) {
            words.add(name + value);
        }
    }
}
