package bitterend.packing;

import bitterend.measure.Length;
import java.util.EnumMap;
import java.util.Map;

/** Where the rope of the reels that are cut went. The other parts add up to {@link Account#BEFORE}. */
public final class LengthBook {
    /** Nothing of anything. */
    public static final LengthBook EMPTY = new LengthBook(Map.of());

    private final Map<Account, Length> parts;

    private LengthBook(Map<Account, Length> parts) {
        this.parts = parts;
    }

    /** What became of some of the rope. */
    public enum Account {
        /** On the reels before the first cut. */
        BEFORE,
        /** In pieces. */
        PIECES,
        /** Lost at the cuts. */
        CUT_LOSS,
        /** Worn ends cut off. */
        LEAD_TRIM,
        /** Cut out, up to the last run that is touched. */
        FLAWS,
        /** Offcuts not worth keeping, the uncertain end of a finished reel included. */
        SCRAP,
        /** Remnants that come off as coils of their own. */
        KEPT,
        /** Left on the reels, flaws behind the last cut and the uncertain end included. */
        LEFT,
        /** Innermost rope that cannot be used. */
        INNER_WRAPS
    }

    /** How much of it there is. */
    public Length of(Account part) {
        return parts.getOrDefault(part, Length.ZERO);
    }

    /** The same with so much of one part. */
    public LengthBook with(Account part, Length length) {
        Map<Account, Length> changed = new EnumMap<>(Account.class);
        changed.putAll(parts);
        if (length.equals(Length.ZERO)) {
            changed.remove(part);
        } else {
            changed.put(part, length);
        }
        return new LengthBook(changed);
    }

    /** The same with so much more of one part. */
    public LengthBook adding(Account part, Length length) {
        return with(part, of(part).plus(length));
    }

    /** {@link Account#BEFORE}. */
    public Length before() {
        return of(Account.BEFORE);
    }

    /** {@link Account#PIECES}. */
    public Length pieces() {
        return of(Account.PIECES);
    }

    /** {@link Account#CUT_LOSS}. */
    public Length cutLoss() {
        return of(Account.CUT_LOSS);
    }

    /** {@link Account#LEAD_TRIM}. */
    public Length leadTrim() {
        return of(Account.LEAD_TRIM);
    }

    /** {@link Account#FLAWS}. */
    public Length flaws() {
        return of(Account.FLAWS);
    }

    /** {@link Account#SCRAP}. */
    public Length scrap() {
        return of(Account.SCRAP);
    }

    /** {@link Account#KEPT}. */
    public Length kept() {
        return of(Account.KEPT);
    }

    /** {@link Account#LEFT}. */
    public Length left() {
        return of(Account.LEFT);
    }

    /** {@link Account#INNER_WRAPS}. */
    public Length innerWraps() {
        return of(Account.INNER_WRAPS);
    }

    /** Rope that went into pieces or was lost; what is kept or left was not drawn. */
    public Length drawn() {
        return pieces().plus(waste());
    }

    /** Rope lost: cut loss, lead trim, flaws and scrap. */
    public Length waste() {
        return cutLoss().plus(leadTrim()).plus(flaws()).plus(scrap());
    }

    /** The same, but so much of the scrap stays on its reel. */
    public LengthBook leaving(Length rope) {
        return with(Account.SCRAP, scrap().minus(rope)).with(Account.LEFT, left().plus(rope));
    }

    /** Each part of both added up. */
    public LengthBook plus(LengthBook other) {
        LengthBook book = this;
        for (Map.Entry<Account, Length> part : other.parts.entrySet()) {
            book = book.adding(part.getKey(), part.getValue());
        }
        return book;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LengthBook book && parts.equals(book.parts);
    }

    @Override
    public int hashCode() {
        return parts.hashCode();
    }

    @Override
    public String toString() {
        return "LengthBook" + parts;
    }
}
