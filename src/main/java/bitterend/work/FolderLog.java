package bitterend.work;

import bitterend.exchange.PlanEvent;
import bitterend.exchange.PlanEventFiles;
import bitterend.finding.Findings;
import java.nio.file.Path;
import java.util.List;

/** The log of a shop without a ledger: files beside its plans. */
final class FolderLog implements PlanLog {
    private final PlanEventFiles files;
    private final Findings findings;

    /**
     * @param shop the shop folder
     * @param findings where files that cannot be read are told
     */
    FolderLog(Path shop, Findings findings) {
        files = new PlanEventFiles(shop);
        this.findings = findings;
    }

    @Override
    public List<PlanEvent> events() {
        return files.events(findings);
    }

    @Override
    public void add(PlanEvent event) {
        files.add(event);
    }
}
