package bitterend.cli;

import bitterend.exchange.PlanFolder.Kept;
import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.work.NamedPlan;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A plan that is there and that is asked something: found, checked, and told with what happened since. */
final class AskedPlan {
    private final Terminal terminal;
    private final ShopNow now;
    private final Figures figures;

    AskedPlan(Terminal terminal, ShopNow now, Figures figures) {
        this.terminal = terminal;
        this.now = now;
        this.figures = figures;
    }

    /** Answers from the plan of this number, or from the one in force; what keeps it from that is told. */
    ExitCode then(@Nullable String number, Function<Verdict.Passed, ExitCode> answer) {
        Findings findings = new Findings();
        Plans plans = now.at().plans(findings);
        Optional<Kept> asked = new NamedPlan(plans).orInForce(number, findings);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        if (asked.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Verdict verdict = new PlanGate(now, plans).verdict(asked.get());
        if (verdict instanceof Verdict.Refused refused) {
            return new GateTold(terminal, now.at().folder()).tell(refused);
        }
        Verdict.Passed passed = verdict.passed().orElseThrow();
        terminal.err().println("asked: plan " + (passed.number() == 0 ? "without a number" : passed.number()));
        Remark.toldOnce(verdict.remarks(), CommandWord.of(now.at().named())).forEach(remark -> terminal.err()
                .println("since plan " + passed.number() + " was made: " + figures.sentence(remark.sentence())));
        return answer.apply(passed);
    }
}
