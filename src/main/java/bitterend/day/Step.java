package bitterend.day;

import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.RunDraw.Rest;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing that is done at the bench while a draw is cut. Positions are on the reel as it stood before the draw.
 *
 * @param key names the step within its draw
 * @param act what is done
 * @param piece the piece cut; empty when none is
 * @param length its planned length; of a rest, how much of it was planned to be left
 * @param from where the piece was planned to begin
 * @param to where the working end is afterwards, as planned
 * @param limit end of the run
 */
record Step(String key, Act act, String piece, Length length, Length from, Length to, Length limit) {
    /** What is done. */
    enum Act {
        /** Lead trim, and a flaw right behind it, are cut off. */
        CLEAN_END,
        CUT_PIECE,
        /** What is left of a run comes off as a coil. */
        KEEP_REST,
        SCRAP_REST,
        CUT_OUT_FLAW,
        SCRAP_REEL
    }

    /** The steps of a draw, in order. */
    static List<Step> of(ReelDraw draw) {
        List<Step> steps = new ArrayList<>();
        Length zero = draw.leadTrim();
        List<RunDraw> runs = draw.runs();
        Length first = zero.plus(runs.get(0).from());
        if (first.isPositive()) {
            steps.add(work("clean end", Act.CLEAN_END, first));
        }
        for (RunDraw run : runs) {
            addCuts(steps, run, zero);
            Length end = zero.plus(run.to());
            if (run.run() < runs.size()) {
                Act act = run.rest() == Rest.REMNANT ? Act.KEEP_REST : Act.SCRAP_REST;
                steps.add(work("rest of run " + run.run(), act, run.left(), end));
                steps.add(work(
                        "flaw behind run " + run.run(),
                        Act.CUT_OUT_FLAW,
                        zero.plus(runs.get(run.run()).from())));
            } else if (run.rest() == Rest.SCRAP) {
                Length whole = draw.book().before();
                steps.add(work("rest of reel", Act.SCRAP_REEL, run.left().plus(whole.minus(end)), whole));
            }
        }
        return steps;
    }

    /** The key of the step that cuts a piece. */
    static String ofPiece(String piece) {
        return "piece " + piece;
    }

    /** Whether another plan's step does the same; how much rope a rest is does not matter. */
    boolean isSameAs(Step other) {
        return act == other.act && piece.equals(other.piece) && (act != Act.CUT_PIECE || length.equals(other.length));
    }

    private static void addCuts(List<Step> steps, RunDraw run, Length zero) {
        Length end = run.to().minus(run.left());
        List<Cut> cuts = run.cuts();
        for (int i = 0; i < cuts.size(); i++) {
            Cut cut = cuts.get(i);
            Length next = i + 1 < cuts.size() ? cuts.get(i + 1).from() : end;
            steps.add(new Step(
                    ofPiece(cut.piece()),
                    Act.CUT_PIECE,
                    cut.piece(),
                    cut.length(),
                    zero.plus(cut.from()),
                    zero.plus(next),
                    zero.plus(run.to())));
        }
    }

    private static Step work(String key, Act act, Length to) {
        return work(key, act, Length.ZERO, to);
    }

    private static Step work(String key, Act act, Length length, Length to) {
        return new Step(key, act, "", length, to, to, to);
    }
}
