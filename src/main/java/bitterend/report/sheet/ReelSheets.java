package bitterend.report.sheet;

import bitterend.measure.Length;
import bitterend.packing.ReelDraw;
import bitterend.report.Fact;
import bitterend.report.Figures;
import bitterend.report.Mark;
import bitterend.report.PlanView;
import bitterend.report.ReelWords;
import bitterend.report.RowWords;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;

/** Lays out the block of a reel: what it is, then its cutting table in segments that fit a page. */
final class ReelSheets {
    /** The first segment shares its page with the head of the block. Heights in CSS pixels; A4 and Letter both hold them. */
    private static final int FIRST_SEGMENT = 690;

    private static final int NEXT_SEGMENT = 840;

    /** What one line about a change takes of the first segment. */
    private static final int CHANGE = 38;

    private final PlanView view;
    private final Figures figures;
    private final ReelWords words;
    private final RowWords rowWords;

    ReelSheets(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        words = new ReelWords(view, figures);
        rowWords = new RowWords(view, figures);
    }

    ReelSheet of(ReelDraw draw) {
        List<Fact> facts = new ArrayList<>(words.stands(draw));
        facts.addAll(words.contents(draw));
        facts.addAll(words.rope(draw));
        return new ReelSheet(
                draw.reel(),
                view.rope(draw).name(),
                view.mark().words(draw.reel()),
                words.promise(draw),
                view.mark().changesOf(draw.reel()).stream()
                        .map(figures::sentence)
                        .toList(),
                facts,
                words.eachCut(draw),
                words.cautions(draw),
                limit(draw),
                words.counter(draw),
                segments(
                        rows(draw, view.marks(draw)),
                        CHANGE
                                * ((view.isPromise(draw) ? 1 : 0)
                                        + view.mark().changesOf(draw.reel()).size()
                                        + view.beforeCut(draw).cautions().size())),
                words.rest(draw));
    }

    private String limit(ReelDraw draw) {
        Reel reel = view.reel(draw);
        Length sure = reel.contents().certainEnd().minus(draw.leadTrim());
        return reel.contents().uncertainty().isPositive() ? figures.length(view.reading(draw, sure)) : "";
    }

    private List<Row> rows(ReelDraw draw, List<Mark> marks) {
        RowHeights heights = new RowHeights(figures.units());
        List<Row> rows = new ArrayList<>();
        int cuts = 0;
        for (Mark mark : marks) {
            RowWords.Words said = rowWords.of(draw, mark);
            boolean cut = mark.kind() == Mark.Kind.CUT;
            cuts += cut ? 1 : 0;
            rows.add(new Row(
                    mark,
                    cut ? cuts : 0,
                    figures.bare(view.reading(draw, mark)),
                    mark.length().isPositive() ? figures.bare(view.length(draw, mark)) : "",
                    figures.bareTotal(mark.left()),
                    said,
                    heights.of(mark, said)));
        }
        return rows;
    }

    /** Page by page; who wants a piece is not said again under itself, but again at the top of a page. */
    private List<Segment> segments(List<Row> rows, int taken) {
        RowHeights heights = new RowHeights(figures.units());
        List<Segment> segments = new ArrayList<>();
        List<Row> page = new ArrayList<>();
        int height = 0;
        for (int i = 0; i < rows.size(); i++) {
            Row row = page.isEmpty() ? rows.get(i) : rows.get(i).under(rows.get(i - 1), heights);
            int room = segments.isEmpty() ? FIRST_SEGMENT - taken : NEXT_SEGMENT;
            if (!page.isEmpty() && height + row.height() > room) {
                segments.add(new Segment(page, TapeScale.draw(page)));
                page = new ArrayList<>();
                height = 0;
                row = rows.get(i);
            }
            page.add(row);
            height += row.height();
        }
        segments.add(new Segment(page, TapeScale.draw(page)));
        return segments;
    }
}
