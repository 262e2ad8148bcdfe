package bitterend.cli;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFolder;
import bitterend.work.KeepPlan.Outcome;
import bitterend.work.ShopAccess;
import bitterend.work.plans.PlanBeside;
import bitterend.work.plans.PlanDay;
import bitterend.work.plans.PlannedDay;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Keeps a plan that was made. A plan that cannot be written is shown all the same, and the reader told what to do. */
final class PlanKeeping {
    private final ShopAccess shop;
    private final List<String> faults = new ArrayList<>();

    PlanKeeping(ShopAccess shop) {
        this.shop = shop;
    }

    /** Under the next number, and in force; as it was made when it could not be written. */
    PlanDocument numbered(PlanDay verb, PlannedDay planned) {
        Outcome outcome = verb.keep(planned, Who.of(null));
        if (outcome instanceof Outcome.InForce kept) {
            return kept.plan().document();
        }
        if (outcome instanceof Outcome.NotInForce kept) {
            int number = kept.plan().document().number();
            faults.add("plan " + number + " was written to " + kept.plan().file() + ", but is not in force: "
                    + Faults.sentence(kept.fault()));
            faults.add("The plan before it still is. When that is put right, plan again.");
            return kept.plan().document();
        }
        notWritten(shop.folder().resolve(PlanFolder.NAME), ((Outcome.NotWritten) outcome).fault());
        return planned.plan();
    }

    /** In a file of its own, without a number. */
    PlanDocument beside(PlanDocument made, Path file) {
        new PlanBeside(shop.folder(), file).write(made).ifPresent(fault -> notWritten(file, fault));
        return made;
    }

    private void notWritten(Path where, Exception fault) {
        faults.add("this plan was not written to " + where + ": " + Faults.sentence(fault));
        faults.add("It is printed above and nowhere else. Make room there and plan again, or write it elsewhere with"
                + " --out FILE.");
    }

    /** Tells what could not be written; whether there was anything to tell. */
    boolean tellFaults(Terminal terminal) {
        for (int i = 0; i < faults.size(); i++) {
            terminal.err().println((i == 0 ? "error: " : "") + faults.get(i));
        }
        return !faults.isEmpty();
    }
}
