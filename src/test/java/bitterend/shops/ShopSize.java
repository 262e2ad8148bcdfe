package bitterend.shops;

/**
 * How large a random shop is.
 *
 * @param ropes ropes in the catalogue, at most
 * @param reels reels on the rack, at most
 * @param pieces pieces wanted, at most
 * @param flaws flaws on one reel, at most
 * @param longestReelMm the longest reel
 */
public record ShopSize(int ropes, int reels, int pieces, int flaws, long longestReelMm) {
    /** So small that every way to cut it can be tried. */
    public static final ShopSize TINY = new ShopSize(2, 3, 5, 1, 6_000);
    /** A slow morning. */
    public static final ShopSize SMALL = new ShopSize(3, 8, 18, 2, 40_000);
    /** A full day. */
    public static final ShopSize DAY = new ShopSize(8, 40, 150, 3, 250_000);
}
