package bitterend.work;

import bitterend.finding.Finding;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What reading a shop gave.
 *
 * @param findings errors and warnings of all its files, in reading order
 * @param now the shop; null when one of them is an error
 */
public record ShopFound(List<Finding> findings, @Nullable ShopNow now) {
    public ShopFound {
        findings = List.copyOf(findings);
    }

    /** The shop; nothing when a finding is an error. */
    public Optional<ShopNow> found() {
        return Optional.ofNullable(now);
    }
}
