package bitterend.work;

import bitterend.catalogue.Rope;
import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import bitterend.work.Verdict.Passed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
        if (isHoldingChanged(problem)) {
            remarks.add(Remark.told(
                    "", "interest or room of coils was changed; what coils are worth in the plan is by those of then"));
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
            if (is != null) {
                worth(problem.values().get(was.id()), is)
                        .ifPresent(what -> remarks.add(Remark.told(draw.reel(), "rope " + was.id() + ": " + what)));
            }
        }
        remarks.addAll(pins());
        return remarks;
    }

    private boolean isHoldingChanged(PackingProblem problem) {
        Settings.Holding now = shop.settings().holding();
        return problem.values().values().stream()
                .filter(CoilValue.class::isInstance)
                .map(value -> ((CoilValue) value).terms())
                .anyMatch(terms -> !terms.interest().equals(now.interest())
                        || !terms.room().equals(now.room()));
    }

    /** What else of the worth of its coils was changed; a curve of an older version is not asked. */
    private Optional<String> worth(@Nullable StockValue was, Rope is) {
        StockValue typed = shop.supplies().values().typed().get(is.id());
        if (was instanceof CoilValue coils && typed == null) {
            boolean same = coils.terms().price().equals(is.price())
                    && coils.terms().floor().equals(is.worth().keepFrom());
            return same ? Optional.empty() : Optional.of("its price or the shortest coil to keep was changed");
        }
        if (was == null || was instanceof RisingValue || was.equals(typed)) {
            return Optional.empty();
        }
        return Optional.of(
                typed == null
                        ? "the shop's own curve of what coils are worth was taken out"
                        : "a curve of the shop's own says now what coils are worth, or another price");
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
                    remarks.add(Remark.barring(
                            draw.reel(), cut.piece(), Sentence.of(cut.piece() + " is pinned to " + reel + " now")));
                }
            }
        }
        return remarks;
    }
}
