package bitterend.demand.calibration;

import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.Measuring;
import bitterend.demand.TakeUp;
import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What measured assemblies teach about take-up, by termination and rope.
 *
 * @param fits one for each termination and rope that could be fitted
 * @param findings errors of rows that cannot be right, warnings why a termination and rope could not be fitted
 */
public record Calibration(List<TakeUpFit> fits, List<Finding> findings) {
    private static final int FEWEST = 3;

    public Calibration {
        fits = List.copyOf(fits);
        findings = List.copyOf(findings);
    }

    /** One assembly and the take-up it shows. */
    private record Shown(MeasuredAssembly measured, TakeUp takeUp) {}

    /** How an assembly was measured; only like is averaged with like. */
    private record Conditions(Measuring measuring, boolean beddedIn, int ends) {}

    /** Fits every termination and rope with at least three assemblies, all measured under the same conditions. */
    public static Calibration of(DemandModel model, List<MeasuredAssembly> measured) {
        List<Finding> findings = new ArrayList<>();
        Map<String, List<Shown>> groups = new TreeMap<>();
        for (MeasuredAssembly each : measured) {
            TakeUp takeUp = model.takeUp(each.assembly(), each.cut().exact());
            findings.addAll(takeUp.findings());
            if (takeUp.isKnown()) {
                String rope = each.assembly().ropes().get(0);
                groups.computeIfAbsent(takeUp.termination() + "\n" + rope, any -> new ArrayList<>())
                        .add(new Shown(each, takeUp));
            }
        }
        List<TakeUpFit> fits = new ArrayList<>();
        groups.values().forEach(group -> fit(group, findings).ifPresent(fits::add));
        return new Calibration(fits, findings);
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

    private static Optional<TakeUpFit> fit(List<Shown> group, List<Finding> findings) {
        Shown first = group.get(0);
        if (group.size() < FEWEST) {
            findings.add(problem(
                    first,
                    group.size() + " of " + first.takeUp().termination(),
                    "at least three of a termination and rope"));
            return Optional.empty();
        }
        for (Shown other : group) {
            if (!conditions(other).equals(conditions(first))) {
                findings.add(problem(
                        other,
                        first.takeUp().termination() + " measured otherwise than "
                                + first.measured().id(),
                        "the same conditions throughout: points, tension, bedded in or not, one spliced end or both"));
                return Optional.empty();
            }
        }
        PredictionFormula formula = PredictionFormula.of(group.stream()
                .mapToDouble(shown -> shown.takeUp().together().units())
                .toArray());
        int ends = first.takeUp().ends();
        return Optional.of(new TakeUpFit(
                first.takeUp().termination(),
                first.measured().assembly().ropes().get(0),
                ends,
                formula.count(),
                new FineLength(Math.round(formula.mean() / ends)),
                Length.max(Length.ZERO, new FineLength((long) Math.ceil(formula.upper() / ends)).roundedUp()),
                formula.outliers().stream().map(i -> group.get(i).measured()).toList()));
    }

    private static Conditions conditions(Shown shown) {
        return new Conditions(
                shown.measured().assembly().make().measuring(),
                shown.measured().beddedIn(),
                shown.takeUp().ends());
    }

    private static Finding problem(Shown shown, String found, String expected) {
        Assembly.Origin origin = shown.measured().assembly().origin();
        return Finding.warning(origin.file(), origin.place(), "", found, expected);
    }
}
