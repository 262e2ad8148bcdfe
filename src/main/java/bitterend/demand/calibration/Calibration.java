package bitterend.demand.calibration;

import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.demand.DemandModel;
import bitterend.demand.TakeUp;
import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What measured assemblies teach about take-up, by termination and rope.
 *
 * @param fits one for each termination and rope that could be fitted
 * @param findings rows that are left out, and why a termination and rope could not be fitted
 */
public record Calibration(List<TakeUpFit> fits, List<Finding> findings) {
    public Calibration {
        fits = List.copyOf(fits);
        findings = List.copyOf(findings);
    }

    /**
     * Fits every termination and rope with at least three assemblies that were measured under the same conditions. Where ends
     * made otherwise, or splicers, take up differently, planned with are those that take up more.
     */
    public static Calibration of(DemandModel model, List<MeasuredAssembly> measured) {
        List<Finding> findings = new ArrayList<>();
        Map<String, List<Shown>> groups = new TreeMap<>();
        for (MeasuredAssembly each : measured) {
            TakeUp takeUp = model.takeUp(each.assembly(), each.cut().exact());
            takeUp.findings().forEach(finding -> findings.add(finding.isError() ? finding.leavingOut() : finding));
            if (takeUp.isKnown()) {
                String rope = each.assembly().ropes().get(0);
                groups.computeIfAbsent(takeUp.termination() + "\n" + rope, any -> new ArrayList<>())
                        .add(new Shown(each, takeUp));
            }
        }
        List<TakeUpFit> fits = new ArrayList<>();
        groups.values().forEach(group -> new Fitting(findings).fit(group).ifPresent(fits::add));
        return new Calibration(fits, findings);
    }

    /** The same with what else was found, before its own. */
    public Calibration withFindings(List<Finding> others) {
        List<Finding> all = new ArrayList<>(others);
        all.addAll(findings);
        return new Calibration(fits, all);
    }

    /** The book with the measured allowances in place. */
    public SpliceBook applied(SpliceBook book) {
        return book.withTerminations(
                book.terminations().stream().map(this::applied).toList());
    }

    private Termination applied(Termination row) {
        Termination changed = row;
        for (TakeUpFit fit : fits) {
            if (fit.termination().equals(row.id())) {
                changed = changed.withMeasured(fit.rope(), fit.allowances());
            }
        }
        return changed;
    }
}
