package bitterend.cli;

import bitterend.exchange.PlanEvent;
import bitterend.work.IssuePlan;
import bitterend.work.IssuePlan.Outcome;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.Verdict;
import java.time.Clock;
import java.util.List;
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

    boolean isAsked() {
        return issue;
    }

    ExitCode issue(Terminal terminal, Plans plans, Verdict.Passed passed, List<Remark> remarks) {
        Outcome outcome = new IssuePlan(plans, Who.of(who), Clock.systemUTC()).issue(passed, remarks);
        if (outcome instanceof Outcome.Refused refused) {
            refused.reasons().forEach(reason -> terminal.err().println("error: " + reason));
            terminal.err().println("Nothing was issued.");
            return ExitCode.STOCK_CHANGED;
        }
        PlanEvent event =
                outcome instanceof Outcome.Already already ? already.event() : ((Outcome.Issued) outcome).event();
        String again = outcome instanceof Outcome.Already ? " already" : "";
        terminal.err().println("plan " + event.plan() + " is issued" + again + ": " + event.at() + ", " + event.who());
        return ExitCode.DONE;
    }
}
