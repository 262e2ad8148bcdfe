package bitterend.demand;

import bitterend.demand.EndWork.Picked;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What must be picked besides rope: thimbles, fittings, clips, twine, hardware of products. */
public final class PickList {
    private final Map<String, Integer> counts = new TreeMap<>();

    /** Adds what an order line asks for; nothing when it cannot be made. */
    public void add(Assembly assembly, Demanded demanded) {
        int pieces = demanded.pieces().size();
        for (EndWork end : demanded.work()) {
            end.parts().forEach(part -> add(part, pieces));
        }
        int assemblies = pieces == 0 ? 0 : assembly.ordered().quantity();
        assembly.membership().hardware().forEach(part -> add(part, assemblies));
    }

    private void add(Picked part, int times) {
        if (times > 0) {
            counts.merge(part.item(), Math.multiplyExact(part.count(), times), Math::addExact);
        }
    }

    /** Every item once, by name. */
    public List<Picked> items() {
        return counts.entrySet().stream()
                .map(entry -> new Picked(entry.getKey(), entry.getValue()))
                .toList();
    }
}
