package bitterend.report.sheet;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Derivation;
import bitterend.demand.EndSpec;
import bitterend.report.Cautions;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.PrintedAmounts;
import bitterend.report.SourceNotes;
import bitterend.report.sheet.PieceSheet.DerivedLength;
import bitterend.report.sheet.PieceSheet.DrawnEnd;
import bitterend.report.sheet.PieceSheet.Line;
import java.util.ArrayList;
import java.util.List;

/** The derivation of an order line as a page that an apprentice understands, with a drawing of the piece. */
public final class PiecePage {
    private final Figures figures;

    public PiecePage(Figures figures) {
        this.figures = figures;
    }

    public String html(Assembly assembly, Demanded demanded, Catalogue catalogue) {
        return new SheetPage().piece(sheet(assembly, demanded, catalogue));
    }

    private PieceSheet sheet(Assembly assembly, Demanded demanded, Catalogue catalogue) {
        Assembly.Ordered ordered = assembly.ordered();
        String customer = ordered.customer().isEmpty() ? "" : ", for " + ordered.customer();
        Assembly.Make make = assembly.make();
        return new PieceSheet(
                "Order " + ordered.source().order() + ", line "
                        + ordered.source().line() + customer,
                figures.fineUnit(),
                List.of(end("end A: ", make.endA(), demanded), end("end B: ", make.endB(), demanded)),
                figures.written(make.finished()),
                demanded.derivations().stream()
                        .map(derivation -> length(derivation, catalogue.rope(derivation.rope())))
                        .toList(),
                new Layouts(figures).of(List.of(demanded)),
                Cautions.ALWAYS);
    }

    private DrawnEnd end(String name, EndSpec spec, Demanded demanded) {
        List<String> amounts = new ArrayList<>();
        boolean tail = false;
        if (!demanded.derivations().isEmpty()) {
            for (Derivation.Line line : demanded.derivations().get(0).lines()) {
                if (line.label().startsWith(name)) {
                    String label = line.label().substring(name.length());
                    amounts.add(label + " " + figures.tape(line.amount()));
                    tail |= label.startsWith("tail");
                }
            }
        }
        boolean eye = !spec.eye().equals(EyeSpec.NONE);
        boolean fitting = !spec.fitting().equals(EndSpec.FittingSpec.NONE);
        return new DrawnEnd(eye, fitting, tail, amounts);
    }

    private DerivedLength length(Derivation derivation, Rope rope) {
        SourceNotes sources = new SourceNotes();
        PrintedAmounts amounts = PrintedAmounts.of(derivation, rope, figures);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < derivation.lines().size(); i++) {
            Derivation.Line line = derivation.lines().get(i);
            lines.add(new Line(line.label(), amounts.lines().get(i), line.formula(), sources.mark(line.provenance())));
        }
        List<String> notes = new ArrayList<>(sources.notes());
        derivation.notes().forEach(note -> notes.add(note.endsWith(".") ? note : note + "."));
        return new DerivedLength(
                FindingsPage.count(derivation.pieces().size(), "piece") + " from " + rope.name(),
                String.join(", ", derivation.pieces()),
                lines,
                amounts.sum(),
                figures.length(rope.cutting().exactly(derivation.cut())),
                notes);
    }
}
