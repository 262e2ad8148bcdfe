package bitterend.exchange;

import bitterend.finding.Finding;
import bitterend.quoting.QuoteRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What reading a request gave: every finding, and the request when none of them is an error. */
public final class QuoteRequestReading {
    private final @Nullable QuoteRequest request;
    private final List<Finding> findings;
    private final List<Map<String, String>> rows;

    QuoteRequestReading(@Nullable QuoteRequest request, List<Finding> findings, List<Map<String, String>> rows) {
        this.request = request;
        this.findings = List.copyOf(findings);
        this.rows = rows.stream().map(Map::copyOf).toList();
    }

    /** The request; nothing when a finding is an error. */
    public Optional<QuoteRequest> request() {
        return Optional.ofNullable(request);
    }

    /** The rows of the request that can be priced, in its order: what is filled, by column. */
    public List<Map<String, String>> rows() {
        return rows;
    }

    /** Errors and warnings in reading order. */
    public List<Finding> findings() {
        return findings;
    }
}
