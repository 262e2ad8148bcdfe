package bitterend.cli;

import bitterend.exchange.PlanEvent;
import bitterend.work.IssuePlan;
import bitterend.work.IssuePlan.Outcome;
import bitterend.work.plans.PrintSheets.Sheets;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Giving sheets out: from then on they are what is cut by. */
final class SheetIssuing {
    @Option(names = "--issue", description = "Write down that this plan is issued: its sheets are what is cut by.")
    private boolean issue;

    @Option(
            names = "--who",
            paramLabel = "NAME",
            description = "Who issues it. Default: the name you are logged in as.")
    private @Nullable String who;

    /** Who issues the plan; null where that is not asked. */
    @Nullable
    String issuer() {
        return issue ? Who.of(who) : null;
    }

    /** That they are issued, now or before. */
    static String told(IssuePlan.Outcome issued, Sheets sheets) {
        boolean before = issued instanceof Outcome.Already;
        PlanEvent event =
                issued instanceof Outcome.Already already ? already.event() : ((Outcome.Issued) issued).event();
        return "plan " + event.plan() + " is issued" + (before ? " already" : "") + ": " + event.at() + ", "
                + event.who()
                + (sheets.isWhole()
                        ? ""
                        : "; reel "
                                + String.join(
                                        ", ", new TreeSet<>(sheets.chosen().reels())));
    }
}
