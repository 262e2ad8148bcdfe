package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rack as a table that reads back. A ledger of before took ids and lots that no file may state today: such reels are
 * left out of the table and named.
 *
 * @param csv the table, in the form of {@code reels.csv}
 * @param leftOut what is wrong with each reel that is not in it
 */
public record ReelsExport(String csv, List<Finding> leftOut) {
    private static final String NAME = "rack";

    public ReelsExport {
        leftOut = List.copyOf(leftOut);
    }

    /** The reels in the order of the table, which is that of their ids. */
    public static ReelsExport of(List<Reel> reels) {
        Map<String, Reel> byRow = new LinkedHashMap<>();
        reels.stream()
                .sorted(java.util.Comparator.comparing(Reel::id, NaturalOrder.IDS))
                .forEach(reel -> byRow.put("row " + (byRow.size() + 2), reel));
        Findings findings = new Findings();
        new ReelsCsv(Ropes.UNREAD, findings).read(new InputFile(NAME, ReelsText.csv(List.copyOf(byRow.values())), ""));
        List<Finding> leftOut = new ArrayList<>();
        for (Finding finding : findings.sorted()) {
            Reel reel = byRow.get(finding.place());
            if (finding.isError() && reel != null) {
                leftOut.add(named(finding, reel).leavingOut());
            }
        }
        findings.sorted().stream().filter(Finding::isError).forEach(wrong -> byRow.remove(wrong.place()));
        return new ReelsExport(ReelsText.csv(List.copyOf(byRow.values())), leftOut);
    }

    private static Finding named(Finding wrong, Reel reel) {
        return Finding.error(
                wrong.file(),
                wrong.place() + " (reel " + reel.id() + ")",
                wrong.field(),
                wrong.found(),
                wrong.expected());
    }
}
