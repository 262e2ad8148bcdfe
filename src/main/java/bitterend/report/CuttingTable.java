package bitterend.report;

import bitterend.catalogue.Rope.Cutting;
import bitterend.demand.Piece;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.UncertainRest;
import bitterend.report.Mark.Kind;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The marks of one reel in the order in which they pass the bench, from the working end. */
final class CuttingTable {
    private static final String TOO_SHORT = "too short to keep";

    private final Reel reel;
    private final Cutting cutting;
    private final Map<String, Piece> pieces;
    private final String beforeCut;
    private final Length end;
    private FineLength over = FineLength.ZERO;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * @param cutting how the rope is cut
     * @param pieces by id
     * @param beforeCut what to do before each cut, in a few words
     */
    static List<Mark> of(Reel reel, ReelDraw draw, Cutting cutting, Map<String, Piece> pieces, String beforeCut) {
        CuttingTable table = new CuttingTable(reel, draw.leadTrim(), cutting, pieces, beforeCut);
        table.workingEnd(draw.leadTrim());
        Length done = Length.ZERO;
        Length scrap = Length.ZERO;
        for (RunDraw run : draw.runs()) {
            table.flawBefore(run, done, scrap, draw.leadTrim());
            run.cuts().forEach(cut -> table.cut(cut, run));
            table.rest(run, draw);
            done = run.to();
            scrap = run.rest() == RunDraw.Rest.SCRAP ? run.left() : Length.ZERO;
        }
        table.bitterEnd(draw);
        return List.copyOf(table.marks);
    }

    /** The same where the rest that is planned as scrap is to be measured first: it stays on the reel until then. */
    static List<Mark> measuring(UncertainRest rest, List<Mark> marks) {
        List<Mark> measuring = new ArrayList<>(marks);
        measuring.replaceAll(mark -> mark.kind() == Kind.SCRAP && !mark.left().isPositive()
                ? new Mark(
                        Kind.MEASURE,
                        mark.at().minus(rest.byLedger()),
                        rest.byLedger(),
                        rest.byLedger(),
                        Sentence.of("keep if ").and(rest.keepFrom()).and(" or more"))
                : mark);
        return List.copyOf(measuring);
    }

    private CuttingTable(Reel reel, Length leadTrim, Cutting cutting, Map<String, Piece> pieces, String beforeCut) {
        this.reel = reel;
        this.cutting = cutting;
        this.pieces = pieces;
        this.beforeCut = beforeCut;
        this.end = reel.length().minus(leadTrim).minus(reel.contents().innerWraps());
    }

    private void workingEnd(Length leadTrim) {
        if (leadTrim.isPositive()) {
            add(
                    Kind.LEAD_TRIM,
                    Length.ZERO.minus(leadTrim),
                    leadTrim,
                    end.plus(leadTrim),
                    "zero the counter at the worn end, cut off here");
        }
        add(Kind.CLEAN_END, Length.ZERO, Length.ZERO, end, "set the counter to zero");
    }

    /** A flaw comes off with the scrap before it, in one cut. */
    private void flawBefore(RunDraw run, Length done, Length scrap, Length leadTrim) {
        if (run.from().isLongerThan(done)) {
            String what = reel.flaws().stream()
                    .filter(flaw -> flaw.avoidFrom().minus(leadTrim).isShorterThan(run.from())
                            && flaw.avoidTo().minus(leadTrim).isLongerThan(done))
                    .map(Flaw::what)
                    .distinct()
                    .collect(Collectors.joining(", "));
            add(Kind.FLAW, run.from(), run.from().minus(done).plus(scrap), end.minus(run.from()), what);
        } else if (scrap.isPositive()) {
            add(Kind.SCRAP, done, scrap, end.minus(done), TOO_SHORT);
        }
    }

    private void cut(Cut cut, RunDraw run) {
        Piece piece = pieces.get(cut.piece());
        if (piece == null) {
            throw new IllegalArgumentException("no piece " + cut.piece());
        }
        Length leftOfRun = Length.max(Length.ZERO, run.to().minus(cut.to()).minus(cutting.loss()));
        over = over.plus(cut.length().fine().minus(cutting.exactly(cut.length())));
        marks.add(new Mark(
                Kind.CUT,
                cut.to(),
                cut.length(),
                leftOfRun.plus(end.minus(run.to())),
                cut.piece(),
                Sentence.of(words(piece)),
                beforeCut,
                over));
    }

    private static String words(Piece piece) {
        String released = piece.matching().released();
        String ends = EndsInWords.of(piece.ends());
        return released.isEmpty() ? ends : ends + "; " + released;
    }

    private void rest(RunDraw run, ReelDraw draw) {
        boolean last = run.equals(draw.runs().get(draw.runs().size() - 1));
        Length behind = end.minus(run.to());
        switch (run.rest()) {
            case REMNANT -> add(Kind.REMNANT, run.to(), run.left(), behind, "coil to the rack");
            case SCRAP -> {
                Length scrap = run.left().plus(behind);
                if (last && scrap.isPositive()) {
                    add(Kind.SCRAP, end, scrap, Length.ZERO, TOO_SHORT);
                }
            }
            case ON_REEL -> add(
                    Kind.STAYS,
                    end.minus(draw.leftOnReel()),
                    draw.leftOnReel(),
                    draw.leftOnReel(),
                    "stays on the reel");
        }
    }

    private void bitterEnd(ReelDraw draw) {
        boolean stays = draw.leftOnReel().isPositive();
        if (stays && reel.contents().uncertainty().isPositive()) {
            Length sure = end.minus(reel.contents().uncertainty());
            add(
                    Kind.COUNT_FIRST,
                    sure,
                    reel.contents().uncertainty(),
                    reel.contents().uncertainty(),
                    "do not cut past here");
        }
        if (reel.contents().innerWraps().isPositive()) {
            add(Kind.INNER_WRAPS, end, reel.contents().innerWraps(), Length.ZERO, "do not use");
        }
    }

    private void add(Kind kind, Length at, Length length, Length left, String words) {
        marks.add(new Mark(kind, at, length, left, words));
    }
}
