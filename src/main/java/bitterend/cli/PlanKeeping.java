package bitterend.cli;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.PlanJson;
import bitterend.finding.Findings;
import bitterend.work.KeepPlan;
import bitterend.work.KeepPlan.Outcome;
import bitterend.work.Plans;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;

/** Keeps a plan that was made. A plan that cannot be written is shown all the same, and the reader told what to do. */
final class PlanKeeping {
    private final Terminal terminal;
    private final ShopArgument shop;
    private final OnTheBenchOption bench;
    private final List<String> faults = new ArrayList<>();

    PlanKeeping(Terminal terminal, ShopArgument shop, OnTheBenchOption bench) {
        this.bench = bench;
        this.terminal = terminal;
        this.shop = shop;
    }

    /** Under the next number, and in force; as it was made when it could not be written. */
    PlanDocument numbered(PlanDocument made) {
        String who = Who.of(null);
        Plans plans = shop.plans(new Findings());
        Outcome outcome = new KeepPlan(plans, who, Clock.systemUTC()).keep(made);
        if (outcome instanceof Outcome.InForce kept) {
            bench.calledBack(plans, (plan, reels) -> plans.withdraw(plan, reels, who, Clock.systemUTC()));
            return kept.plan().document();
        }
        if (outcome instanceof Outcome.NotInForce kept) {
            int number = kept.plan().document().number();
            faults.add("plan " + number + " was written to " + kept.plan().file() + ", but is not in force: "
                    + Faults.sentence(kept.fault()));
            faults.add("The plan before it still is. When that is put right, plan again.");
            return kept.plan().document();
        }
        Outcome.NotWritten lost = (Outcome.NotWritten) outcome;
        notWritten(shop.folder.resolve(PlanFolder.NAME), lost.fault());
        return made;
    }

    /** In a file of its own, without a number. */
    PlanDocument beside(PlanDocument made, Path file) {
        try {
            PlanJson.write(file, made);
        } catch (UncheckedIOException fault) {
            notWritten(file, fault);
        }
        return made;
    }

    private void notWritten(Path where, Exception fault) {
        faults.add("this plan was not written to " + where + ": " + Faults.sentence(fault));
        faults.add("It is printed above and nowhere else. Make room there and plan again, or write it elsewhere with"
                + " --out FILE.");
    }

    /** Tells what could not be written; whether there was anything to tell. */
    boolean tellFaults() {
        for (int i = 0; i < faults.size(); i++) {
            terminal.err().println((i == 0 ? "error: " : "") + faults.get(i));
        }
        return !faults.isEmpty();
    }
}
