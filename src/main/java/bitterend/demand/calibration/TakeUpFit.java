package bitterend.demand.calibration;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The take-up of a termination on a rope, as measured. All lengths are for one end.
 *
 * @param termination id of the termination
 * @param rope id of the rope
 * @param variant which ends and whose, in words, where others were measured that take up less: {@code soft, by Okafor};
 *     empty where there were none
 * @param ends ends of each assembly that took it up together: of 2 alike only the sum was seen
 * @param count assemblies it rests on, outliers left out
 * @param mean mean take-up, to the nearest 0.0001 mm
 * @param margin from the mean to what the next end stays below 95 times in 100, where no other end of the piece is alike
 * @param marginOfTwo the same for each of two ends that are alike: their sum stays below
 * @param outliers assemblies left out
 * @param remarks what to know of it, a sentence each
 */
public record TakeUpFit(
        String termination,
        String rope,
        String variant,
        int ends,
        int count,
        FineLength mean,
        FineLength margin,
        FineLength marginOfTwo,
        List<MeasuredAssembly> outliers,
        List<Sentence> remarks) {
    public TakeUpFit {
        outliers = List.copyOf(outliers);
        remarks = List.copyOf(remarks);
    }

    /** The same with a remark more. */
    TakeUpFit with(Sentence remark) {
        List<Sentence> more = new ArrayList<>(remarks);
        more.add(remark);
        return new TakeUpFit(termination, rope, variant, ends, count, mean, margin, marginOfTwo, outliers, more);
    }

    /** What the next end stays below 95 times in 100; rounded up to a millimetre, not negative. */
    public Length upper() {
        return Length.max(Length.ZERO, mean.plus(margin).roundedUp());
    }

    /** What each of the next two ends of a piece takes up at most, both together, 95 times in 100. */
    public Length upperOfTwo() {
        return Length.max(Length.ZERO, mean.plus(marginOfTwo).roundedUp());
    }

    /** From the mean to the upper limit; at least a millimetre, finer nobody measures. */
    public Length spread() {
        return Length.max(new Length(1), upper().fine().minus(mean).roundedUp());
    }

    /** Below nothing: the assemblies came out longer than they were cut for. */
    public boolean isNegative() {
        return mean.isNegative();
    }

    /** The allowances to plan with: the finished length aims at the mean, the margin is rope to spare. */
    public Map<What, Allowance> allowances() {
        FineLength takeUp = isNegative() ? FineLength.ZERO : mean;
        String measured = "calibrated on " + count + " measured assemblies" + (variant.isEmpty() ? "" : ", " + variant);
        return Map.of(
                What.TAKE_UP, fixed(takeUp, measured + ", their mean"),
                What.MARGIN,
                        fixed(
                                upper().fine().minus(takeUp),
                                measured + "; from the mean to the upper 95 % prediction limit of one splice"),
                What.MARGIN_OF_TWO,
                        fixed(
                                upperOfTwo().fine().minus(takeUp),
                                measured + "; half of that from two means to the upper 95 % prediction limit of two"
                                        + " splices"),
                What.TAKE_UP_SPREAD,
                        fixed(spread().fine(), measured + "; half the 95 % prediction band of one splice"));
    }

    private static Allowance fixed(FineLength length, String source) {
        return new Allowance(List.of(new Term.Fixed(length)), new Provenance(source, Grade.SHOP, true));
    }
}
