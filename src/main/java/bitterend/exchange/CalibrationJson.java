package bitterend.exchange;

import bitterend.demand.calibration.Calibration;
import bitterend.demand.calibration.Effect;
import bitterend.demand.calibration.EndMinutes;
import bitterend.demand.calibration.MeasuredAssembly;
import bitterend.demand.calibration.TakeUpFit;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.Sentence;
import java.util.List;

/** What measured assemblies teach, for programs. */
public final class CalibrationJson {
    private CalibrationJson() {}

    /** Format {@code bitterend/calibration/1}: take-up, what it changes in the open orders, and minutes of ends. */
    public static String of(Calibration calibration, List<Effect> effects, List<EndMinutes> minutes) {
        JsonTree tree = new JsonTree()
                .with("format", "bitterend/calibration/1")
                .with(
                        "fits",
                        calibration.fits().stream().map(CalibrationJson::tree).toList())
                .with("effects", effects.stream().map(CalibrationJson::tree).toList())
                .with("minutes", minutes.stream().map(CalibrationJson::tree).toList());
        return AnswerJson.withFindings(tree, calibration.findings()).text();
    }

    private static JsonTree tree(Effect effect) {
        return new JsonTree()
                .with("rope", effect.rope())
                .with("pieces", effect.pieces())
                .with("more", LengthText.exact(effect.more()))
                .with("costMillis", effect.cost().millis());
    }

    private static JsonTree tree(EndMinutes minutes) {
        return new JsonTree()
                .with("termination", minutes.termination())
                .with("rope", minutes.rope())
                .with("ends", minutes.ends())
                .with("mean", minutes.mean())
                .with("set", minutes.set());
    }

    private static JsonTree tree(TakeUpFit fit) {
        return new JsonTree()
                .with("termination", fit.termination())
                .with("rope", fit.rope())
                .with("variant", fit.variant())
                .with("ends", fit.ends())
                .with("assemblies", fit.count())
                .with("mean", LengthText.exact(fit.mean()))
                .with("takeUp", LengthText.exact(fit.upper()))
                .with("takeUpOfTwo", LengthText.exact(fit.upperOfTwo()))
                .with("spread", LengthText.exact(fit.spread()))
                .with("remarks", (Object)
                        fit.remarks().stream().map(Sentence::exact).toList())
                .with("outliers", (Object)
                        fit.outliers().stream().map(MeasuredAssembly::id).toList());
    }
}
