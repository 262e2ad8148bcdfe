package bitterend.report;

import bitterend.demand.SpliceCard.Outcome;
import bitterend.measure.FineLength;
import bitterend.measure.Written;
import bitterend.report.page.Document;
import bitterend.report.page.Ink;
import bitterend.report.page.Writing;

/** What became of a finished piece that was measured. */
public final class MeasuredPage {
    private final Figures figures;

    public MeasuredPage(Figures figures) {
        this.figures = figures;
    }

    /**
     * It is booked.
     *
     * @param minutes how long it took; 0 when not noted
     */
    public Document booked(String piece, Written cameOut, String verdict, Outcome wanted, int minutes) {
        Writing page = new Writing();
        page.paragraph(found(piece, cameOut, wanted) + ", " + verdict
                + (minutes > 0 ? ", in " + BenchWords.time(minutes) : "") + ". A row of measured.csv.");
        return page.document();
    }

    /** It does not pass, and nobody said what becomes of it. */
    public String outside(String piece, Written cameOut, Outcome wanted) {
        Writing page = new Writing();
        page.paragraph("error: " + found(piece, cameOut, wanted) + ". Nothing was booked: say "
                + (wanted.isJudged() ? "" : "--passed, ") + "--accepted NAME, --respliced or --spoiled.");
        return page.document().text(Ink.PLAIN);
    }

    private String found(String piece, Written cameOut, Outcome wanted) {
        FineLength off = cameOut.exact().minus(wanted.length());
        String words = off.isPositive()
                ? figures.tape(off) + " longer than"
                : off.isNegative() ? figures.tape(FineLength.ZERO.minus(off)) + " shorter than" : "just";
        String passes = wanted.isJudged()
                ? "; passes from " + figures.length(wanted.least()) + " to " + figures.length(wanted.most())
                : "";
        return piece + " came out at " + figures.written(cameOut) + ", " + words + " the "
                + figures.length(wanted.length()) + " wanted " + figures.sentence(wanted.measured()) + passes;
    }
}
