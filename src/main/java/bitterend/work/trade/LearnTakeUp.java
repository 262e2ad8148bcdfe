package bitterend.work.trade;

import bitterend.demand.DemandModel;
import bitterend.demand.calibration.Calibration;
import bitterend.demand.calibration.Effect;
import bitterend.exchange.CalibratedSplices;
import bitterend.exchange.MeasuredCsv;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.measure.Units;
import bitterend.work.ShopNow;
import java.util.List;

/** Learns take-up from assemblies that the shop has measured. */
public final class LearnTakeUp {
    private final ShopNow now;

    public LearnTakeUp(ShopNow shop) {
        now = shop;
    }

    /** What was learned. */
    public sealed interface Result {
        /** What could be fitted, what could not, and what that changes in the open orders. */
        record Learned(Calibration calibration, List<Effect> effects) implements Result {
            public Learned {
                effects = List.copyOf(effects);
            }
        }

        /** What was measured has errors. */
        record NotLearned(List<Finding> findings) implements Result {
            public NotLearned {
                findings = List.copyOf(findings);
            }
        }
    }

    /** Learns; {@code units} is what findings are told in. */
    public Result learn(Units units) {
        Shop shop = now.shop();
        MeasuredCsv.Reading measured = MeasuredCsv.read(now.at().folder(), shop);
        if (measured.findings().stream().anyMatch(Finding::isError)) {
            return new Result.NotLearned(measured.findings());
        }
        Calibration calibration = Calibration.of(new DemandModel(shop.catalogue(), units), measured.assemblies());
        if (calibration.findings().stream().anyMatch(Finding::isError)) {
            return new Result.NotLearned(calibration.findings());
        }
        return new Result.Learned(
                calibration,
                Effect.on(shop.orders().stream().map(OrderLine::assembly).toList(), shop.catalogue(), calibration));
    }

    /** Writes what was fitted into {@code splices.json}; what keeps it from that, or nothing. */
    public List<Finding> write(Result.Learned learned) {
        return CalibratedSplices.write(now.at().folder(), learned.calibration().fits());
    }
}
