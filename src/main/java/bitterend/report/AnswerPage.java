package bitterend.report;

import bitterend.measure.Cost;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.explain.KeptFor;
import bitterend.packing.explain.PieceAnswer;
import bitterend.packing.explain.PieceAnswer.Elsewhere;
import bitterend.packing.explain.ReelAnswer;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.Optional;

/** Why a plan does what it does with one piece or one reel. */
public final class AnswerPage {
    private static final int BARRED_SHOWN = 12;
    private static final int NAMED = 5;

    private final Figures figures;

    public AnswerPage(Figures figures) {
        this.figures = figures;
    }

    /** Where a piece is cut, why, what it would cost elsewhere, and what would help one that is not planned. */
    public Document of(PieceAnswer answer) {
        Writing page = new Writing();
        page.title("Piece " + answer.piece() + ": "
                + answer.place().map(RunId::toString).map("off "::concat).orElse("not planned"));
        answer.why().forEach(reason -> page.paragraph(sentence(reason)));
        List<Elsewhere> open =
                answer.elsewhere().stream().filter(Elsewhere::isOpen).toList();
        if (!open.isEmpty()) {
            page.heading("What it would cost elsewhere, all other pieces staying");
            open.forEach(other -> page.paragraph(other.run() + ": " + change(other.change())));
        }
        barred(
                page,
                answer.elsewhere().stream()
                        .filter(other -> !other.isOpen() && !holdsOtherRope(other))
                        .toList());
        if (!answer.help().isEmpty()) {
            page.heading("What would help");
            answer.help().forEach(reason -> page.paragraph(sentence(figures.sentence(reason.sentence()))));
        }
        return page.document();
    }

    /** What a reel gives and what that costs by rule, or why nothing comes off it. */
    public Document of(ReelAnswer answer) {
        Writing page = new Writing();
        boolean touched = answer.untouched().isEmpty();
        page.title("Reel " + answer.reel() + ": " + (touched ? figures.money(answer.cost()) : "not touched"));
        answer.untouched().forEach(reason -> page.paragraph(sentence(reason)));
        answer.held().forEach(held -> page.paragraph(sentence(figures.sentence(held))));
        Optional.ofNullable(answer.kept()).ifPresent(kept -> page.paragraph(kept(kept)));
        if (touched) {
            page.heading("What comes off it");
            answer.runs()
                    .forEach(run -> page.paragraph(
                            run.run() + ": " + (run.pieces().isEmpty() ? "nothing" : String.join(", ", run.pieces()))));
            page.heading("What it costs");
            answer.charges()
                    .forEach(charge -> page.paragraph(figures.money(charge.cost()) + ": "
                            + figures.sentence(charge.reason().sentence())));
        }
        return page.document();
    }

    /** For what it is kept that is not cut today, and what that costs the other work. */
    private String kept(KeptFor kept) {
        return "It is kept for " + named(kept.pieces()) + " on " + kept.day() + "; without that "
                + (kept.undone().isEmpty()
                        ? "the other work in this rope would cost " + figures.money(kept.saving()) + " less."
                        : named(kept.undone()) + " would be planned, too.");
    }

    private static String named(List<String> pieces) {
        int more = pieces.size() - NAMED;
        return String.join(", ", pieces.subList(0, Math.min(NAMED, pieces.size())))
                + (more > 0 ? " and " + more + " more" : "");
    }

    /** Not worth a line: most of a rack holds other rope. */
    private static boolean holdsOtherRope(Elsewhere other) {
        return other.bars().stream().anyMatch(bar -> bar.rule() == Rule.SAME_ROPE);
    }

    private void barred(Writing page, List<Elsewhere> barred) {
        if (barred.isEmpty()) {
            return;
        }
        page.heading("Where it cannot go");
        for (Elsewhere other : barred.subList(0, Math.min(BARRED_SHOWN, barred.size()))) {
            page.paragraph(other.run() + ": "
                    + String.join(
                            "; ",
                            other.bars().stream()
                                    .map(bar -> figures.sentence(bar.sentence()))
                                    .toList()));
        }
        if (barred.size() > BARRED_SHOWN) {
            page.paragraph("and " + (barred.size() - BARRED_SHOWN) + " more runs.");
        }
    }

    private String change(Cost change) {
        return change.millis() < 0 ? figures.money(Cost.ZERO.minus(change)) + " less" : figures.money(change) + " more";
    }

    private String sentence(Reason reason) {
        return sentence(figures.sentence(reason.sentence()));
    }

    private static String sentence(String words) {
        String capital = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }
}
