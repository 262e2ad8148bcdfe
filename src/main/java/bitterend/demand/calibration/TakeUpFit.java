package bitterend.demand.calibration;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.util.List;
import java.util.Map;

/**
 * The take-up of a termination on a rope, as measured. All lengths are for one end.
 *
 * @param termination id of the termination
 * @param rope id of the rope
 * @param ends ends of each assembly that took it up together: of 2 alike only the sum was seen
 * @param count assemblies it rests on, outliers left out
 * @param mean mean take-up, to the nearest 0.0001 mm
 * @param upper what the next one stays below 95 times in 100; rounded up to a millimetre, not negative
 * @param outliers assemblies left out
 */
public record TakeUpFit(
        String termination,
        String rope,
        int ends,
        int count,
        FineLength mean,
        Length upper,
        List<MeasuredAssembly> outliers) {
    public TakeUpFit {
        outliers = List.copyOf(outliers);
    }

    /** From the mean to the upper limit; at least a millimetre, finer nobody measures. */
    public Length spread() {
        return Length.max(new Length(1), upper.fine().minus(mean).roundedUp());
    }

    /** The allowances to plan with. */
    public Map<What, Allowance> allowances() {
        FineLength takeUp = mean.isNegative() ? FineLength.ZERO : mean;
        String measured = "calibrated on " + count + " measured assemblies";
        return Map.of(
                What.TAKE_UP, fixed(takeUp, measured + ", their mean"),
                What.MARGIN,
                        fixed(
                                upper.fine().minus(takeUp),
                                measured + "; from the mean to the upper 95 % prediction limit of one splice"),
                What.TAKE_UP_SPREAD,
                        fixed(spread().fine(), measured + "; half the 95 % prediction band of one splice"));
    }

    private static Allowance fixed(FineLength length, String source) {
        return new Allowance(List.of(new Term.Fixed(length)), new Provenance(source, Grade.SHOP, true));
    }
}
