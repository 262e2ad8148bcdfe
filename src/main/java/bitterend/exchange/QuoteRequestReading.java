package bitterend.exchange;

import bitterend.finding.Finding;
import bitterend.quoting.QuoteRequest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What reading a request gave: every finding, and the request when none of them is an error. */
public final class QuoteRequestReading {
    private final @Nullable QuoteRequest request;
    private final List<Finding> findings;

    QuoteRequestReading(@Nullable QuoteRequest request, List<Finding> findings) {
        this.request = request;
        this.findings = List.copyOf(findings);
    }

    /** The request; nothing when a finding is an error. */
    public Optional<QuoteRequest> request() {
        return Optional.ofNullable(request);
    }

    /** Errors and warnings in reading order. */
    public List<Finding> findings() {
        return findings;
    }
}
