package bitterend.demand.calibration;

import bitterend.catalogue.Catalogue;
import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a calibration changes in the open orders, by rope as ordered.
 *
 * @param rope id of the rope
 * @param pieces pieces whose cut length changes
 * @param more rope that they take more; negative when less
 * @param cost that rope at its price; negative when saved
 */
public record Effect(String rope, int pieces, Length more, Cost cost) {

    /** The effect on these orders; ropes on which nothing changes are left out. */
    public static List<Effect> on(List<Assembly> orders, Catalogue before, Calibration calibration) {
        Catalogue after = new Catalogue(before.ropes(), calibration.applied(before.splices()));
        DemandModel old = new DemandModel(before);
        DemandModel calibrated = new DemandModel(after);
        Map<String, List<Length>> changes = new TreeMap<>();
        for (Assembly order : orders) {
            List<Piece> then = old.pieces(order).pieces();
            List<Piece> now = calibrated.pieces(order).pieces();
            for (int i = 0; i < Math.min(then.size(), now.size()); i++) {
                Length change = now.get(i).cut().minus(then.get(i).cut());
                if (!change.equals(Length.ZERO)) {
                    changes.computeIfAbsent(now.get(i).orderedRope(), any -> new ArrayList<>())
                            .add(change);
                }
            }
        }
        List<Effect> effects = new ArrayList<>();
        changes.forEach((rope, all) -> {
            Length more = all.stream().reduce(Length.ZERO, Length::plus);
            effects.add(
                    new Effect(rope, all.size(), more, before.rope(rope).price().of(more)));
        });
        return effects;
    }
}
