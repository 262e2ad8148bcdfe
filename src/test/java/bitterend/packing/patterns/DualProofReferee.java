package bitterend.packing.patterns;

import java.math.BigInteger;

/** Works a certificate out again, by a plain table over every load and in numbers of any size. */
final class DualProofReferee {
    private DualProofReferee() {}

    /** The bound on the cost that the numbers prove, before rounding to what a cost can be. */
    static long bound(PatternProblem problem, DualProof certificate) {
        return worked(problem, certificate, false);
    }

    /** The bound on the unplanned weight that the numbers prove. */
    static long weightBound(PatternProblem problem, DualProof certificate) {
        return worked(problem, certificate, true);
    }

    private static long worked(PatternProblem problem, DualProof certificate, boolean weighing) {
        BigInteger scale = BigInteger.valueOf(certificate.scale());
        BigInteger sum = BigInteger.ZERO;
        long all = 1;
        for (Item item : problem.items()) {
            all += item.demand() * item.weight();
        }
        for (int i = 0; i < problem.items().size(); i++) {
            Item item = problem.items().get(i);
            BigInteger own = BigInteger.valueOf(certificate.duals().get(i));
            BigInteger weight = BigInteger.valueOf(item.weight() == 0 ? all : item.weight());
            if (weighing) {
                own = own.min(scale.multiply(weight));
            } else if (certificate.unplannedWeight() > 0) {
                own = own.min(BigInteger.valueOf(certificate.unplannedPrice()).multiply(weight));
            }
            sum = sum.add(own.multiply(BigInteger.valueOf(item.demand())));
        }
        sum = sum.subtract(BigInteger.valueOf(certificate.unplannedPrice())
                .multiply(BigInteger.valueOf(certificate.unplannedWeight())));
        for (ReelKind type : problem.reels()) {
            long fit = fitting(problem, type);
            BigInteger z = best(problem, type, certificate, weighing);
            sum = sum.subtract(z.max(BigInteger.ZERO).multiply(BigInteger.valueOf(Math.min(fit, type.supply()))));
        }
        BigInteger[] parts = sum.divideAndRemainder(scale);
        long whole = parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
        return Math.max(0, whole);
    }

    private static long fitting(PatternProblem problem, ReelKind type) {
        long fit = 0;
        for (int i = 0; i < problem.items().size(); i++) {
            long length = type.lengths().get(i);
            if (length > 0 && type.runs().stream().anyMatch(run -> length <= run.length())) {
                fit += problem.items().get(i).demand();
            }
        }
        return fit;
    }

    private static BigInteger best(PatternProblem problem, ReelKind type, DualProof certificate, boolean weighing) {
        BigInteger scale = weighing ? BigInteger.ZERO : BigInteger.valueOf(certificate.scale());
        BigInteger before = scale.multiply(BigInteger.valueOf(-type.opening()));
        BigInteger best = BigInteger.ZERO;
        for (Run run : type.runs()) {
            BigInteger[] worth = table(problem, type, run, certificate);
            BigInteger own = scale.multiply(BigInteger.valueOf(-run.handling()));
            BigInteger handling = own;
            boolean any = false;
            BigInteger drawn = BigInteger.ZERO;
            for (int load = 1; load < worth.length; load++) {
                if (worth[load] != null) {
                    long left = Math.max(0, run.length() - load);
                    long drop = type.value().applyAsLong(run.length())
                            - type.value().applyAsLong(left);
                    BigInteger reducedProfit = worth[load].subtract(scale.multiply(BigInteger.valueOf(drop)));
                    drawn = any ? drawn.max(reducedProfit) : reducedProfit;
                    any = true;
                }
            }
            if (any) {
                best = best.max(before.add(drawn));
                own = handling.max(drawn);
            }
            before = before.add(own);
        }
        return best;
    }

    /** Highest worth of exactly this load, null where it cannot be reached. */
    private static BigInteger[] table(PatternProblem problem, ReelKind type, Run run, DualProof certificate) {
        BigInteger[] worth = new BigInteger[(int) (run.length() + type.cutLoss()) + 1];
        worth[0] = BigInteger.ZERO;
        for (int i = 0; i < problem.items().size(); i++) {
            long length = type.lengths().get(i);
            BigInteger each = BigInteger.valueOf(certificate.duals().get(i));
            for (int c = 0; length > 0 && c < problem.items().get(i).demand(); c++) {
                int load = (int) (length + type.cutLoss());
                for (int at = worth.length - 1; at >= load; at--) {
                    if (worth[at - load] != null) {
                        BigInteger sum = worth[at - load].add(each);
                        worth[at] = worth[at] == null ? sum : worth[at].max(sum);
                    }
                }
            }
        }
        return worth;
    }
}
