package bitterend.exchange;

import bitterend.finding.Finding;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What reading a shop folder gave: every finding, and the shop when none of them is an error. */
public final class ShopReading {
    private final @Nullable Shop shop;
    private final List<Finding> findings;

    ShopReading(@Nullable Shop shop, List<Finding> findings) {
        this.shop = shop;
        this.findings = List.copyOf(findings);
    }

    /** The shop; nothing when a finding is an error. */
    public Optional<Shop> shop() {
        return Optional.ofNullable(shop);
    }

    /** Errors and warnings of all files in reading order. */
    public List<Finding> findings() {
        return findings;
    }
}
