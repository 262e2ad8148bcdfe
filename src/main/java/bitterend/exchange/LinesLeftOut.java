package bitterend.exchange;

import bitterend.finding.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** Why an order line that was asked for by name is left out. */
public final class LinesLeftOut {
    private LinesLeftOut() {}

    /**
     * What was found about it; nothing where there is no such line.
     *
     * @param folder the shop folder
     * @param wanted the line, such as {@code 1041/3}
     * @param leftOut why lines of the shop are left out
     */
    public static List<Finding> of(Path folder, String wanted, List<Finding> leftOut) {
        Set<String> places = OrdersCsv.places(folder, wanted);
        return leftOut.stream()
                .filter(finding -> OrdersCsv.isNamed(finding.file()) && places.contains(finding.place()))
                .toList();
    }
}
