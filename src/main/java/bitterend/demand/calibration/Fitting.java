package bitterend.demand.calibration;

import bitterend.demand.Assembly;
import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Fits the take-up of one termination on one rope. Like is averaged with like: assemblies measured otherwise than most are
 * left out and told; ends that are made otherwise, and splicers whose means differ, are fitted apart, and planned with are
 * those whose next end may take up most.
 */
final class Fitting {
    private static final int FEWEST = 3;
    /** So many times the band in which a row expects the take-up is no scatter any more. */
    private static final int IMPLAUSIBLE_BANDS = 3;

    private final List<Finding> findings;

    /** What keeps assemblies out is told to these findings. */
    Fitting(List<Finding> findings) {
        this.findings = findings;
    }

    Optional<TakeUpFit> fit(List<Shown> group) {
        Shown first = group.get(0);
        if (group.size() < FEWEST) {
            tell(first, group.size() + " of " + termination(first), "at least three of a termination and rope");
            return Optional.empty();
        }
        List<Shown> alike = measuredAlike(group);
        if (alike.size() < FEWEST) {
            Shown other = group.stream()
                    .filter(each -> !each.conditions().equals(first.conditions()))
                    .findFirst()
                    .orElse(first);
            tell(other, otherwise(first), "the same conditions for three at least: points, tension, bedded in or not");
            return Optional.empty();
        }
        group.stream()
                .filter(each -> !alike.contains(each))
                .forEach(each -> tell(each, otherwise(alike.get(0)), "the same conditions as most; it is left out"));
        return byMake(alike);
    }

    private static String otherwise(Shown than) {
        return termination(than) + " measured otherwise than " + than.id();
    }

    /** The most that were measured under the same conditions; of as many those that stand first. */
    private static List<Shown> measuredAlike(List<Shown> group) {
        return most(groups(group, Shown::conditions));
    }

    private static List<Shown> most(Map<?, List<Shown>> groups) {
        return groups.values().stream()
                .reduce((one, other) -> other.size() > one.size() ? other : one)
                .orElseThrow();
    }

    private static <K> Map<K, List<Shown>> groups(List<Shown> all, Function<Shown, K> key) {
        return all.stream().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
    }

    private Optional<TakeUpFit> byMake(List<Shown> alike) {
        Map<Shown.Make, List<Shown>> makes = groups(alike, Shown::make);
        List<TakeUpFit> fits = new ArrayList<>();
        makes.forEach((make, own) -> {
            if (own.size() < FEWEST) {
                tell(
                        own.get(0),
                        own.size() + " of " + termination(own.get(0)) + ", " + make.words(),
                        "at least three that are made alike; " + (own.size() == 1 ? "it is" : "they are")
                                + " left out");
            } else {
                fits.add(byHand(own, makes.size() > 1 ? make.words() : ""));
            }
        });
        return thatTakesMost(fits, "ends made otherwise are not averaged together, since they need not take up alike");
    }

    /** One fit where the splicers do not differ, or nobody knows whether they do. */
    private TakeUpFit byHand(List<Shown> own, String make) {
        PredictionFormula together = formula(own);
        List<Shown> sound = new ArrayList<>(own);
        sound.removeAll(together.outliers().stream().map(own::get).toList());
        Map<String, List<Shown>> hands = new TreeMap<>(groups(sound, Shown::splicer));
        hands.remove("");
        if (!differ(hands)) {
            return fit(own, together, make, List.of());
        }
        List<TakeUpFit> fits = new ArrayList<>();
        hands.forEach((splicer, made) -> {
            if (made.size() >= FEWEST) {
                fits.add(fit(made, formula(made), (make.isEmpty() ? "" : make + ", ") + "by " + splicer, List.of()));
            }
        });
        String differ = "the splicers take up differently, as far apart as chance puts them once in twenty times";
        return thatTakesMost(fits, differ)
                .orElseGet(() -> fit(
                        own,
                        together,
                        make,
                        List.of(Sentence.of(differ + ", but none has three assemblies: all are averaged together"))));
    }

    private static boolean differ(Map<String, List<Shown>> hands) {
        return DifferenceFormula.differ(
                hands.values().stream().map(Fitting::units).toList());
    }

    private static long[] units(List<Shown> shown) {
        return shown.stream().mapToLong(Shown::units).toArray();
    }

    private static Optional<TakeUpFit> thatTakesMost(List<TakeUpFit> fits, String why) {
        Optional<TakeUpFit> most = fits.stream().max(Comparator.comparing(TakeUpFit::upper));
        if (fits.size() < 2) {
            return most;
        }
        List<Sentence> others = fits.stream()
                .filter(fit -> !fit.equals(most.orElseThrow()))
                .map(fit -> Sentence.of(fit.variant() + ": " + fit.count() + ", up to ")
                        .and(fit.upper().fine()))
                .toList();
        return most.map(fit -> fit.with(Sentence.of(why + "; planned with those that may take up most (" + fit.variant()
                        + "), less take the others (")
                .and(Sentence.joined("; ", others))
                .and(")")));
    }

    private static PredictionFormula formula(List<Shown> own) {
        long band = own.stream()
                .mapToLong(each -> each.takeUp().band().units())
                .max()
                .orElse(0);
        return PredictionFormula.ofTakeUps(
                own.get(0).takeUp().ends(), band > 0 ? IMPLAUSIBLE_BANDS * band : Long.MAX_VALUE, units(own));
    }

    private static TakeUpFit fit(List<Shown> own, PredictionFormula formula, String variant, List<Sentence> remarks) {
        Shown first = own.get(0);
        List<Sentence> all = new ArrayList<>(remarks);
        FineLength mean = formula.meanLength();
        if (mean.isNegative()) {
            all.add(Sentence.of(
                    "its mean is below nothing: the assemblies came out longer than they were cut for; look at how they"
                            + " were measured"));
        }
        formula.suspicious()
                .ifPresent(i -> all.add(Sentence.of(
                        own.get(i).id() + " lies far from the others, and so few do not show whether it is a"
                                + " slip: measure it again, or make more")));
        return new TakeUpFit(
                termination(first),
                first.measured().assembly().ropes().get(0),
                variant,
                first.takeUp().ends(),
                formula.count(),
                mean,
                formula.marginLength(),
                formula.marginOfTwoLength(),
                formula.outliers().stream().map(i -> own.get(i).measured()).toList(),
                all);
    }

    private static String termination(Shown shown) {
        return shown.takeUp().termination();
    }

    private void tell(Shown shown, String found, String expected) {
        Assembly.Origin origin = shown.measured().assembly().origin();
        findings.add(Finding.warning(origin.file(), origin.place(), "", found, expected));
    }
}
