package bitterend.work;

import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.packing.Cut;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.work.Verdict.Passed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the settings, ropes and pins of the shop say otherwise than when a plan was made. */
final class SettingsSince {
    private final Passed plan;
    private final Shop shop;

    SettingsSince(Passed plan, Shop shop) {
        this.plan = plan;
        this.shop = shop;
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        PackingProblem problem = plan.problem();
        if (!problem.prices().equals(shop.settings().prices())) {
            remarks.add(
                    Remark.told("", "the prices of the rules were changed; what the plan costs is by those of then"));
        }
        Map<String, Rope> ropes = new HashMap<>();
        shop.catalogue().ropes().forEach(rope -> ropes.put(rope.id(), rope));
        for (ReelDraw draw : plan.plan().draws()) {
            Rope was = problem.ropeOn(problem.reel(draw.reel()));
            Rope is = ropes.get(was.id());
            if (is == null || !is.identity().equals(was.identity())) {
                remarks.add(Remark.barring(draw.reel(), "rope " + was.id() + " is another one now, or none"));
            } else if (!is.cutting().equals(was.cutting())) {
                remarks.add(Remark.told(draw.reel(), "rope " + was.id() + ": the loss of a cut was changed"));
            }
        }
        remarks.addAll(pins());
        return remarks;
    }

    private List<Remark> pins() {
        Map<String, String> pinned = new HashMap<>();
        for (Pin pin : shop.pins()) {
            pinned.put(pin.piece(), pin.reel());
        }
        List<Remark> remarks = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            for (Cut cut : draw.cuts()) {
                String reel = pinned.getOrDefault(cut.piece(), draw.reel());
                if (!reel.equals(draw.reel())) {
                    remarks.add(Remark.barring(draw.reel(), cut.piece() + " is pinned to " + reel + " now"));
                }
            }
        }
        return remarks;
    }
}
