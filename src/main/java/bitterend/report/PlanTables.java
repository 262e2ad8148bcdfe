package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.words;

import bitterend.demand.Piece;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.Unplanned;
import bitterend.report.table.DataTable;
import bitterend.report.table.DataTable.Column;
import java.util.ArrayList;
import java.util.List;

/** A plan for a spreadsheet: a row for each cut in cutting order, one for each reel, one for each piece without a reel. */
public final class PlanTables {
    private final TableFigures figures;
    private final Figures printed;

    public PlanTables(Figures figures) {
        this.figures = new TableFigures(figures);
        this.printed = figures;
    }

    /**
     * The tables of a plan.
     *
     * @param money whether what a reel costs is among them
     */
    public List<DataTable> of(PlanView view, boolean money) {
        return List.of(cuts(view), reels(view, money), unplanned(view));
    }

    /** One cut of a reel; {@code step} counts the cuts of the reel from 1. */
    private record Step(ReelDraw draw, RunDraw run, Cut cut, Piece piece, int step) {}

    private static List<Step> steps(PlanView view) {
        List<Step> steps = new ArrayList<>();
        for (ReelDraw draw : view.draws()) {
            int step = 0;
            for (RunDraw run : draw.runs()) {
                for (Cut cut : run.cuts()) {
                    steps.add(new Step(draw, run, cut, piece(view, cut.piece()), ++step));
                }
            }
        }
        return steps;
    }

    private static Piece piece(PlanView view, String id) {
        Piece piece = view.pieces().get(id);
        if (piece == null) {
            throw new IllegalArgumentException("no piece " + id);
        }
        return piece;
    }

    private DataTable cuts(PlanView view) {
        return DataTable.of(
                "Cuts",
                steps(view),
                List.of(
                        day("is cut on", each -> view.byId().days().of(each.draw())),
                        words("reel", each -> each.draw().reel()),
                        words("rope", each -> view.rope(each.draw()).id()),
                        words("lot", each -> view.reel(each.draw()).lot()),
                        count("run", each -> each.run().run()),
                        count("cut", Step::step),
                        words("piece", each -> each.piece().id()),
                        words("order", each -> each.piece().order()),
                        words("line", each -> each.piece().source().line()),
                        day("due", each -> each.piece().source().due()),
                        count("priority", each -> each.piece().source().priority()),
                        figures.fine("finished", each -> each.piece().finished().exact()),
                        figures.length("cut length", each -> each.cut().length()),
                        figures.length("from", each -> each.cut().from()),
                        figures.length("to", each -> each.cut().to()),
                        words("ends", each -> printed.written(each.piece().ends()))));
    }

    private DataTable reels(PlanView view, boolean money) {
        List<Column<ReelDraw>> columns = new ArrayList<>(List.of(
                day("is cut on", draw -> view.byId().days().of(draw)),
                words("reel", ReelDraw::reel),
                words("rope", draw -> view.rope(draw).id()),
                words("lot", draw -> view.reel(draw).lot()),
                words("place", view::place),
                count("pieces", draw -> draw.cuts().size()),
                figures.length("before", draw -> draw.book().before()),
                figures.length("in pieces", draw -> draw.book().pieces()),
                figures.length("cut loss", draw -> draw.book().cutLoss()),
                figures.length("scrap", draw -> draw.book().scrap()),
                figures.length("kept as coils", draw -> draw.book().kept()),
                figures.length("left on reel", ReelDraw::leftOnReel)));
        if (money) {
            columns.add(figures.cost("cost", ReelDraw::cost));
        }
        return DataTable.of("Reels", view.draws(), columns);
    }

    private DataTable unplanned(PlanView view) {
        return DataTable.of(
                "Not planned",
                view.plan().unplanned(),
                List.of(
                        words("piece", Unplanned::piece),
                        words("order", each -> piece(view, each.piece()).order()),
                        words("rope", each -> piece(view, each.piece()).orderedRope()),
                        day("due", each -> piece(view, each.piece()).source().due()),
                        figures.length(
                                "cut length", each -> piece(view, each.piece()).cut()),
                        words("why", each -> printed.sentence(each.reason().sentence())),
                        words("what would help", each -> printed.sentence(each.help()))));
    }
}
