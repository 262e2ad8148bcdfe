package bitterend.work.trade;

import bitterend.demand.DemandModel;
import bitterend.demand.calibration.Calibration;
import bitterend.demand.calibration.Effect;
import bitterend.demand.calibration.EndMinutes;
import bitterend.demand.calibration.MeasuredAssembly;
import bitterend.exchange.CalibratedSplices;
import bitterend.exchange.MeasuredCsv;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.finding.Nearest;
import bitterend.measure.Units;
import bitterend.work.ShopNow;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Learns take-up from assemblies that the shop has measured, and how long it took over their ends. */
public final class LearnTakeUp {
    private final ShopNow now;

    public LearnTakeUp(ShopNow shop) {
        now = shop;
    }

    /** What was learned. */
    public sealed interface Result {
        /** What could be fitted, what could not, what that changes in the open orders, and how long ends took. */
        record Learned(Calibration calibration, List<Effect> effects, List<EndMinutes> minutes) implements Result {
            public Learned {
                effects = List.copyOf(effects);
                minutes = List.copyOf(minutes);
            }
        }

        /** What was measured has errors. */
        record NotLearned(List<Finding> findings) implements Result {
            public NotLearned {
                findings = List.copyOf(findings);
            }
        }
    }

    /**
     * Learns; rows that cannot be used are left out and told.
     *
     * @param units what findings are told in
     * @param splicer whose assemblies alone are looked at; empty for everybody's
     */
    public Result learn(Units units, String splicer) {
        Shop shop = now.shop();
        MeasuredCsv.Reading measured = MeasuredCsv.read(now.at().folder(), shop);
        if (measured.findings().stream().anyMatch(Finding::isError)) {
            return new Result.NotLearned(measured.findings());
        }
        List<MeasuredAssembly> assemblies = measured.assemblies().stream()
                .filter(each -> splicer.isEmpty() || each.splicer().equals(splicer))
                .toList();
        if (assemblies.isEmpty() && !splicer.isEmpty()) {
            return new Result.NotLearned(List.of(Finding.error(
                    MeasuredCsv.NAME,
                    "",
                    "splicer",
                    splicer,
                    "a splicer of " + MeasuredCsv.NAME + Nearest.hint(splicer, splicers(measured.assemblies())))));
        }
        DemandModel model = new DemandModel(shop.catalogue());
        Calibration learned = Calibration.of(model, assemblies);
        Calibration calibration = new Calibration(
                        learned.fits(),
                        learned.findings().stream()
                                .map(finding -> finding.in(units))
                                .toList())
                .withFindings(measured.findings());
        return new Result.Learned(
                calibration,
                Effect.on(shop.orders().stream().map(OrderLine::assembly).toList(), shop.catalogue(), calibration),
                EndMinutes.of(model, assemblies));
    }

    private static Set<String> splicers(List<MeasuredAssembly> measured) {
        return measured.stream()
                .map(MeasuredAssembly::splicer)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Writes what was fitted into {@code splices.json}; what keeps it from that, or nothing. */
    public List<Finding> write(Result.Learned learned) {
        return CalibratedSplices.write(now.at().folder(), learned.calibration().fits());
    }
}
