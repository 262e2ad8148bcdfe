package bitterend.day;

import bitterend.stock.Ledger;

/** Numbers for coils that come off reels: the reel's own, a dash and the next number. */
public final class CoilIds {
    private static final int LONGEST = 40;

    private CoilIds() {}

    /** The first number that no coil of the reel has. */
    public static String next(Ledger.Stock stock, String reel) {
        for (int number = 1; ; number++) {
            String end = "-" + number;
            String id = reel.substring(0, Math.min(reel.length(), LONGEST - end.length())) + end;
            if (stock.findHolding(id).isEmpty()) {
                return id;
            }
        }
    }
}
