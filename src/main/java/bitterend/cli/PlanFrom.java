package bitterend.cli;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.work.Plans;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Earlier plans that a new one holds to. */
final class PlanFrom {
    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description = "The number of an earlier plan, or its file: pieces stay on their reels where they may, and"
                    + " what changed is told.")
    private @Nullable String from;

    @Option(
            names = "--keep",
            paramLabel = "PLAN",
            description = "An earlier plan whose pieces must stay on their reels, like pins.")
    private @Nullable String keep;

    /** The plans that were named, as far as they were. */
    record Named(@Nullable PlanDocument from, @Nullable PlanDocument keep) {}

    /** Where plans are read from and checked. */
    record Reading(Terminal terminal, ShopArgument at, Shop shop, Plans plans) {}

    /** What was named; nothing when one of them cannot be read or is not sound, which is told. */
    Optional<Named> read(Reading where, Findings findings) {
        Optional<PlanDocument> first = read(from, where, findings);
        Optional<PlanDocument> second = read(keep, where, findings);
        boolean missing = (from != null && first.isEmpty()) || (keep != null && second.isEmpty());
        return missing ? Optional.empty() : Optional.of(new Named(first.orElse(null), second.orElse(null)));
    }

    private static Optional<PlanDocument> read(@Nullable String name, Reading where, Findings findings) {
        if (name == null) {
            return Optional.empty();
        }
        return PlanName.read(name, where.plans(), findings)
                .flatMap(kept -> new GateTold(where.terminal(), where.at(), where.plans()).earlier(kept, where.shop()));
    }

    boolean isNamed() {
        return from != null || keep != null;
    }
}
