package bitterend.cli;

import bitterend.front.ChangeWords;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.page.Wording;
import bitterend.work.IssuedWork.OnTheBench;
import bitterend.work.plans.DayQuestion;
import bitterend.work.plans.PlannedDay;
import java.util.List;

/** Tells on the error stream what is planned with, and what is to be known of the plan that was made. */
final class PlanTold {
    private final Terminal terminal;
    private final Figures figures;

    PlanTold(Terminal terminal, Figures figures) {
        this.terminal = terminal;
        this.figures = figures;
    }

    /** What is to be planned. */
    void question(DayQuestion question) {
        DayQuestion.Stock stock = question.stock();
        if (!stock.stale().isEmpty()) {
            say("values.json: the curve of " + String.join(", ", stock.stale())
                    + " was learned from the past once; it is stale and not used");
        }
        say("stock: " + stock.source() + ", " + FindingsPage.count(stock.reels(), "reel")
                + (stock.cut() == 0 ? "" : "; " + FindingsPage.count(stock.cut(), "piece") + " cut already"));
        if (!question.bench().isEmpty()) {
            onTheBench(question.bench(), question.withdraw());
        }
    }

    private void onTheBench(List<OnTheBench> reels, boolean withdraw) {
        say("issued and not posted:");
        for (OnTheBench reel : reels) {
            String ends = reel.holds()
                    ? withdraw ? ": called back" : ""
                    : ": its sheet no longer holds: " + figures.sentence(reel.broken());
            say("  plan " + reel.plan() + ", reel " + reel.reel() + ", "
                    + FindingsPage.count(reel.pieces().size(), "piece") + " to cut" + ends);
        }
        if (!withdraw) {
            say(
                    reels.stream().allMatch(OnTheBench::holds)
                            ? "They stay as they are issued. To plan them anew, call the sheets back with --withdraw."
                            : "What no longer holds is planned anew: take that sheet off the bench."
                                    + (reels.stream().anyMatch(OnTheBench::holds)
                                            ? " The others stay as they are issued."
                                            : ""));
        }
    }

    /** What came of it: what moved, what is proven. */
    void planned(PlannedDay day) {
        day.changes().ifPresent(this::changes);
        if (!day.unsound().isEmpty()) {
            say("fault of this program: a plan that breaks a rule was made and thrown away. The plan below"
                    + " passed every check. Please send us the shop folder as it is, with this:");
            day.unsound().forEach(fault -> say("  " + fault));
        }
        proof(day.proof());
    }

    /** How many bounds are confirmed whole, and each of which a part is not. */
    private void proof(PlannedDay.Proof proof) {
        if (proof.whole() > 0 || !proof.open().isEmpty()) {
            say("proof, computed again:");
        }
        if (proof.whole() > 0) {
            say("  " + FindingsPage.count(proof.whole(), "bound") + " confirmed");
        }
        proof.open().forEach(sentence -> say("  " + sentence));
    }

    private void changes(PlannedDay.Since since) {
        say(ChangeWords.head(since));
        ChangeWords.lines(since, figures).forEach(line -> say("  " + line));
    }

    private void say(String line) {
        terminal.err().println(Wording.sentence(line));
    }
}
