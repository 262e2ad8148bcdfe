package bitterend.report.sheet;

import bitterend.catalogue.EyeSpec;
import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Derivation;
import bitterend.demand.EndSpec;
import bitterend.report.Figures;
import bitterend.report.page.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A piece drawn for those who ask how its length came about: what lies at either end, and what that adds and takes. */
public final class PieceDrawing {
    private static final String CAPTION =
            "The finished length runs from bearing point to bearing point. What an eye takes"
                    + " from it is given back as the rope round the eye; the tail runs back along or into the standing part, which"
                    + " shortens by the take-up where it swallows it. Everything together is the cut length.";

    private final Figures figures;
    private final SheetPage page = new SheetPage();

    public PieceDrawing(Figures figures) {
        this.figures = figures;
    }

    /** The piece of an order line, end A on the left. */
    public Block.Picture of(Assembly assembly, Demanded demanded) {
        Assembly.Make make = assembly.make();
        List<DrawnEnd> ends = List.of(end("end A: ", make.endA(), demanded), end("end B: ", make.endB(), demanded));
        return new Block.Picture(
                page.render("drawing.jte", Map.of("ends", ends, "finished", figures.written(make.finished()))),
                CAPTION);
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
}
