package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.EndSpec;
import bitterend.demand.HardwareSpec;
import bitterend.demand.HardwareSpec.Row;
import bitterend.demand.HardwareSpec.What;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Looks at hardware that a line leaves to another of its order to count: another must, or nobody fetches it. */
final class SharedHardware {
    private final List<Assembly> assemblies;
    private final Set<Counted> counted = new HashSet<>();

    /** Hardware that a line of an order counts. */
    private record Counted(String order, Object thing) {}

    SharedHardware(List<Assembly> assemblies) {
        this.assemblies = List.copyOf(assemblies);
        for (Assembly assembly : assemblies) {
            for (EndSpec end : List.of(assembly.make().endA(), assembly.make().endB())) {
                end.options().hardware().stream()
                        .filter(each -> !each.shared())
                        .forEach(each -> counted.add(counted(assembly, each)));
            }
        }
    }

    /** Warns of what no line of the order counts. */
    void check(Findings findings) {
        for (Assembly assembly : assemblies) {
            check(assembly, "end a", assembly.make().endA(), findings);
            check(assembly, "end b", assembly.make().endB(), findings);
        }
    }

    private void check(Assembly assembly, String field, EndSpec end, Findings findings) {
        for (HardwareSpec each : end.options().hardware()) {
            if (each.shared() && !counted.contains(counted(assembly, each))) {
                findings.add(Finding.warning(
                        assembly.origin().file(),
                        assembly.origin().place(),
                        field,
                        "shared " + name(each.what()),
                        "a line of the same order that counts it, without the word shared: as it is nobody picks"
                                + " or prices it"));
            }
        }
    }

    private static Counted counted(Assembly assembly, HardwareSpec each) {
        Object thing = each.what() instanceof Row row ? row.id() : each.what();
        return new Counted(assembly.ordered().source().order(), thing);
    }

    private static String name(What what) {
        return what instanceof HardwareSpec.Stated stated ? stated.hardware().name() : ((Row) what).id();
    }
}
