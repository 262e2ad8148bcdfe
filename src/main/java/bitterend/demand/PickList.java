package bitterend.demand;

import bitterend.demand.EndWork.Picked;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What must be picked besides rope: thimbles, fittings, clips, twine, hardware of products. */
public final class PickList {
    private static final Comparator<Picked> BY_SIZE =
            Comparator.comparing(Picked::item).thenComparing(each -> each.rope().units());

    private final Map<Picked, Integer> counts = new TreeMap<>(BY_SIZE);

    /** Adds what an order line asks for; nothing when it cannot be made. */
    public void add(Assembly assembly, Demanded demanded) {
        add(assembly, demanded, demanded.pieces().size());
    }

    /** Adds what so many pieces of an order line ask for, and an assembly for each full count of its legs, begun ones too. */
    public void add(Assembly assembly, Demanded demanded, int pieces) {
        int legs = assembly.ordered().legs();
        int assemblies = -Math.floorDiv(-pieces, legs);
        for (EndWork end : demanded.work()) {
            end.parts().forEach(part -> add(part, pieces));
            end.shared(legs).forEach(part -> add(part, assemblies));
        }
        assembly.membership().hardware().forEach(part -> add(part, assemblies));
    }

    private void add(Picked part, int times) {
        if (times > 0) {
            counts.merge(part, Math.multiplyExact(part.count(), times), Math::addExact);
        }
    }

    /** Every item of every size once, by name, then by size. */
    public List<Picked> items() {
        return counts.entrySet().stream()
                .map(entry -> new Picked(entry.getKey().item(), entry.getKey().rope(), entry.getValue()))
                .toList();
    }
}
